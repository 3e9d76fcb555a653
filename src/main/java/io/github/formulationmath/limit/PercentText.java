package io.github.formulationmath.limit;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.math.RoundingMode;

/** Shares as text: exact if that is short, else rounded and marked as such. */
final class PercentText {

    private static final int LONGEST = 9;
    private static final Rounding ROUNDED = Rounding.toSignificantDigits(5);

    private PercentText() {}

    static String of(Ratio share) {
        Ratio percent = share.times(100);
        if (percent.isDecimal() && percent.toString().length() <= LONGEST) {
            return percent + " %";
        }
        return "≈ " + ROUNDED.apply(percent) + " %";
    }

    /** The share, and between which ends, rounded outwards, it lies: {@code 1.008 % in [0.99, 1.03] %}. */
    static String of(Ratio share, Bounds bounds) {
        if (bounds.equals(Bounds.point(share))) {
            return of(share);
        }
        String lower = end(bounds.lower().orElseThrow(), RoundingMode.FLOOR).toString();
        return bounds.upper()
                .map(upper -> of(share) + " in [" + lower + ", " + end(upper, RoundingMode.CEILING) + "] %")
                .orElse(of(share) + ", at least " + lower + " %");
    }

    private static Ratio end(Ratio share, RoundingMode outwards) {
        return ROUNDED.with(outwards).apply(share.times(100));
    }
}
