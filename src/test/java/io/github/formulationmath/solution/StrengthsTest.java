package io.github.formulationmath.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassConcentration;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.VolumeFraction;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** Alligation, dilution, series: figures that are printed, and the slips that are made with them. */
class StrengthsTest {

    private static final Stock WATER = Stock.diluent("Aqua");

    private static String shown(Ratio value, int places) {
        return Rounding.toDecimalPlaces(places).format(value);
    }

    /** OpenStax Chemistry 2e, m68704: 0.500 L of 37.2 % HCl of 1.19 g/mL hold 221 g; exactly 221.34. */
    @Test
    void half_a_litre_of_concentrated_acid_holds_221_grams() {
        Amount<Mass> stock = Density.ofGramsPerMillilitre("1.19").massOf(Amount.volume("0.500 L"));
        Ratio acid = stock.canonical()
                .times(Stock.of("acid", "37.2 %").strength().least().fraction());
        assertThat(shown(acid, 2)).isEqualTo("221.34");
        assertThat(shown(acid, 0)).isEqualTo("221");
    }

    /** The same: 135 g of HCl in 775 g of water are 14.8 %; exactly 14.835. Over the water alone it would be 17.4 %. */
    @Test
    void what_is_dissolved_counts_in_the_whole() {
        Map<Stock, Amount<Mass>> poured = new LinkedHashMap<>();
        poured.put(Stock.of("HCl", "100 %"), Amount.mass("135 g"));
        poured.put(WATER, Amount.mass("775 g"));
        MassFraction strength = Alligation.medial(poured);
        assertThat(shown(strength.percent(), 3)).isEqualTo("14.835");
        strength.origin().working().check();
        assertThat(shown(Ratio.of(13500, 775), 1)).isEqualTo("17.4");
    }

    /** University of Houston, uhphar 4330: zinc oxide ointments of 50, 20 and 5 % to 10 % are 1 : 1 : 10; one member of 40x + 10y = 5z. */
    @Test
    void the_pairing_of_class_is_one_member_of_the_family() {
        StrengthBlend blend = StrengthBlend.to(
                "10 %",
                Amount.mass("120 g"), List.of(Stock.of("50", "50 %"), Stock.of("20", "20 %"), Stock.of("5", "5 %")));
        Map<String, Amount<Mass>> paired = blend.paired().orElseThrow().masses();
        assertThat(paired.values()).extracting(Amount::toString).containsExactly("10 g", "10 g", "100 g");
        assertThat(blend.range("50").orElseThrow())
                .isEqualTo(Interval.of(Amount.mass("0 g"), Amount.grams(Ratio.of(40, 3))));
        assertThat(blend.range("20").orElseThrow()).isEqualTo(Interval.of(Amount.mass("0 g"), Amount.mass("40 g")));
        assertThat(((StrengthBlend.Blended) blend.cheapest()).masses()).isNotEqualTo(paired);
    }

    /** A handout on alligation (scribd 151502467): 95 % and 50 % to 70 % are 20 : 25 parts. By mass; as volumes poured of alcohol it is not true. */
    @Test
    void two_stocks_are_four_to_five_parts() {
        Alligation rule = Alligation.of(Stock.of("strong", "95 %"), Stock.of("weak", "50 %"), "70 %");
        assertThat(rule.parts()).isEqualTo("4 : 5");
        assertThat(rule.strongerIn(Amount.mass("900 g"))).isEqualTo(Amount.mass("400 g"));
        assertThat(rule.weakerIn(Amount.mass("900 g"))).isEqualTo(Amount.mass("500 g"));
        assertThat(rule.weakerTo(Amount.mass("4 kg"))).isEqualTo(Amount.mass("5 kg"));
        assertThat(rule.strongerTo(Amount.mass("5 g"))).isEqualTo(Amount.mass("4 g"));
        rule.weakerIn(Amount.mass("900 g")).origin().working().check();
        rule.weakerTo(Amount.mass("4 kg")).origin().working().check();
    }

    /** By volume the parts are others: 95 and 50 % vol to 70 % vol are 0.4013 : 0.5987 by mass of the stocks, not 0.4444 : 0.5556. */
    @Test
    void parts_of_alcohol_by_volume_are_not_those_by_mass() {
        Stock strong = Stock.alcohol("95", "95 % v/v", EthanolWater.Reference.AT_20_CELSIUS);
        Stock weak = Stock.alcohol("50", "50 % v/v", EthanolWater.Reference.AT_20_CELSIUS);
        String byMass = shown(
                EthanolWater.byMass(VolumeFraction.parse("70 % v/v"), EthanolWater.Reference.AT_20_CELSIUS)
                        .least()
                        .percent(),
                9);
        Interval<MassFraction> share =
                Alligation.of(strong, weak, byMass + " %").shareOfStronger().orElseThrow();
        assertThat(shown(share.least().percent(), 2)).isEqualTo("39.94");
        assertThat(shown(share.greatest().percent(), 2)).isEqualTo("39.94");
    }

