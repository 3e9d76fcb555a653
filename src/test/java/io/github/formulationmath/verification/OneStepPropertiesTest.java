package io.github.formulationmath.verification;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.verification.FigureCheck.Agreement;
import io.github.formulationmath.verification.Verification.Outcome;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One calculator, one step: figures right to it hold however their zeros are written, and a figure off by more than half of
 * it does not, even if it was cut to fewer places. Targets are whole thousandths of a gram, and all is done in whole numbers.
 */
class OneStepPropertiesTest {

    private static final int THOUSAND = 1000;

    @Test
    void zeros_may_be_left_out() {
        trimmed(300, 1600);
    }

    @Test
    void a_figure_cut_to_fewer_places_than_its_like_does_not_hold() {
        cut(300, 1601);
    }

    @Tag("long")
    @Test
    void many_sets() {
        trimmed(20_000, 1602);
        cut(20_000, 1603);
    }

    private static void trimmed(int cases, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < cases; i++) {
            List<Integer> targets = targets(random);
            int places = 1 + random.nextInt(2);
            List<String> figures = targets.stream()
                    .map(target -> milli(target).setScale(places, RoundingMode.HALF_UP))
                    .map(figure -> random.nextBoolean()
                            ? figure.toPlainString()
                            : figure.stripTrailingZeros().toPlainString())
                    .toList();
            Verification verification = of(targets, figures);
            assertThat(verification.outcome()).as("%s %s", targets, figures).isEqualTo(Outcome.HOLDS);
            assertThat(verification.figures()).noneMatch(check -> check.agreement() == Agreement.AGREES_AS_CLOSED);
        }
    }

    /**
     * All from 10 to 99 g, to hundredths, one with a last digit that is no zero and no five; of another, neither the last nor
     * the largest, the places are cut and two steps or more are lost. So it is beside (A); two steps are beyond (C); no line
     * but that one could take the rest; not all are half grams; and three significant digits are not all that was shown.
     */
    private static void cut(int cases, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int tried = 0;
        while (tried < cases) {
            List<Integer> targets = targets(random);
            int largest = targets.indexOf(targets.stream().max(Integer::compare).orElseThrow());
            int place = random.nextInt(targets.size() - 1);
            BigDecimal coarse = milli(targets.get(place)).setScale(random.nextInt(2), RoundingMode.HALF_UP);
            int off = coarse.movePointRight(3).intValueExact() - targets.get(place);
            List<String> figures = new ArrayList<>(targets.stream()
                    .map(target ->
                            milli(target).setScale(2, RoundingMode.HALF_UP).toPlainString())
                    .toList());
            boolean finer = figures.stream().anyMatch(figure -> !figure.matches(".*[05]"));
            if (place == largest || Math.abs(off) < 20 || !finer) {
                continue;
            }
            figures.set(place, coarse.toPlainString());
            if (figures.stream().noneMatch(figure -> figure.matches(".*\\.[0-9][1-46-9]"))) {
                continue;
            }
            tried++;
            Verification verification = of(targets, figures);
            assertThat(verification.outcome()).as("%s %s", targets, figures).isEqualTo(Outcome.DOES_NOT_HOLD);
            for (int i = 0; i < figures.size(); i++) {
                assertThat(verification.figures().get(i).agreement() == Agreement.DISAGREES)
                        .as("%s %s: %s", targets, figures, i)
                        .isEqualTo(i == place);
            }
        }
    }

    private static List<Integer> targets(SplittableRandom random) {
        return random.ints(3 + random.nextInt(5), 10_005, 98_900).boxed().toList();
    }

    private static BigDecimal milli(int thousandths) {
        return new BigDecimal(BigInteger.valueOf(thousandths), 3);
    }

    private static Verification of(List<Integer> targets, List<String> figures) {
        FormulaBuilder builder = Formula.inMasses("set");
        int whole = 0;
        for (int i = 0; i < targets.size(); i++) {
            builder.line(Ingredient.of("line " + i), Amount.mass(milli(targets.get(i)) + " g"));
            whole += targets.get(i);
        }
        return of(builder.build(), milli(whole) + " g", figures);
    }

    private static Verification of(Formula formula, String size, List<String> figures) {
        String[] grams = figures.stream().map(figure -> figure + " g").toArray(String[]::new);
        return Verification.of(Claims.of(formula, size, grams));
    }

    /**
     * Of 148.1 g, 4.31 % is 6.38311 g. In half grams that is 6.5 g, and the water must be on that grid as well; as the last line
     * before it can be the rest only to the tenth that is shown.
     */
    @ParameterizedTest
    @CsvSource({
        "6.5, 141.5, HOLDS_BY_HABIT",
        "6.5, 141.7, DOES_NOT_HOLD",
        "6.5, 141.8, DOES_NOT_HOLD",
        "6.4, 141.7, HOLDS",
        "6.4, 142, HOLDS_BY_HABIT",
        "6.4, 141, DOES_NOT_HOLD"
    })
    void a_habit_gives_every_figure(String glycerin, String water, Outcome outcome) {
        Formula formula = Formula.inPercent("T")
                .quantitySufficient("Aqua")
                .line("Glycerin", "4.31 %")
                .build();
        assertThat(of(formula, "148.1 g", List.of(water, glycerin)).outcome()).isEqualTo(outcome);
    }

    /** Of 100 g, 12.4 and 87.6 g: as whole numbers they are right, with a zero behind the point they claim a digit more. */
    @Test
    void a_zero_that_was_written_is_a_digit() {
        Formula formula =
                Formula.inPercent("T").line("A", "12.4 %").line("B", "87.6 %").build();
        assertThat(of(formula, "100 g", List.of("12", "88")).outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(of(formula, "100 g", List.of("12.0", "88.0")).outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
    }

    /** A batch of 99.6 g in tenths: 99.6 g is its total, 100 g only shown coarser than the figures, 100.0 g is wrong. */
    @ParameterizedTest
    @CsvSource({
        "99.6 g, HOLDS",
        "99.60 g, HOLDS",
        "100 g, HOLDS_BY_HABIT",
        "0.1 kg, HOLDS_BY_HABIT",
        "100.0 g, DOES_NOT_HOLD",
        "0.1000 kg, DOES_NOT_HOLD",
        "99 g, DOES_NOT_HOLD"
    })
    void the_total_has_the_step_of_the_figures(String total, Outcome outcome) {
        Formula formula =
                Formula.inMasses("T").line("A", "49.7 g").line("B", "49.9 g").build();
        Claim claim = Claim.about(formula, BatchSize.ofMass("99.6 g"))
                .withFigure("A", "49.7 g")
                .withFigure("B", "49.9 g")
                .withTotal(total);
        assertThat(Verification.of(claim).outcome()).isEqualTo(outcome);
    }

    /** Of a binary number any digit up to the thirteenth is a claim: 60 digits and not the library tell what it is off. */
    @Test
    void a_raw_figure_that_is_wrong_in_its_thirteenth_digit_does_not_hold() {
        SplittableRandom random = new SplittableRandom(1604);
        int wrong = 0;
        for (int i = 0; i < 300; i++) {
            int a = 1 + random.nextInt(9_998);
            double raw = a / 10_000.0 * 123.4;
            String text = BigDecimal.valueOf(raw).toPlainString();
            String digits = text.replace(".", "").replaceFirst("^0+", "");
            if (digits.length() < 16) {
                continue;
            }
            Formula formula = Formula.inMasses("T")
                    .line("A", a + " g")
                    .line("B", 10_000 - a + " g")
                    .build();
            String other = BigDecimal.valueOf((10_000 - a) / 10_000.0 * 123.4).toPlainString();
            assertThat(of(formula, "123.4 g", List.of(text, other)).outcome()).isEqualTo(Outcome.HOLDS);
            BigDecimal exact =
                    BigDecimal.valueOf(a).multiply(new BigDecimal("123.4")).movePointLeft(4);
            BigDecimal unit = BigDecimal.ONE.movePointLeft(exact.scale() - exact.precision() + 13);
            BigDecimal off = new BigDecimal(text).add(random.nextBoolean() ? unit : unit.negate(), new MathContext(60));
            assertThat(of(formula, "123.4 g", List.of(off.toPlainString(), other))
                            .outcome())
                    .as("%s for %s", off, exact)
                    .isEqualTo(Outcome.DOES_NOT_HOLD);
            wrong++;
        }
        assertThat(wrong).isGreaterThan(20);
    }

    /** Shares of 400 g taken of the 12.1 % of the oil phase: 5.808 for 48 g, and 0.0484, which is 0.0 and says nothing. */
    @Test
    void a_figure_of_nothing_is_not_counted_as_speaking() {
        Formula formula = Formula.inPercent("T")
                .phase("oil")
                .line("A", "12 %")
                .line("B", "0.1 %")
                .phase("water")
                .line("C", "87.9 %")
                .build();
        Verification verification = of(formula, "400 g", List.of("5.8", "0.0", "351.6"));
        assertThat(verification.causes()).isNotEmpty().allSatisfy(cause -> {
            assertThat(cause.slip()).isEqualTo(Slip.WRONG_WHOLE);
            assertThat(cause.figures()).isEqualTo(1);
            assertThat(cause.digits()).isEqualTo(2);
        });
    }
}
