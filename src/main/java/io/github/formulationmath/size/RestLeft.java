package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The other lines, rounded, leave the q.s. line something to take, so that a plan closed by {@link Closure#QS_TAKES_REST}
 * exists. From k/2 divisions of the q.s. line on they always do, in a formula of k lines; below, sizes that fail are passed
 * over in whole divisions. A window asks for it; the intervals of its sizes are asked for by nobody.
 */
final class RestLeft implements SizeSearch, Part.Proof {

    private static final Rounding NEAREST = Rounding.toDecimalPlaces(0);

    private final Formula formula;
    private final FormulaLine taker;
    private final Balance balance;
    private final Ratio d;

    static Part part(Formula formula, Balance balance) {
        RestLeft rest = new RestLeft(formula, balance);
        return new Part(() -> Phrase.of("criterion.rest-left"), rest, rest);
    }

    private RestLeft(Formula formula, Balance balance) {
        this.formula = formula;
        this.taker = Divisions.restTaker(formula);
        this.balance = balance;
        this.d = balance.readability().canonical();
    }

    private Ratio sureFrom() {
        return Ratio.of(formula.lines().size(), 2).times(d).dividedBy(taker.fraction());
    }

    private <V> V others(Reckoning<V> r, V grams) {
        V step = Divisions.readability(r, balance);
        List<V> rounded = new ArrayList<>();
        rounded.add(r.literal(0));
        for (FormulaLine line : formula.lines()) {
            if (!line.equals(taker)) {
                rounded.add(r.rounded(r.quotient(r.product(r.known(line), grams), step), NEAREST));
            }
        }
        return r.sum(rounded);
    }

    private <V> V whole(Reckoning<V> r, V grams) {
        return r.rounded(r.quotient(grams, Divisions.readability(r, balance)), NEAREST);
    }

    /** How many divisions are left for the q.s. line; below 0 if the others take too many. */
    private Ratio rest(Ratio grams) {
        if (grams.compareTo(sureFrom()) >= 0) {
            return Ratio.ZERO;
        }
        return whole(Reckoning.plain(), grams).minus(others(Reckoning.plain(), grams));
    }

    @Override
    public Landing first() {
        return Landing.resting(d.dividedBy(1_000_000));
    }

    @Override
    public @Nullable Landing push(Ratio size, boolean up, SearchMeter meter) {
        Ratio rest = rest(size);
        if (rest.signum() >= 0) {
            return null;
        }
        Ratio divisions = size.dividedBy(d);
        // A division more of the batch gives the q.s. line one at most.
        Ratio next = up ? divisions.floor().minus(rest) : divisions.ceil().minus(Ratio.ONE);
        meter.count(next.times(d));
        return Landing.by(taker.index(), next.times(d));
    }

    @Override
    public Ratio startAround(Ratio passing) {
        return passing.min(sureFrom());
    }

    @Override
    public Optional<Ratio> allFrom() {
        return Optional.of(sureFrom());
    }

    @Override
    public <V> V smallest(Reckoning<V> r, Landing smallest) {
        V size = WindowBound.inDivisions(r, smallest.at(), balance);
        r.holds(others(r, size), Comparison.AT_MOST, whole(r, size));
        return size;
    }
}
