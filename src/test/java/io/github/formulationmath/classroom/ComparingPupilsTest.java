package io.github.formulationmath.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Pupils who work nothing out and only compare sizes: how often they are right. The rules are played with the numbers as
 * printed; none may be right more than 40 % of the time over all topics. And what stands among the wrong answers.
 */
class ComparingPupilsTest {

    private static final int SHEETS = 100 * Math.max(1, Integer.getInteger("formulationmath.cases", 1));
    private static final double MOST = 0.40;

    /** What a pupil sees of an exercise. */
    private record Seen(Topic topic, List<BigDecimal> choices, int right, List<BigDecimal> givens) {
        static Seen of(Exercise exercise) {
            List<BigDecimal> choices = exercise.choices(Printed.STYLE).stream()
                    .map(Printed::number)
                    .toList();
            return new Seen(
                    exercise.topic(),
                    choices,
                    exercise.rightLetter().charAt(0) - 'a',
                    Printed.numbers(exercise.question(Printed.STYLE)));
        }

        int ranked(int rank) {
            List<BigDecimal> sorted = new ArrayList<>(choices);
            sorted.sort(Comparator.naturalOrder());
            return choices.indexOf(sorted.get(rank));
        }

        int nearest(List<BigDecimal> to, BiFunction<BigDecimal, BigDecimal, Double> distance) {
            int best = 0;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < choices.size(); i++) {
                for (BigDecimal given : to) {
                    double away = distance.apply(choices.get(i), given);
                    if (away < least) {
                        least = away;
                        best = i;
                    }
                }
            }
            return best;
        }

        BigDecimal mean() {
            BigDecimal sum = choices.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
            return sum.divide(BigDecimal.valueOf(choices.size()));
        }

        BigDecimal median() {
            return choices.get(ranked(1)).add(choices.get(ranked(2))).divide(BigDecimal.valueOf(2));
        }
    }

    private static List<Seen> all;

    @BeforeAll
    static void draw() {
        all = new ArrayList<>();
        for (int first = 0; first < SHEETS; first += 100) {
            ClassSet set = ClassSet.numbered("class", List.of(Topic.values()), 100, 7 + first);
            for (int learner = 1; learner <= 100; learner++) {
                set.exercises(learner).forEach(exercise -> all.add(Seen.of(exercise)));
            }
        }
    }

    private static double apart(BigDecimal a, BigDecimal b) {
        return a.subtract(b).abs().doubleValue();
    }

    private static double fold(BigDecimal a, BigDecimal b) {
        return Math.abs(Math.log(a.doubleValue() / b.doubleValue()));
    }

    private interface Rule {
        int choose(Seen seen);
    }

    private static Map<String, Rule> rules() {
        Map<String, Rule> rules = new TreeMap<>();
        rules.put("smallest", seen -> seen.ranked(0));
        rules.put("second", seen -> seen.ranked(1));
        rules.put("third", seen -> seen.ranked(2));
        rules.put("largest", seen -> seen.ranked(3));
        rules.put(
                "nearest to a number of the question", seen -> seen.nearest(seen.givens(), ComparingPupilsTest::apart));
        rules.put(
                "of the size of a number of the question",
                seen -> seen.nearest(seen.givens(), ComparingPupilsTest::fold));
        rules.put("nearest to the mean", seen -> seen.nearest(List.of(seen.mean()), ComparingPupilsTest::apart));
        rules.put("nearest to the median", seen -> seen.nearest(List.of(seen.median()), ComparingPupilsTest::apart));
        rules.put("a", seen -> 0);
        rules.put("b", seen -> 1);
        rules.put("c", seen -> 2);
        rules.put("d", seen -> 3);
        return rules;
    }

    @Test
    void who_only_compares_sizes_is_mostly_wrong() {
        rules().forEach((name, rule) -> {
            long hits = all.stream()
                    .filter(seen -> rule.choose(seen) == seen.right())
                    .count();
            assertThat((double) hits / all.size()).as(name).isLessThanOrEqualTo(MOST);
        });
    }

    /** In no topic either; asked where there are sheets enough to tell. */
    @Test
    void no_topic_gives_its_answers_away() {
        Map<Topic, List<Seen>> byTopic = all.stream().collect(Collectors.groupingBy(Seen::topic));
        assertThat(byTopic).hasSameSizeAs(Topic.values());
        double most = SHEETS > 500 ? MOST : MOST + 0.1;
        byTopic.forEach((topic, exercises) -> rules().forEach((name, rule) -> {
            long hits = exercises.stream()
                    .filter(seen -> rule.choose(seen) == seen.right())
                    .count();
            assertThat((double) hits / exercises.size())
                    .as("%s, %s", topic, name)
                    .isLessThanOrEqualTo(most);
        }));
    }

    @Test
    void decimal_shifts_are_few_and_never_all() {
        int wrong = 0;
        int moved = 0;
        for (Seen seen : all) {
            String right = Printed.digits(seen.choices().get(seen.right()));
            long same = seen.choices().stream()
                            .filter(choice -> Printed.digits(choice).equals(right))
                            .count()
                    - 1;
            wrong += seen.choices().size() - 1;
            moved += (int) same;
            assertThat(same).as("%s", seen).isLessThanOrEqualTo(1);
            assertThat(seen.choices()).doesNotHaveDuplicates().hasSize(4);
        }
        assertThat(moved).isPositive().isLessThan(wrong / 5);
    }
}
