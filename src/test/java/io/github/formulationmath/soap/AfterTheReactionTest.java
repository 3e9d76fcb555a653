package io.github.formulationmath.soap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Bar;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.math.BigDecimal;
import java.math.MathContext;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** Soap, fat left, water, dilution and what neutralises a measured excess, by arithmetic on paper. */
class AfterTheReactionTest {

    private static final MathContext DIGITS = MathContext.DECIMAL64;
    private static final BigDecimal KOH = new BigDecimal("56.10564");
    private static final BigDecimal NAOH = new BigDecimal("39.99710928");

    private static Fat fat(String least, String greatest) {
        return Bar.fat("Olive", least, greatest).withAcidValue("0 mg KOH/g", "0 mg KOH/g");
    }

    private static LyeBuilder begun(Fat fat, Alkali alkali) {
        return LyeCalculation.named("soap")
                .fat(fat, "1000 g")
                .alkali(AlkaliGrade.assay(alkali, "90 %", "90 %", AlkaliGrade.Stated.HYDROXIDE)
                        .carbonate("0 %", "0 %", Evidence.MAXIMUM_ERROR, Bar.EXAMPLE))
                .leaving(Unsaponified.alkaliShortfall("5 %"), Reckoned.FOR_EVERY_LOT)
                .water("Aqua", LyeWater.ofFats("30 %"));
    }

    private static SoapComposition made(LyeCalculation lye) {
        Batch batch = Batch.of(lye.formula(), BatchSize.ofMass(lye.mass()));
        WeighingPlan plan = WeighingPlan.of(batch, Balance.of("0.000001 g", "100 kg"));
        return SoapComposition.of(lye.soap(), ExpectedProduct.of(plan, WeighingMethod.TARE_EACH));
    }

    private static void isAbout(Interval<Amount<Mass>> found, BigDecimal grams) {
        BigDecimal near = new BigDecimal("0.0001");
        assertThat(found.least().canonical().doubleValue())
                .isBetween(grams.subtract(near).doubleValue(), grams.doubleValue() + 0.00001);
        assertThat(found.greatest().canonical().doubleValue())
                .isBetween(grams.doubleValue() - 0.00001, grams.add(near).doubleValue());
    }

    /**
     * A kilo of a fat of 190 mg KOH/g takes 950 · 0.19 = 180.5 g of KOH: 3.21715 mol, which set 98.760 g of glycerol free. 50 g of fat
     * are left, 1031.74 g are soap, and of the alkali of 90 % there are 20.056 g of water besides the 300 g.
     */
    @Test
    void soap_fat_left_and_water_of_a_soap_of_one_fat() {
        SoapComposition made =
                made(begun(fat("190", "190"), Alkali.POTASSIUM_HYDROXIDE).build());
        BigDecimal moles = new BigDecimal("180.5").divide(KOH, DIGITS);
        BigDecimal glycerol = moles.multiply(new BigDecimal("92.09382")).divide(new BigDecimal(3), DIGITS);
        isAbout(made.glycerol(), glycerol);
        isAbout(made.fatLeft(), new BigDecimal(50));
        isAbout(made.soap(), new BigDecimal("1130.5").subtract(glycerol));
        isAbout(made.water(), new BigDecimal("300").add(new BigDecimal("180.5").divide(new BigDecimal(9), DIGITS)));
    }

    /** Nothing is lost: soap, fat left, glycerol and water together are what was weighed, at some point of every interval. */
    @Test
    void what_comes_out_is_what_went_in() {
        LyeCalculation lye = begun(fat("184", "196").withAcidValue("1 mg KOH/g", "6 mg KOH/g"), Alkali.SODIUM_HYDROXIDE)
                .acid(Acid.of("Citric Acid", "C6H8O7", 3, "100 %", "100 %"), "10 g")
                .build();
        SoapComposition made = made(lye);
        Ratio least = Ratio.ZERO;
        Ratio most = Ratio.ZERO;
        for (Interval<Amount<Mass>> part :
                java.util.List.of(made.soap(), made.fatLeft(), made.glycerol(), made.water())) {
            assertThat(part.least()).isLessThanOrEqualTo(part.greatest());
            least = least.plus(part.least().canonical());
            most = most.plus(part.greatest().canonical());
        }
        // The citrate is in none of them: 10 g of acid and 3 · 39.997/192.124 of that in hydroxide, less its water.
        double citrate = 10 + 30 * (39.99710928 - 18.01528) / 192.12352;
        assertThat(lye.mass().canonical().doubleValue() - citrate).isBetween(least.doubleValue(), most.doubleValue());
        assertThat(made.fatLeft().least().canonical().doubleValue()).isBetween(46.9, 50.1);
    }

