package io.github.formulationmath.soap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

/** Recipes and school exercises of soap as they were published, with what is wrong in some of them. */
class PublishedLyeTest {

    private static final Source BOOK =
            Source.published("W. H. Simmons, H. A. Appleton: The Handbook of Soap Manufacture", "1908");
    private static final AlkaliGrade PURE = AlkaliGrade.assay(
                    Alkali.SODIUM_HYDROXIDE, "100 %", "100 %", AlkaliGrade.Stated.HYDROXIDE)
            .carbonate("0 %", "0 %", Evidence.MAXIMUM_ERROR, BOOK);

    private static Fat fat(String name, String least, String greatest) {
        return Fat.triglycerides(
                name,
                SaponificationValue.ofStandard(least + " mg KOH/g", greatest + " mg KOH/g", BOOK),
                InertMatter.countedInTheValue());
    }

    private static Ratio grams(String formula) {
        return MolarMass.of(MolecularFormula.parse(formula)).gramsPerMole();
    }

    private static String shown(Ratio value, int places, RoundingMode mode) {
        return Rounding.toDecimalPlaces(places).with(mode).format(value);
    }

    private static String shown(Ratio value, int places) {
        return shown(value, places, RoundingMode.HALF_EVEN);
    }

    private static AlkaliBalance judged(Formula formula, Soap soap, String mass) {
        return AlkaliBalance.of(
                soap,
                ExpectedProduct.of(
                        WeighingPlan.of(
                                Batch.of(formula, BatchSize.ofMass(mass)), Balance.of("0.000001 lb", "1000 lb")),
                        WeighingMethod.TARE_EACH));
    }

    private static AlkaliGrade lye(String strength) {
        return AlkaliGrade.solution(Alkali.SODIUM_HYDROXIDE, strength, strength, Evidence.MAXIMUM_ERROR, BOOK);
    }

    /**
     * A cold process of 1908: 56 lb of coconut oil, 56 lb of tallow, 56 lb of lye of 72 °Tw, which Appendix C has as 32.930 % NaOH. With
     * the book's own equivalents, 214.2 to 216 and 283.6 to 286, 0.47 to 1.32 % too much alkali: no lot of them would take all of it.
     */
    @Test
    void a_printed_recipe_has_hydroxide_left() {
        Formula formula = Formula.inMasses("cold soap")
                .line("Coconut", "56 lb")
                .line("Tallow", "56 lb")
                .line("Lye", "56 lb")
                .build();
        Soap soap = Soap.of(formula)
                .fat("Coconut", fat("Coconut", "259.7222", "261.9048"))
                .fat("Tallow", fat("Tallow", "196.1538", "197.8139"))
                .alkali("Lye", lye("32.93 %"));
        AlkaliBalance balance = judged(formula, soap, "168 lb");
        assertThat(balance.verdict()).isEqualTo(HydroxideVerdict.HYDROXIDE_LEFT);
        assertThat(shown(balance.shortfall().greatest().canonical().times(-100), 2))
                .isEqualTo("0.48");
        assertThat(shown(balance.shortfall().least().canonical().times(-100), 2))
                .isEqualTo("1.33");
    }

