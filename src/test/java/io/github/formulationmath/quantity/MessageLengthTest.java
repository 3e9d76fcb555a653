package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.math.RoundingMode;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** No value fills a message: a number of hundreds of digits is quoted in part, with its length. */
class MessageLengthTest {

    private static final Ratio HUGE = Ratio.parse("1e900").plus(Ratio.of(1, 3));
    private static final Ratio BELOW = HUGE.unaryMinus();

    private static List<ThrowingCallable> refused() {
        Amount<javax.measure.quantity.Mass> below = Amount.grams(BELOW);
        return List.of(
                () -> MassFraction.of(HUGE),
                () -> MassFraction.of(BELOW),
                () -> MassFraction.parse("1e400 %"),
                () -> VolumeFraction.of(HUGE),
                () -> MassConcentration.parse("-1e400 % w/v"),
                () -> Density.ofGramsPerMillilitre(BELOW),
                () -> Density.of(Amount.mass("1 g"), Amount.millilitres(BELOW)),
                () -> MassFraction.of(below, below),
                () -> Amount.of(HUGE, FormulationUnits.CELSIUS).times(2),
                () -> HUGE.dividedBy(Ratio.ZERO),
                () -> Ratio.of(HUGE.numerator(), java.math.BigInteger.ZERO),
                () -> HUGE.toBigDecimal(),
                () -> HUGE.toWhole(RoundingMode.UNNECESSARY),
                () -> Rounding.toMultipleOf(BELOW),
                () -> Rounding.toDecimalPlaces(2).with(RoundingMode.UNNECESSARY).apply(HUGE),
                () -> Bounds.closed(HUGE, BELOW),
                () -> Bounds.closed(BELOW, HUGE).times(BELOW));
    }

    @Test
    void a_message_quotes_a_part_of_a_long_value_and_its_length() {
        for (ThrowingCallable call : refused()) {
            assertThatThrownBy(call)
                    .isInstanceOfAny(IllegalArgumentException.class, ArithmeticException.class)
                    .satisfies(e -> assertThat(e.getMessage())
                            .hasSizeLessThan(400)
                            .containsPattern("\\.\\.\\..{0,25} \\([0-9]+ characters\\)"));
        }
    }
}
