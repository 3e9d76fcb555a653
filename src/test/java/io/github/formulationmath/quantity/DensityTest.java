package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.support.NullTester;
import io.github.formulationmath.support.ValueContract;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DensityTest implements ValueContract<Density> {

    @Override
    public List<Density> different() {
        return List.of(
                Density.ofGramsPerMillilitre("0.92"),
                Density.parse("0.92 g/mL at 20 °C"),
                Density.parse("0.92 g/mL at 68 °F"),
                Density.ofGramsPerMillilitre("1.26"));
    }

    @Override
    public List<Density> same() {
        return List.of(
                Density.of(Amount.mass("0.46 kg"), Amount.volume("500 mL")),
                Density.ofGramsPerMillilitre("0.920").at(Amount.temperature("20 °C")),
                Density.parse("0.92 kg/L at 68 °F"),
                Density.ofSpecificGravity("1.26", Density.ofGramsPerMillilitre("1")));
    }

    @Override
    public void the_order_agrees_with_itself() {
        // Densities at different temperatures compare as equal without being equal; see below.
        assertThat(different().get(0))
                .isEqualByComparingTo(different().get(1))
                .isLessThan(different().get(3));
    }

    @Test
    void the_example_of_the_class_holds() {
        Density oil = Density.parse("0.92 g/mL");
        assertThat(oil.massOf(Amount.volume("50 mL"))).hasToString("46 g");
        assertThat(oil.volumeOf(Amount.mass("23 g"))).hasToString("25 mL");
        assertThat(oil.massOf(Amount.volume("1 US fl oz")).exactValue()).isEqualTo(Ratio.parse("27.2076471975"));
        assertThat(oil.temperature()).isEmpty();
        assertThat(oil.at(Amount.temperature("20 °C")).temperature()).contains(Amount.temperature("20 °C"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.92", "0.92 g", "0.92 g/mL at noon", "0,92 g/mL", "g/mL", "0.92 g/mL at 20 g"})
    void other_texts_are_refused(String text) {
        assertThatThrownBy(() -> Density.parse(text)).isInstanceOf(NumberTextException.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1500 kg/m³",
                "1500 kg/m3",
                "1500 g/L",
                "1.5 g/cc",
                "1.5 g/ml",
                "1.5 g/cm³",
                "1.5 g/cm3",
                "1.5 kg/l",
                "3/2 g/mL"
            })
    void spellings_are_read(String text) {
        assertThat(Density.parse(text)).hasToString("1.5 g/mL");
    }

    @Test
    void a_density_is_above_0() {
        assertThatThrownBy(() -> Density.parse("0 g/mL")).hasMessageContaining("density is 0 g/mL");
        assertThatThrownBy(() -> Density.ofGramsPerMillilitre("-1")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Density.of(Amount.mass("1 g"), Amount.volume("0 mL")))
                .hasMessageContaining("volume is 0 mL");
        assertThatThrownBy(() -> Density.of(Amount.mass("0 g"), Amount.volume("1 mL")))
                .hasMessageContaining("above 0");
    }

    @Test
    void null_is_refused_by_name() throws IllegalAccessException {
        Density water = Density.ofGramsPerMillilitre(Ratio.ONE);
        NullTester tester = new NullTester(Map.of(
                Ratio.class,
                Ratio.of(1, 2),
                String.class,
                "1",
                Density.class,
                water,
                Amount.class,
                Amount.mass("1 g")));
        assertThat(tester.test(Density.class, water)).isGreaterThan(10);
        assertThat(tester.test(MassFraction.class, MassFraction.WHOLE)).isGreaterThan(10);
        assertThat(tester.test(VolumeFraction.class, VolumeFraction.of(Ratio.ONE)))
                .isGreaterThan(7);
        assertThat(tester.test(MassConcentration.class, MassConcentration.ofPercent(Ratio.ONE)))
                .isGreaterThan(8);
    }

    /** The same: 125 g of HCl are in 282 mL; exactly 282.371. Read as w/v (37.2 g in 100 mL) it would be 336 mL. */
    @Test
    void grams_of_acid_are_in_so_many_millilitres_through_the_density() {
        Density density = Density.ofGramsPerMillilitre("1.19");
        Amount<Mass> stock = MassFraction.parse("37.2 %").wholeOf(Amount.mass("125 g"));
        assertThat(shown(density.volumeOf(stock).canonical(), 3)).isEqualTo("282.371");
        assertThat(shown(Ratio.of(125).dividedBy(Ratio.parse("0.372")), 0)).isEqualTo("336");
    }

    private static String shown(Ratio value, int places) {
        return Rounding.toDecimalPlaces(places).format(value);
    }
}
