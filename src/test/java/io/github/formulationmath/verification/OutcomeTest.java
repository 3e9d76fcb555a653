package io.github.formulationmath.verification;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.CpuTime;
import io.github.formulationmath.verification.FigureCheck.Agreement;
import io.github.formulationmath.verification.Verification.Cause;
import io.github.formulationmath.verification.Verification.Outcome;
import io.github.formulationmath.verification.Verification.RoundingHabit;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One answer over all that was shown and all that was not; only a whole and right claim holds. */
class OutcomeTest {

    private static final Formula CREAM = Formula.inPercent("Cream")
            .quantitySufficient("Aqua")
            .line("Oil", "20 %")
            .line("Preservative", "0.6 %")
            .build();

    private static Verification of(Formula formula, String size, String... figures) {
        return Verification.of(Claims.of(formula, size, figures));
    }

    private static String text(Verification verification) {
        return verification.report(Wording.english()).toString().replaceAll("\\s+", " ");
    }

    /** Of a correct claim one figure is left away: it no longer holds, whichever it was. */
    @Test
    void a_line_left_away_is_never_fine() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 200; i++) {
            Claim correct = RandomClaims.correct(40_000L + i);
            int without = random.nextInt(correct.figures().size());
            Claim claim = Claim.about(correct.formula(), correct.size());
            claim = correct.balance().map(claim::on).orElse(claim);
            for (var line : correct.formula().lines()) {
                if (line.position() != without + 1) {
                    claim = claim.withFigure(line, correct.figures().get(line.position()));
                }
            }
            Verification verification = Verification.of(claim);
            assertThat(verification.outcome()).isIn(Outcome.INCOMPLETE, Outcome.SHOWS_NOTHING_FOR_SOME_LINES);
            assertThat(verification.withoutFigure())
                    .containsExactly(correct.formula().lines().get(without));
            assertThat(text(verification))
                    .contains("Without a figure: "
                            + correct.formula().lines().get(without).name())
                    .doesNotContain("All figures hold")
                    .doesNotContain("All figures agree");
        }
    }

    /** Shown coarser and coarser, until nothing is left: 0 holds never, on whatever display. */
    @ParameterizedTest
    @CsvSource({"60 g, 48 g, 12 g, 0 g", "60 g, 0 kg, 0 kg, 0 kg", "60 g, 47.6 g, 12.0 g, 0.0 kg"})
    void a_figure_in_which_no_digit_counts_is_never_fine(String size, String water, String oil, String preservative) {
        Verification verification = of(CREAM, size, water, oil, preservative);
        assertThat(verification.outcome()).isEqualTo(Outcome.SHOWS_NOTHING_FOR_SOME_LINES);
        assertThat(verification.figures().get(2).agreement()).isEqualTo(Agreement.SHOWS_NOTHING);
        assertThat(text(verification))
                .contains("No digit counts in: ")
                .contains("Preservative (" + preservative)
                .doesNotContain("All figures hold")
                .doesNotContain("All figures agree");
    }

    @Test
    void a_total_in_which_no_digit_counts_is_never_fine() {
        Claim claim = Claim.about(CREAM, BatchSize.ofMass("100 g"))
                .withFigure("Aqua", "79.4 g")
                .withFigure("Oil", "20.0 g")
                .withFigure("Preservative", "0.6 g");
        assertThat(Verification.of(claim.withTotal("100 g")).outcome()).isEqualTo(Outcome.HOLDS);
        Verification nothing = Verification.of(claim.withTotal("0 kg"));
        assertThat(nothing.outcome()).isEqualTo(Outcome.SHOWS_NOTHING_FOR_SOME_LINES);
        assertThat(text(nothing)).contains("In the total shown, 0 kg, no digit counts.");
        assertThat(Verification.of(claim.withTotal("101 g")).outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
    }

    /** A line of 0.6 g that is left out, and one of 6 g shown as 0. */
    @Test
    void a_figure_of_nothing_explains_nothing() {
        Verification forgotten = of(CREAM, "1000 g", "794.0 g", "200.0 g", "0.0 g");
        assertThat(forgotten.outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
        assertThat(forgotten.causes()).isEmpty();
        assertThat(forgotten.runnerUp()).isEmpty();
    }

    /** Half up, half down, half to even and to odd, of 12.5 and 12.5 and 75 of 100 g; the water closes or stands. */
    @ParameterizedTest
    @CsvSource({
        "74 g, 13 g, 13 g, QS_TAKES_REST, false",
        "75 g, 13 g, 13 g, EACH_TO_NEAREST, false",
        "76 g, 12 g, 12 g, QS_TAKES_REST, false",
        "75 g, 12 g, 13 g, LARGEST_REMAINDERS, false",
        "75 g, 13 g, 12 g, LARGEST_REMAINDERS, false"
    })
    void ties_go_either_way(String water, String a, String b, RoundingHabit habit, boolean mixed) {
        Formula formula = Formula.inPercent("T")
                .quantitySufficient("Aqua")
                .line("A", "12.5 %")
                .line("B", "12.5 %")
                .build();
        Verification verification = of(formula, "100 g", water, a, b);
        assertThat(verification.outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(verification.habit()).contains(habit);
        assertThat(verification.mixesTies()).isEqualTo(mixed);
        assertThat(of(formula, "100 g", "73 g", a, b).outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
    }

    /** 12.5 up and 12.5 down, with 1.5 g over, are by no one rule, and do not close. */
    @Test
    void mixed_ties_are_told() {
        Formula formula = Formula.inMasses("T")
                .line("A", "12.5 g")
                .line("B", "12.5 g")
                .line("C", "14.5 g")
                .line("D", "60.5 g")
                .build();
        Verification verification = of(formula, "100 g", "13 g", "12 g", "15 g", "61 g");
        assertThat(verification.outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(verification.mixesTies()).isTrue();
        assertThat(text(verification)).contains("by no one rule");
    }

    /** Water as the batch of 100.37 g less the figures of the others, 20.07 to 20.1 and 0.602 to 0.6, as it is. */
    @Test
    void the_rest_may_be_of_the_batch_as_it_is() {
        assertThat(of(CREAM, "100.37 g", "79.67 g", "20.1 g", "0.6 g").outcome())
                .isEqualTo(Outcome.HOLDS);
        assertThat(of(CREAM, "100.37 g", "79.66 g", "20.1 g", "0.6 g").outcome())
                .isEqualTo(Outcome.DOES_NOT_HOLD);
    }

    /**
     * By hand: of 1234 g at 70, 26 and 4 % are 863.8, 320.84 and 49.36 g; of 16 oz at 28.35 g are 317.52, 117.936 and 18.144
     * g; 567 g at 28.35 g are 20 oz.
     */
    @ParameterizedTest
    @CsvSource({
        "1234 g, 860 g, 320 g, 49 g, SIGNIFICANT_DIGITS",
        "16 oz, 317.52 g, 117.936 g, 18.144 g, OUNCE_OF_28_35_GRAMS",
        "567 g, 14.000 oz, 5.2000 oz, 0.80000 oz, OUNCE_OF_28_35_GRAMS",
        "1234 g, 864.0 g, 321.0 g, 49.5 g, HALF_GRAMS"
    })
    void other_habits_are_told(String size, String a, String b, String c, RoundingHabit habit) {
        Formula formula = Formula.inPercent("T")
                .line("A", "70 %")
                .line("B", "26 %")
                .line("C", "4 %")
                .build();
        assertByHabit(of(formula, size, a, b, c), habit);
    }

    /** 40.2, 20.4, 20.4 and 19 g make 99 g in whole grams; the remainders would give the last gram to a line of 20.4 g. */
    @ParameterizedTest
    @CsvSource({"41 g, 20 g, 20 g, 19 g, LARGEST_LINE_TAKES_REST", "40 g, 20 g, 20 g, 20 g, LAST_LINE_TAKES_REST"})
    void the_rest_elsewhere_is_told(String a, String b, String c, String d, RoundingHabit habit) {
        Formula formula = Formula.inMasses("T")
                .line("A", "40.2 g")
                .line("B", "20.4 g")
                .line("C", "20.4 g")
                .line("D", "19 g")
                .build();
        assertByHabit(of(formula, "100 g", a, b, c, d), habit);
        assertThat(of(formula, "100 g", a, "22 g", c, d).outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
    }

    private static void assertByHabit(Verification verification, RoundingHabit habit) {
        assertThat(verification.habit()).contains(habit);
        assertThat(verification.outcome()).isEqualTo(Outcome.HOLDS_BY_HABIT);
        assertThat(text(verification)).contains("if figures are given so").doesNotContain("All figures hold");
    }

    @Test
    void evidence_of_one_digit_only_fits() {
        Formula formula = Formula.inPercent("T")
                .phase("a")
                .line("A", "80 %")
                .line("B", "3 %")
                .phase("b")
                .line("C", "17 %")
                .build();
        Verification little = of(formula, "400 g", "320 g", "2 g", "68 g");
        assertThat(little.causes())
                .isNotEmpty()
                .allSatisfy(cause -> assertThat(cause.isTold()).isFalse());
        assertThat(text(little)).contains("which is too little to tell").doesNotContain("Most likely");
        Verification enough = of(formula, "400 g", "320 g", "2.0 g", "68 g");
        assertThat(enough.causes()).singleElement().satisfies(cause -> {
            assertThat(cause.slip()).isEqualTo(Slip.OTHER_PHASE);
            assertThat(cause.isTold()).isTrue();
            assertThat(cause.figures()).isEqualTo(1);
            assertThat(cause.digits()).isEqualTo(2);
        });
        assertThat(text(enough))
                .contains("Most likely: share taken of the mass of another phase (B · b)")
                .contains("Wrong figures that speak for it: 1, with 2 digits that count.");
    }

    /** Over all corpora: what is told as most likely rests on two digits in wrong figures. */
    @Test
    void nothing_is_most_likely_without_two_digits() {
        for (long i = 0; i < 150; i++) {
            Verification verification = Verification.of(RandomClaims.mistyped(300_000L + i));
            int digits = verification.figures().stream()
                    .filter(check -> check.agreement() == Agreement.DISAGREES)
                    .mapToInt(check -> check.figure()
                            .number()
                            .dividedBy(check.step().exactValue())
                            .floor()
                            .toString()
                            .replaceFirst("^0+", "")
                            .length())
                    .sum();
            if (digits < 2) {
                assertThat(text(verification)).doesNotContain("Most likely");
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"NaOH", "Caustic soda", "Sodium Hydroxide (NaOH)", "sodium  hydroxide", "Lye", "Soda lye"})
    void the_alkali_has_many_names(String name) {
        Formula soap = Formula.inMasses("Bar")
                .line("Olea Europaea Fruit Oil", "500 g")
                .line(name, "67.7 g")
                .build();
        Verification verification = of(soap, "567.7 g", "500.0 g", "95.0 g");
        assertThat(verification.causes())
                .singleElement()
                .satisfies(cause -> assertThat(cause.slip()).isEqualTo(Slip.ALKALI_EXCHANGED));
        assertThat(text(verification)).contains("Do not make this");
    }

    /** 5000 lines with one wrong figure: what is cubic does not end, and what is quadratic takes minutes. */
    @Test
    void many_lines_take_no_longer_than_they_must() {
        for (Optional<Balance> balance :
                List.of(Optional.<Balance>empty(), Optional.of(Balance.of("0.1 g", "50 kg")))) {
            Claim claim = LongClaims.oneWrong(5_000);
            Claim on = balance.map(claim::on).orElse(claim);
            Verification verification =
                    CpuTime.assertWithin(java.time.Duration.ofSeconds(60), () -> Verification.of(on));
            assertThat(verification.outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
            assertThat(verification.causes()).extracting(Cause::slip).contains(Slip.DECIMAL_POINT_MOVED);
        }
    }

    /** Shares of 1/2, 1/3, 1/4 … make numbers of thousands of digits: they may be compared, but seldom reduced. */
    @Test
    void many_denominators_take_no_longer_than_they_must() {
        Claim claim = LongClaims.manyDenominators(2_500);
        Verification verification =
                CpuTime.assertWithin(java.time.Duration.ofSeconds(45), () -> Verification.of(claim));
        assertThat(verification.outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
    }

    @Test
    void many_lines_are_read_no_longer_than_they_must() {
        String table = LongClaims.table(20_000);
        Claim claim = CpuTime.assertWithin(
                java.time.Duration.ofSeconds(60), () -> Claim.read(new java.io.StringReader(table)));
        assertThat(claim.figures()).hasSize(20_000);
    }
}
