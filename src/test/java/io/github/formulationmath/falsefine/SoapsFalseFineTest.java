package io.github.formulationmath.falsefine;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.soap.AlkaliBalance;
import io.github.formulationmath.soap.HydroxideVerdict;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Soaps of every kind, about as strong as they may just be, of which everything is known here: the judgement may never say that
 * none is left where some lot, grade or weighing inside the bounds leaves some.
 */
class SoapsFalseFineTest {

    private static final int POTS = 12;

    private static HydroxideVerdict verdictOf(SoapCase drawn) {
        return SoapJudge.of(drawn).balance().verdict();
    }

    /** What is so, by fractions of whole numbers alone. */
    private static HydroxideVerdict truth(SoapCase drawn) {
        if (!drawn.most().isAbove(Exact.ZERO)) {
            return HydroxideVerdict.NO_HYDROXIDE_LEFT;
        }
        return drawn.least().isAbove(Exact.ZERO) ? HydroxideVerdict.HYDROXIDE_LEFT : HydroxideVerdict.NOT_SHOWN;
    }

    @Test
    void no_pot_has_hydroxide_left_where_none_is_said_to_be_and_all_have_where_it_is_said() {
        Map<HydroxideVerdict, Integer> seen = new EnumMap<>(HydroxideVerdict.class);
        for (int seed = 0; seed < Cases.of(2000, 1_000_000); seed++) {
            Dice dice = new Dice(seed);
            SoapCase drawn = SoapCase.any(dice);
            HydroxideVerdict verdict = verdictOf(drawn);
            seen.merge(verdict, 1, Integer::sum);
            for (int i = 0; i < POTS; i++) {
                boolean left = drawn.pot(dice).isAbove(Exact.ZERO);
                assertThat(verdict)
                        .as("seed %s", seed)
                        .isNotEqualTo(left ? HydroxideVerdict.NO_HYDROXIDE_LEFT : HydroxideVerdict.HYDROXIDE_LEFT);
            }
            assertThat(verdict).as("seed %s", seed).isEqualTo(truth(drawn));
        }
        assertThat(seen.keySet()).containsExactly(HydroxideVerdict.values());
        assertThat(seen.values()).allSatisfy(count -> assertThat(count).isGreaterThan(100));
    }

    /** In grams of NaOH (39.99710928 g/mol) or of KOH (56.10564 g/mol). */
    @Test
    void the_hydroxide_left_reaches_exactly_as_far_as_it_can() {
        for (int seed = 0; seed < Cases.of(300); seed++) {
            SoapCase drawn = SoapCase.any(new Dice(seed));
            boolean sodium =
                    drawn.lines().stream().anyMatch(line -> line instanceof SoapLine.Gives gives && gives.sodium());
            Exact molarMass = sodium ? Exact.of(3_999_710_928L, 100_000_000) : Exact.of(5_610_564, 100_000);
            AlkaliBalance balance = SoapJudge.of(drawn).balance();
            assertThat(Exact.read(balance.excess().greatest().canonical()))
                    .isEqualByComparingTo(drawn.most().times(molarMass));
            assertThat(Exact.read(balance.excess().least().canonical()))
                    .isEqualByComparingTo(drawn.least().times(molarMass));
            Exact widths = balance.widths().stream()
                    .map(width -> Exact.read(width.width().canonical()))
                    .reduce(Exact.ZERO, Exact::plus);
            Exact width = drawn.most().minus(drawn.least()).times(molarMass);
            assertThat(widths.compareTo(width))
                    .as("what widens it, seed %s", seed)
                    .isBetween(0, drawn.cumulative() ? 1 : 0);
        }
    }

    @Test
    void the_largest_reading_passes_and_the_next_step_fails() {
        int none = 0;
        for (int seed = 0; seed < Cases.of(500, 100_000); seed++) {
            Dice dice = new Dice(seed);
            SoapCase drawn = SoapCase.any(dice);
            int percent = dice.of(0, 0, 1, 2, 5, 8);
            OptionalLong largest = SoapJudge.of(drawn).largestReading(percent);
            if (largest.isEmpty()) {
                none++;
                assertThat(drawn.reading(0).leaves(percent)).as("seed %s", seed).isFalse();
                continue;
            }
            long steps = largest.getAsLong();
            assertThat(drawn.reading(steps).leaves(percent)).as("seed %s", seed).isTrue();
            assertThat(drawn.reading(steps + 1).leaves(percent))
                    .as("seed %s", seed)
                    .isFalse();
            if (percent == 0 && steps > 0) {
                assertThat(verdictOf(drawn.reading(steps))).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
                assertThat(verdictOf(drawn.reading(steps + 1))).isNotEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
            }
        }
        assertThat(none).isBetween(1, Cases.of(100, 20_000));
    }

