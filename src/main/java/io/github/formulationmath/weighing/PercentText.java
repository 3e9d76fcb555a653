package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.math.RoundingMode;

/** Shares in percent for {@code toString}, to five digits; ends of intervals are rounded outwards. */
final class PercentText {

    private static final Rounding ROUNDED = Rounding.toSignificantDigits(5);

    private PercentText() {}

    static String of(Ratio share) {
        Ratio percent = share.times(100);
        Ratio rounded = ROUNDED.apply(percent);
        return (rounded.equals(percent) ? "" : "≈ ") + rounded + " %";
    }

    static String of(Ratio lower, Ratio upper) {
        return "[" + end(lower, RoundingMode.FLOOR) + ", " + end(upper, RoundingMode.CEILING) + "] %";
    }

    private static Ratio end(Ratio share, RoundingMode outwards) {
        return ROUNDED.with(outwards).apply(share.times(100));
    }
}
