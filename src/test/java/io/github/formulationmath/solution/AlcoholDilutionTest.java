package io.github.formulationmath.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.solution.EthanolWater.Reference;
import org.junit.jupiter.api.Test;

class AlcoholDilutionTest {

    private static final AlcoholDilution LITRE =
            AlcoholDilution.of(Amount.volume("1 L"), "96 % v/v", "70 % v/v", Reference.AT_20_CELSIUS);

    private static String shown(Ratio value) {
        return Rounding.toDecimalPlaces(2).format(value);
    }

    /** Worked out anew in exact fractions from the formula of the law. */
    @Test
    void a_litre_of_96_to_70_per_cent_takes_407_grams_and_shrinks() {
        assertThat(shown(LITRE.water().least().canonical())).isEqualTo("407.06");
        assertThat(shown(LITRE.water().greatest().canonical())).isEqualTo("407.06");
        assertThat(shown(LITRE.becomes().in(FormulationUnits.MILLILITRE))).isEqualTo("1371.43");
        assertThat(shown(LITRE.contraction().least().in(FormulationUnits.MILLILITRE)))
                .isEqualTo("36.37");
        assertThat(shown(LITRE.contraction().greatest().in(FormulationUnits.MILLILITRE)))
                .isEqualTo("36.37");
    }

    /** 407.80 mL of water, and not the 371.43 mL that are missing to the final volume. */
    @Test
    void water_by_volume_is_more_than_what_is_missing_to_the_final_volume() {
        Ratio water = LITRE.water().least().canonical().dividedBy(Ratio.parse("0.99820123"));
        assertThat(shown(water)).isEqualTo("407.80");
        assertThat(water).isGreaterThan(Ratio.parse("371.43"));
    }

    /** C₁V₁ = C₂V₂ by volume: 729.17 mL of 96 % vol with 270.83 mL of water are 975.05 mL of 71.79 % vol and no litre of 70. */
    @Test
    void the_naive_litre_is_too_strong_and_no_litre() {
        Interval<MassFraction> strong =
                Stock.alcohol("spirit", "96 % v/v", Reference.AT_20_CELSIUS).strength();
        EthanolWaterFormula law = EthanolWaterFormula.BUNDLED;
        Ratio p = strong.least().fraction();
        Ratio spirit = Ratio.of(70, 96).times(law.density(p, Ratio.of(20)));
        Ratio water = Ratio.of(26, 96).times(law.density(Ratio.ZERO, Ratio.of(20)));
        Ratio mass = spirit.plus(water);
        Ratio blend = spirit.times(p).dividedBy(mass);
        assertThat(shown(mass.dividedBy(law.density(blend, Ratio.of(20))).times(1000)))
                .isEqualTo("975.05");
        assertThat(shown(EthanolWater.byVolume(MassFraction.of(blend), Reference.AT_20_CELSIUS)
                        .percent()))
                .isEqualTo("71.79");
    }

    /** The largest contraction is 3.546 % of what is poured and 3.68 % of what is left, near 54.4 % vol. */
    @Test
    void the_largest_contraction_is_told_of_one_volume_or_the_other() {
        Ratio mostOfFinal = Ratio.ZERO;
        Ratio mostOfPoured = Ratio.ZERO;
        for (int tenths = 500; tenths <= 600; tenths++) {
            AlcoholDilution from = AlcoholDilution.of(
                    Amount.volume("1 L"), "100 % v/v", Ratio.of(tenths, 10) + " % v/v", Reference.AT_20_CELSIUS);
            Ratio missing = from.contraction().least().canonical();
            Ratio made = from.becomes().canonical();
            mostOfFinal = mostOfFinal.max(missing.dividedBy(made));
            mostOfPoured = mostOfPoured.max(missing.dividedBy(made.plus(missing)));
        }
        assertThat(shown(mostOfFinal.times(100))).isEqualTo("3.68");
        assertThat(Rounding.toDecimalPlaces(3).format(mostOfPoured.times(100))).isEqualTo("3.546");
    }

    @Test
    void what_is_made_takes_as_much_as_makes_it() {
        AlcoholDilution made =
                AlcoholDilution.making(Amount.volume("1 L"), "96 % v/v", "70 % v/v", Reference.AT_20_CELSIUS);
        assertThat(shown(made.poured().in(FormulationUnits.MILLILITRE))).isEqualTo("729.17");
        assertThat(made.becomes().canonical()).isEqualTo(Amount.volume("1 L").canonical());
    }

    @Test
    void every_figure_stands_behind_its_working() {
        LITRE.becomes().origin().working().check();
        LITRE.water().least().origin().working().check();
        LITRE.water().greatest().origin().working().check();
    }

    @Test
    void less_than_no_water_is_refused_and_so_is_no_strength() {
        assertThatThrownBy(
                        () -> AlcoholDilution.of(Amount.volume("1 L"), "70 % v/v", "96 % v/v", Reference.AT_20_CELSIUS))
                .hasMessageContaining("to is 96 %")
                .hasMessageContaining("exchange the two, or take a stronger one");
        assertThatThrownBy(
                        () -> AlcoholDilution.of(Amount.volume("1 L"), "70 % v/v", "0 % v/v", Reference.AT_20_CELSIUS))
                .hasMessageContaining("ask for a strength above 0 %");
    }
}