    @Test
    void from_the_smallest_batch_on_no_hydroxide_is_left_whatever_the_scale_does() {
        int found = 0;
        for (int seed = 0; seed < Cases.of(300); seed++) {
            Dice dice = new Dice(seed);
            SoapCase drawn = SoapCase.any(dice);
            Optional<Exact> smallest = SoapJudge.of(drawn).smallestWithoutHydroxide();
            // Asked for from 0 to 99.9 % short: an acid that may take all of the alkali leaves no such batch.
            assertThat(smallest.isPresent())
                    .as("seed %s", seed)
                    .isEqualTo(drawn.leavesNoneAsWritten() && drawn.leavesTheFatsSomeAsWritten());
            for (int i = 0; i < POTS && smallest.isPresent(); i++) {
                Exact size = smallest.get().times(Exact.of(1000L + dice.between(0, 50) * i, 1000));
                assertThat(drawn.sized(size).leaves(0)).as("seed %s", seed).isTrue();
            }
            found += smallest.isPresent() ? 1 : 0;
        }
        assertThat(found).isBetween(Cases.of(30), Cases.of(270));
    }

    @Test
    void the_middle_of_a_range_for_the_truth_is_found_out() {
        assertThat(falselyFine(line -> line instanceof SoapLine.Takes fat ? fat.inTheMiddle() : line))
                .isGreaterThan(20);
        assertThat(falselyFine(line -> line instanceof SoapLine.Gives grade ? grade.inTheMiddle() : line))
                .isGreaterThan(5);
        assertThat(falselyFine(line -> line instanceof SoapLine.Gives grade ? grade.carbonateInTheMiddle() : line))
                .isGreaterThan(1);
        assertThat(falselyFine(line -> line instanceof SoapLine.TakesFirst acid ? acid.inTheMiddle() : line))
                .isGreaterThan(1);
        assertThat(falselyFine(line -> line instanceof SoapLine.Takes wax ? wax.acidInTheMiddle() : line))
                .isGreaterThan(1);
        assertThat(falselyFine(line -> line instanceof SoapLine.Takes fat ? fat.halfAsWet() : line))
                .isGreaterThan(1);
    }

    @Test
    void a_wax_for_a_fat_and_a_wet_fat_for_a_dry_one_are_found_out() {
        assertThat(falselyFine(line -> line instanceof SoapLine.Takes fat ? fat.asFat() : line))
                .isGreaterThan(5);
        assertThat(falselyFine(line -> line instanceof SoapLine.Takes fat ? fat.dry() : line))
                .isGreaterThan(5);
    }

    @Test
    void a_forgotten_error_of_the_balance_is_found_out() {
        int found = 0;
        for (int seed = 0; seed < 1000; seed++) {
            SoapCase drawn = SoapCase.any(new Dice(seed));
            SoapCase finer = new SoapCase(drawn.lines(), drawn.readings(), drawn.places(), 0, drawn.cumulative());
            found += isFalselyFine(verdictOf(finer), drawn) ? 1 : 0;
        }
        assertThat(found).isPositive();
    }

    /** How often the judgement on other figures than the true ones says that none is left where some may be. */
    private static int falselyFine(UnaryOperator<SoapLine> figure) {
        int found = 0;
        for (int seed = 0; seed < 1000; seed++) {
            SoapCase drawn = SoapCase.any(new Dice(seed));
            found += isFalselyFine(verdictOf(drawn.taken(figure)), drawn) ? 1 : 0;
        }
        return found;
    }

    private static boolean isFalselyFine(HydroxideVerdict said, SoapCase drawn) {
        return said == HydroxideVerdict.NO_HYDROXIDE_LEFT && truth(drawn) != said;
    }
}
