package io.github.formulationmath.plan;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.math.RoundingMode;
import java.util.List;

/**
 * The ends between which a reading keeps its line within tolerance when N divisions are made, {@code ⌈w(1 − τ)(N + (k −
 * 2)e) + e⌉} and {@code ⌊w(1 + τ)(N − (k − 2)e) − e⌋} for k lines: any readings between them that add up to N do.
 *
 * @param formula the formula
 * @param tolerances how far each share may be off
 * @param error the error e of a reading, in divisions
 */
public record ReadingEnds(Formula formula, Tolerances tolerances, Ratio error) {

    private static final Symbol LEAST = Symbol.of("l", "least-divisions", Kind.NUMBER);
    private static final Symbol MOST = Symbol.of("u", "most-divisions", Kind.NUMBER);
    private static final Symbol ERROR = Symbol.of("e", "reading-error-divisions", Kind.NUMBER);

    private static final Rounding UP = Rounding.toDecimalPlaces(0).with(RoundingMode.CEILING);
    private static final Rounding DOWN = Rounding.toDecimalPlaces(0).with(RoundingMode.FLOOR);

    /**
     * Shows that readings lie between their ends and that the sums of the ends enclose the total.
     *
     * @param r the arithmetic to use
     * @param shown the readings in divisions
     * @param total the mass of the batch
     * @param <V> what a value is
     */
    public <V> void enclose(Reckoning<V> r, List<V> shown, V total) {
        for (int i = 0; i < shown.size(); i++) {
            FormulaLine line = formula.lines().get(i);
            r.holds(r.named(LEAST, line, least(r, line, total)), Comparison.AT_MOST, shown.get(i));
            r.holds(shown.get(i), Comparison.AT_MOST, r.named(MOST, line, most(r, line, total)));
        }
    }

    /** Whether each reading does. */
    boolean hold(List<Ratio> readings, Ratio total) {
        Reckoning<Ratio> plain = Reckoning.plain();
        for (int i = 0; i < readings.size(); i++) {
            FormulaLine line = formula.lines().get(i);
            if (least(plain, line, total).compareTo(readings.get(i)) > 0
                    || most(plain, line, total).compareTo(readings.get(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    /**
     * The least reading of a line.
     *
     * @param r the arithmetic to use
     * @param line the line
     * @param total the mass of the batch
     * @param <V> what a value is
     * @return in whole divisions
     */
    public <V> V least(Reckoning<V> r, FormulaLine line, V total) {
        V edge = r.product(r.known(line), tolerances.least(r, line));
        if (error.isZero()) {
            return r.rounded(r.product(edge, total), UP);
        }
        return r.rounded(r.sum(r.product(edge, r.sum(total, others(r))), e(r)), UP);
    }

    /**
     * The largest reading of a line.
     *
     * @param r the arithmetic to use
     * @param line the line
     * @param total the mass of the batch
     * @param <V> what a value is
     * @return in whole divisions
     */
    public <V> V most(Reckoning<V> r, FormulaLine line, V total) {
        V edge = r.product(r.known(line), tolerances.most(r, line));
        if (error.isZero()) {
            return r.rounded(r.product(edge, total), DOWN);
        }
        return r.rounded(r.difference(r.product(edge, r.difference(total, others(r))), e(r)), DOWN);
    }

    private <V> V others(Reckoning<V> r) {
        return r.product(r.literal(formula.lines().size() - 2L), e(r));
    }

    private <V> V e(Reckoning<V> r) {
        return r.given(ERROR, error, Source.user());
    }
}
