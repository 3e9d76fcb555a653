package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.support.Made;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** A mass that is known to lie within bounds, as an addition on a display that adds hardly anything. */
class AdditionTest {

    private static Addition within(String mass, String error, String repeatability) {
        return Addition.within(
                Subject.of("1", "Glycerin"), "1", Amount.mass(mass), Amount.mass(error), Amount.mass(repeatability));
    }

    /** Tare and reading of a display of 1 µg hide 0.5 µg each. */
    @Test
    void it_lies_within_its_bounds_and_a_microgram() {
        AdditionError error = AdditionError.of(within("10 g", "0.5 g", "0 g"));
        assertThat(Made.bounds(error.bounds()))
                .isEqualTo(Bounds.closed(Ratio.parse("9.499999"), Ratio.parse("10.500001")));
        assertThat(error.estimate()).isEqualTo(Amount.mass("10 g"));
        assertThat(error.addition().target()).isEqualTo(Amount.mass("10 g"));
        assertThat(error.addition().subject().name()).isEqualTo("Glycerin");
        assertThat(error.addition().balance().name()).isEqualTo("line 1");
    }

    /** An ounce is 28.349523125 g exactly, so that 1e-7 oz are 2.8 µg, and 1e-8 oz the first below one. */
    @Test
    void the_step_is_the_largest_power_of_ten_of_its_unit_that_is_a_microgram_at_most() {
        assertThat(within("10 g", "0.5 g", "0 g").balance().readability()).isEqualTo(Amount.mass("0.000001 g"));
        assertThat(within("10 kg", "1 g", "0 g").balance().readability()).isEqualTo(Amount.mass("0.000000001 kg"));
        assertThat(within("10 mg", "1 mg", "0 g").balance().readability()).isEqualTo(Amount.mass("0.001 mg"));
        assertThat(within("1 oz", "0.1 oz", "0 g").balance().readability()).isEqualTo(Amount.mass("0.00000001 oz"));
    }

    @Test
    void its_deviation_beyond_the_bounds_is_a_repeatability() {
        AdditionError error = AdditionError.of(within("10 g", "0.5 g", "0.2 g"));
        assertThat(error.budget().variance(ErrorSource.REPEATABILITY).exactValue())
                .isEqualTo(Ratio.parse("0.04"));
        assertThat(error.unbounded()).isEqualTo(Amount.mass("0.2 g").inUnitOf(Amount.mass("1 g")));
    }

    @Test
    void less_than_nothing_is_refused() {
        assertThatThrownBy(() -> within("-1 g", "2 g", "0 g")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> within("1 g", "-0.1 g", "0 g"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-0.1 g");
        assertThatThrownBy(() -> within("1 g", "0 g", "-0.1 g"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-0.1 g");
    }

    /** 0.05 g of repeatability and a thousandth of 100 g for the scale, both the same way; told as the display tells. */
    @Test
    void what_nothing_bounds_is_added_up_on_the_safe_side() {
        Amount<Mass> mass = Amount.mass("100 g");
        AdditionError error = AdditionError.of(Addition.of("Oil", mass, mass, MadeMassesTest.KNOWN));
        assertThat(error.unbounded()).hasToString("0.15 g");
        assertThat(AdditionError.of(Addition.of("Oil", mass, mass, MadeMassesTest.TENTH))
                        .unbounded()
                        .isZero())
                .isTrue();
        Balance kilograms = Balance.of("0.001 kg", "5 kg")
                .withErrors(ErrorModel.readabilityOnly().withRepeatability("2 g"));
        assertThat(AdditionError.of(Addition.of("Oil", mass, mass, kilograms)).unbounded())
                .hasToString("0.002 kg");
    }
}
