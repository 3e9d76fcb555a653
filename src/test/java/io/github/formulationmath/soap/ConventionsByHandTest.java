package io.github.formulationmath.soap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Bar;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One soap in every convention: 1000 g of three fats that take 144.0393 g of pure NaOH in the middle of their ranges, which is 3.60124
 * mol. The figures were reckoned by somebody else, in exact fractions on paper.
 */
class ConventionsByHandTest {

    /** Olive 184 to 196, coconut 248 to 265, shea 160 to 195 mg KOH/g; the alkali is pure. */
    private static LyeBuilder kilo() {
        return LyeCalculation.named("kilo")
                .fat(Bar.fat("Olive", "184", "196"), "700 g")
                .fat(Bar.fat("Coconut", "248", "265"), "200 g")
                .fat(Bar.fat("Shea", "160", "195"), "100 g");
    }

    private static AlkaliGrade grade(Alkali alkali, String share) {
        return AlkaliGrade.assay(alkali, share, share, AlkaliGrade.Stated.HYDROXIDE)
                .carbonate("0 %", "0 %", Evidence.MAXIMUM_ERROR, Bar.EXAMPLE);
    }

    private static final AlkaliGrade PURE = grade(Alkali.SODIUM_HYDROXIDE, "100 %");
    private static final Unsaponified FIVE = Unsaponified.alkaliShortfall("5 %");
    private static final LyeWater ANY = LyeWater.perAlkali("2", LyeWater.Of.PURE_HYDROXIDE);

    private static String rounded(Amount<?> amount, int places) {
        return Rounding.toDecimalPlaces(places).format(amount.exactValue());
    }

    private static LyeCalculation with(Unsaponified goal, Reckoned reckoned, LyeWater water) {
        return kilo().alkali(PURE).leaving(goal, reckoned).water("Aqua", water).build();
    }

    @Test
    void two_figures_go_by_one_name() {
        assertThat(rounded(with(FIVE, Reckoned.WITH_THE_MIDDLES, ANY).alkali(), 4))
                .isEqualTo("136.8373");
        assertThat(rounded(
                        with(Unsaponified.fatOverEquivalence("5 %"), Reckoned.WITH_THE_MIDDLES, ANY)
                                .alkali(),
                        4))
                .isEqualTo("137.1803");
        assertThat(rounded(with(FIVE, Reckoned.FOR_EVERY_LOT, ANY).alkali(), 3)).isEqualTo("131.656");
    }

    /** Each: water of a lye with 136.8373 g of NaOH. */
    @ParameterizedTest
    @CsvSource({
        "CONCENTRATION, 25 %, 410.512",
        "CONCENTRATION, 28 %, 351.867",
        "CONCENTRATION, 30 %, 319.287",
        "CONCENTRATION, 40 %, 205.256",
        "CONCENTRATION, 50 %, 136.837",
        "PER_ALKALI, 3, 410.512",
        "PER_ALKALI, 2, 273.675",
        "PER_ALKALI, 1, 136.837",
        "OF_FATS, 38 %, 380.000",
        "OF_FATS, 33 %, 330.000",
    })
    void water_in_three_conventions(LyeWater.Convention convention, String figure, String grams) {
        LyeWater water = switch (convention) {
            case CONCENTRATION -> LyeWater.concentration(figure, LyeWater.Of.PURE_HYDROXIDE);
            case PER_ALKALI -> LyeWater.perAlkali(figure, LyeWater.Of.PURE_HYDROXIDE);
            case OF_FATS -> LyeWater.ofFats(figure);
        };
        assertThat(rounded(with(FIVE, Reckoned.WITH_THE_MIDDLES, water).water(), 3))
                .isEqualTo(grams);
    }

