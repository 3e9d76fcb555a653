package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Entry;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MinimumBatchTest {

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    private static final Formula SIX_LINES = Formulas.sawTooth("six lines");

    private static Amount<Mass> mass(String text) {
        return Amount.mass(text);
    }

    private static MinimumBatch.Found found(Formula formula, Balance balance, Criterion criterion) {
        return (MinimumBatch.Found) MinimumBatch.of(formula, balance, criterion);
    }

    /** Common practice at the bench, no published source. */
    @ParameterizedTest
    @CsvSource({"1 g, 200 g", "0.1 g, 20 g", "0.01 g, 2 g"})
    void a_line_of_half_a_percent_needs_two_hundred_divisions_to_be_one(String readability, String smallest) {
        MinimumBatch.Found found = found(SIX_LINES, Balance.of(readability, "5 kg"), Criterion.oneDivision());
        assertThat(found.smallest()).isEqualTo(mass(smallest));
        assertThat(found.bindingLine()).contains(SIX_LINES.line("Preservative"));
    }

    /** The six sizes were worked out by hand from the readings, one line after the other. */
    @Test
    void a_larger_batch_is_not_always_better() {
        Sizes sizes = Criterion.roundingWithin(Tolerances.of("5 %")).on(SIX_LINES, Bench.of(TENTH));
        assertThat(sizes.contains(mass("20 g"))).isTrue();
        for (int grams = 1; grams <= 2000; grams++) {
            boolean passes = sizes.contains(Amount.grams(Ratio.of(grams)));
            boolean known = grams < 19 || grams >= 22 && grams <= 38 || grams >= 43 && grams <= 57 || grams == 190;
            assertThat(known && passes).as("%d g", grams).isFalse();
            assertThat(grams < 191 || passes).as("%d g", grams).isTrue();
        }
        assertThat(sizes.allFrom()).contains(Amount.grams(Ratio.of(4000, 21)));
        assertThat(sizes.inStepsOf(mass("1 g")).smallest()).contains(mass("20 g"));
        assertThat(sizes.nearest(mass("29 g"))).contains(Amount.grams(Ratio.of(400, 19)));
        assertThat(sizes.smallest()).contains(Amount.grams(Ratio.of(400, 21)));
    }

    @Test
    void every_answer_shows_its_working() {
        List<Criterion> criteria = List.of(
                Criterion.oneDivision(),
                Criterion.roundingWithin(Tolerances.of("5 %")),
                Criterion.roundingWithin(Tolerances.of("2 %").withLine("Preservative", "1 %")),
                Criterion.roundingWithin(Tolerances.of("0 %").withLine("Aqua", "1 %")),
                Criterion.madeWithin(Tolerances.of("5 %")),
                Criterion.madeWithin(Tolerances.of("5 %"), mass("0.05 g")),
                Criterion.exactReadings());
        Formula thirds = Formula.inParts("thirds")
                .line("a", "3")
                .line("b", "1")
                .line("c", "0.2")
                .build();
        for (Criterion criterion : criteria) {
            WorkingAssertions.assertSelfChecking(found(SIX_LINES, TENTH, criterion));
            if (!criterion.toString().contains("Preservative")
                    && !criterion.toString().contains("Aqua")) {
                WorkingAssertions.assertSelfChecking(found(thirds, TENTH, criterion));
            }
        }
    }

    @Test
    void many_jumps_are_not_written_out_but_the_answer_is_still_shown() {
        Formula primes = RandomFormulas.formula(7919, 6841, 5443, 4001);
        MinimumBatch.Found found = found(primes, TENTH, Criterion.roundingWithin(Tolerances.of("0.1 %")));
        assertThat(found.working().entries())
                .filteredOn(Entry.Note.class::isInstance)
                .extracting(note -> ((Entry.Note) note).phrase().key())
                .contains("note.jumps-not-shown");
        WorkingAssertions.assertSelfChecking(found);
    }

    @Test
    void readings_are_given_for_a_batch_as_made() {
        Formula third = Formula.inParts("third").line("a", "1").line("b", "2").build();
        MinimumBatch.Found found = found(third, TENTH, Criterion.madeWithin(Tolerances.of("5 %")));
        assertThat(found.smallest()).isEqualTo(mass("0.3 g"));
        assertThat(found.readings()).containsExactly(mass("0.1 g"), mass("0.2 g"));
        assertThat(found(third, TENTH, Criterion.oneDivision()).readings()).isEmpty();
    }

    @Test
    void tolerances_may_differ_by_phase_and_line() {
        Formula lotion = Formula.inPercent("lotion")
                .phase("water")
                .line("Aqua", "79 %")
                .line("Glycerin", "1 %")
                .phase("oil")
                .line("Oil", "19.5 %")
                .line("Tocopherol", "0.5 %")
                .build();
        Tolerances tolerances = Tolerances.of("10 %").withPhase("oil", "20 %").withLine("Glycerin", "1 %");
        assertThat(tolerances.forLine(lotion.line("Aqua"))).hasToString("10 %");
        assertThat(tolerances.forLine(lotion.line("Tocopherol"))).hasToString("20 %");
        assertThat(tolerances.forLine(lotion.line("Glycerin"))).hasToString("1 %");
        assertThat(Criterion.roundingWithin(tolerances)
                        .on(lotion, Bench.of(TENTH))
                        .allFrom())
                .contains(Amount.grams(Ratio.of(50_000, 101)));
        assertThatThrownBy(() -> Criterion.roundingWithin(tolerances.withPhase("cool-down", "1 %"))
                        .on(lotion, Bench.of(TENTH)))
                .hasMessageContaining("cool-down");
        assertThatThrownBy(() -> Criterion.roundingWithin(tolerances.withLine("Aroma", "1 %"))
                        .on(lotion, Bench.of(TENTH)))
                .hasMessageContaining("Aroma");
    }

    @Test
    void an_exact_line_with_an_inexact_reading_is_impossible() {
        MinimumBatch none =
                MinimumBatch.of(SIX_LINES, TENTH, Criterion.madeWithin(Tolerances.of("0 %"), mass("0.05 g")));
        assertThat(none).isInstanceOf(MinimumBatch.Impossible.class);
        assertThat(((MinimumBatch.Impossible) none).reason().key()).isEqualTo("obstacle.exact-line-inexact-reading");
        assertThat(none.mass()).isEmpty();
    }

    @Tag("long")
    @Test
    void a_search_that_gives_up_says_what_it_has_shown() {
        Formula primes = RandomFormulas.formula(1_000_003, 998_244_353, 999_999_937, 1_000_000_007);
        Criterion tiny = Criterion.roundingWithin(Tolerances.of("0.00000001 %"));
        MinimumBatch.Undecided undecided =
                (MinimumBatch.Undecided) MinimumBatch.of(primes, TENTH, tiny, SearchEffort.ofChecks(50_000));
        Amount<Mass> failing = undecided.allFailBelow();
        Amount<Mass> passing = undecided.allPassFrom().orElseThrow();
        assertThat(failing).isLessThan(passing);
        Sizes sizes = Criterion.roundingWithin(Tolerances.of("0.00000001 %")).on(primes, Bench.of(TENTH));
        assertThat(sizes.contains(failing.minus(mass("0.001 g")))).isFalse();
        assertThat(sizes.contains(passing)).isTrue();
        assertThatThrownBy(() -> sizes.within(Interval.of(mass("1 g"), passing)))
                .isInstanceOf(SearchLimitException.class);
    }

    @Test
    void a_tiny_tolerance_does_not_slow_down_a_formula_with_a_small_exact_batch() {
        Sizes sizes = Criterion.roundingWithin(Tolerances.of("0.0000001 %")).on(SIX_LINES, Bench.of(TENTH));
        assertThat(sizes.smallest().orElseThrow().in(FormulationUnits.GRAM))
                .isBetween(Ratio.of(1999, 100), Ratio.of(20));
        assertThatThrownBy(() -> sizes.within(Interval.of(mass("1 g"), mass("100000 kg"))))
                .isInstanceOf(SearchLimitException.class)
                .hasMessageContaining("limit");
        assertThat(sizes.islands().limit(3).toList()).hasSize(3);
        assertThatThrownBy(() -> Criterion.roundingWithin(Tolerances.of("0 %"))
                        .on(SIX_LINES, Bench.of(TENTH))
                        .within(Interval.of(mass("1 g"), mass("1000000 kg"))))
                .isInstanceOf(SearchLimitException.class);
    }

    @Test
    void long_searches_report_and_can_be_interrupted() {
        Formula primes = RandomFormulas.formula(1_000_003, 998_244_353, 999_999_937, 1_000_000_007);
        List<Long> heard = new ArrayList<>();
        SearchEffort effort = SearchEffort.ofChecks(20_000).reportingTo((checks, limit) -> heard.add(checks));
        Criterion tiny = Criterion.madeWithin(Tolerances.of("0.00000001 %"));
        assertThat(MinimumBatch.of(primes, TENTH, tiny, effort)).isInstanceOf(MinimumBatch.Undecided.class);
        assertThat(heard).hasSizeBetween(4, 5).isSorted();
        Thread.currentThread().interrupt();
        assertThatThrownBy(() -> MinimumBatch.of(primes, TENTH, tiny, effort))
                .isInstanceOf(CancellationException.class);
        assertThat(Thread.interrupted()).isTrue();
    }

    /** A part in a thousand million beside the rest; ten thousand lines; shares with large primes below the line. */
    @Test
    void hostile_formulas_get_an_answer_or_a_clear_refusal() {
        Formula trace = Formula.inPercent("trace")
                .quantitySufficient("Aqua")
                .line("Trace", "0.0000001 %")
                .build();
        assertThat(found(trace, TENTH, Criterion.oneDivision()).smallest()).isEqualTo(mass("100000000 g"));
        assertThat(found(trace, TENTH, Criterion.madeWithin(Tolerances.of("1 %")))
                        .smallest())
                .isEqualTo(mass("99009901 g"));
        long[] many = new long[10_000];
        for (int i = 0; i < many.length; i++) {
            many[i] = 1 + i * 7919L % 10_007;
        }
        Formula large = RandomFormulas.formula(many);
        for (Criterion criterion : List.of(
                Criterion.oneDivision(),
                Criterion.roundingWithin(Tolerances.of("1 %")),
                Criterion.madeWithin(Tolerances.of("1 %")),
                Criterion.exactReadings())) {
            assertThat(MinimumBatch.of(large, TENTH, criterion, SearchEffort.ofChecks(3_000_000)))
                    .isNotInstanceOf(MinimumBatch.Impossible.class);
        }
    }
}
