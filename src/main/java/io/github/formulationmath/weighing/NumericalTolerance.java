package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.util.Objects;

/**
 * The numerical tolerance of an uncertainty: half a unit of the last digit that counts.
 *
 * <p>Written c · 10^l with c of so many digits, an uncertainty has the tolerance 10^l / 2. Example: 0.00035 g with two
 * digits is 35 · 10⁻⁵ g; its tolerance is 0.000005 g.
 *
 * <p>Source: JCGM 101:2008, 7.9.2.
 */
final class NumericalTolerance {

    private NumericalTolerance() {}

    /**
     * The tolerance of an uncertainty.
     *
     * @param uncertainty the standard uncertainty, above 0
     * @param significantDigits how many of its digits count, from 1; usually 1 or 2
     * @return the tolerance in the unit of the uncertainty, exact
     * @throws IllegalArgumentException if a number is out of range
     */
    static Ratio of(Ratio uncertainty, int significantDigits) {
        if (Objects.requireNonNull(uncertainty, "uncertainty").signum() <= 0) {
            throw new IllegalArgumentException("uncertainty is " + uncertainty + ": only one above 0 has digits");
        }
        Rounding digits = Rounding.toSignificantDigits(significantDigits);
        return digits.stepFor(digits.apply(uncertainty)).dividedBy(2);
    }
}
