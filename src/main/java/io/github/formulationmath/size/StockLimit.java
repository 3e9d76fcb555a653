package io.github.formulationmath.size;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Reckoning;
import java.util.List;

/**
 * What the readings of a plan may ask of a stock. A reading is at most the next whole division, or, of a line that a
 * closure may move further, the next after its {@link AdditionBound#reach reach}.
 *
 * @param formula the formula
 * @param name the ingredient
 * @param benches the closures under which the batch is to be planned
 */
record StockLimit(Formula formula, String name, List<Bench> benches) {

    StockLimit {
        benches = List.copyOf(benches);
    }

    List<FormulaLine> lines() {
        return formula.lines().stream().filter(line -> line.isNamed(name)).toList();
    }

    Ratio share() {
        return BatchConstraints.shareOf(formula, name);
    }

    /** What a batch of so many grams needs: its targets or the readings of its plan, whichever is more. */
    Ratio needed(Ratio grams) {
        Ratio most = grams.times(share());
        for (Bench bench : benches) {
            List<Ratio> divisions = new Divisions(Batch.of(formula, BatchSize.ofMass(Amount.grams(grams))), bench)
                    .all(Reckoning.plain());
            Ratio sum = Ratio.ZERO;
            for (FormulaLine line : lines()) {
                sum = sum.plus(divisions.get(line.index()));
            }
            most = most.max(sum.times(bench.balance().readability().canonical()));
        }
        return most;
    }

    /** The largest batch up to which no reading needs more, from what can be said without looking at the plan; 0 if none. */
    Ratio most(Ratio stock) {
        Ratio most = stock.dividedBy(share());
        for (Bench bench : benches) {
            most = most.min(most(stock, bench));
        }
        return most;
    }

    private Ratio most(Ratio stock, Bench bench) {
        Ratio d = bench.balance().readability().canonical();
        Ratio whole = stock.dividedBy(d).floor();
        Ratio most = Ratio.ZERO;
        for (FormulaLine line : lines()) {
            // The sum only rises where one of the lines passes a whole number.
            Ratio low = Ratio.ZERO;
            Ratio high = whole;
            while (low.compareTo(high) < 0) {
                Ratio middle = low.plus(high).plus(Ratio.ONE).dividedBy(2).floor();
                if (bound(at(line, middle, bench), bench).compareTo(whole) <= 0) {
                    low = middle;
                } else {
                    high = middle.minus(Ratio.ONE);
                }
            }
            most = most.max(at(line, low, bench));
        }
        return bound(most, bench).compareTo(whole) <= 0 ? most : Ratio.ZERO;
    }

    /** The batch at which the bound of a line is a whole number, and above which it is the next. */
    private Ratio at(FormulaLine line, Ratio divisions, Bench bench) {
        Ratio target = divisions.minus(excess(line, bench)).max(Ratio.ZERO);
        return target.times(bench.balance().readability().canonical()).dividedBy(line.fraction());
    }

    /** The divisions that all lines together read at most. */
    private Ratio bound(Ratio grams, Bench bench) {
        Ratio divisions = grams.dividedBy(bench.balance().readability().canonical());
        Ratio sum = Ratio.ZERO;
        for (FormulaLine line : lines()) {
            sum = sum.plus(
                    line.fraction().times(divisions).plus(excess(line, bench)).ceil());
        }
        return sum;
    }

    /** What a reading may be beyond the next whole division. */
    private Ratio excess(FormulaLine line, Bench bench) {
        boolean isNextDivision = switch (bench.closure()) {
            case INDEPENDENT, CLOSED -> true;
            case QS_TAKES_REST -> !line.isQuantitySufficient();
            case WITHIN_TOLERANCE -> false;
        };
        return isNextDivision
                ? Ratio.ZERO
                : AdditionBound.reach(bench.closure(), line, formula.lines().size());
    }
}
