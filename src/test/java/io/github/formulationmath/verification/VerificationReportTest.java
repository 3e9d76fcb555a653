package io.github.formulationmath.verification;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.verification.FigureCheck.Agreement;
import io.github.formulationmath.verification.Verification.Outcome;
import io.github.formulationmath.verification.Verification.RoundingHabit;
import org.junit.jupiter.api.Test;

class VerificationReportTest {

    private static final Formula BALM = Formulas.oilAndWax("Balm");
    private static final Formula CREAM = Formula.inPercent("Cream")
            .quantitySufficient("Aqua")
            .line("Glycerin", "4 %")
            .line("Phenoxyethanol", "0.9 %")
            .build();

    /** Text on one line, whatever the width of the page. */
    private static String text(Verification verification) {
        return unwrapped(verification.report(Wording.english()).toString());
    }

    private static String unwrapped(String text) {
        return text.replaceAll("\\s+", " ");
    }

    /**
     * 1 oz is 28.349523125 g. 80 g are 80/28.349523125 = 2.821917 oz, 0.6 oz of 20 g are 2.99 g short: worked by hand.
     */
    @Test
    void approximations_keep_their_sign() {
        String text = text(Verification.of(Claims.of(BALM, "100 g", "2.8 oz", "0.6 oz")));
        assertThat(text)
                .contains("Ours: ≈ 2.82192 oz (exactly 128000000/45359237 oz)")
                .contains("disagrees by ≈ −0.105479 oz (exactly −23922289/226796185 oz)")
                .contains("Largest deviation: Wax, ≈ −2.99029 g (exactly −2.990286125 g)")
                .contains("off by ≈ −3.61162 g (exactly −3.611621375 g)");
        assertThat(text(Verification.of(Claims.of(BALM, "100 g", "2.9 oz", "0.9 oz"))))
                .contains("disagrees by ≈ +0.194521 oz (exactly +88233133/453592370 oz)");
    }

    @Test
    void a_short_number_is_not_approximated() {
        assertThat(text(Verification.of(Claims.of(BALM, "100 g", "79.5 g", "20.0 g"))))
                .contains("disagrees by −0.5 g")
                .doesNotContain("≈");
    }

    @Test
    void the_headline_says_what_holds() {
        assertThat(text(Verification.of(Claims.of(BALM, "100 g", "79.5 g", "20.0 g"))))
                .startsWith("Figures claimed for Balm 1 of 2 figures hold. Those that do not: Oil (79.5 g, ours 80 g). "
                        + "Together they make 99.5 g; the batch asked for is 100 g, so they are off by −0.5 g.");
        assertThat(text(Verification.of(Claims.of(BALM, "100 g", "80 g", "20 g"))))
                .startsWith("Figures claimed for Balm All figures hold: 2 of 2. Together they make 100 g, the batch");
        assertThat(text(Verification.of(Claims.of(BALM, "100 g", "80 g"))))
                .startsWith(
                        "Figures claimed for Balm No figure disagrees; 1 of 2 lines are shown rightly. Without a figure: "
                                + "Wax. Together the figures given make 80 g; the batch asked for is 100 g, and not "
                                + "every line has a figure.");
    }

    @Test
    void the_total_shown_counts() {
        Verification wrong =
                Verification.of(Claims.of(BALM, "100 g", "80 g", "20 g").withTotal("90 g"));
        assertThat(wrong.habit()).contains(RoundingHabit.EACH_TO_NEAREST);
        assertThat(wrong.totalAgreement()).contains(Agreement.DISAGREES);
        assertThat(wrong.outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
        assertThat(wrong.causes()).isEmpty();
        assertThat(wrong).asString().endsWith(", total 90 g: does not hold");
        assertThat(text(wrong)).contains("The total shown, 90 g, is not the batch, nor what the figures make.");
        Verification right =
                Verification.of(Claims.of(BALM, "100 g", "80 g", "20 g").withTotal("100 g"));
        assertThat(right.outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(text(right)).contains("The total shown, 100 g, is the batch.");
    }

    @Test
    void a_total_of_the_figures_is_told_apart_from_the_batch() {
        Verification sum =
                Verification.of(Claims.of(BALM, "100 g", "80.5 g", "20.0 g").withTotal("100.5 g"));
        assertThat(sum.outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
        assertThat(text(sum))
                .contains("The total shown, 100.5 g, is not the batch, but what the figures make together.");
        assertThat(text(Verification.of(Claims.of(BALM, "100 g", "80.5 g").withTotal("80.5 g"))))
                .as("a sum only if every line has a figure")
                .contains("80.5 g, is not the batch, nor what");
    }

    @Test
    void a_runner_up_is_told_only_if_it_explains_a_figure_more() {
        Verification none = Verification.of(Claims.of(CREAM, "100 g", "95.1 g", "5.0 g", "0.7 g"));
        assertThat(none.causes()).isEmpty();
        assertThat(none.runnerUp()).isEmpty();
        assertThat(text(none)).contains("No known slip explains this.").doesNotContain("Next best");
        Verification half = Verification.of(Claims.of(CREAM, "100 g", "99.1 g", "5.0 g", "0.9 g"));
        assertThat(half.runnerUp())
                .hasValueSatisfying(cause -> assertThat(cause)
                        .hasToString("REST_NOT_ADJUSTED (Aqua + Glycerin): misses Glycerin, "
                                + "at most 10 steps of the display away"));
        assertThat(text(half))
                .contains("Next best: q.s. line not adjusted to the other lines (Aqua + Glycerin); it misses 1 of 3");
    }

    @Test
    void the_caution_stands_once_with_and_without_limits() {
        Verification verification = Verification.of(Claims.of(CREAM, "100 g", "95.1 g", "4.0 g", "0.9 g"));
        assertThat(text(verification)).containsOnlyOnce("Caution:").containsOnlyOnce("qualified safety assess");
        LimitChecker checker =
                LimitChecker.of(LimitTable.eu2024February(), Product.leaveOn(), DecisionRule.simpleAcceptance());
        assertThat(unwrapped(verification
                        .report(Wording.english(), verification.limits(checker))
                        .toString()))
                .containsOnlyOnce("Caution:")
                .containsOnlyOnce("qualified safety assess")
                .containsOnlyOnce("not presented as current law");
    }

    @Test
    void alkali_does_not_double_the_caution() {
        Formula soap = Formula.inMasses("Bar")
                .line("Olea Europaea Fruit Oil", "500 g")
                .line("Sodium Hydroxide", "67.7 g")
                .build();
        Claim claim =
                Claim.about(soap, BatchSize.ofMass(Amount.mass("567.7 g"))).withFigure("Sodium Hydroxide", "95.0 g");
        assertThat(text(Verification.of(claim)))
                .containsOnlyOnce("Do not make this")
                .containsOnlyOnce("Caution:")
                .containsOnlyOnce("qualified safety assess");
    }
}
