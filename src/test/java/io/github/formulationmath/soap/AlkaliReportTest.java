package io.github.formulationmath.soap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.support.Bar;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What is printed of a judgement, and what would better it. */
class AlkaliReportTest {

    private static AlkaliBalance on(String step) {
        return AlkaliBalance.of(
                Bar.SOAP,
                ExpectedProduct.of(
                        Bar.plan(Amount.mass("1439.6 g"), Balance.of(step, "20 kg")), WeighingMethod.TARE_EACH));
    }

    private static String text(AlkaliBalance balance) {
        return balance.document(Wording.english()).print(Format.TEXT).replaceAll("\\s+", " ");
    }

    /** E at most: 138.5435 g taken and 139.7 · 0.99 = 138.303 g given, so that 0.2405 g are left to take: printed up, −0.240. */
    @Test
    void ends_are_printed_outwards() {
        AlkaliBalance balance = on("0.1 g");
        assertThat(balance.excess().greatest().exactValue().doubleValue()).isBetween(-0.2406, -0.2404);
        // The shortfall is 0.2405/138.5435 = 0.1735 % at least; 139.5 · 0.97 of 149.539 g leave 9.5123 % at most.
        assertThat(text(balance))
                .contains("no hydroxide is left")
                .contains("0.173 to 9.513 %")
                .contains("to -0.24 g");
    }

    @Test
    void the_corner_that_breaks_it_is_told() {
        String text = text(on("1 g"));
        assertThat(text)
                .contains("Not shown")
                .contains("Olive: it takes 184 mg KOH/g")
                .contains("Sodium Hydroxide: 99 % of it is hydroxide")
                .contains("the weighings: together they bring");
        assertThat(text(on("0.1 g"))).doesNotContain("the weighings: together they bring");
    }

    /** The weighings bring 0.99 g of alkali for 1 g and withhold 0.184 + 0.248 + 0.16 g KOH, 0.42203 g NaOH: 1.412 g. */
    @Test
    void what_the_weighings_bring_is_told_exactly() {
        assertThat(on("1 g").corner())
                .extracting(Wording.english()::text)
                .contains("the weighings: together they bring 1.413 g of NaOH more");
    }