    /** The same book: coconut oil with half its weight of lye of 71.4 °Tw, 0.1632 lb of NaOH a pound, is about 12 % short. */
    @Test
    void another_printed_recipe_leaves_an_eighth_of_the_fat() {
        Formula formula = Formula.inMasses("coconut soap")
                .line("Coconut", "1 lb")
                .line("Lye", "0.5 lb")
                .build();
        Soap soap = Soap.of(formula)
                .fat("Coconut", fat("Coconut", "260.9302", "260.9303"))
                .alkali("Lye", lye("32.64 %"));
        AlkaliBalance balance = judged(formula, soap, "1.5 lb");
        assertThat(balance.verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(shown(balance.shortfall().least().canonical().times(100), 1)).isEqualTo("12.3");
    }

    /** khoahoc.vn: 8.58 kg of fat and 1.2 kg of NaOH give 0.92 kg of glycerol and 8.86 kg of soap. */
    @Test
    void masses_are_kept() {
        Formula formula = Formula.inMasses("school soap")
                .line("Fat", "8580 g")
                .line("Sodium Hydroxide", "1200 g")
                .build();
        // As much as takes 1.2 kg of NaOH: 1200/39.99711 · 56105.64/8580 mg KOH/g, a little more so that nothing is
        // left.
        Fat neutral = fat("Fat", "196.19", "196.19").withAcidValue("0 mg KOH/g", "0 mg KOH/g");
        Soap soap = Soap.of(formula).fat("Fat", neutral).alkali("Sodium Hydroxide", PURE);
        SoapComposition made = SoapComposition.of(
                soap,
                ExpectedProduct.of(
                        WeighingPlan.of(
                                Batch.of(formula, BatchSize.ofMass("9780 g")), Balance.of("0.000001 g", "100 kg")),
                        WeighingMethod.TARE_EACH));
        Ratio glycerol = made.glycerol().greatest().canonical();
        assertThat(shown(glycerol.dividedBy(1000), 4)).isEqualTo("0.9210");
        assertThat(shown(glycerol.dividedBy(1000), 2)).isEqualTo("0.92");
        assertThat(shown(Ratio.of(9780).minus(glycerol).dividedBy(1000), 2)).isEqualTo("8.86");
    }

    /** wizedu.com: a fat of 680 g/mol takes 120 g of NaOH a mole; exactly 119.991, a saponification value of 247.5. */
    @Test
    void a_mole_of_fat() {
        Fat fat = fat("Fat", "247.525", "247.525");
        LyeCalculation lye = LyeCalculation.named("school soap")
                .fat(fat, "680 g")
                .alkali(PURE)
                .leaving(Unsaponified.alkaliShortfall("0 %"), Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.perAlkali("2", LyeWater.Of.PURE_HYDROXIDE))
                .build();
        assertThat(shown(lye.alkali().canonical(), 2)).isEqualTo("119.99");
        assertThat(shown(lye.alkali().canonical(), 0)).isEqualTo("120");
    }

    /**
     * luyentap365.com: "13.44 kg of fat of acid value 7 take 120.064 kg of lye of 15 %", 13.756 kg of glycerol. That is a value of 1880 mg
     * KOH/g; 134.4 kg were meant, which have 188. No fat is beyond tributyrin.
     */
    @Test
    void a_slip_of_ten_is_refused() {
        Ratio koh = Ratio.parse("120.064")
                .times(Ratio.parse("0.15"))
                .dividedBy(grams("HNaO"))
                .times(grams("HKO"));
        assertThat(shown(koh.dividedBy(Ratio.parse("13.44")).times(1000), 0)).isEqualTo("1880");
        assertThat(shown(koh.dividedBy(Ratio.parse("134.4")).times(1000), 0)).isEqualTo("188");
        assertThatThrownBy(() -> SaponificationValue.ofStandard("1880 mg KOH/g", "1880 mg KOH/g", BOOK))
                .hasMessageContaining("there is no fat");
    }

    /**
     * khoahoc.vn, an examination: 100 g of fat with an acid index of 7 take 0.32 mol of NaOH in all; printed 9.43 g of glycerol, reckoned with 56
     * and 92 for the molar masses and with 0.0125 mol of free acid. One who forgets the free acid has 9.82 g.
     */
    @Test
    void free_acids_set_no_glycerol_free() {
        Formula formula = Formula.inMasses("examination")
                .line("Fat", "100 g")
                .line("Sodium Hydroxide", "12.799 g")
                .build();
        Fat fat = fat("Fat", "179.54", "179.54").withAcidValue("7 mg KOH/g", "7 mg KOH/g");
        Soap soap = Soap.of(formula).fat("Fat", fat).alkali("Sodium Hydroxide", PURE);
        SoapComposition made = SoapComposition.of(
                soap,
                ExpectedProduct.of(
                        WeighingPlan.of(
                                Batch.of(formula, BatchSize.ofMass("112.799 g")), Balance.of("0.000001 g", "1 kg")),
                        WeighingMethod.TARE_EACH));
        assertThat(shown(made.glycerol().greatest().canonical(), 2)).isEqualTo("9.44");
        Ratio printed = Ratio.parse("0.3075").dividedBy(3).times(92);
        assertThat(shown(printed, 2)).as("as printed").isEqualTo("9.43");
        assertThat(shown(Ratio.parse("0.32").dividedBy(3).times(Ratio.parse("92.09382")), 2))
                .isEqualTo("9.82");
    }
}
