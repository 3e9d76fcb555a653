package io.github.formulationmath.limit;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;

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
}
