package io.github.formulationmath.choice;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import java.util.ArrayList;
import java.util.List;

/**
 * The masses of the lines as written behind a product some lines of which are stocks. A line weighed as a stock of strength s
 * is s·q, the carrier gets (1 − s)·q more; each is known to lie between the ends that the bounds of s and q set, whatever the
 * others are.
 */
record DilutedMasses(
        Formula formula, List<StockMixture> stocks, Weighed product, List<? extends List<? extends Weighed>> steps) {

    /** A mass with its bounds and a standard deviation that nothing bounds, in grams. */
    private record Part(Ratio estimate, Ratio least, Ratio most, Ratio deviation) {

        Part plus(Part other) {
            return new Part(
                    estimate.plus(other.estimate),
                    least.plus(other.least),
                    most.plus(other.most),
                    deviation.plus(other.deviation));
        }

        Part times(Ratio estimated, Ratio low, Ratio high) {
            return new Part(estimate.times(estimated), least.times(low), most.times(high), deviation.times(high));
        }

        Addition of(FormulaLine line) {
            Ratio error = most.minus(estimate).max(estimate.minus(least)).max(Ratio.ZERO);
            return Addition.within(
                    line, line.subscript(), Amount.grams(estimate), Amount.grams(error), Amount.grams(deviation));
        }
    }

    Weighed weighed() {
        List<Part> parts = new ArrayList<>();
        product.masses().additions().forEach(error -> parts.add(part(error)));
        for (int i = 0; i < stocks.size(); i++) {
            StockMixture stock = stocks.get(i);
            var strength = stock.strength(steps.get(i));
            Ratio low = strength.least().fraction();
            Ratio high = strength.greatest().fraction();
            Ratio middle = stock.estimate(steps.get(i));
            Part aliquot = parts.get(stock.line().index());
            Part own = aliquot.times(middle, low, high);
            Part diluent = aliquot.times(Ratio.ONE.minus(middle), Ratio.ONE.minus(high), Ratio.ONE.minus(low));
            Ratio unbounded = deviation(steps.get(i)).times(aliquot.estimate());
            parts.set(stock.line().index(), own.plus(new Part(Ratio.ZERO, Ratio.ZERO, Ratio.ZERO, unbounded)));
            parts.set(
                    stock.carrier().index(),
                    parts.get(stock.carrier().index())
                            .plus(diluent)
                            .plus(new Part(Ratio.ZERO, Ratio.ZERO, Ratio.ZERO, unbounded)));
        }
        List<Addition> additions = new ArrayList<>();
        for (FormulaLine line : formula.lines()) {
            additions.add(parts.get(line.index()).of(line));
        }
        return new Of(formula, MadeMasses.of(additions));
    }

    private record Of(Formula formula, MadeMasses masses) implements Weighed {}

    private static Part part(AdditionError error) {
        return new Part(
                error.estimate().canonical(),
                error.bounds().least().canonical(),
                error.bounds().greatest().canonical(),
                error.unbounded().canonical());
    }

    /** The standard deviation of the strength by what is not bounded, not less than it is: relative ones added up. */
    private static Ratio deviation(List<? extends Weighed> made) {
        Ratio strength = Ratio.ONE;
        Ratio relative = Ratio.ZERO;
        for (Weighed step : made) {
            Ratio total = step.masses().total().canonical();
            Ratio share =
                    step.masses().additions().get(0).estimate().canonical().dividedBy(total);
            strength = strength.times(share);
            for (AdditionError error : step.masses().additions()) {
                Ratio mass = error.estimate().canonical();
                relative = mass.isZero()
                        ? relative
                        : relative.plus(error.unbounded().canonical().dividedBy(mass));
            }
        }
        return strength.times(relative);
    }
}
