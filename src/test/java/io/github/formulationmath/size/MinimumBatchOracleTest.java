package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.oracle.BatchOracle;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Thousands of random formulas against an exhaustive search in whole numbers. */
class MinimumBatchOracleTest {

    private static final Balance ONE_GRAM = Balance.of("1 g", "1000 kg");

    private static Ratio smallest(Formula formula, Criterion criterion) {
        MinimumBatch.Found found = (MinimumBatch.Found) MinimumBatch.of(formula, ONE_GRAM, criterion);
        assertThat(found.origin().derive(io.github.formulationmath.reckoning.Reckoning.plain()))
                .isEqualTo(found.smallest().canonical());
        return found.smallest().canonical();
    }

    private static Tolerances tolerance(long p, long q) {
        return Tolerances.of(MassFraction.of(Ratio.of(p, q)));
    }

    @Test
    void no_smaller_batch_keeps_the_rounding_of_each_line_within_tolerance() {
        RandomFormulas random = new RandomFormulas(31);
        for (int run = 0; run < 3000; run++) {
            long[] parts = random.parts(60);
            long p = 1 + random.below(30);
            BatchOracle oracle = new BatchOracle(parts, p, 100);
            Ratio found = smallest(RandomFormulas.formula(parts), Criterion.roundingWithin(tolerance(p, 100)));
            long[] best = oracle.smallestRounding(found.ceil().toLongExact());
            assertThat(found).as("%s at %s %%", Arrays.toString(parts), p).isEqualTo(Ratio.of(best[0], best[1]));
        }
    }

    @Test
    void no_size_on_a_fine_grid_below_the_smallest_passes() {
        RandomFormulas random = new RandomFormulas(32);
        for (int run = 0; run < 300; run++) {
            long[] parts = random.parts(20);
            long p = 1 + random.below(30);
            BatchOracle oracle = new BatchOracle(parts, p, 100);
            Ratio found = smallest(RandomFormulas.formula(parts), Criterion.roundingWithin(tolerance(p, 100)));
            for (long step = 1; Ratio.of(step, 60).compareTo(found) < 0; step++) {
                assertThat(oracle.roundingPasses(step, 60)).isFalse();
            }
        }
    }

    @Test
    void the_set_of_passing_sizes_is_the_set_the_display_shows() {
        RandomFormulas random = new RandomFormulas(33);
        for (int run = 0; run < 1000; run++) {
            long[] parts = random.parts(40);
            long p = 2 + random.below(30);
            BatchOracle oracle = new BatchOracle(parts, p, 100);
            Sizes sizes =
                    Criterion.roundingWithin(tolerance(p, 100)).on(RandomFormulas.formula(parts), Bench.of(ONE_GRAM));
            var set = Listed.all(sizes);
            set.forEach(part -> {
                checkEdge(oracle, part.lower().orElseThrow(), -1);
                part.upper().ifPresent(upper -> checkEdge(oracle, upper, 1));
            });
            for (int probe = 0; probe < 200; probe++) {
                long twelfths = 1 + random.below(20_000);
                assertThat(isIn(set, Ratio.of(twelfths, 12))).isEqualTo(oracle.roundingPasses(twelfths, 12));
            }
            assertThat(set.get(0).lower())
                    .contains(sizes.smallest().orElseThrow().in(FormulationUnits.GRAM));
            assertThat(set.get(set.size() - 1).lower())
                    .isEqualTo(sizes.allFrom().map(size -> size.in(FormulationUnits.GRAM)));
            askNear(sizes, set, Ratio.of(1 + random.below(900), 7));
        }
    }

    private static void checkEdge(BatchOracle oracle, Ratio edge, int outwards) {
        assertThat(passes(oracle, edge)).isTrue();
        Ratio outside = edge.plus(Ratio.of(outwards, 1_000_000));
        assertThat(outside.signum() > 0 && passes(oracle, outside)).isFalse();
    }

    private static boolean passes(BatchOracle oracle, Ratio size) {
        return oracle.roundingPasses(
                size.numerator().longValueExact(), size.denominator().longValueExact());
    }

    private static boolean isIn(List<Bounds> set, Ratio size) {
        return set.stream().anyMatch(part -> part.contains(size));
    }

