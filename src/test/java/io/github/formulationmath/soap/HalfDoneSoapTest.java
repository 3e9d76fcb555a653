package io.github.formulationmath.soap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.support.Bar;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A pot that is not full yet, and a pot after a wrong pour. */
class HalfDoneSoapTest {

    private static final Balance TENTHS = Balance.of("0.1 g", "20 kg");

    private static MadeBatch pot(Balance balance, Reading... readings) {
        return MadeBatch.of(
                Readings.of(Bar.plan(Amount.mass("1439.6 g"), balance), WeighingMethod.TARE_EACH, List.of(readings)));
    }

    private static Reading read(String line, String grams) {
        return Reading.of(Bar.FORMULA.line(line), grams);
    }

    private static Reading leftOut(String line) {
        return Reading.leftOut(Bar.FORMULA.line(line));
    }

    private static MadeBatch withoutAlkali() {
        return pot(
                TENTHS,
                read("Olive", "690 g"),
                read("Coconut", "200 g"),
                read("Shea", "100 g"),
                leftOut("Sodium Hydroxide"),
                leftOut("Aqua"));
    }

    /**
     * By hand: with 10 g of olive oil too little the fats take at least (689.9 · 184 + 199.9 · 248 + 99.9 · 160)/56.10564 mmol, 137.2318 g of
     * NaOH; over 0.99 and less 0.1 g that is 138.518 g.
     */
    @Test
    void how_much_alkali_the_fats_that_are_there_may_get() {
        MadeBatch made = withoutAlkali();
        assertThat(AlkaliBalance.of(Bar.SOAP, made).verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(AlkaliBalance.largestAddition(
                        Bar.SOAP, made, "Sodium Hydroxide", Unsaponified.alkaliShortfall("0 %")))
                .hasToString("Optional[138.5 g]");
        // The display of a line that is not in the pot is that of the bench.
        assertThat(AlkaliBalance.largestReading(
                        Bar.SOAP, made, "Sodium Hydroxide", Unsaponified.alkaliShortfall("0 %")))
                .hasToString("Optional[138.5 g]");
    }

    @Test
    void of_a_pot_with_too_much_alkali_no_more_may_be_poured() {
        MadeBatch made = pot(
                TENTHS,
                read("Olive", "700 g"),
                read("Coconut", "200 g"),
                read("Shea", "100 g"),
                read("Sodium Hydroxide", "150 g"),
                read("Aqua", "300 g"));
        assertThat(AlkaliBalance.largestAddition(
                        Bar.SOAP, made, "Sodium Hydroxide", Unsaponified.alkaliShortfall("0 %")))
                .isEmpty();
    }

    /** What nobody wrote down may be anything, so that nothing is shown. */
    @Test
    void a_fat_that_nobody_wrote_down_is_not_counted_on() {
        MadeBatch made = pot(
                TENTHS,
                read("Coconut", "200 g"),
                read("Shea", "100 g"),
                read("Sodium Hydroxide", "100 g"),
                read("Aqua", "300 g"));
        assertThat(AlkaliBalance.of(Bar.SOAP, made).verdict()).isEqualTo(HydroxideVerdict.NOT_SHOWN);
    }

    private static CorrectionRules wide() {
        return CorrectionRules.within(Tolerances.of("60 %"));
    }

    private static MadeBatch overpoured(Balance balance) {
        return pot(
                balance,
                read("Olive", "700 g"),
                read("Coconut", "200 g"),
                read("Shea", "100 g"),
                read("Sodium Hydroxide", "150 g"),
                read("Aqua", "300 g"));
    }

    /**
     * The fats take 194.4 g KOH less 0.0592 g that the balance hides, and 150.1 · 0.99 g NaOH are 208.4459 g of it: 14.105 g more have to be
     * taken up. Coconut takes 0.248 g for a gram and hides 0.0248 g once more: 56.98 g, so that the display reads 57 g.
     */
    @Test
    void the_mended_pot_is_sure_at_no_shortfall_at_all() {
        SoapMending mending = SoapMending.of(Bar.SOAP, overpoured(TENTHS), wide(), Unsaponified.alkaliShortfall("0 %"));
        assertThat(mending.isSure()).isTrue();
        assertThat(mending.before().verdict()).isNotEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(mending.after().verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(mending.additions().additions()).hasToString("[57 g Coconut]");
        assertThat(mending).hasToString("SMALLEST [57 g Coconut], sure");
        mending.correction().working().check();
        String text = mending.document(Wording.english()).print(Format.TEXT).replaceAll("\\s+", " ");
        assertThat(text).contains("57.0 g").contains("for every lot and whatever the balance does");
        assertThat(text.split("defers to local law", -1)).hasSize(2);
    }

    /** The condition as displayed is kept with 56.1 g already, and the balance may hide what is missing. */
    @Test
    void what_is_enough_as_displayed_is_not_enough() {
        MadeBatch after = io.github.formulationmath.mend.Correction.smallest(
                        overpoured(TENTHS), wide().keeping(Bar.SOAP.leaving(Unsaponified.alkaliShortfall("0 %"))))
                .onDisplay()
                .after();
        assertThat(AlkaliBalance.of(Bar.SOAP, after).verdict()).isEqualTo(HydroxideVerdict.NOT_SHOWN);
    }

    @Test
    void where_nothing_can_be_added_it_is_said_to_be_not_shown() {
        CorrectionRules none = wide();
        for (String fat : List.of("Olive", "Coconut", "Shea")) {
            none = none.freezing(Bar.FORMULA.line(fat));
        }
        SoapMending mending = SoapMending.of(Bar.SOAP, overpoured(TENTHS), none, Unsaponified.alkaliShortfall("0 %"));
        assertThat(mending.isSure()).isFalse();
        assertThat(mending.document(Wording.english()).print(Format.TEXT)).contains("It is not shown");
    }

    @Test
    void repeatability_is_taken_in_with_a_factor_and_not_otherwise() {
        Balance balance = TENTHS.withErrors(ErrorModel.readabilityOnly().withRepeatability("0.05 g"));
        assertThatThrownBy(() ->
                        SoapMending.of(Bar.SOAP, overpoured(balance), wide(), Unsaponified.alkaliShortfall("0 %")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a coverage factor as the last argument");
        SoapMending mending = SoapMending.of(
                Bar.SOAP, overpoured(balance), wide(), Unsaponified.alkaliShortfall("0 %"), CoverageFactor.of(2));
        assertThat(mending.isSure()).isTrue();
        assertThat(mending.after().isWithinCoverage()).isTrue();
        assertThat(mending.additions().total()).isGreaterThan(Amount.mass("57 g"));
    }

    /** 950 g cooked and 50 g added late: the late fat does not count for the cook, so that fat has to be added to the cook. */
    @Test
    void fat_added_late_mends_nothing_of_the_cook() {
        Soap late = Soap.of(Bar.FORMULA)
                .fat("Olive", Bar.fat("Olive", "184", "196"))
                .fat("Coconut", Bar.fat("Coconut", "248", "265"))
                .lateFat("Shea", Bar.fat("Shea", "160", "195"))
                .alkali(
                        "Sodium Hydroxide",
                        Bar.SOAP.alkaliOf("Sodium Hydroxide").orElseThrow())
                .lyeWater("Aqua");
        List<Reading> readings = new ArrayList<>(List.of(
                read("Olive", "700 g"),
                read("Coconut", "200 g"),
                read("Shea", "100 g"),
                read("Sodium Hydroxide", "139 g"),
                read("Aqua", "300 g")));
        MadeBatch made = pot(TENTHS, readings.toArray(Reading[]::new));
        AlkaliBalance judged = AlkaliBalance.of(late, made);
        assertThat(judged.verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(judged.cookAlone().orElseThrow().verdict()).isNotEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        SoapMending mending = SoapMending.of(late, made, wide(), Unsaponified.alkaliShortfall("0 %"));
        assertThat(mending.isSure()).isTrue();
        assertThat(mending.after().cookAlone().orElseThrow().verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(mending.additions().additions())
                .extracting(addition -> addition.line().name())
                .doesNotContain("Shea");
    }

    /**
     * Readings that add up in another order than that of the formula, on a display of 0.1 g whose zero is good to 0.2 g: nothing in it lacks a bound, so
     * that the judgement is for certain. By hand, each line by itself: coconut 199.85 g at least, olive 699.9 g, shea 99.9 g, flakes at most
     * 137.1 g, that is 0.99 · 137.1 − (199.85 · 248 + 699.9 · 184 + 99.9 · 160)/56.10564 · 0.03999711 = −2.8056 g.
     */
    @Test
    void a_pot_without_an_unbounded_error_is_judged_for_certain_in_any_order() {
        Balance coarse = TENTHS.withErrors(ErrorModel.readabilityOnly().withTareResolution(Amount.mass("0.2 g")));
        MadeBatch made = addingUp(coarse);
        assertThat(made.leavesErrorsOut()).isFalse();
        AlkaliBalance balance = AlkaliBalance.of(Bar.SOAP, made);
        assertThat(balance.isWithinCoverage()).isFalse();
        assertThat(balance.verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(AlkaliReport.up(balance.excess().greatest().exactValue())).isEqualTo("-2.805");
    }

    @Test
    void a_pot_with_an_unbounded_error_says_how_it_is_taken_in() {
        MadeBatch made = addingUp(TENTHS.withErrors(ErrorModel.readabilityOnly().withRepeatability("0.05 g")));
        assertThat(made.leavesErrorsOut()).isTrue();
        assertThatThrownBy(() -> AlkaliBalance.of(Bar.SOAP, made))
                .hasMessage(
                        "a balance has an error without a bound, such as its repeatability, so that nothing is sure: take it in"
                                + " with a coverage factor as the last argument, such as CoverageFactor.of(2); the answer then holds within"
                                + " that coverage");
        assertThat(AlkaliBalance.of(Bar.SOAP, made, CoverageFactor.of(2)).isWithinCoverage())
                .isTrue();
    }

    private static MadeBatch addingUp(Balance balance) {
        return MadeBatch.of(Readings.of(
                Bar.plan(Amount.mass("1439.6 g"), balance),
                WeighingMethod.CUMULATIVE,
                List.of(
                        read("Coconut", "200 g"),
                        read("Olive", "900 g"),
                        read("Shea", "1000 g"),
                        read("Sodium Hydroxide", "1137.0 g"),
                        read("Aqua", "1437 g"))));
    }
}
