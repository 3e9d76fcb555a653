package io.github.formulationmath.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Works every exercise out again from its printed words, in decimals and by what the topic means: a number over a number,
 * rounded once. Shares no code with the library.
 */
class KeyOracleTest {

    private static final int LEARNERS = 40 * Math.max(1, Integer.getInteger("formulationmath.cases", 1) / 10);
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    /** What is wanted as a fraction, and the grid it is rounded to. */
    private record Wanted(BigDecimal above, BigDecimal below, String grid, RoundingMode mode) {

        BigDecimal answer() {
            BigDecimal step = new BigDecimal(grid);
            return above.divide(below.multiply(step), 0, mode).multiply(step);
        }

        boolean isTie() {
            BigDecimal twice = above.add(above);
            BigDecimal step = below.multiply(new BigDecimal(grid));
            return twice.remainder(step).signum() == 0
                    && twice.divideToIntegralValue(step)
                                    .remainder(BigDecimal.valueOf(2))
                                    .intValue()
                            == 1;
        }
    }

    private static Wanted wanted(Topic topic, String question, RoundingMode ties) {
        List<BigDecimal> n = Printed.numbers(question);
        BigDecimal a = n.get(0);
        BigDecimal b = n.get(1);
        return switch (topic) {
            case PERCENT_TO_GRAMS -> new Wanted(a.multiply(n.get(2)), HUNDRED, "0.01", ties);
            case QUANTITY_SUFFICIENT ->
                new Wanted(
                        n.get(3).subtract(a).subtract(b).subtract(n.get(2)).multiply(n.get(4)), HUNDRED, "0.1", ties);
            case PARTS, SCALING -> new Wanted(a.multiply(n.get(3)), a.add(b).add(n.get(2)), "0.1", ties);
            case ROUNDING -> new Wanted(a.multiply(b), HUNDRED, n.get(2).toPlainString(), ties);
            case RELATIVE_ERROR -> relativeError(a.multiply(b).divide(HUNDRED), n.get(2), ties);
            case SMALLEST_BATCH ->
                new Wanted(n.get(3).multiply(HUNDRED), a.min(b).min(n.get(2)), "1", RoundingMode.CEILING);
            case DENSITY ->
                question.contains("millilitres")
                        ? new Wanted(a, b, "0.1", ties)
                        : new Wanted(a.multiply(b), BigDecimal.ONE, "0.1", ties);
            case STRENGTH -> new Wanted(a.multiply(n.get(2)), b, "0.1", ties);
            case OUNCES -> new Wanted(a.multiply(n.get(2)).add(b).multiply(n.get(3)), BigDecimal.ONE, "1", ties);
            case DILUTION -> new Wanted(b.multiply(a.subtract(n.get(2))), a, "0.1", ties);
            case ALKALI ->
                new Wanted(
                        a.multiply(b).multiply(HUNDRED.subtract(n.get(2))).multiply(n.get(5)),
                        THOUSAND.multiply(n.get(4)).multiply(n.get(3)),
                        "0.1",
                        ties);
        };
    }

    /** The display rounds by itself, whatever the school does. */
    private static Wanted relativeError(BigDecimal mass, BigDecimal step, RoundingMode ties) {
        BigDecimal reading = mass.divide(step, 0, RoundingMode.HALF_EVEN).multiply(step);
        return new Wanted(reading.subtract(mass).abs().multiply(HUNDRED), mass, "0.01", ties);
    }

    @Test
    void every_key_is_what_the_words_of_the_exercise_ask_for() {
        ClassSet set = ClassSet.numbered("class", List.of(Topic.values()), LEARNERS, 99);
        assertThat(rightIn(set, RoundingMode.HALF_EVEN)).isEqualTo(LEARNERS * Topic.values().length);
        assertThat(rightIn(set.withSchoolRounding(), RoundingMode.HALF_UP)).isEqualTo(LEARNERS * Topic.values().length);
    }

    private static int rightIn(ClassSet set, RoundingMode ties) {
        int right = 0;
        for (int learner = 1; learner <= set.learners().size(); learner++) {
            for (Exercise exercise : set.exercises(learner)) {
                String question = exercise.question(Printed.STYLE).replace('\u00A0', ' ');
                Wanted wanted = wanted(exercise.topic(), question, ties);
                assertThat(Printed.number(exercise.answer(Printed.STYLE)))
                        .as("%s", exercise)
                        .isEqualByComparingTo(wanted.answer());
                right++;
            }
        }
        return right;
    }

    /** Half way between two steps both rules are asked for, and lead to different answers; nowhere else they do. */
    @Test
    void school_rounding_changes_ties_alone() {
        ClassSet set = ClassSet.numbered("class", List.of(Topic.ROUNDING), 200, 5);
        ClassSet school = set.withSchoolRounding();
        int ties = 0;
        int different = 0;
        for (int learner = 1; learner <= 200; learner++) {
            Exercise display = set.exercises(learner).get(0);
            Exercise up = school.exercises(learner).get(0);
            String question = display.question(Printed.STYLE);
            if (!question.equals(up.question(Printed.STYLE))) {
                continue;
            }
            boolean tie = wanted(Topic.ROUNDING, question, RoundingMode.HALF_UP).isTie();
            boolean differs = !display.answer(Printed.STYLE).equals(up.answer(Printed.STYLE));
            assertThat(differs && !tie).as(question).isFalse();
            ties += tie ? 1 : 0;
            different += differs ? 1 : 0;
        }
        assertThat(ties).isGreaterThan(30);
        assertThat(different).isBetween(10, ties);
    }
}