    /** brightpharma.in answers 138.46 mL of 95 % for "95 % and 70 % to 300 mL of 70 %"; the target is one of the stocks, so none of the other is. */
    @Test
    void a_target_that_is_one_of_the_stocks_takes_none_of_the_other() {
        Alligation rule = Alligation.of(Stock.of("95", "95 %"), Stock.of("70", "70 %"), "70 %");
        assertThat(rule.parts()).isEqualTo("0 : 1");
        assertThat(rule.strongerIn(Amount.mass("300 g"))).isEqualTo(Amount.mass("0 g"));
        assertThatThrownBy(() -> rule.weakerTo(Amount.mass("10 g")))
                .hasMessageContaining("no amount of it is enough")
                .hasMessageContaining("take 70 alone");
    }

    /** 3000 mL of 40 %, 1000 mL of 60 % and 1000 mL of 70 % are 50 % (the same handout; taken as masses). */
    @Test
    void three_solutions_poured_together_are_half_and_half() {
        Map<Stock, Amount<Mass>> poured = new LinkedHashMap<>();
        poured.put(Stock.of("40", "40 %"), Amount.mass("3000 g"));
        poured.put(Stock.of("60", "60 %"), Amount.mass("1000 g"));
        poured.put(Stock.of("70", "70 %"), Amount.mass("1000 g"));
        assertThat(Alligation.medial(poured)).isEqualTo(MassFraction.parse("50 %"));
    }

    /** 1516.3 kg/m³ of 50 % sodium hydroxide at 25 °C are 75.81 g in 100 mL; worked out from the density. */
    @Test
    void mass_in_volume_goes_through_the_density() {
        Density density = Density.ofGramsPerMillilitre("1.5163");
        MassConcentration inVolume = MassFraction.parse("50 %").toMassConcentration(density);
        assertThat(shown(inVolume.percent(), 3)).isEqualTo("75.815");
        assertThat(Stock.of("lye", inVolume, density).strength().least()).isEqualTo(MassFraction.parse("50 %"));
    }

    @Test
    void volume_in_volume_goes_through_two_densities() {
        Stock stock = Stock.of(
                "glycerol in water",
                VolumeFraction.parse("50 % v/v"),
                Density.ofGramsPerMillilitre("1.26"),
                Density.ofGramsPerMillilitre("1.14"));
        assertThat(stock.strength().least().fraction()).isEqualTo(Ratio.of(63, 114));
    }

    @Test
    void diluting_with_water_is_alligation_with_nothing() {
        Alligation rule = Alligation.of(Stock.of("stock", "50 %"), WATER, "20 %");
        assertThat(rule.weakerTo(Amount.mass("100 g"))).isEqualTo(Amount.mass("150 g"));
        assertThat(rule.stronger().name()).isEqualTo("stock");
        assertThat(rule.weaker()).isEqualTo(WATER);
    }

    @Test
    void one_part_with_ten_is_not_one_part_in_ten() {
        Stock stock = Stock.of("stock", "50 %");
        assertThat(DilutionSeries.onePartWith(stock, "9").strengthAfter(2)).isEqualTo(MassFraction.parse("0.5 %"));
        assertThat(DilutionSeries.onePartIn(stock, "10").strengthAfter(2)).isEqualTo(MassFraction.parse("0.5 %"));
        MassFraction other = DilutionSeries.onePartWith(stock, "10").strengthAfter(2);
        assertThat(other.fraction()).isEqualTo(Ratio.of(1, 242));
        other.origin().working().check();
        DilutionSeries series = DilutionSeries.onePartIn(stock, "10");
        assertThat(series.takenFor(Amount.mass("50 g"))).isEqualTo(Amount.mass("5 g"));
        assertThat(series.diluentFor(Amount.mass("50 g"))).isEqualTo(Amount.mass("45 g"));
        series.takenFor(Amount.mass("50 g")).origin().working().check();
        assertThatThrownBy(() -> DilutionSeries.onePartIn(stock, "1:10")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> DilutionSeries.onePartIn(stock, "1")).hasMessageContaining("must be above 1");
        assertThatThrownBy(() -> DilutionSeries.onePartWith(stock, "0")).hasMessageContaining("must be above 0");
        assertThatThrownBy(() -> series.strengthAfter(101)).hasMessageContaining("step is 101");
    }

