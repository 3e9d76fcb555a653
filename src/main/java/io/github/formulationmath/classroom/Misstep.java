package io.github.formulationmath.classroom;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;

/**
 * A mistake that pupils make in a topic, and where it leads.
 *
 * @param why the mistake in words
 * @param value what comes out, in the canonical unit
 */
record Misstep(Said why, Ratio value) {

    Misstep shown(Rounding digits) {
        return new Misstep(why, digits.apply(value));
    }

    /** Whether a value is another with the decimal point moved: both have the same digits. */
    static boolean isShift(Ratio one, Ratio other) {
        if (one.signum() <= 0 || other.signum() <= 0) {
            return false;
        }
        return digits(one).equals(digits(other));
    }

    /** The value with its decimal point moved until it is below 10 and not below 1. */
    static Ratio digits(Ratio value) {
        return value.dividedBy(Rounding.toSignificantDigits(1).stepFor(value));
    }
}
