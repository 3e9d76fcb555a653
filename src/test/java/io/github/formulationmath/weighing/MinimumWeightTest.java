package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** The ends of what the rules take; their published numbers are in {@link PublishedRulesTest}. */
class MinimumWeightTest {

    private static final Amount<Mass> CONSTANT = Amount.mass("0.01 g");

    private static final Ratio HUNDREDTH = Ratio.of(1, 100);

    /** α · SF / τ = 0.01 g · 1 / 0.01. */
    @Test
    void an_uncertainty_need_not_rise_and_needs_no_safety() {
        Amount<Mass> least = MinimumWeight.byUncertainty(CONSTANT, Ratio.ZERO, HUNDREDTH, Ratio.ONE);
        assertThat(least).isEqualTo(Amount.mass("1 g"));
        assertThat(least.working().toString()).contains("τ");
    }

    @Test
    void an_uncertainty_does_not_fall() {
        assertThatThrownBy(() -> MinimumWeight.byUncertainty(CONSTANT, Ratio.of(-1, 1000), HUNDREDTH, Ratio.ONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("slope -0.001");
        // Just as steep as the tolerance: U = 0.01 g + R / 100 is never within R / 100.
        assertThatThrownBy(() -> MinimumWeight.byUncertainty(CONSTANT, HUNDREDTH, HUNDREDTH, Ratio.ONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no mass is large enough");
    }

    @Test
    void a_permitted_error_lies_above_0_and_up_to_1() {
        assertThat(MinimumWeight.bySensitivity(CONSTANT, Ratio.ONE)).isEqualTo(CONSTANT);
        for (Ratio bad : new Ratio[] {Ratio.ZERO, Ratio.of(-1, 20), Ratio.parse("1.01")}) {
            assertThatThrownBy(() -> MinimumWeight.bySensitivity(CONSTANT, bad))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("permittedError is " + bad)
                    .hasMessageContaining("5 % is 1/20");
        }
    }

    /** USP general chapter 41 (1 August 2019; from memory): 0.41 d stands in for a smaller repeatability, and it is named. */
    @Test
    void the_floor_of_the_repeatability_is_explained() {
        Amount<Mass> least = MinimumWeight.pharmacopoeial(Balance.of("0.01 g", "500 g"));
        assertThat(least).isEqualTo(Amount.mass("8.2 g"));
        assertThat(least.working().toString()).contains("0.41 d stands for the repeatability: USP general chapter 41");
    }
}
