package io.github.formulationmath.verification;

import static io.github.formulationmath.support.Bar.EXAMPLE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.AlkaliMixture;
import io.github.formulationmath.soap.Evidence;
import io.github.formulationmath.soap.HydroxideVerdict;
import io.github.formulationmath.soap.LyeBuilder;
import io.github.formulationmath.soap.LyeCalculation;
import io.github.formulationmath.soap.LyeWater;
import io.github.formulationmath.soap.Reckoned;
import io.github.formulationmath.soap.Unsaponified;
import io.github.formulationmath.support.Bar;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Somebody else's lye figures: right ones agree, slips are named, and what they leave is told. */
class LyeVerificationTest {

    /** A kilo of a fat of 190 mg KOH/g takes 1000 · 0.19/56.10564 = 3.386468 mol, 135.44894 g of NaOH. */
    private static LyeBuilder kilo() {
        return LyeCalculation.named("kilo")
                .fat(Bar.fat("Olive", "190", "190"), "1000 g")
                .alkali(grade("98 %"))
                .leaving(Unsaponified.alkaliShortfall("5 %"), Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.concentration("30 %", LyeWater.Of.PURE_HYDROXIDE));
    }

    private static AlkaliGrade grade(String assay) {
        return AlkaliGrade.assay(Alkali.SODIUM_HYDROXIDE, assay, assay, AlkaliGrade.Stated.HYDROXIDE)
                .carbonate("0 %", "0 %", Evidence.MAXIMUM_ERROR, EXAMPLE);
    }

    private static LyeVerification of(String alkali) {
        return LyeVerification.of(LyeClaim.about(kilo().build()).withFigure("Sodium Hydroxide", alkali));
    }

    /** 0.95 · 135.44894/0.98 = 131.30254 g; every figure below is that with one thing gone wrong, by a pocket calculator. */
    @ParameterizedTest
    @CsvSource({
        "184.18 g, VALUE_OF_OTHER_ALKALI",
        "93.60 g, VALUE_TURNED_TWICE",
        "128.68 g, PURITY_FORGOTTEN",
        "133.98 g, PURITY_TWICE",
        "126.10 g, PURITY_MULTIPLIED",
        "131.63 g, OTHER_CONVENTION",
        "138.21 g, SHORTFALL_FORGOTTEN",
        "145.12 g, SHORTFALL_ADDED",
        "145.49 g, SHORTFALL_ADDED",
        "124.74 g, SHORTFALL_TWICE",
        "8.2064 g, UNIT_EXCHANGED",
        "2100.8 g, UNIT_EXCHANGED"
    })
    void a_slip_is_named(String figure, LyeSlip slip) {
        LyeVerification verification = of(figure);
        assertThat(verification.agrees()).isFalse();
        assertThat(verification.causes()).extracting(LyeCause::slips).contains(List.of(slip));
    }

    @Test
    void right_figures_need_no_explanation() {
        for (String right : List.of("131.30 g", "131.3 g", "131 g", "0.13130 kg", "4.63 oz")) {
            assertThat(of(right).agrees()).as(right).isTrue();
            assertThat(of(right).causes()).isEmpty();
        }
        assertThat(of("131.4 g").agrees()).isFalse();
    }

    /** Two slips at once, the purity forgotten and the value read as mg NaOH/g: 0.95 · 190 = 180.5 g. */
    @Test
    void two_slips_at_once_are_named_where_no_single_one_does() {
        LyeVerification both = of("180.50 g");
        assertThat(both.causes())
                .extracting(LyeCause::slips)
                .contains(List.of(LyeSlip.VALUE_OF_OTHER_ALKALI, LyeSlip.PURITY_FORGOTTEN))
                .allSatisfy(slips -> assertThat(slips).hasSize(2));
    }

    @Test
    void a_figure_that_nothing_explains_is_said_to_be_so() {
        LyeVerification none = of("77.777777 g");
        assertThat(none.causes()).isEmpty();
        assertThat(none.report(Wording.english()).print(Format.TEXT)).contains("No known slip explains this");
    }

    /** 190 g for 135 g: 40 % too much burns, whatever the lot. */
    @Test
    void what_their_figures_leave_is_judged() {
        Balance balance = Balance.of("0.1 g", "5 kg");
        LyeVerification wrong = of("184.18 g");
        var judged = wrong.judged(balance, WeighingMethod.TARE_EACH);
        assertThat(judged.verdict()).isEqualTo(HydroxideVerdict.HYDROXIDE_LEFT);
        String report = wrong.report(Wording.english(), judged).print(Format.TEXT);
        assertThat(report.replaceAll("\\s+", " "))
                .contains("mg KOH/g and mg NaOH/g exchanged")
                .contains("hydroxide is left: it burns");
        assertThat(report.split("qualified safety assessment", -1)).hasSize(2);
        assertThat(of("131.3 g").judged(balance, WeighingMethod.TARE_EACH).verdict())
                .isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
    }