    private static void askNear(Sizes sizes, List<Bounds> set, Ratio wish) {
        Amount<javax.measure.quantity.Mass> asked = Amount.grams(wish);
        // The nearest of all is the wish itself, or an end; of two as near, the smaller.
        Ratio nearest = Stream.concat(
                        Stream.of(wish).filter(size -> isIn(set, size)),
                        set.stream().flatMap(part -> Stream.concat(part.lower().stream(), part.upper().stream())))
                .min(Comparator.comparing((Ratio size) -> size.minus(wish).abs())
                        .thenComparing(size -> size))
                .orElseThrow();
        assertThat(sizes.nearest(asked).orElseThrow().in(FormulationUnits.GRAM)).isEqualTo(nearest);
        Ratio whole = set.stream()
                .map(part -> part.lower().orElseThrow().ceil())
                .filter(size -> isIn(set, size))
                .findFirst()
                .orElseThrow();
        assertThat(sizes.inStepsOf(Amount.mass("1 g")).smallest().orElseThrow().in(FormulationUnits.GRAM))
                .isEqualTo(whole);
        assertThat(sizes.contains(asked)).isEqualTo(isIn(set, wish));
        Ratio half = wish.dividedBy(2);
        Bounds range = Bounds.closed(half, wish);
        assertThat(Listed.parts(sizes, half, wish))
                .isEqualTo(set.stream()
                        .flatMap(part -> part.intersection(range).stream())
                        .toList());
    }

    @Test
    void no_smaller_total_can_be_made_within_tolerance() {
        RandomFormulas random = new RandomFormulas(34);
        for (int run = 0; run < 2000; run++) {
            long[] parts = random.parts(30);
            long p = 2 + random.below(30);
            Ratio found = smallest(RandomFormulas.formula(parts), Criterion.madeWithin(tolerance(p, 100)));
            Optional<Integer> least = new BatchOracle(parts, p, 100).smallestMade((int) found.toLongExact(), 0, 1);
            assertThat(least).as("%s at %s %%", Arrays.toString(parts), p).contains((int) found.toLongExact());
        }
    }

    @Test
    void no_smaller_total_can_be_made_within_tolerance_when_readings_are_off() {
        RandomFormulas random = new RandomFormulas(35);
        for (int run = 0; run < 400; run++) {
            long[] parts = Arrays.copyOf(random.parts(8), 2 + random.below(2));
            Arrays.setAll(parts, i -> Math.max(parts[i], 1));
            long p = 20 + random.below(30);
            long half = 1 + random.below(2);
            Ratio found = smallest(
                    RandomFormulas.formula(parts),
                    Criterion.madeWithin(tolerance(p, 100), Amount.grams(Ratio.of(half, 2))));
            Optional<Integer> least = new BatchOracle(parts, p, 100).smallestMade((int) found.toLongExact(), half, 2);
            assertThat(least).as("%s at %s %%", Arrays.toString(parts), p).contains((int) found.toLongExact());
        }
    }

    @Test
    void chosen_readings_add_up_and_stay_within_tolerance() {
        RandomFormulas random = new RandomFormulas(36);
        for (int run = 0; run < 1000; run++) {
            long[] parts = random.parts(60);
            Ratio tau = Ratio.of(1 + random.below(30), 100);
            Formula formula = RandomFormulas.formula(parts);
            MinimumBatch.Found found = (MinimumBatch.Found)
                    MinimumBatch.of(formula, ONE_GRAM, Criterion.madeWithin(Tolerances.of(MassFraction.of(tau))));
            Ratio total = Ratio.ZERO;
            for (int i = 0; i < parts.length; i++) {
                Ratio n = found.readings().get(i).in(FormulationUnits.GRAM);
                Ratio share = formula.lines().get(i).fraction();
                assertThat(n.isInteger()).isTrue();
                assertThat(n.dividedBy(found.smallest().canonical())
                                .minus(share)
                                .abs())
                        .isLessThanOrEqualTo(tau.times(share));
                total = total.plus(n);
            }
            assertThat(total).isEqualTo(found.smallest().canonical());
        }
    }

    @Test
    void no_smaller_total_makes_every_line_whole() {
        RandomFormulas random = new RandomFormulas(37);
        for (int run = 0; run < 3000; run++) {
            long[] parts = random.parts(60);
            Ratio found = smallest(RandomFormulas.formula(parts), Criterion.exactReadings());
            assertThat(found).isEqualTo(Ratio.of(new BatchOracle(parts, 0, 1).smallestExact()));
        }
    }

    @Test
    void without_tolerance_rounding_and_making_come_down_to_the_exact_batch() {
        RandomFormulas random = new RandomFormulas(38);
        for (int run = 0; run < 500; run++) {
            Formula formula = RandomFormulas.formula(random.parts(60));
            Ratio exact = smallest(formula, Criterion.exactReadings());
            assertThat(smallest(formula, Criterion.roundingWithin(tolerance(0, 1))))
                    .isEqualTo(exact);
            assertThat(smallest(formula, Criterion.madeWithin(tolerance(0, 1)))).isEqualTo(exact);
        }
    }
}