    /** By a school exercise: 8.58 kg of fat and 1.2 kg of NaOH give 0.92 kg of glycerol and 8.86 kg of soap (khoahoc.vn). */
    @Test
    void a_school_exercise_is_met() {
        // 1.2 kg of NaOH on 8.58 kg of fat are 196.19 mg KOH/g; a little more, so that nothing is left to judge.
        LyeCalculation lye = LyeCalculation.named("exercise")
                .fat(fat("196.2", "196.2"), "8.58 kg")
                .alkali(AlkaliGrade.assay(Alkali.SODIUM_HYDROXIDE, "100 %", "100 %", AlkaliGrade.Stated.HYDROXIDE)
                        .carbonate("0 %", "0 %", Evidence.MAXIMUM_ERROR, Bar.EXAMPLE))
                .leaving(Unsaponified.alkaliShortfall("0.01 %"), Reckoned.FOR_EVERY_LOT)
                .water("Aqua", LyeWater.ofFats("30 %"))
                .build();
        SoapComposition made = made(lye);
        assertThat(lye.alkali().canonical().doubleValue()).isBetween(1199.0, 1201.0);
        assertThat(made.glycerol().least().canonical().doubleValue()).isBetween(920.0, 922.0);
        assertThat(made.soap().least().canonical().doubleValue()).isBetween(8855.0, 8860.0);
    }

    /** 1031.74 g of soap to 20 % are 5158.70 g of solution. */
    @Test
    void liquid_soap_is_diluted_and_no_water_is_taken_out_again() {
        SoapComposition made =
                made(begun(fat("190", "190"), Alkali.POTASSIUM_HYDROXIDE).build());
        Amount<Mass> now = Amount.mass("1500 g");
        double soap = 1130.5 - 180.5 / 56.10564 * 92.09382 / 3;
        assertThat(made.waterToDilute(MassFraction.parse("20 %"), now)
                        .greatest()
                        .canonical()
                        .doubleValue())
                .isBetween(soap * 5 - 1500, soap * 5 - 1500 + 0.001);
        Amount<Mass> all =
                now.plus(made.waterToDilute(MassFraction.parse("20 %"), now).greatest());
        assertThat(made.soap(all).greatest()).isEqualTo(MassFraction.parse("20 %"));
        assertThatThrownBy(() -> made.waterToDilute(MassFraction.parse("70 %"), now))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("thinner already");
        assertThatThrownBy(() -> made.waterToDilute(MassFraction.parse("0 %"), now))
                .hasMessageContaining("above 0 %");
        assertThatThrownBy(() -> made.soap(Amount.mass("900 g"))).hasMessageContaining("less than the soap");
    }

    @Test
    void a_wax_has_no_glycerol_to_give() {
        LyeCalculation lye = begun(fat("190", "190"), Alkali.SODIUM_HYDROXIDE)
                .fat(
                        Fat.wax(
                                "Beeswax",
                                SaponificationValue.ofStandard("87 mg KOH/g", "102 mg KOH/g", Bar.EXAMPLE),
                                "17 mg KOH/g",
                                "22 mg KOH/g",
                                InertMatter.countedInTheValue()),
                        "20 g")
                .build();
        assertThatThrownBy(() -> made(lye)).hasMessageContaining("is a wax").hasMessageContaining("no glycerol");
    }

    /** 0.5 g of NaOH in a kilo are 0.5/39.99711 mol; citric acid takes three: 0.5 · 192.12352/(3 · 39.99711) = 0.80057 g. */
    @Test
    void a_measured_excess_is_neutralised_at_most_from_its_low_end() {
        MeasuredExcess found = MeasuredExcess.of(Alkali.SODIUM_HYDROXIDE, "0.05 %", "0.07 %");
        Acid citric = Acid.of("Citric Acid", "C6H8O7", 3, "99 %", "100 %");
        Amount<Mass> soap = Amount.mass("1 kg");
        Amount<Mass> most = found.acidAtMost(citric, soap);
        BigDecimal byHand = new BigDecimal("0.5")
                .multiply(new BigDecimal("192.12352"))
                .divide(NAOH.multiply(new BigDecimal(3)), DIGITS);
        assertThat(most.canonical().doubleValue()).isEqualTo(byHand.doubleValue());
        assertThat(byHand.toPlainString()).startsWith("0.8005");
        most.working().check();
        // Of 0.7 g at most, 99 % of what 0.5 g take is gone for sure.
        assertThat(found.leftAfter(citric, most, soap).least()).isEqualTo(Amount.mass("0 g"));
        assertThat(found.leftAfter(citric, most, soap).greatest()).isEqualTo(Amount.mass("0.205 g"));
        assertThatThrownBy(() -> found.leftAfter(citric, Amount.mass("0.81 g"), soap))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("sets fatty acids free");
        assertThat(MeasuredExcess.of(Alkali.POTASSIUM_HYDROXIDE, "0 %", "0.02 %")
                        .acidAtMost(citric, soap)
                        .isZero())
                .isTrue();
    }
}