    /** A22: the share of the stronger lies at corners only where the target lies between the two for every strength. */
    @Test
    void strengths_that_are_ranges_give_a_range_of_shares_or_none() {
        Alligation rule = Alligation.of(Stock.between("H", "48 %", "52 %"), WATER, "20 %");
        assertThat(rule.shareOfStronger().orElseThrow())
                .isEqualTo(Interval.of(MassFraction.of(Ratio.of(20, 52)), MassFraction.of(Ratio.of(20, 48))));
        assertThat(rule.strongerIn(Amount.mass("100 g"))).isEqualTo(Amount.mass("40 g"));
        assertThat(Alligation.of(Stock.between("H", "19 %", "52 %"), WATER, "20 %")
                        .shareOfStronger())
                .isEqualTo(Optional.empty());
    }

    @Test
    void a_target_outside_says_the_gap_and_what_helps() {
        assertThatThrownBy(() -> Alligation.of(Stock.of("50", "50 %"), WATER, "60 %"))
                .hasMessageContaining("target is 60 %: 10 % above the stronger stock")
                .hasMessageContaining("take a stock of at least 60 %");
        assertThatThrownBy(() -> Alligation.of(Stock.of("50", "50 %"), Stock.of("20", "20 %"), "5 %"))
                .hasMessageContaining("target is 5 %: 15 % below the weaker stock")
                .hasMessageContaining("such as water");
        assertThatThrownBy(() -> Alligation.of(WATER, Stock.diluent("Glycerin"), "0 %"))
                .hasMessageContaining("changes nothing");
    }

    @Test
    void bases_are_not_mixed_and_a_density_is_asked_for() {
        assertThatThrownBy(() -> Stock.of("stock", "10 % w/v")).hasMessageContaining("Density");
        assertThatThrownBy(() -> Stock.of("stock", "10 % v/v")).hasMessageContaining("Density");
        assertThatThrownBy(() -> Alligation.of(Stock.of("stock", "50 %"), WATER, "10 % w/v"))
                .hasMessageContaining("Density");
        assertThatThrownBy(
                        () -> Stock.of("stock", MassConcentration.ofPercent("90"), Density.ofGramsPerMillilitre("0.8")))
                .hasMessageContaining("the densities");
    }

    /**
     * US Army Medical Department, Subcourse MD0802, Pharmaceutical Calculations: 454 g of 20 % make 648.57 g of 14 %; and 500 mL of 1:200 take 9500 mL of
     * water to 1:4000, one part with nineteen. Here by mass.
     */
    @Test
    void printed_dilutions_of_the_army() {
        Alligation ointment = Alligation.of(Stock.of("ointment", "20 %"), WATER, "14 %");
        Amount<Mass> base = ointment.weakerTo(Amount.mass("454 g"));
        assertThat(shown(base.canonical().plus(Ratio.of(454)), 2)).isEqualTo("648.57");
        Alligation ratio = Alligation.of(Stock.of("1 in 200", "0.5 %"), WATER, "0.025 %");
        assertThat(ratio.parts()).isEqualTo("1 : 19");
        assertThat(ratio.weakerTo(Amount.mass("500 g"))).isEqualTo(Amount.mass("9500 g"));
    }

    /** A lecture (slideplayer 2774029): 0.1 and 0.5 % to 100 g of 0.2 % take 75 and 25 g; 20 and 5 % to 50 g of 9 % take 13.3 and 36.7 g. */
    @Test
    void printed_blends_of_a_lecture() {
        Alligation weak = Alligation.of(Stock.of("a", "0.1 %"), Stock.of("b", "0.5 %"), "0.2 %");
        assertThat(weak.weakerIn(Amount.mass("100 g"))).isEqualTo(Amount.mass("75 g"));
        assertThat(weak.strongerIn(Amount.mass("100 g"))).isEqualTo(Amount.mass("25 g"));
        Alligation strong = Alligation.of(Stock.of("a", "20 %"), Stock.of("b", "5 %"), "9 %");
        assertThat(shown(strong.strongerIn(Amount.mass("50 g")).canonical(), 1)).isEqualTo("13.3");
        assertThat(shown(strong.weakerIn(Amount.mass("50 g")).canonical(), 1)).isEqualTo("36.7");
    }
}
