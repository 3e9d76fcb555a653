package io.github.formulationmath.plan;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.function.Predicate;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;

/** Figures as their reader sees them: ends of a search in few digits, readings with the zeros of their display. */
public final class BalanceUnit {

    private BalanceUnit() {}

    /**
     * A least amount as one in few digits that passes itself, {@link NumberText#least}.
     *
     * @param amount the least amount
     * @param passes whether an amount will do
     * @param <Q> what is measured
     * @return its text in its own unit
     */
    public static <Q extends Quantity<Q>> String least(Amount<Q> amount, Predicate<? super Amount<Q>> passes) {
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(passes, "passes");
        return NumberText.least(amount.exactValue(), amount.symbol(), value -> passes.test(like(amount, value)));
    }

    /**
     * A greatest amount as one in few digits that passes itself, {@link NumberText#greatest}.
     *
     * @param amount the greatest amount
     * @param passes whether an amount will do
     * @param <Q> what is measured
     * @return its text in its own unit
     */
    public static <Q extends Quantity<Q>> String greatest(Amount<Q> amount, Predicate<? super Amount<Q>> passes) {
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(passes, "passes");
        return NumberText.greatest(amount.exactValue(), amount.symbol(), value -> passes.test(like(amount, value)));
    }

    /** So many of the unit of an amount that is not 0, as none is that takes more than 10 characters. */
    private static <Q extends Quantity<Q>> Amount<Q> like(Amount<Q> amount, Ratio value) {
        return amount.times(value.dividedBy(amount.exactValue()));
    }

    /**
     * A reading as the display shows it, with the zeros that its step keeps: {@code 1.0 g}.
     *
     * @param reading the reading
     * @param step the step of the display
     * @return its text; {@link Amount#toldExactly} if the display cannot show it
     */
    public static String reading(Amount<Mass> reading, Amount<Mass> step) {
        Amount<Mass> shown = Objects.requireNonNull(reading, "reading").inUnitOf(Objects.requireNonNull(step, "step"));
        return shown.exactValue().dividedBy(step.exactValue()).isInteger()
                        && step.exactValue().isDecimal()
                ? Rounding.toMultipleOf(step.exactValue())
                                .with(RoundingMode.UNNECESSARY)
                                .format(shown.exactValue()) + " " + shown.symbol()
                : shown.toldExactly();
    }
}
