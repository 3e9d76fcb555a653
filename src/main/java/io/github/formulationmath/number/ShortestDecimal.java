package io.github.formulationmath.number;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.Predicate;

/**
 * The shortest decimal that identifies a floating-point number; of several, the one nearest to it. This is what {@link
 * Double#toString(double)} specifies since Java 19. Before, the JDK sometimes wrote a digit too many, which would make
 * results depend on its release.
 */
final class ShortestDecimal {

    /** As the JDK does, two digits are used where one would do, so that the nearer decimal is found. */
    private static final int FEWEST_DIGITS = 2;

    private ShortestDecimal() {}

    static BigDecimal of(double value) {
        return shortest(new BigDecimal(value), text -> Double.parseDouble(text) == value);
    }

    static BigDecimal of(float value) {
        return shortest(new BigDecimal(value), text -> Float.parseFloat(text) == value);
    }

    private static BigDecimal shortest(BigDecimal exact, Predicate<String> identifies) {
        for (int digits = FEWEST_DIGITS; digits < exact.precision(); digits++) {
            BigDecimal below = exact.round(new MathContext(digits, RoundingMode.DOWN));
            BigDecimal above = exact.round(new MathContext(digits, RoundingMode.UP));
            boolean belowNearer =
                    exact.subtract(below).abs().compareTo(above.subtract(exact).abs()) <= 0;
            BigDecimal nearer = belowNearer ? below : above;
            BigDecimal farther = belowNearer ? above : below;
            if (identifies.test(nearer.toString())) {
                return nearer;
            }
            if (identifies.test(farther.toString())) {
                return farther;
            }
        }
        return exact;
    }
}
