package io.github.formulationmath.record;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Amount;
import java.util.Objects;
import javax.measure.Quantity;

/** Amounts that are refused, each by the name of the argument. */
final class Arguments {

    private Arguments() {}

    static <Q extends Quantity<Q>> Amount<Q> positive(String name, Amount<Q> amount) {
        if (Objects.requireNonNull(amount, name).signum() <= 0) {
            throw new IllegalArgumentException(name + " is " + Excerpt.of(amount) + ": it must be above 0");
        }
        return amount;
    }
}
