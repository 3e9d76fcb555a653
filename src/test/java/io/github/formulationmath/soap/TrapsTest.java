package io.github.formulationmath.soap;

import static io.github.formulationmath.support.Bar.EXAMPLE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * What goes wrong with such judgements elsewhere, each with figures that were worked out apart from this library. The masses of
 * alkali and fats are on a balance so fine that its errors do not show in the digits, unless they are what the test is about.
 */
class TrapsTest {

    private static final String FLAKES = Alkali.SODIUM_HYDROXIDE.inciName();

    private static AlkaliGrade pure(Alkali alkali) {
        return grade(alkali, "100 %", "100 %");
    }

    private static AlkaliGrade grade(Alkali alkali, String least, String greatest) {
        return AlkaliGrade.assay(alkali, least, greatest, AlkaliGrade.Stated.HYDROXIDE)
                .carbonate("0 %", "0 %", Evidence.MAXIMUM_ERROR, EXAMPLE);
    }

    private static SaponificationValue value(String least, String greatest) {
        return SaponificationValue.ofStandard(least + " mg KOH/g", greatest + " mg KOH/g", EXAMPLE);
    }

    private static Fat fat(String name, String value) {
        return Fat.triglycerides(name, value(value, value), InertMatter.countedInTheValue());
    }

    private static ExpectedProduct on(Formula formula, String total, Balance balance, WeighingMethod method) {
        Batch batch = Batch.of(formula, BatchSize.ofMass(total));
        return ExpectedProduct.of(WeighingPlan.of(batch, balance), method);
    }

    private static ExpectedProduct finely(Formula formula, String total) {
        return on(formula, total, Balance.of("0.000001 g", "100 kg"), WeighingMethod.TARE_EACH);
    }

