package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberText;
import java.io.Serializable;
import java.util.Objects;

/**
 * Everything from a least value to a greatest one, both included: masses, shares, prices.
 *
 * <p>Example: a reading of 2.5 g on a balance that may be off by 0.1 g stands for {@code
 * Interval.of(Amount.mass("2.4 g"), Amount.mass("2.6 g"))}.
 *
 * @param least the least value
 * @param greatest the greatest value, not below the least
 * @param <T> what is bounded
 */
public record Interval<T extends Comparable<? super T>>(T least, T greatest) implements Serializable {

    /**
     * Checks the order.
     *
     * @param least the least value
     * @param greatest the greatest value
     * @throws IllegalArgumentException if the greatest value lies below the least
     */
    public Interval {
        Objects.requireNonNull(least, "least");
        if (least.compareTo(Objects.requireNonNull(greatest, "greatest")) > 0) {
            throw new IllegalArgumentException("least is " + least + " and greatest is " + greatest
                    + ": the least must not be above the greatest, the two may have been exchanged");
        }
    }

    /**
     * The interval between two values.
     *
     * @param least the least value
     * @param greatest the greatest value
     * @param <T> what is bounded
     * @return the interval
     * @throws IllegalArgumentException if the greatest value lies below the least
     */
    public static <T extends Comparable<? super T>> Interval<T> of(T least, T greatest) {
        return new Interval<>(least, greatest);
    }

    /**
     * Whether a value lies in it, ends included.
     *
     * @param value the value
     * @return true if it does
     */
    public boolean contains(T value) {
        return least.compareTo(Objects.requireNonNull(value, "value")) <= 0 && value.compareTo(greatest) <= 0;
    }

    /** Both ends, exact: {@code [2.4 g, 2.6 g]}; beside what is no short decimal stands one, {@code 100/21 g ≈ 4.76190 g}. */
    @Override
    public String toString() {
        return "[" + text(least) + ", " + text(greatest) + "]";
    }

    private static String text(Object end) {
        if (end instanceof MassFraction share) {
            return NumberText.percentExactly(share.fraction());
        }
        if (end instanceof VolumeFraction share) {
            return NumberText.exact(share.percent(), "% v/v");
        }
        if (end instanceof MassConcentration concentration) {
            return NumberText.exact(concentration.percent(), "% w/v");
        }
        if (end instanceof Money sum) {
            return sum.toldExactly();
        }
        return end instanceof Amount<?> amount ? amount.toldExactly() : end.toString();
    }
}
