package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** Figures as their reader sees them. */
class BalanceUnitTest {

    private static final Amount<Mass> THIRD_OF_HUNDRED = Amount.mass("100 g").dividedBy(Ratio.of(3));

    @Test
    void an_end_is_told_in_the_fewest_digits_that_pass_themselves() {
        assertThat(BalanceUnit.least(THIRD_OF_HUNDRED, any -> true)).isEqualTo("33.34 g");
        assertThat(BalanceUnit.greatest(THIRD_OF_HUNDRED, any -> true)).isEqualTo("33.33 g");
        Amount<Mass> above = Amount.mass("33.3335 g");
        assertThat(BalanceUnit.least(THIRD_OF_HUNDRED, more -> more.compareTo(above) <= 0))
                .isEqualTo("33.3334 g");
        Amount<Mass> below = Amount.mass("33.332 g");
        assertThat(BalanceUnit.greatest(THIRD_OF_HUNDRED, less -> less.compareTo(below) >= 0))
                .isEqualTo("33.333 g");
    }

    @Test
    void an_end_that_no_few_digits_pass_is_told_exactly() {
        assertThat(BalanceUnit.least(THIRD_OF_HUNDRED, none -> false)).isEqualTo("100/3 g ≈ 33.3333 g");
        assertThat(BalanceUnit.greatest(THIRD_OF_HUNDRED, none -> false)).isEqualTo("100/3 g ≈ 33.3333 g");
    }

    @Test
    void a_reading_keeps_the_zeros_of_its_display() {
        Amount<Mass> tenth = Amount.mass("0.1 g");
        assertThat(BalanceUnit.reading(Amount.mass("1 g"), tenth)).isEqualTo("1.0 g");
        assertThat(BalanceUnit.reading(Amount.mass("0.02 kg"), tenth)).isEqualTo("20.0 g");
        assertThat(BalanceUnit.reading(Amount.mass("1 g"), Amount.mass("0.5 g")))
                .isEqualTo("1.0 g");
    }

    @Test
    void a_reading_that_its_display_cannot_show_is_told_exactly() {
        assertThat(BalanceUnit.reading(Amount.mass("1.25 g"), Amount.mass("0.1 g")))
                .isEqualTo("1.25 g");
        Amount<Mass> third = Amount.mass("1 g").dividedBy(Ratio.of(3));
        assertThat(BalanceUnit.reading(third, Amount.mass("0.1 g"))).isEqualTo("1/3 g ≈ 0.333333 g");
        assertThat(BalanceUnit.reading(Amount.mass("1 g"), third)).isEqualTo("1 g");
    }
}
