package io.github.formulationmath.quantity;

import static io.github.formulationmath.quantity.FormulationUnits.CELSIUS;
import static io.github.formulationmath.quantity.FormulationUnits.FAHRENHEIT;
import static io.github.formulationmath.quantity.FormulationUnits.KELVIN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import javax.measure.Quantity.Scale;
import javax.measure.quantity.Temperature;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class TemperatureTest {

    private static final Amount<Temperature> WARM = Amount.temperature("75 °C");

    /** SI Brochure, 2.3.1 (0 °C is 273.15 K); NIST SP 811, Appendix B.8 (32 °F, 212 °F, -40 °F). */
    @ParameterizedTest
    @CsvSource({"0, 273.15, 32", "100, 373.15, 212", "-40, 233.15, -40", "-273.15, 0, -459.67", "20, 293.15, 68"})
    void scales_convert_exactly(String celsius, String kelvin, String fahrenheit) {
        Amount<Temperature> c = Amount.of(celsius, CELSIUS);
        assertThat(c.in(KELVIN)).isEqualTo(Ratio.parse(kelvin));
        assertThat(c.in(FAHRENHEIT)).isEqualTo(Ratio.parse(fahrenheit));
        assertThat(Amount.of(fahrenheit, FAHRENHEIT).to(CELSIUS)).isEqualTo(c);
        assertThat(Amount.of(kelvin, KELVIN)).isEqualByComparingTo(c);
    }

    @Test
    void a_difference_in_kelvin_moves_a_temperature() {
        assertThat(WARM.plus(Amount.temperature("5 K"))).hasToString("80 °C");
        assertThat(WARM.minus(Amount.temperature("5 K"))).hasToString("70 °C");
        assertThat(Amount.temperature("32 °F").plus(Amount.temperature("100 K")))
                .hasToString("212 °F");
        assertThat(Amount.temperature("5 K").plus(Amount.temperature("6 K"))).hasToString("11 K");
    }

    @Test
    void two_temperatures_subtract_to_a_difference_in_kelvin() {
        assertThat(WARM.minus(Amount.temperature("20 °C"))).hasToString("55 K");
        assertThat(Amount.temperature("212 °F").minus(Amount.temperature("0 °C")))
                .hasToString("100 K");
    }

    @Test
    void what_a_point_on_a_scale_cannot_do_is_refused_with_the_remedy() {
        refuses(() -> WARM.plus(Amount.temperature("5 °C")), "give the difference in K");
        refuses(() -> Amount.temperature("300 K").plus(WARM), "give the difference in K");
        refuses(() -> WARM.times(2), "to(KELVIN)");
        refuses(() -> WARM.dividedBy(Ratio.of(2)), "to(KELVIN)");
        refuses(WARM::unaryMinus, "to(KELVIN)");
        refuses(() -> WARM.ratioTo(WARM), "to(KELVIN)");
        refuses(() -> WARM.multiply(WARM), "to(KELVIN)");
        refuses(() -> WARM.divide(Amount.mass("1 g")), "to(KELVIN)");
        refuses(WARM::inverse, "to(KELVIN)");
        assertThat(WARM.to(KELVIN).times(2)).hasToString("696.3 K");
    }

    private static void refuses(ThrowingCallable call, String remedy) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(remedy);
    }

    @Test
    void the_reference_implementations_celsius_comes_in_and_its_differences_do_not() {
        assertThat(Amount.from(Quantities.getQuantity(20, Units.CELSIUS))).isEqualTo(Amount.temperature("20 °C"));
        assertThatThrownBy(() -> Amount.from(Quantities.getQuantity(20, Units.CELSIUS, Scale.RELATIVE)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("give it in K");
        assertThat(Amount.from(Quantities.getQuantity(20, Units.KELVIN, Scale.RELATIVE)))
                .hasToString("20 K");
    }
}