    private static String rounded(Amount<?> amount, int places) {
        return new BigDecimal(amount.exactValue().doubleValue())
                .setScale(places, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static String rounded(Ratio number, int places) {
        return new BigDecimal(number.doubleValue())
                .setScale(places, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** 50 g of beeswax of 90 mg KOH/g, 17 of them of acids: 3.21 g of NaOH by the one, 0.61 g by the other. */
    @Test
    void a1_esters_of_a_wax_are_not_counted_on() {
        Formula formula = Formula.inMasses("bar")
                .line("Olive", "950 g")
                .line("Beeswax", "50 g")
                .line(FLAKES, "128 g")
                .build();
        Fat wax = Fat.wax("Beeswax", value("90", "90"), "17 mg KOH/g", "17 mg KOH/g", InertMatter.countedInTheValue());
        Soap soap = Soap.of(formula).fat("Olive", fat("Olive", "185")).alkali(FLAKES, pure(Alkali.SODIUM_HYDROXIDE));
        ExpectedProduct weighed = finely(formula, "1128 g");
        AlkaliBalance sure = AlkaliBalance.of(soap.fat("Beeswax", wax), weighed);
        AlkaliBalance asFat = AlkaliBalance.of(soap.fat("Beeswax", wax.whoseEstersReact()), weighed);
        AlkaliBalance unknown = AlkaliBalance.of(
                soap.fat("Beeswax", Fat.wax("Beeswax", value("90", "90"), InertMatter.countedInTheValue())), weighed);
        assertThat(asFat.verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(sure.verdict()).isEqualTo(HydroxideVerdict.NOT_SHOWN);
        Ratio between = sure.excess()
                .greatest()
                .canonical()
                .minus(asFat.excess().greatest().canonical());
        assertThat(rounded(between, 2)).isEqualTo("2.60");
        assertThat(unknown.excess().greatest().canonical())
                .isGreaterThan(sure.excess().greatest().canonical());
    }

    /** A4: a certificate's U covers with a probability; without U, or without k, there is no ground for a guarantee. */
    @Test
    void a4_an_interval_of_coverage_is_no_bound() {
        Formula formula = Formula.inMasses("bar")
                .line("Olive", "1000 g")
                .line(FLAKES, "130 g")
                .build();
        Fat certified = Fat.triglycerides(
                "Olive",
                SaponificationValue.ofCertificate("192 mg KOH/g", "1 mg KOH/g", CoverageFactor.of(2), EXAMPLE),
                InertMatter.countedInTheValue());
        Soap soap = Soap.of(formula).fat("Olive", certified).alkali(FLAKES, pure(Alkali.SODIUM_HYDROXIDE));
        AlkaliBalance balance = AlkaliBalance.of(soap, finely(formula, "1130 g"));
        assertThat(balance.isWithinCoverage()).isTrue();
        assertThat(balance.coverageInputs()).containsExactly(formula.line("Olive"));
        assertThatThrownBy(() ->
                        SaponificationValue.ofCertificate("192 mg KOH/g", "0 mg KOH/g", CoverageFactor.of(2), EXAMPLE))
                .hasMessageContaining("no ground for a guarantee")
                .hasMessageContaining("ofStandard");
        Balance spread = Balance.of("0.1 g", "5 kg")
                .withErrors(ErrorModel.readabilityOnly().withRepeatability("0.05 g"));
        Soap standard =
                Soap.of(formula).fat("Olive", fat("Olive", "192")).alkali(FLAKES, pure(Alkali.SODIUM_HYDROXIDE));
        ExpectedProduct product = on(formula, "1130 g", spread, WeighingMethod.TARE_EACH);
        assertThatThrownBy(() -> AlkaliBalance.of(standard, product))
                .hasMessageContaining("such as CoverageFactor.of(2)");
        assertThat(AlkaliBalance.of(standard, product.covering(CoverageFactor.of(2)))
                        .isWithinCoverage())
                .isTrue();
    }

    /**
     * A5: ten grams of citric acid in the kilo of the example, 5 % short: 143.083 g of NaOH with the acid paid in full, and not 142.771 g
     * with the shortfall taken of the acid too, which leaves 5.217 %.
     */
    @Test
    void a5_an_acid_is_paid_in_full() {
        Acid citric = Acid.of("Citric Acid", "C6H8O7", 3, "100 %", "100 %");
        LyeCalculation lye = LyeCalculation.named("bar")
                .fat(range("Olive", "184", "196"), "700 g")
                .fat(range("Coconut", "248", "265"), "200 g")
                .fat(range("Shea", "160", "195"), "100 g")
                .acid(citric, "10 g")
                .alkali(pure(Alkali.SODIUM_HYDROXIDE))
                .leaving(Unsaponified.alkaliShortfall("5 %"), Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.concentration("30 %", LyeWater.Of.PURE_HYDROXIDE))
                .build();
        assertThat(rounded(lye.alkali(), 3)).isEqualTo("143.083");
        Formula formula = withAcid("142.7706 g");
        Soap soap = Soap.of(formula)
                .fat("Olive", fat("Olive", "190"))
                .fat("Coconut", fat("Coconut", "256.5"))
                .fat("Shea", fat("Shea", "177.5"))
                .acid("Citric Acid", citric)
                .alkali(FLAKES, pure(Alkali.SODIUM_HYDROXIDE));
        AlkaliBalance discounted = AlkaliBalance.of(soap, finely(formula, "1152.7706 g"));
        assertThat(rounded(discounted.shortfall().least(), 3)).isEqualTo("5.217");
    }

    private static Fat range(String name, String least, String greatest) {
        return Fat.triglycerides(name, value(least, greatest), InertMatter.countedInTheValue());
    }

    private static Formula withAcid(String alkali) {
        return Formula.inMasses("bar")
                .line("Olive", "700 g")
                .line("Coconut", "200 g")
                .line("Shea", "100 g")
                .line("Citric Acid", "10 g")
                .line(FLAKES, alkali)
                .build();
    }

    /** A6: ten grams of NaOH against sixty of citric acid, which takes 37.5 g: a shortfall of the fats would rise with S. */
    @Test
    void a6_a_shortfall_is_not_stated_where_the_acid_takes_all_alkali() {
        Formula formula = Formula.inMasses("bar")
                .line("Olive", "1000 g")
                .line("Citric Acid", "60 g")
                .line(FLAKES, "10 g")
                .build();
        Soap soap = Soap.of(formula)
                .fat("Olive", range("Olive", "184", "196"))
                .acid("Citric Acid", Acid.of("Citric Acid", "C6H8O7", 3, "100 %", "100 %"))
                .alkali(FLAKES, pure(Alkali.SODIUM_HYDROXIDE));
        AlkaliBalance balance = AlkaliBalance.of(soap, finely(formula, "1070 g"));
        assertThat(balance.verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThatThrownBy(balance::shortfall)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("the acids may take all of the hydroxide")
                .hasMessageContaining("excess()");
    }

    /**
     * A7: fats weighed one on top of the other share their readings. Of two fats the demand is off by S₁e at the tare, by |S₁ − S₂|e
     * between them and by S₂e at the end: twice the larger value times e, not twice the sum, with e half a step.
     */
    @Test
    void a7_fats_tared_once_have_their_readings_for_corners() {
        Formula formula = Formula.inMasses("fats")
                .line("Olive", "700 g")
                .line("Coconut", "200 g")
                .build();
        Soap soap = Soap.of(formula).fat("Olive", fat("Olive", "190")).fat("Coconut", fat("Coconut", "256.5"));
        Balance balance = Balance.of("0.1 g", "5 kg");
        Ratio once = width(soap, on(formula, "900 g", balance, WeighingMethod.CUMULATIVE));
        Ratio each = width(soap, on(formula, "900 g", balance, WeighingMethod.TARE_EACH));
        Ratio perStep = Ratio.parse("0.1").dividedBy(Ratio.parse("56105.64")).times(Ratio.parse("56.10564"));
        assertThat(once).isEqualTo(perStep.times(Ratio.parse("513")));
        assertThat(each).isEqualTo(perStep.times(Ratio.parse("893")));
    }

    /** Twice the error: from one end of the hydroxide that is left, as KOH, to the other. */
    private static Ratio width(Soap soap, ExpectedProduct weighed) {
        Interval<?> excess = AlkaliBalance.of(soap, weighed).excess();
        Amount<?> most = (Amount<?>) excess.greatest();
        Amount<?> least = (Amount<?>) excess.least();
        return most.canonical().minus(least.canonical());
    }

    /** A9: with two alkalis the largest reading is that of the one named, for the reading of the other with its error. */
    @Test
    void a9_two_alkalis_have_a_largest_reading_of_the_last_one() {
        FormulaBuilder builder = Formula.inMasses("bar").line("Olive", "1000 g");
        Formula formula =
                builder.line("Potassium Hydroxide", "90 g").line(FLAKES, "60 g").build();
        Soap soap = Soap.of(formula)
                .fat("Olive", fat("Olive", "190"))
                .alkali("Potassium Hydroxide", pure(Alkali.POTASSIUM_HYDROXIDE))
                .alkali(FLAKES, pure(Alkali.SODIUM_HYDROXIDE));
        ExpectedProduct weighed = on(formula, "1150 g", Balance.of("0.1 g", "5 kg"), WeighingMethod.TARE_EACH);
        // (999.9 · 0.19 − 90.1) · 39.99710928/56.10564 − 0.1 = 71.102 g: 189.981 − 90.1 = 99.881 g of KOH.
        assertThat(AlkaliBalance.largestReading(soap, weighed, FLAKES, Unsaponified.alkaliShortfall("0 %")))
                .hasToString("Optional[71.1 g]");
        Formula strong = Formula.inMasses("bar")
                .line("Olive", "100 g")
                .line("Potassium Hydroxide", "90 g")
                .line(FLAKES, "60 g")
                .build();
        Soap over = Soap.of(strong)
                .fat("Olive", fat("Olive", "190"))
                .alkali("Potassium Hydroxide", pure(Alkali.POTASSIUM_HYDROXIDE))
                .alkali(FLAKES, pure(Alkali.SODIUM_HYDROXIDE));
        assertThat(AlkaliBalance.largestReading(
                        over,
                        on(strong, "250 g", Balance.of("0.1 g", "5 kg"), WeighingMethod.TARE_EACH),
                        FLAKES,
                        Unsaponified.alkaliShortfall("0 %")))
                .isEmpty();
    }

    /** A10: 2 % planned with a nominal 90 % become −0.18 % if it is really 92 %; above 100 % hydroxide is cut. */
    @Test
    void a10_a_nominal_grade_is_no_upper_bound() {
        LyeCalculation lye = LyeCalculation.named("liquid")
                .fat(fat("Olive", "190"), "1000 g")
                .alkali(grade(Alkali.POTASSIUM_HYDROXIDE, "90 %", "90 %"))
                .leaving(Unsaponified.alkaliShortfall("2 %"), Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.concentration("30 %", LyeWater.Of.PURE_HYDROXIDE))
                .build();
        String reading = rounded(lye.alkali(), 3);
        assertThat(reading).isEqualTo("206.889");
        Formula formula = Formula.inMasses("liquid")
                .line("Olive", "1000 g")
                .line("Potassium Hydroxide", reading + " g")
                .build();
        Soap real = Soap.of(formula)
                .fat("Olive", fat("Olive", "190"))
                .alkali("Potassium Hydroxide", grade(Alkali.POTASSIUM_HYDROXIDE, "92 %", "92 %"));
        AlkaliBalance balance = AlkaliBalance.of(real, finely(formula, "1206.889 g"));
        assertThat(balance.verdict()).isEqualTo(HydroxideVerdict.HYDROXIDE_LEFT);
        assertThat(rounded(balance.shortfall().greatest(), 2)).isEqualTo("-0.18");
        Interval<MassFraction> total = AlkaliGrade.assay(
                        Alkali.SODIUM_HYDROXIDE, "97 %", "100.5 %", AlkaliGrade.Stated.TOTAL_ALKALI)
                .carbonate("0 %", "2 %", Evidence.MAXIMUM_ERROR, EXAMPLE)
                .hydroxide();
        assertThat(total.greatest()).isEqualTo(MassFraction.WHOLE);
        // 97 % − 2 % · 2 · 39.99711/105.98844 = 95.4905 %
        assertThat(rounded(total.least().fraction().times(100), 4)).isEqualTo("95.4905");
        assertThat(grade(Alkali.SODIUM_HYDROXIDE, "100.2 %", "101 %")
                        .hydroxide()
                        .least())
                .isEqualTo(MassFraction.WHOLE);
        assertThatThrownBy(() -> grade(Alkali.SODIUM_HYDROXIDE, "100 %", "101.1 %"))
                .hasMessageContaining("at most at 101 %");
    }

    /** A11: what a profile does not see lowers the value: 8 % of diolein by 0.40 %, 10 % of mono-olein by 1.72 %. */
    @Test
    void a11_a_profile_alone_is_no_guarantee() {
        FattyAcidProfile oleic = FattyAcidProfile.ofAcids(
                Map.of(FattyAcid.parse("C18:1"), Interval.of(MassFraction.WHOLE, MassFraction.WHOLE)));
        assertThat(rounded(least(oleic, Escapes.none()).times(1000), 2)).isEqualTo("190.10");
        assertThat(lowered(oleic, Escapes.atMost("0 %", "0 %", "8 %", "0 %"))).isEqualTo("0.40");
        assertThat(lowered(oleic, Escapes.atMost("0 %", "10 %", "0 %", "0 %"))).isEqualTo("1.72");
    }

    private static Ratio least(FattyAcidProfile profile, Escapes escapes) {
        return profile.saponificationValue(escapes).least().gramsPerGram();
    }

    private static String lowered(FattyAcidProfile profile, Escapes escapes) {
        Ratio without = least(profile, Escapes.none());
        return rounded(without.minus(least(profile, escapes)).dividedBy(without).times(100), 2);
    }

    /** A12: with an acid value of 12, a value of 192 and 5 %, the acids react first, and 93.23 g of glycerol come of a kilo. */
    @Test
    void a12_free_acids_react_before_the_esters_and_unsaponifiable_matter_counts_once() {
        Fat fat = fat("Olive", "192").withAcidValue("12 mg KOH/g", "12 mg KOH/g");
        LyeCalculation lye = LyeCalculation.named("bar")
                .fat(fat, "1000 g")
                .alkali(pure(Alkali.SODIUM_HYDROXIDE))
                .leaving(Unsaponified.alkaliShortfall("5 %"), Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.concentration("30 %", LyeWater.Of.PURE_HYDROXIDE))
                .build();
        Formula formula = Formula.inMasses("bar")
                .line("Olive", "1000 g")
                .line(FLAKES, rounded(lye.alkali(), 6) + " g")
                .build();
        Soap soap = Soap.of(formula).fat("Olive", fat).alkali(FLAKES, pure(Alkali.SODIUM_HYDROXIDE));
        SoapComposition made = SoapComposition.of(soap, finely(formula, "1" + rounded(lye.alkali(), 6) + " g"));
        assertThat(rounded(made.glycerol().greatest(), 2)).isEqualTo("93.23");
        // 1000 g less s/3 · 38.04798 with s = 3.0371 mol
        assertThat(rounded(made.totalFattyMatter().greatest(), 2)).isEqualTo("961.48");
    }

    /** Fat that is added late: 950 g cooked with alkali for 98 % of a kilo leave 4.02 g of NaOH, with the late fat −2.75 g. */
    @Test
    void late_fat_gets_two_judgements() {
        Formula formula = Formula.inMasses("bar")
                .line("Olive", "950 g")
                .line("Late", "50 g")
                .line(FLAKES, "132.7 g")
                .build();
        Soap soap = Soap.of(formula)
                .fat("Olive", fat("Olive", "190"))
                .lateFat("Late", fat("Late", "190"))
                .alkali(FLAKES, pure(Alkali.SODIUM_HYDROXIDE));
        AlkaliBalance whole = AlkaliBalance.of(soap, finely(formula, "1132.7 g"));
        assertThat(whole.verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        AlkaliBalance cook = whole.cookAlone().orElseThrow();
        assertThat(cook.verdict()).isEqualTo(HydroxideVerdict.HYDROXIDE_LEFT);
        assertThat(rounded(cook.excess().greatest(), 2)).isEqualTo("4.02");
        assertThat(rounded(whole.excess().greatest(), 2)).isEqualTo("-2.75");
    }

    /** A3: what is printed with the judgement names what it does not cover, and refers to no skin. */
    @Test
    void a3_no_hydroxide_left_is_not_called_more_than_that() {
        assertThat(HydroxideVerdict.values())
                .extracting(Enum::name)
                .noneMatch(name -> name.contains("SAFE") || name.contains("ALKALINE"));
        assertThat(Wording.english().say("soap.not-covered"))
                .contains("carbonate counts as free alkali in ISO 684")
                .contains("skin compatibility")
                .contains("incomplete or uneven reaction");
    }

    /** Lactic acid has one acid group and a hydroxyl group; counted as two, it would excuse alkali that nothing takes. */
    @Test
    void an_acid_has_no_more_groups_than_oxygen_for_them() {
        assertThatThrownBy(() -> Acid.of("Lactic Acid", "C3H6O3", 2, "80 %", "80 %"))
                .hasMessageContaining("C3H6O3 has 3 oxygen atoms, two for each acid group");
        assertThatThrownBy(() -> Acid.of("Citric Acid", "C6H8O7", 4, "100 %", "100 %"))
                .hasMessageContaining("count these");
        assertThatThrownBy(() -> Acid.of("Glycerin", "C3H8O3", 3, "100 %", "100 %"))
                .hasMessageContaining("hydroxyl groups take no alkali");
        assertThat(Acid.of("Phosphoric Acid", "H3PO4", 2, "85 %", "85 %").protons())
                .isEqualTo(2);
        assertThat(Acid.of("EDTA", "C10H16N2O8", 4, "99 %", "100 %").protons()).isEqualTo(4);
    }

    /** A salt is told by its name as well, for the formula of its acid may be beside it on the label. */
    @Test
    void a_salt_is_no_acid_by_its_name_either() {
        for (String name :
                new String[] {"Sodium Lactate", "potassium sorbate", "Trisodium Citrate", "Calcium Lactate"}) {
            assertThatThrownBy(() -> Acid.of(name, "C3H6O3", 1, "60 %", "60 %"))
                    .hasMessage("name is " + name
                            + ": a salt takes no alkali, declare it with neither(…); if it is the free acid,"
                            + " give its name, such as Lactic Acid");
        }
    }

    /** What is known to bring alkali cannot be stated to bring none: the judgement would rest on it. */
    @Test
    void what_brings_alkali_is_not_declared_to_do_nothing() {
        Formula formula = Formula.inMasses("bar")
                .line("Oil", "100 g")
                .line("Zinc Oxide", "5 g")
                .line(FLAKES, "50 g")
                .build();
        Soap soap = Soap.of(formula).fat("Oil", fat("Oil", "190"));
        assertThatThrownBy(() -> soap.neither(FLAKES))
                .hasMessageStartingWith(
                        "Sodium Hydroxide brings alkali: declare sodium and potassium hydroxide with alkali(…)");
        assertThatThrownBy(() -> soap.lyeWater(FLAKES)).hasMessageContaining("brings alkali");
        assertThatThrownBy(() -> soap.neither("Zinc Oxide")).hasMessageContaining("leave their line undeclared");
        assertThatThrownBy(() -> LyeCalculation.named("bar").neither(" potassium  carbonate ", "5 g"))
                .hasMessageContaining("brings alkali");
        Soap declared = soap.alkali(FLAKES, pure(Alkali.SODIUM_HYDROXIDE));
        assertThat(AlkaliBalance.of(declared, finely(formula, "155 g")).verdict())
                .isEqualTo(HydroxideVerdict.NOT_SHOWN);
    }
}