    /** Of 128.6765 g of pure NaOH 30 % lye is made with 300.245 g of water; reversed with 55.147 g. */
    @ParameterizedTest
    @CsvSource({
        "55.15 g, WATER_REVERSED",
        "306.37 g, WATER_OF_OTHER_ALKALI_MASS",
        "300.00 g, WATER_BY_OTHER_CONVENTION",
        "38.60 g, WATER_BY_OTHER_CONVENTION"
    })
    void a_slip_of_the_water_is_named(String water, LyeSlip slip) {
        LyeVerification verification = LyeVerification.of(LyeClaim.about(kilo().build())
                .withFigure("Sodium Hydroxide", "131.30 g")
                .withFigure("Aqua", water));
        assertThat(verification.causes()).extracting(LyeCause::slips).contains(List.of(slip));
    }

    /** 0 kg is what a display of 1 kg shows of 130 g: it is not wrong, and it says nothing. */
    @Test
    void a_figure_in_which_no_digit_counts_agrees_with_nothing() {
        LyeVerification held =
                LyeVerification.of(LyeClaim.about(kilo().build()).withFigure("Sodium Hydroxide", "0 kg"));
        assertThat(held.agrees()).isFalse();
        assertThat(held.causes()).isEmpty();
        assertThat(held.toString()).contains("not every figure shows something");
        assertThat(held.report(Wording.english()).toString())
                .contains("no digit counts")
                .contains("No figure disagrees")
                .doesNotContain("All figures agree");
    }

    @Test
    void a_claim_without_figures_of_something_else_or_in_volumes_is_refused() {
        LyeClaim claim = LyeClaim.about(kilo().build());
        assertThatThrownBy(() -> LyeVerification.of(claim)).hasMessageContaining("withFigure");
        assertThatThrownBy(() -> claim.withFigure("Potassium Hydroxide", "1 g"))
                .hasMessageContaining("Sodium Hydroxide, Aqua");
        assertThatThrownBy(() -> claim.withFigure("Sodium Hydroxide", "90 mL")).hasMessageContaining("density");
        LyeVerification nothing = LyeVerification.of(claim.withFigure("Sodium Hydroxide", "0 g"));
        assertThatThrownBy(() -> nothing.judged(Balance.of("0.1 g", "5 kg"), WeighingMethod.TARE_EACH))
                .hasMessageContaining("more than 0");
    }

    /** What went wrong is told in the words of the reader; the name of a fat stays, whatever it is. */
    @Test
    void an_end_of_a_range_and_a_basis_have_a_name_in_every_language() {
        for (Wording words : List.of(Wording.german(), Wording.french())) {
            assertThat(LyeSlip.OTHER_END_OF_RANGES.detail("least", words)).isNotEqualTo("least");
            assertThat(LyeSlip.FAT_LEFT_OUT.detail("least", words)).isEqualTo("least");
            for (AlkaliMixture.Basis basis : AlkaliMixture.Basis.values()) {
                String name = basis.name().toLowerCase(Locale.ROOT).replace('_', ' ');
                assertThat(LyeSlip.OTHER_BASIS_OF_DIVISION.detail(name, words)).isNotEqualTo(name);
            }
            for (LyeWater.Convention convention : LyeWater.Convention.values()) {
                String name = convention.name().toLowerCase(Locale.ROOT).replace('_', ' ');
                assertThat(LyeSlip.WATER_BY_OTHER_CONVENTION.detail(name, words))
                        .isNotEqualTo(name + ".");
            }
        }
    }

    /** The water of a stock lye counts in a claim as it does in the calculation: of 0.95 · 135.44894 g in 50 %, as much again. */
    @Test
    void the_water_of_a_stock_lye_is_part_of_the_lye() {
        LyeCalculation lye = kilo().alkali(
                        AlkaliGrade.solution(Alkali.SODIUM_HYDROXIDE, "50 %", "50 %", Evidence.MAXIMUM_ERROR, EXAMPLE))
                .build();
        LyeClaim alkali = LyeClaim.about(lye).withFigure("Sodium Hydroxide", "257.35 g");
        assertThat(LyeVerification.of(alkali.withFigure("Aqua", "171.57 g")).agrees())
                .isTrue();
        assertThat(LyeVerification.of(alkali.withFigure("Aqua", "300.25 g")).agrees())
                .isFalse();
    }
}
