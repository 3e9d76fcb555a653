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

    /** The root of a number below 1 is rounded to twenty digits; this much more is an upper end. */
    private static final Ratio ULP = Ratio.parse("1e-19");

    private Davies() {}

    /** An upper end of −log γ₁ over all ionic strengths up to one. */
    static Ratio mostShift(IonicStrength strength) {
        Ratio molesPerLitre = strength.molesPerLitre();
        if (molesPerLitre.compareTo(LARGEST) > 0) {
            throw new IllegalArgumentException("ionic strength is " + Excerpt.of(strength)
                    + ": the relation is used from 0 to 0.39 mol/L, for it turns beyond; dilute, or measure the constant"
                    + " at that ionic strength");
        }
        if (molesPerLitre.isZero()) {
            return Ratio.ZERO;
        }
        Ratio root = molesPerLitre.sqrt(DIGITS).plus(ULP);
        return SLOPE.times(root.dividedBy(root.plus(Ratio.ONE)).minus(LINEAR.times(molesPerLitre)));
    }
}
