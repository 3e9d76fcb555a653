package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.NumberTextException;
import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A mass in a volume in all the ways in which people write it, worked out by hand in grams per litre. */
class MassInVolumeTextTest {

    @ParameterizedTest
    @CsvSource({
        "50 g/L, 50",
        "50 g/l, 50",
        "50g/L, 50",
        "50 g / L, 50",
        "50 g per L, 50",
        "50 grams per litre, 50",
        "12.5 mg/L, 0.0125",
        "12.5 mg/mL, 12.5",
        "12.5 mg/ml, 12.5",
        "250 µg/mL, 0.25",
        "250 ug/ml, 0.25",
        "250 mcg/mL, 0.25",
        "3 kg/m³, 3",
        "3 kg/m3, 3",
        "3 kg/m^3, 3",
        "3 g/dm³, 3",
        "3 g/cm³, 3000",
        "3 g/cc, 3000",
        "3 mg/m³, 0.000003",
        "0.9 g/100 mL, 9",
        "0.9 g/100mL, 9",
        "0.9 g per 100 ml, 9",
        "90 mg/dL, 0.9",
        "9 g/dl, 90",
        "250 mg/5 mL, 50",
        "1 g/2.5 L, 0.4",
        "1/2 g/L, 0.5",
        "1 1/2 g/L, 1.5",
        "50 g·L⁻¹, 50",
        "50 g L⁻¹, 50",
        "50 g L-1, 50",
        "50 g·L^-1, 50",
        "3 kg·m⁻³, 3",
        "3 kg m-3, 3",
        "3 g cm⁻³, 3000",
        "0.9 % w/v, 9",
        "0.9 % (w/v), 9",
        "0.9% W/V, 9",
        "0.9 % m/v, 9",
        "0.9 % (m/V), 9",
        "0.9 % wt/vol, 9",
        "9 ‰ w/v, 9",
        "9 ppm w/v, 0.009",
        "5 g/L w/v, 5",
        "5 g/L (m/V), 5",
    })
    void what_people_write_is_read_and_comes_back(String text, String gramsPerLitre) {
        MassConcentration read = MassConcentration.parse(text);
        assertThat(read.gramsPerMillilitre().toBigDecimal())
                .isEqualByComparingTo(new BigDecimal(gramsPerLitre).movePointLeft(3));
        assertThat(read.asWritten()).contains(text);
        assertThat(MassConcentration.parse(read.toString())).isEqualTo(read);
        assertThat(MassConcentration.parse(read.asWritten().orElseThrow())).isEqualTo(read);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"1,5 g/L;1.5", "1 g/2,5 L;0.4", "0,9 g/100 mL;9", "1 g·L⁻¹;1"})
    void with_the_decimal_mark_of_a_language(String text, String gramsPerLitre) {
        MassConcentration read = AmountFormat.forLocale(Locale.GERMANY).parseMassConcentration(text);
        assertThat(read.gramsPerMillilitre().toBigDecimal())
                .isEqualByComparingTo(new BigDecimal(gramsPerLitre).movePointLeft(3));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "50 g",
                "50 L",
                "50 g/kg",
                "50 mol/L",
                "50 g/",
                "50 /L",
                "50 g/0 mL",
                "50 Mg/L",
                "50 g/cup",
                "50 L/g",
                "50 g//L",
                "50 g/L/mL",
                "50 g L-2",
                "50 g-1",
                "50 g per per L"
            })
    void what_is_no_mass_in_a_volume_is_refused_with_units_that_are(String text) {
        assertThatThrownBy(() -> MassConcentration.parse(text))
                .isInstanceOf(NumberTextException.class)
                .hasMessageContaining("w/v");
    }

    @Test
    void where_a_share_by_mass_is_needed_the_way_out_is_told() {
        assertThatThrownBy(() -> MassFraction.parse("50 g/L"))
                .isInstanceOf(NumberTextException.class)
                .hasMessageContaining("share w/v")
                .hasMessageContaining("MassConcentration.parse");
        assertThatThrownBy(() -> MassConcentration.parse("50 g/L w/w")).hasMessageContaining("MassFraction.parse");
        assertThatThrownBy(() -> MassConcentration.parse("-50 g/L")).hasMessageContaining("must not be below 0");
    }

    @ParameterizedTest
    @CsvSource({
        "0.92 g/mL, 920",
        "920 kg/m³, 920",
        "920 g/L, 920",
        "920 kg·m⁻³, 920",
        "92 g/100 mL, 920",
        "0.92 kg/l, 920"
    })
    void a_density_is_told_in_the_same_units(String text, String gramsPerLitre) {
        assertThat(Density.parse(text).gramsPerMillilitre().toBigDecimal())
                .isEqualByComparingTo(new BigDecimal(gramsPerLitre).movePointLeft(3));
    }
}
