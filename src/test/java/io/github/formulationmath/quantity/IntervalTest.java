package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

class IntervalTest {

    private static final Amount<Mass> LEAST = Amount.mass("2.4 g");
    private static final Amount<Mass> GREATEST = Amount.mass("2.6 g");

    @Test
    void both_ends_belong_to_it() {
        Interval<Amount<Mass>> interval = Interval.of(LEAST, GREATEST);
        assertThat(interval.contains(LEAST)).isTrue();
        assertThat(interval.contains(GREATEST)).isTrue();
        assertThat(interval.contains(Amount.mass("2399 mg"))).isFalse();
        assertThat(interval.contains(Amount.mass("2601 mg"))).isFalse();
    }

    @Test
    void it_may_hold_one_value_alone_and_never_none() {
        assertThat(Interval.of(LEAST, Amount.mass("2400 mg")).contains(LEAST)).isTrue();
        assertThatThrownBy(() -> Interval.of(GREATEST, LEAST))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "least is 2.6 g and greatest is 2.4 g: the least must not be above the greatest, the two may"
                                + " have been exchanged");
    }

    @Test
    void each_end_is_exact_with_a_decimal_beside_a_fraction() {
        Ratio third = Ratio.of(1, 3);
        Ratio half = Ratio.of(1, 2);
        assertThat(Interval.of(Amount.grams(third), Amount.grams(half))).hasToString("[1/3 g ≈ 0.333333 g, 0.5 g]");
        assertThat(Interval.of(MassFraction.of(third), MassFraction.of(half)))
                .hasToString("[100/3 % ≈ 33.3333 %, 50 %]");
        assertThat(Interval.of(VolumeFraction.of(third), VolumeFraction.of(half)))
                .hasToString("[100/3 % v/v ≈ 33.3333 % v/v, 50 % v/v]");
        assertThat(Interval.of(
                        MassConcentration.ofGramsPerMillilitre(third), MassConcentration.ofGramsPerMillilitre(half)))
                .hasToString("[100/3 % w/v ≈ 33.3333 % w/v, 50 % w/v]");
        assertThat(Interval.of(Money.of(third, "EUR"), Money.of(half, "EUR")))
                .hasToString("[1/3 EUR ≈ 0.333333 EUR, 0.5 EUR]");
        assertThat(Interval.of("from here", "to there")).hasToString("[from here, to there]");
    }
}
