package io.github.formulationmath.solution;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;

/**
 * How far an ionic strength moves the logarithm of the activity coefficient of an ion of charge 1: {@code −log γ₁ = 0.509 (√I/(1 +
 * √I) − 0.3 I)} at 25 °C (C. W. Davies, Ion Association, 1962; constants as they are commonly quoted). It rises with I up to 0.395.
 */
final class Davies {

    private static final Ratio SLOPE = Ratio.parse("0.509");
    private static final Ratio LINEAR = Ratio.parse("0.3");
    private static final Ratio LARGEST = Ratio.parse("0.39");
    private static final int DIGITS = 20;

    /** The root is rounded to twenty digits; this much more is an upper end. */
    private static final Ratio ULP = Ratio.parse("1e-19");

    private Davies() {}

    /** An upper end of −log γ₁ over all ionic strengths up to one. */
    static Ratio mostShift(Ratio molesPerLitre) {
        if (molesPerLitre.signum() < 0 || molesPerLitre.compareTo(LARGEST) > 0) {
            throw new IllegalArgumentException("ionic strength is " + Excerpt.of(molesPerLitre)
                    + " mol/L: the relation is used from 0 to 0.39 mol/L; dilute, or measure the constant");
        }
        if (molesPerLitre.isZero()) {
            return Ratio.ZERO;
        }
        Ratio root = molesPerLitre.sqrt(DIGITS).plus(ULP);
        return SLOPE.times(root.dividedBy(root.plus(Ratio.ONE)).minus(LINEAR.times(molesPerLitre)));
    }
}
