package io.github.formulationmath.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.support.ChemistryTopics;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Worksheets on alkali, dilution, alligation, emulsifiers and acids, and what those go wrong by who go wrong. */
class ChemistryWorksheetsTest {

    private static final int CASES = 60 * Math.max(1, Integer.getInteger("formulationmath.cases", 1));

    private static Step step(Working working, String label) {
        return working.steps().stream()
                .filter(step -> step.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static Optional<String> wrong(Working working, String label, Mistake mistake) {
        return mistake.make(step(working, label), working)
                .map(found -> Rounding.toDecimalPlaces(3).format(found.value()));
    }

    private static String last(Working working) {
        List<Step> steps = working.steps();
        return steps.get(steps.size() - 1).label();
    }

    /**
     * 500 g of a fat of 190 mg KOH/g, 5 % short, with NaOH of 98 %: 1.693234 mol, 1.608573 mol, 65.651 g. With the molar mass of KOH it
     * is 92.092 g (+40.27 %), without the purity 64.338 g, multiplied by it 63.051 g; with the shortfall added 1.777896 mol.
     */
    @Test
    void alkali_for_a_fat() {
        Working working = ChemistryTopics.soda("500 g", "190 mg KOH/g", "98 %", "5 %");
        String alkali = last(working);
        assertThat(Rounding.toDecimalPlaces(3).format(step(working, alkali).value()))
                .isEqualTo("65.651");
        assertThat(wrong(working, alkali, Mistake.WRONG_MOLAR_MASS)).contains("92.092");
        assertThat(wrong(working, alkali, Mistake.PURITY_LEFT_OUT)).contains("64.338");
        assertThat(wrong(working, alkali, Mistake.MULTIPLIED)).contains("63.051");
        assertThat(wrong(working, "N", Mistake.ADDED)).contains("1.778");
        assertThat(wrong(working, "N", Mistake.REDUCTION_LEFT_OUT)).contains("1.693");
        assertThat(wrong(working, "n_1", Mistake.WRONG_MOLAR_MASS)).contains("2.375");
        assertThat(LongStream.range(0, 20)
                        .mapToObj(seed -> Worksheet.of(working, Set.of(alkali), seed)
                                .key(Style.steps())
                                .print(Format.TEXT)
                                .replaceAll("\\s+", " ")))
                .anyMatch(key ->
                        key.contains("92.0918 g: M_HKO (molar mass of KOH) taken for M_HNaO (molar mass of NaOH)"));
    }

    /** What a catalogue has must be met: each of the mistakes of this chapter stands among the choices of some sheet. */
    @Test
    void the_mistakes_of_the_chapter_are_offered() {
        Set<Mistake> offered = EnumSet.noneOf(Mistake.class);
        for (int seed = 0; seed < 120; seed++) {
            sheets(seed)
                    .forEach(sheet -> sheet.blanks()
                            .forEach(blank -> blank.choices()
                                    .forEach(choice -> choice.mistake().ifPresent(offered::add))));
        }
        assertThat(offered)
                .contains(
                        Mistake.PURITY_LEFT_OUT,
                        Mistake.WRONG_MOLAR_MASS,
                        Mistake.REDUCTION_LEFT_OUT,
                        Mistake.OTHER_PART,
                        Mistake.PLAIN_MEAN,
                        Mistake.ADDED,
                        Mistake.MULTIPLIED,
                        Mistake.INVERTED_QUOTIENT);
    }

    private static List<Worksheet> sheets(int seed) {
        List<Worksheet> sheets = new ArrayList<>();
        for (var topic : ChemistryTopics.ALL) {
            SplittableRandom random = new SplittableRandom(seed);
            Working working = topic.apply(random);
            long computed = working.steps().stream()
                    .filter(step -> step.definition().isPresent())
                    .count();
            sheets.add(Worksheet.of(working, 1 + seed % (int) computed, seed));
        }
        return sheets;
    }

    /** Who always takes the largest, the smallest or the one in the same place by size is right in at most two of five. */
    @Test
    void comparing_sizes_does_not_find_the_right_one() {
        int[] byRank = new int[5];
        int largest = 0;
        int all = 0;
        for (int seed = 0; seed < 60; seed++) {
            for (Worksheet sheet : sheets(seed)) {
                for (Worksheet.Blank blank : sheet.blanks()) {
                    if (!blank.choices().isEmpty()) {
                        List<Ratio> sorted = blank.choices().stream()
                                .map(Worksheet.Choice::value)
                                .sorted()
                                .toList();
                        int rank = sorted.indexOf(blank.step().value());
                        byRank[rank]++;
                        largest += rank == sorted.size() - 1 ? 1 : 0;
                        all++;
                    }
                }
            }
        }
        assertThat(byRank).as("of %s", all).isNotEmpty();
        for (int count : byRank) {
            assertThat(count).isLessThan(all * 2 / 5);
        }
        assertThat(largest).isLessThan(all * 2 / 5);
    }

    /** Decimal shifts are at most a fifth of what is wrong, at most one of a blank, and never alone. */
    @Test
    void moved_points_are_few() {
        int wrong = 0;
        int moved = 0;
        for (int seed = 0; seed < 60; seed++) {
            for (Worksheet sheet : sheets(seed)) {
                for (Worksheet.Blank blank : sheet.blanks()) {
                    long here = blank.choices().stream()
                            .filter(choice -> !choice.isRight())
                            .filter(choice -> digits(choice.value())
                                    .equals(digits(blank.step().value())))
                            .count();
                    assertThat(here).as("%s", blank).isLessThanOrEqualTo(1);
                    moved += (int) here;
                    wrong += Math.max(0, blank.choices().size() - 1);
                }
            }
        }
        assertThat(wrong).isGreaterThan(1000);
        assertThat(moved).isPositive().isLessThan(wrong / 5);
    }

    private static String digits(Ratio value) {
        return new BigDecimal(value.numerator())
                .divide(new BigDecimal(value.denominator()), new MathContext(12))
                .stripTrailingZeros()
                .unscaledValue()
                .toString();
    }

    /** No wrong answer equals the right one, not even at the digits that are printed, and no two look alike. */
    @Test
    void what_is_printed_of_the_choices_differs() {
        int choices = 0;
        for (int seed = 0; seed < CASES; seed++) {
            for (Worksheet sheet : sheets(seed)) {
                for (Worksheet.Blank blank : sheet.blanks()) {
                    List<String> printed = blank.choices().stream()
                            .map(choice -> choice.text(Style.steps()))
                            .toList();
                    assertThat(printed).as("seed %s: %s", seed, blank).doesNotHaveDuplicates();
                    choices += printed.size();
                }
            }
        }
        assertThat(choices).isGreaterThan(CASES * 20);
    }
}
