package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the three kinds of share say, and that they do not mix. */
class SharesTest {

    @ParameterizedTest
    @CsvSource({
        "0.5 %, 1/200, 0.5 %",
        "0.50 % w/w, 1/200, 0.5 %",
        "5 ‰, 1/200, 0.5 %",
        "200 ppm, 1/5000, 0.02 %",
        "0%, 0, 0 %",
        "100 %, 1, 100 %",
        "1/3 %, 1/300, 1/3 %",
    })
    void mass_fractions_read_and_print(String text, String fraction, String printed) {
        MassFraction share = MassFraction.parse(text);
        assertThat(share.fraction()).isEqualTo(Ratio.parse(fraction));
        assertThat(share).hasToString(printed).isEqualTo(MassFraction.parse(printed));
        assertThat(share.asWritten()).contains(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.5 % w/v, MassConcentration.parse",
        "0.5 % v/v, VolumeFraction.parse",
        "0.5, unit is missing",
        "0.5 g, not a unit of a share",
        "0.5 per cent, not a unit of a share",
        "0.5 % w/w w/v, MassConcentration.parse",
    })
    void another_basis_is_refused_with_the_way_out(String text, String reason) {
        assertThatThrownBy(() -> MassFraction.parse(text))
                .isInstanceOf(NumberTextException.class)
                .hasMessageContaining(reason);
    }

    @Test
    void volume_and_concentration_must_say_their_basis() {
        assertThatThrownBy(() -> VolumeFraction.parse("70 %")).hasMessageContaining("write 70 % v/v");
        assertThatThrownBy(() -> MassConcentration.parse("0.9 %")).hasMessageContaining("write 0.9 % w/v");
        assertThatThrownBy(() -> MassConcentration.parse("0.9 % v/v")).hasMessageContaining("VolumeFraction.parse");
        assertThat(VolumeFraction.parse("70 % v/v")).isEqualTo(VolumeFraction.of(Ratio.parse("0.7")));
        assertThat(MassConcentration.parse("9 ‰ w/v")).isEqualTo(MassConcentration.ofPercent("0.9"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"100.01", "-0.01", "1e6"})
    void a_share_beyond_the_whole_is_refused(String percent) {
        assertThatThrownBy(() -> MassFraction.ofPercent(percent))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("mass fraction is")
                .hasMessageContaining("between 0 % and 100 %");
        assertThatThrownBy(() -> VolumeFraction.ofPercent(Ratio.parse(percent)))
                .hasMessageContaining("volume fraction");
    }

    @Test
    void a_share_of_a_mass_is_exact_in_the_unit_of_the_whole() {
        assertThat(MassFraction.parse("0.5 %").amountIn(Amount.mass("200 g"))).hasToString("1 g");
        assertThat(MassFraction.of(Ratio.of(1, 3)).amountIn(Amount.mass("1 lb")))
                .hasToString("1/3 lb");
        assertThat(MassFraction.parse("0.5 %").wholeOf(Amount.mass("1 g"))).hasToString("200 g");
        assertThat(MassFraction.of(Amount.mass("1 oz"), Amount.mass("1 lb")).percent())
                .isEqualTo(Ratio.parse("6.25"));
        assertThat(MassFraction.of(Ratio.of(1, 2)).asWritten()).isEmpty();
        assertThatThrownBy(() -> MassFraction.ZERO.wholeOf(Amount.mass("1 g"))).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> MassFraction.of(Amount.mass("1 g"), Amount.mass("0 g")))
                .hasMessageContaining("whole is 0 g");
        assertThat(VolumeFraction.ofPercent("70").amountIn(Amount.volume("30 mL")))
                .hasToString("21 mL");
        assertThat(VolumeFraction.ofPercent("70").asWritten()).contains("70 % v/v");
        assertThat(VolumeFraction.ofPercent("70").percent()).isEqualTo(Ratio.of(70));
    }

    @Test
    void a_concentration_is_grams_in_a_hundred_millilitres() {
        MassConcentration saline = MassConcentration.ofPercent("0.9");
        assertThat(saline.amountIn(Amount.volume("500 mL"))).hasToString("4.5 g");
        assertThat(saline.asWritten()).contains("0.9 % w/v");
        assertThat(saline).isEqualTo(MassConcentration.of(Amount.mass("9 g"), Amount.volume("1 L")));
        assertThat(saline.percent()).isEqualTo(Ratio.parse("0.9"));
        assertThat(saline.gramsPerMillilitre()).isEqualTo(Ratio.parse("0.009"));
        // No upper bound: 150 g in 100 mL is possible in a dense liquid.
        assertThat(MassConcentration.ofPercent("150")).hasToString("150 % w/v");
        assertThatThrownBy(() -> MassConcentration.ofPercent("-1")).hasMessageContaining("must not be below 0");
        assertThatThrownBy(() -> MassConcentration.of(Amount.mass("9 g"), Amount.volume("0 L")))
                .hasMessageContaining("whole is 0 L");
    }

    /** The examples of the class comments, in round numbers that a hand can check. */
    @Test
    void the_kinds_meet_through_densities_only() {
        Density part = Density.ofGramsPerMillilitre("0.8");
        Density whole = Density.ofGramsPerMillilitre("0.875");
        VolumeFraction volume = VolumeFraction.ofPercent("70");
        assertThat(volume.toMassFraction(part, whole)).isEqualTo(MassFraction.ofPercent("64"));
        assertThat(MassFraction.ofPercent("64").toVolumeFraction(part, whole)).isEqualTo(volume);
        MassConcentration mass = volume.toMassConcentration(part);
        assertThat(mass).isEqualTo(MassConcentration.ofPercent("56"));
        assertThat(mass.toVolumeFraction(part)).isEqualTo(volume);
        assertThat(mass.toMassFraction(whole)).isEqualTo(MassFraction.ofPercent("64"));
        assertThat(MassFraction.ofPercent("64").toMassConcentration(whole)).isEqualTo(mass);
        assertThat(MassConcentration.ofPercent("0.9").toMassFraction(Density.ofGramsPerMillilitre("1.2")))
                .isEqualTo(MassFraction.ofPercent("0.75"));
    }

    @Test
    void densities_that_contradict_the_share_are_refused() {
        MassConcentration dense = MassConcentration.ofPercent("90");
        assertThatThrownBy(() -> dense.toMassFraction(Density.ofGramsPerMillilitre("0.8")))
                .hasMessageContaining("112.5 %")
                .hasMessageContaining("densities");
    }
}
