package io.github.formulationmath.plan;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.io.Serial;
import java.io.Serializable;

/**
 * The shares of a formula as whole numbers over one denominator, {@code w_i = a_i / A}.
 *
 * <p>With the batch P/Q divisions, line i takes {@code x = a_i·P / (A·Q)} divisions, rounded half to even. If {@code
 * a_i·P} and {@code A·Q} are below 2^52, {@code Math.rint} of the quotient of the two as doubles is that number exactly:
 *
 * <ul>
 *   <li>Whole numbers up to 2^53 and their products below it are exact as doubles, and the division is rounded once.
 *   <li>If x lies half-way between two whole numbers, it is a double itself; the quotient is x, and rint takes the even.
 *   <li>Otherwise the nearest half-way point h is at least 1/(2·A·Q) away, for x − h is a whole number over 2·A·Q. The
 *       division errs by at most x·2^-53 &lt; 1/(2·A·Q), so the quotient stays on its side of h and rint agrees with x.
 * </ul>
 *
 * Whatever does not fit goes through {@link Ratio}.
 */
final class CompiledFormula implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    /** Products and denominators below this are divided exactly enough; see the class comment. */
    private static final double LIMIT = 0x1p52;

    /** Every whole number up to here is a double. */
    private static final long LARGEST_WHOLE = 1L << 53;

    private static final Rounding NEAREST = Rounding.toDecimalPlaces(0);

    private final double[] numerators;
    private final double largest;
    private final double denominator;
    private final Ratio[] exact;

    private CompiledFormula(double[] numerators, double largest, double denominator, Ratio[] exact) {
        this.numerators = numerators;
        this.largest = largest;
        this.denominator = denominator;
        this.exact = exact;
    }

    static CompiledFormula of(Formula formula) {
        Ratio[] exact = formula.lines().stream().map(FormulaLine::fraction).toArray(Ratio[]::new);
        long common = commonDenominator(exact);
        double[] numerators = new double[common == 0 ? 0 : exact.length];
        long largest = 0;
        for (int i = 0; i < numerators.length; i++) {
            long numerator = exact[i].times(common).longNumerator();
            numerators[i] = numerator;
            largest = Math.max(largest, numerator);
        }
        return new CompiledFormula(numerators, largest, common, exact);
    }

    /** The least common denominator, or 0 if it is too large for the fast way. */
    private static long commonDenominator(Ratio[] shares) {
        Ratio common = Ratio.ONE;
        for (Ratio share : shares) {
            common = common.leastCommonMultiple(Ratio.of(share.denominator()));
            if (common.numerator().bitLength() > 52) {
                return 0;
            }
        }
        return common.toLongExact();
    }

    CompiledFormula copy() {
        return new CompiledFormula(numerators.clone(), largest, denominator, exact);
    }

    int size() {
        return exact.length;
    }

    long plan(Ratio batch, double[] divisions) {
        if (denominator != 0 && batch.fitsLongs()) {
            double p = batch.longNumerator();
            double whole = denominator * (double) batch.longDenominator();
            // Rounding is monotone: a product shown below the limit is below it, and then it was exact.
            if (largest * p < LIMIT && whole < LIMIT) {
                return planFast(p, whole, divisions);
            }
        }
        return planExactly(batch, divisions);
    }

    private long planFast(double p, double whole, double[] divisions) {
        double total = 0;
        for (int i = 0; i < numerators.length; i++) {
            double shown = Math.rint(numerators[i] * p / whole);
            divisions[i] = shown;
            total += shown;
        }
        return (long) total;
    }

    private long planExactly(Ratio batch, double[] divisions) {
        long total = 0;
        for (int i = 0; i < exact.length; i++) {
            long shown = NEAREST.apply(exact[i].times(batch)).toLongExact();
            if (shown > LARGEST_WHOLE) {
                throw new ArithmeticException("line " + (i + 1) + " takes " + shown
                        + " divisions, more than a double counts one by one: plan it with WeighingPlan");
            }
            divisions[i] = shown;
            total = Math.addExact(total, shown);
        }
        return total;
    }
}
