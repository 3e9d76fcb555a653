package io.github.formulationmath.verification;

import static io.github.formulationmath.support.Golden.assertGolden;
import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.HtmlChecks;
import io.github.formulationmath.verification.FigureCheck.Agreement;
import io.github.formulationmath.verification.Verification.Cause;
import io.github.formulationmath.verification.Verification.Outcome;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class VerificationTest {

    private static final Formula LOTION = Formulas.lotion("Oat lotion");
    private static final BatchSize SIZE = BatchSize.ofMass(Amount.mass("400 g"));

    private static Claim claim(String... figures) {
        return Claims.of(LOTION, "400 g", figures);
    }

    @Test
    void a_claim_is_of_a_size_that_its_formula_can_have() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Claim.about(LOTION, BatchSize.ofVolume(Amount.volume("400 mL"))))
                .withMessageContaining("has no density");
        assertThat(Claim.about(LOTION, BatchSize.ofVolume("400 mL", "0.95 g/mL")))
                .hasToString(LOTION.name() + ", 400 mL at 0.95 g/mL");
        Claim packs = Claim.about(LOTION, BatchSize.ofPacks(8, "50 g"));
        assertThat(Claim.about(LOTION, BatchSize.ofPacks(8, "50 g", "0 %"))).isEqualTo(packs);
    }

    /** Shares of the oil phase of 68 g: 12 % is 8.16 g, 5 % is 3.4 g. Worked by hand. */
    @Test
    void shares_of_the_wrong_whole() {
        Verification verification =
                Verification.of(claim("320.0 g", "12.0 g", "8.2 g", "3.4 g").withTotal("400 g"));
        assertThat(verification.outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
        assertThat(verification.figures().stream().map(FigureCheck::agreement))
                .containsExactly(Agreement.AGREES, Agreement.AGREES, Agreement.DISAGREES, Agreement.DISAGREES);
        assertThat(verification.largestError().line().name()).isEqualTo("Avena Sativa Kernel Oil");
        assertThat(verification.largestDeviation()).isEqualTo(Amount.mass("39.8 g"));
        assertThat(verification.causes()).singleElement().satisfies(cause -> {
            assertThat(cause.slip()).isEqualTo(Slip.WRONG_WHOLE);
            assertThat(cause.detail()).isEqualTo("oil");
            assertThat(cause.explainsAll()).isTrue();
        });
        assertThat(verification.runnerUp()).as("none explains more").isEmpty();
        assertThat(verification.closes()).isFalse();
        assertThat(verification.totalAgreement()).contains(Agreement.AGREES);
        assertThat(verification.sum()).isEqualTo(Amount.mass("343.6 g"));
        assertReports("wrong-whole", verification.report(Wording.english()));
    }

    private static void assertReports(String name, Document report) {
        assertGolden("verification/" + name + ".txt", report.print(Format.TEXT));
        assertGolden("verification/" + name + ".md", report.print(Format.MARKDOWN));
        String html = report.print(Format.HTML);
        assertGolden("verification/" + name + ".html", html);
        HtmlChecks.assertAccessible(html);
    }

    @Test
    void right_figures_need_no_explanation() {
        Verification verification = Verification.of(claim("320 g", "12 g", "48.0 g", "20.00 g"));
        assertThat(verification.outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(verification.closes()).isTrue();
        assertThat(verification.largestDeviation()).isEqualTo(Amount.mass("0 g"));
        assertThat(verification.causes()).isEmpty();
        assertThat(verification.runnerUp()).isEmpty();
        assertReports("right", verification.report(Wording.english()));
    }

    @Test
    void no_slip_explains_everything() {
        Verification verification = Verification.of(claim("320 g", "13 g", "48 g", "99 g"));
        assertThat(verification.toString()).endsWith("; no known slip explains this");
        assertThat(verification.causes()).isEmpty();
        assertReports("unexplained", verification.report(Wording.english()));
    }

    /** 1 oz t is 31.1034768 g and 1 US fl oz of water 29.57 g: on a coarse display, told by the figures or not at all. */
    @Test
    void what_cannot_be_told_apart_is_said() {
        Formula two = Formula.inPercent("two")
                .line("Aqua", "50 %")
                .line("Glycerin", "50 %")
                .build();
        BatchSize packs = BatchSize.ofPacks(10, Amount.mass("10 g"), MassFraction.ofPercent("10"));
        Verification verification = Verification.of(
                Claim.about(two, packs).withFigure("Aqua", "50 g").withFigure("Glycerin", "50 g"));
        assertThat(verification.causes().get(0).slip()).isEqualTo(Slip.OVERAGE_LEFT_OUT);
        Ingredient thick = Ingredient.of("Syrup").withDensity(Density.ofGramsPerMillilitre("1.1"));
        Formula syrups = Formula.inPercent("syrups")
                .line(thick, "50 %")
                .line(Ingredient.of("Syrup B").withDensity(Density.ofGramsPerMillilitre("1.1")), "50 %")
                .build();
        Verification both = Verification.of(
                Claim.about(syrups, packs).withFigure("Syrup", "50 g").withFigure("Syrup B", "50 g"));
        assertThat(both.causes().stream().map(Cause::slip))
                .containsExactlyInAnyOrder(Slip.MILLILITRES_AS_GRAMS, Slip.OVERAGE_LEFT_OUT);

        assertThat(both.report(Wording.english()).toString()).contains("cannot tell them apart");
    }

    @Test
    void exchanged_alkali_is_warned_of() {
        Formula soap = Formula.inMasses("Bar")
                .line("Olea Europaea Fruit Oil", "500 g")
                .line("Aqua", "150 g")
                .line("Sodium Hydroxide", "67.7 g")
                .build();
        Claim claim = Claim.about(soap, BatchSize.ofMass(Amount.mass("717.7 g")))
                .withFigure("Olea Europaea Fruit Oil", "500.0 g")
                .withFigure("Aqua", "150.0 g")
                .withFigure("Sodium Hydroxide", "95.0 g");
        Verification verification = Verification.of(claim);
        assertThat(verification.causes().get(0).slip()).isEqualTo(Slip.ALKALI_EXCHANGED);
        assertThat(verification.report(Wording.english()).toString()).contains("Do not make this");
    }

    @Property(tries = 100)
    void plan_that_closes_agrees(@ForAll @IntRange(min = 20, max = 900) int grams) {
        Batch batch = Batch.of(LOTION, BatchSize.ofMass(grams + ".3 g"));
        for (Closure closure : Closure.values()) {
            WeighingPlan plan = WeighingPlan.of(
                    batch, Bench.of(Balance.of("0.2 g", "5000 g")).closing(closure));
            Claim claim = Claim.about(LOTION, BatchSize.ofMass(Amount.mass(grams + ".3 g")))
                    .on(Balance.of("0.2 g", "5000 g"));
            for (PlannedLine line : plan.lines()) {
                claim = claim.withFigure(
                        line.target().line(),
                        Figure.parse(
                                line.reading().in(io.github.formulationmath.quantity.FormulationUnits.GRAM) + " g"));
            }
            Verification verification = Verification.of(claim);
            assertThat(verification.outcome())
                    .as("%s %s", claim, closure)
                    .isIn(Outcome.HOLDS, Outcome.SHOWS_NOTHING_FOR_SOME_LINES);
            assertThat(verification.causes()).isEmpty();
        }
    }

    @Test
    void every_deviation_shows_its_working() {
        Verification verification = Verification.of(claim("320.1 g", "12 g", "8.2 g", "3.4 g"));
        assertSelfChecking(verification.largestDeviation().working());
        verification
                .figures()
                .forEach(check -> assertSelfChecking(check.deviation().working()));
        Ingredient oil = Ingredient.of("Oil").withDensity(Density.ofGramsPerMillilitre("0.92"));
        Formula formula =
                Formula.inPercent("f").line(oil, "50 %").line("Aqua", "50 %").build();
        Verification volumes = Verification.of(
                Claim.about(formula, SIZE).withFigure("Oil", "184 mL").withFigure("Aqua", "200 g"));
        assertSelfChecking(volumes.largestDeviation().working());
        assertThat(volumes.causes().get(0).slip()).isEqualTo(Slip.DENSITY_INVERTED);
        assertThat(volumes.largestError().toString()).contains("Oil 184 mL: disagrees, ours 5000/23 mL");
    }

    @Property(tries = 60)
    void random_claims_show_their_working(@ForAll long seed) {
        Slip slip = Slip.values()[(int) Math.floorMod(seed, (long) Slip.values().length)];
        Verification verification = Verification.of(RandomClaims.with(slip, seed % 100_000));
        assertSelfChecking(verification.largestDeviation().working());
        HtmlChecks.parse(verification.report(Wording.english()).print(Format.HTML));
        assertThat(verification.report(Wording.english()).toString().lines()).allMatch(line -> line.length() <= 80);
    }

    /** Phenoxyethanol is allowed up to 1.0 % (Regulation (EC) No 1223/2009, Annex V, entry 29). */
    @Test
    void limits_are_checked_under_their_figures() {
        Formula kept = Formulas.preservedWater("kept");
        Claim claim = Claim.about(kept, BatchSize.ofMass(Amount.mass("100 g")))
                .withFigure("Aqua", "90.0 g")
                .withFigure("Phenoxyethanol", "9.0 g");
        LimitChecker checker =
                LimitChecker.of(LimitTable.eu2024February(), Product.leaveOn(), DecisionRule.simpleAcceptance());
        Verification verification = Verification.of(claim);
        assertThat(verification.limits(checker).verdicts())
                .anyMatch(verdict -> verdict.conformity().toString().contains("EXCEED"));
        assertThat(verification
                        .report(Wording.english(), verification.limits(checker))
                        .toString())
                .contains("Limits under these figures")
                .contains("Phenoxyethanol");
        for (LimitReport other :
                List.of(checker.check(kept), checker.check(verification.batch().formula()))) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> verification.report(Wording.english(), other))
                    .withMessageContaining("take it from limits(checker)");
        }
        Claim half = Claim.about(kept, SIZE).withFigure("Aqua", "90 g");
        assertThatIllegalStateException()
                .isThrownBy(() -> Verification.of(half).limits(checker))
                .withMessageContaining("1 figures for 2 lines");
        Claim nothing = half.withFigure("Phenoxyethanol", "0 g");
        assertThatIllegalStateException()
                .isThrownBy(() -> Verification.of(nothing).limits(checker))
                .withMessageContaining("more than 0");
    }

    @Test
    void what_is_no_claim_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Verification.of(Claim.about(LOTION, SIZE)))
                .withMessageContaining("no figures");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> claim("1 g").withFigure("Aqua", "2 g"))
                .withMessageContaining("has a figure already");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> claim().withFigure("Aqua", "2 mL"))
                .withMessageContaining("no density");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> claim().withTotal("2 mL"))
                .withMessageContaining("must be a mass");
        Formula other = Formulas.only("other", "Aqua");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> claim().withFigure(other.lines().get(0), Figure.parse("1 g")))
                .withMessageContaining("is not a line of");
        for (String text : List.of("", "12", "12g", "1e3 g", "1/2g", "-1 g", "12 stone", "12,5 g", "1.5.2 g")) {
            assertThatIllegalArgumentException().as(text).isThrownBy(() -> Figure.parse(text));
        }
        assertThatNullPointerException().isThrownBy(() -> Verification.of(null)).withMessage("claim");
    }

    @Test
    void figures_keep_their_digits() {
        Figure figure = Figure.parse("12.50 oz");
        assertThat(figure.lastDigit()).isEqualTo(Amount.mass("0.01 oz"));
        assertThat(figure).hasToString("12.50 oz").isEqualTo(Figure.parse("12.50 oz"));
        assertThat(figure).isNotEqualTo(Figure.parse("12.5 oz")).hasSameHashCodeAs(Figure.parse("12.50 oz"));
        assertThat(figure.isVolume()).isFalse();
        assertThat(Figure.parse("2 US fl oz").isVolume()).isTrue();
    }
}