    /** 60 : 40, of 3.42118 mol; by mass it is 67.785 % by mole, as weighed 69.615 %. */
    @ParameterizedTest
    @CsvSource({
        "MOLES, 100 %, 100 %, 82.102, 76.779",
        "PURE_MASS, 100 %, 100 %, 92.755, 61.836",
        "MASS_AS_WEIGHED, 98 %, 90 %, 97.204, 64.803",
    })
    void two_alkalis_in_three_conventions(
            AlkaliMixture.Basis basis, String ofSodium, String ofPotassium, String sodium, String potassium) {
        LyeCalculation lye = kilo().alkalis(
                        new AlkaliMixture(MassFraction.parse("60 %"), basis),
                        grade(Alkali.SODIUM_HYDROXIDE, ofSodium),
                        grade(Alkali.POTASSIUM_HYDROXIDE, ofPotassium))
                .leaving(FIVE, Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", ANY)
                .build();
        assertThat(rounded(lye.alkalis().get(0).mass(), 3)).isEqualTo(sodium);
        assertThat(rounded(lye.alkalis().get(1).mass(), 3)).isEqualTo(potassium);
    }

    /** In full and on top: (1 − d) n₀ + a. Discounted with the fats it would be 142.771 g, and the fats really 5.217 % short. */
    @Test
    void ten_grams_of_citric_acid_are_paid_in_full() {
        LyeCalculation lye = kilo().acid(Acid.of("Citric Acid", "C6H8O7", 3, "100 %", "100 %"), "10 g")
                .alkali(PURE)
                .leaving(FIVE, Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", ANY)
                .build();
        assertThat(rounded(lye.alkali(), 3)).isEqualTo("143.083");
    }

    /** Grams of alkali for a gram of acid. */
    @ParameterizedTest
    @CsvSource({
        "C6H8O7, 3, 0.62455, 0.87609",
        "C6H8O7·H2O, 3, 0.57101, 0.80098",
        "C3H6O3, 1, 0.44403, 0.62286",
        "C18H36O2, 1, 0.14060, 0.19722",
    })
    void acids_by_their_formula(String formula, int protons, String sodium, String potassium) {
        Ratio moles = Acid.of("Acid", formula, protons, "100 %", "100 %").leastDemand();
        Rounding five = Rounding.toDecimalPlaces(5);
        assertThat(five.format(moles.times(Alkali.SODIUM_HYDROXIDE.gramsPerMole())))
                .isEqualTo(sodium);
        assertThat(five.format(moles.times(Alkali.POTASSIUM_HYDROXIDE.gramsPerMole())))
                .isEqualTo(potassium);
    }

    /** 1400 g with 0.12 % of NaOH are 1.68 g: what neutralises them at most. */
    @ParameterizedTest
    @CsvSource({"C6H8O7, 3, 2.690", "C6H8O7·H2O, 3, 2.942", "C18H36O2, 1, 11.949"})
    void a_measured_excess_is_neutralised(String formula, int protons, String grams) {
        Amount<Mass> acid = MeasuredExcess.of(Alkali.SODIUM_HYDROXIDE, "0.12 %", "0.12 %")
                .acidAtMost(Acid.of("Acid", formula, protons, "100 %", "100 %"), Amount.mass("1400 g"));
        assertThat(rounded(acid, 3)).isEqualTo(grams);
    }

    private static FattyAcidProfile profile(String... ranges) {
        Map<FattyAcid, Interval<MassFraction>> shares = new LinkedHashMap<>();
        for (String range : ranges) {
            String[] parts = range.split(" ", -1);
            shares.put(
                    FattyAcid.parse(parts[0]),
                    Interval.of(MassFraction.parse(parts[1] + " %"), MassFraction.parse(parts[2] + " %")));
        }
        return FattyAcidProfile.ofAcids(shares);
    }

    private static void assertBounds(FattyAcidProfile profile, String least, String greatest) {
        Interval<AlkaliNumber> bounds = profile.saponificationValue(Escapes.none());
        assertThat(mgKoh(bounds.least())).isEqualTo(least);
        assertThat(mgKoh(bounds.greatest())).isEqualTo(greatest);
    }

    private static String mgKoh(AlkaliNumber number) {
        return Rounding.toDecimalPlaces(3).format(number.gramsPerGram().times(1000));
    }

    /** Ranges of the Codex Alimentarius as of 2015, quoted in PMC6770503, table 4; the bounds by filling the lightest acids first. */
    @Test
    void palm_stearin_by_its_profile() {
        assertBounds(
                profile(
                        "C12:0 0.1 0.5",
                        "C14:0 1 2",
                        "C16:0 48 74",
                        "C16:1 0 0.2",
                        "C17:0 0 0.2",
                        "C18:0 3.9 6",
                        "C18:1 15.5 36",
                        "C18:2 3 10",
                        "C18:3 0 0.5",
                        "C20:0 0 1",
                        "C20:1 0 0.4",
                        "C22:0 0 0.2"),
                "199.164",
                "205.009");
    }

    @Test
    void palm_oil_by_its_profile() {
        assertBounds(
                profile(
                        "C12:0 0 0.5",
                        "C14:0 0.5 2",
                        "C16:0 39.3 47.5",
                        "C16:1 0 0.6",
                        "C17:0 0 0.2",
                        "C18:0 3.5 6",
                        "C18:1 36 44",
                        "C18:2 9 12",
                        "C18:3 0 0.5",
                        "C20:0 0 1",
                        "C20:1 0 0.4",
                        "C22:0 0 0.2"),
                "197.296",
                "200.305");
    }

    /** CXS 33, section 3.9, with C18:3 up to 1 %, C22 and C24 up to 0.2 %. */
    @Test
    void olive_oil_by_its_profile() {
        assertBounds(
                profile(
                        "C14:0 0 0.05",
                        "C16:0 7.5 20",
                        "C16:1 0.3 3.5",
                        "C17:0 0 0.3",
                        "C17:1 0 0.3",
                        "C18:0 0.5 5",
                        "C18:1 55 83",
                        "C18:2 3.5 21",
                        "C18:3 0 1",
                        "C20:0 0 0.6",
                        "C20:1 0 0.4",
                        "C22:0 0 0.2",
                        "C24:0 0 0.2"),
                "191.205",
                "194.834");
    }

    /** Olein: three, two and one acid on glycerol take 190.10, 180.70 and 157.36 mg KOH/g. */
    @Test
    void partial_glycerides_take_less() {
        FattyAcidProfile oleic = profile("C18:1 100 100");
        Interval<MassFraction> all = Interval.of(MassFraction.WHOLE, MassFraction.WHOLE);
        Interval<MassFraction> none = Interval.of(MassFraction.ZERO, MassFraction.ZERO);
        assertThat(twoPlaces(oleic, Escapes.none())).isEqualTo("190.10");
        assertThat(twoPlaces(oleic, new Escapes(none, none, all, none))).isEqualTo("180.70");
        assertThat(twoPlaces(oleic, new Escapes(none, all, none, none))).isEqualTo("157.36");
    }

    private static String twoPlaces(FattyAcidProfile profile, Escapes escapes) {
        return Rounding.toDecimalPlaces(2)
                .format(profile.saponificationValue(escapes)
                        .least()
                        .gramsPerGram()
                        .times(1000));
    }

    /**
     * A stock lye of 50 %, of which half is water: 273.6746 g of it hold 136.8373 g of NaOH. A lye of 30 % by the hydroxide has 319.287 g of water,
     * of which the stock brings 136.837 g; three parts to one are 410.512 g, of which 273.675 g are added. As weighed, and of
     * the fats, the figure is of what is added.
     */
    @ParameterizedTest
    @CsvSource({
        "CONCENTRATION, PURE_HYDROXIDE, 30 %, 182.450",
        "CONCENTRATION, PURE_HYDROXIDE, 50 %, 0.000",
        "PER_ALKALI, PURE_HYDROXIDE, 3, 273.675",
        "PER_ALKALI, ALKALI_AS_WEIGHED, 1, 273.675",
        "OF_FATS, PURE_HYDROXIDE, 20 %, 200.000",
    })
    void a_stock_lye_is_half_water(LyeWater.Convention convention, LyeWater.Of of, String figure, String grams) {
        LyeWater water = switch (convention) {
            case CONCENTRATION -> LyeWater.concentration(figure, of);
            case PER_ALKALI -> LyeWater.perAlkali(figure, of);
            case OF_FATS -> LyeWater.ofFats(figure);
        };
        LyeCalculation lye = kilo().alkali(STOCK)
                .leaving(FIVE, Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", water)
                .build();
        assertThat(rounded(lye.alkali(), 4)).isEqualTo("273.6746");
        assertThat(rounded(lye.water(), 3)).isEqualTo(grams);
        assertThat(lye.soap().undeclared()).isEmpty();
        assertThat(lye.soap().lines(Soap.Part.LYE_WATER)).hasSize(lye.water().isZero() ? 0 : 1);
    }

    @Test
    void a_stock_lye_gets_no_stronger_by_water() {
        AlkaliGrade weak =
                AlkaliGrade.solution(Alkali.SODIUM_HYDROXIDE, "30 %", "30 %", Evidence.MAXIMUM_ERROR, Bar.EXAMPLE);
        LyeBuilder lye = kilo().alkali(weak)
                .leaving(FIVE, Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.concentration("40 %", LyeWater.Of.PURE_HYDROXIDE));
        assertThatThrownBy(lye::build)
                .hasMessage(
                        "water is 205.255 g, and the stock lye brings 319.288 g already: it is thinner than the lye wanted;"
                                + " ask for a thinner lye, or take a stronger stock or solid alkali");
    }

    private static final AlkaliGrade STOCK =
            AlkaliGrade.solution(Alkali.SODIUM_HYDROXIDE, "50 %", "50 %", Evidence.MAXIMUM_ERROR, Bar.EXAMPLE);
}
