package io.github.formulationmath.planning;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Amount;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;

/** What the questions of this package refuse, each by the name of the argument. */
final class Arguments {

    private Arguments() {}

    static Amount<Mass> positive(String name, Amount<Mass> amount) {
        if (Objects.requireNonNull(amount, name).signum() <= 0) {
            throw new IllegalArgumentException(name + " is " + Excerpt.of(amount) + ": it must be above 0");
        }
        return amount;
    }

    static Amount<Mass> atLeastZero(String name, Amount<Mass> amount) {
        if (Objects.requireNonNull(amount, name).signum() < 0) {
            throw new IllegalArgumentException(name + " is " + Excerpt.of(amount) + ": a half-width is at least 0");
        }
        return amount;
    }

    /** An unmodifiable copy of a list that must hold something. */
    static <T> List<T> atLeastOne(String name, List<T> list) {
        List<T> copy = List.copyOf(Objects.requireNonNull(list, name));
        if (copy.isEmpty()) {
            throw new IllegalArgumentException(name + " is empty: at least one is needed");
        }
        return copy;
    }
}