    @Test
    void a_certificate_narrows_what_may_be_left() {
        AlkaliBalance coarse = on("1 g");
        assertThat(coarse.verdict()).isEqualTo(HydroxideVerdict.NOT_SHOWN);
        assertThat(coarse.widths().get(0).line()).isEqualTo("Olive");
        SaponificationValue certificate =
                SaponificationValue.ofCertificate("192 mg KOH/g", "1 mg KOH/g", CoverageFactor.of(2), Bar.EXAMPLE);
        AlkaliBalance certified = coarse.ifCertified("Olive", certificate);
        assertThat(certified.verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(certified.isWithinCoverage()).isTrue();
        // 699 g times 191 − 184 mg KOH/g are 4.893 g of KOH, 3.4882 g of NaOH.
        Ratio gain = coarse.excess()
                .greatest()
                .canonical()
                .minus(certified.excess().greatest().canonical());
        assertThat(gain.doubleValue()).isBetween(3.4881, 3.4883);
        assertThat(text(certified)).contains("within the stated coverage").contains("for the sake of Olive");
    }

    @Test
    void a_certificate_that_contradicts_the_standard_is_refused() {
        SaponificationValue other = SaponificationValue.within("256 mg KOH/g", "1 mg KOH/g", Bar.EXAMPLE);
        assertThatThrownBy(() -> on("1 g").ifCertified("Olive", other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("does not conform")
                .hasMessageContaining("declare the fat by the figure that is right");
        assertThatThrownBy(() -> on("1 g").ifCertified("Aqua", other)).hasMessageContaining("not declared as a fat");
    }

    /** Annex III, entries 15a and 15d: of a product as it is placed on the market, so that nothing follows from a judgement. */
    @Test
    void the_rows_of_a_table_are_told_and_not_judged() {
        String told = on("0.1 g")
                .document(Wording.english(), LimitTable.eu2024February())
                .print(Format.TEXT)
                .replaceAll("\\s+", " ");
        assertThat(told)
                .contains("Annex III, entry 15a(a)")
                .contains("at most 5 %")
                .contains("Hair straightener")
                .contains("pH 12.7")
                .contains("pH 11")
                .contains("placed on the market, not of the lye that is used up")
                .contains("it does not say that a row is kept")
                .contains("not presented as current law");
        String plain = text(on("0.1 g"));
        String added =
                told.substring(told.indexOf("What a table of limits says")).toLowerCase(Locale.ROOT);
        assertThat(plain).doesNotContain("What a table of limits says");
        for (String verdict : List.of("within the limit", "is exceeded", "complies", "allowed")) {
            assertThat(added).doesNotContain(verdict);
        }
        assertThat(told.split("gloves and goggles", -1)).hasSize(2);
        LimitTable other = LimitTable.of("a table of our own", List.of());
        assertThat(on("0.1 g").document(Wording.english(), other).print(Format.TEXT))
                .contains("a table of our own has no row for them");
    }

    @Test
    void a_calculation_is_judged_in_one_line() {
        LyeCalculation lye = LyeCalculation.named("bar")
                .fat(Bar.fat("Olive", "184", "196"), "1000 g")
                .alkali(Bar.SOAP.alkaliOf("Sodium Hydroxide").orElseThrow())
                .leaving(Unsaponified.alkaliShortfall("2 %"), Reckoned.FOR_EVERY_LOT)
                .water("Aqua", LyeWater.ofFats("33 %"))
                .build();
        AlkaliBalance balance = AlkaliBalance.of(lye, Balance.of("0.1 g", "5 kg"), WeighingMethod.TARE_EACH);
        // 0.98 · 184/56.10564 · 39.99711/0.99 = 129.8468 g, 129.8 g on the display.
        assertThat(lye).hasToString("bar: Sodium Hydroxide ≈ 129.847 g, Aqua 330 g");
        assertThat(balance.verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(balance.toString()).contains("no hydroxide is left").contains("Not covered");
    }

    @Test
    void the_caution_stands_there_once_and_no_verdict_says_more_than_it_knows() {
        String text = text(on("0.1 g"));
        assertThat(text.split("It defers to local law and to qualified safety assessment", -1))
                .hasSize(2);
        assertThat(text).contains("titrate the finished soap");
        for (HydroxideVerdict verdict : HydroxideVerdict.values()) {
            assertThat(Wording.english().say("soap.verdict." + verdict.name()).toLowerCase(Locale.ROOT))
                    .doesNotContain("safe")
                    .doesNotContain("alkaline");
        }
    }

    @Test
    void an_undeclared_line_is_named_and_late_fat_is_judged_twice() {
        Formula formula = Formula.inMasses("bar")
                .line("Olive", "700 g")
                .line("Shea", "50 g")
                .line("Sodium Hydroxide", "91 g")
                .line("Ash", "1 g")
                .build();
        Soap open = Soap.of(formula)
                .fat("Olive", Bar.fat("Olive", "184", "196"))
                .lateFat("Shea", Bar.fat("Shea", "160", "195"))
                .alkali(
                        "Sodium Hydroxide",
                        AlkaliGrade.assay(Alkali.SODIUM_HYDROXIDE, "97 %", "99 %", AlkaliGrade.Stated.HYDROXIDE)
                                .carbonate("0 %", "2 %", Evidence.MAXIMUM_ERROR, Bar.EXAMPLE));
        ExpectedProduct product = ExpectedProduct.of(
                WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("842 g")), Balance.of("0.1 g", "5 kg")),
                WeighingMethod.TARE_EACH);
        assertThat(text(AlkaliBalance.of(open, product))).contains("Not shown while nothing is said of Ash");
        String text = text(AlkaliBalance.of(open.neither("Ash"), product));
        assertThat(text).contains("The cook alone").contains("Fat added later stays unsaponified only if");
    }
}
