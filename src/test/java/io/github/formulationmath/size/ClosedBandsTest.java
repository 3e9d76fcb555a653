package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.oracle.BatchOracle;
import io.github.formulationmath.support.RandomFormulas;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Feasible totals on 64 bits and beyond, upwards and downwards: the same, and those that a search through all finds. */
class ClosedBandsTest {

    /** A tolerance wider by this leaves every total below a thousand as it was, but no longer fits 64 bits. */
    private static final Ratio HAIR = Ratio.parse("0.0000000000000000000000000000000000000001");

    private static final int REACH = 40;

    private static Ratio of(long numerator, long denominator) {
        return Ratio.of(numerator, denominator);
    }

    private static SearchMeter meter() {
        return new SearchMeter(SearchEffort.ofChecks(100_000));
    }

    private static ClosedBands bands(List<Ratio> weights, List<Ratio> tolerances, Ratio error) {
        return ClosedBands.of(weights, tolerances, error, Ratio.ONE);
    }

    private static ClosedBands search(long[] parts, Ratio tolerance, Ratio error) {
        long whole = Arrays.stream(parts).sum();
        return bands(
                Arrays.stream(parts).mapToObj(part -> of(part, whole)).toList(),
                Collections.nCopies(parts.length, tolerance),
                error);
    }

    private static ClosedBands exact(Ratio... weights) {
        return bands(List.of(weights), Collections.nCopies(weights.length, Ratio.ZERO), Ratio.ZERO);
    }

    @Test
    void both_ways_and_on_both_kinds_of_numbers_the_nearest_feasible_total_is_found() {
        RandomFormulas random = new RandomFormulas(81);
        for (int run = 0; run < 24; run++) {
            long[] parts = Arrays.copyOf(random.parts(9), 2 + run % 2);
            Arrays.setAll(parts, i -> Math.max(parts[i], 1));
            long p = 5 + random.below(30);
            long half = run % 3 == 0 ? 1 : 0;
            BatchOracle oracle = new BatchOracle(parts, p, 100);
            boolean[] feasible = new boolean[3 * REACH];
            for (int total = 1; total < feasible.length; total++) {
                feasible[total] = oracle.madePasses(total, half, 2);
            }
            compare(feasible, search(parts, of(p, 100), of(half, 2)));
            compare(feasible, search(parts, of(p, 100).plus(HAIR), of(half, 2)));
        }
    }

    /**
     * Lines that each have a whole number while their sum does not enclose the total: 2 : 1 : 2 within 28 % of 4 divisions
     * takes 2 + 1 + 2 at least, 3 : 8 : 11 : 8 within 20 % of 9 divisions 1 + 2 + 3 + 2 at most.
     */
    @Test
    void sums_of_readings_push_both_ways() {
        for (Ratio hair : List.of(Ratio.ZERO, HAIR)) {
            ClosedBands least = search(new long[] {2, 1, 2}, of(28, 100).plus(hair), Ratio.ZERO);
            compare(feasible(new BatchOracle(new long[] {2, 1, 2}, 28, 100)), least);
            assertThat(least.atLeast(Ratio.of(4), meter())).isEqualTo(Landing.resting(Ratio.of(5)));
            ClosedBands most = search(new long[] {3, 8, 11, 8}, of(20, 100).plus(hair), Ratio.ZERO);
            compare(feasible(new BatchOracle(new long[] {3, 8, 11, 8}, 20, 100)), most);
            assertThat(most.atLeast(Ratio.of(9), meter())).isEqualTo(Landing.resting(Ratio.of(10)));
        }
    }

    private static boolean[] feasible(BatchOracle oracle) {
        boolean[] feasible = new boolean[3 * REACH];
        for (int total = 1; total < feasible.length; total++) {
            feasible[total] = oracle.madePasses(total, 0, 1);
        }
        return feasible;
    }

    private static void compare(boolean[] feasible, ClosedBands search) {
        for (int from = 1; from <= REACH; from++) {
            int up = from;
            while (up < feasible.length && !feasible[up]) {
                up++;
            }
            Ratio found = search.atLeast(Ratio.of(from), meter()).at();
            assertThat(found.compareTo(Ratio.of(up)) == 0 || up == feasible.length && found.compareTo(Ratio.of(up)) > 0)
                    .isTrue();
            int down = from;
            while (down > 0 && !feasible[down]) {
                down--;
            }
            Optional<Ratio> below = search.atMost(Ratio.of(from), meter()).map(Landing::at);
            assertThat(below).isEqualTo(down == 0 ? Optional.empty() : Optional.of(Ratio.of(down)));
        }
    }

    /** One check on numbers beyond 64 bits counts as sixteen, as {@link SearchEffort} says; the way is the same. */
    @Test
    void beyond_64_bits_the_same_way_costs_sixteen_times_as_much() {
        long[][] formulas = {{1, 1}, {3, 5, 11}, {1, 2, 40}, {7, 9, 13, 17}};
        for (long[] parts : formulas) {
            ClosedBands narrow = search(parts, of(3, 100), Ratio.ZERO);
            ClosedBands wide = search(parts, of(3, 100).plus(HAIR), Ratio.ZERO);
            for (int from = 1; from < 40; from++) {
                SearchMeter few = meter();
                SearchMeter many = meter();
                assertThat(wide.atLeast(Ratio.of(from), many)).isEqualTo(narrow.atLeast(Ratio.of(from), few));
                assertThat(many.checks()).isEqualTo(16 * few.checks());
                few = meter();
                many = meter();
                assertThat(wide.atMost(Ratio.of(from), many)).isEqualTo(narrow.atMost(Ratio.of(from), few));
                assertThat(many.checks()).isEqualTo(16 * few.checks());
            }
        }
    }

    /** Halves within 10 %: of one division no line can have 0.45 to 0.55, which the first line looked at shows. */
    @Test
    void each_line_looked_at_counts_once() {
        SearchMeter meter = meter();
        assertThat(search(new long[] {1, 1}, of(1, 10), Ratio.ZERO).atLeast(Ratio.ONE, meter))
                .isEqualTo(Landing.by(0, Ratio.of(2)));
        assertThat(meter.checks()).isEqualTo(1);
    }

    /** 1/3 must be exact, so only multiples of 3 are looked at; 1/6 within 10 % or 20 % moves the search on. */
    @Test
    void lines_that_must_be_exact_are_met_at_multiples_of_their_period() {
        List<Ratio> weights = List.of(of(1, 3), of(1, 6), of(1, 2));
        ClosedBands fifth = bands(weights, List.of(Ratio.ZERO, of(1, 5), of(1, 5)), Ratio.ZERO);
        SearchMeter up = meter();
        assertThat(fifth.atLeast(Ratio.ONE, up)).isEqualTo(Landing.by(1, Ratio.of(6)));
        assertThat(up.checks()).isEqualTo(1);
        ClosedBands tenth = bands(weights, List.of(Ratio.ZERO, of(1, 10), of(1, 5)), Ratio.ZERO);
        SearchMeter down = meter();
        assertThat(tenth.atMost(Ratio.of(23), down)).contains(Landing.by(1, Ratio.of(18)));
        assertThat(down.checks()).isEqualTo(1);
        SearchMeter none = meter();
        assertThat(exact(of(1, 3), of(2, 3)).atLeast(Ratio.ONE, none).at()).isEqualTo(Ratio.of(3));
        assertThat(none.checks()).as("at the period nothing pushes any more").isZero();
    }

    /** The next multiple of 2, of 3 or of 10^12 + 39 on either side of 2^63, where a long ends. */
    @Test
    void a_search_goes_on_beyond_the_largest_long() {
        Ratio end = Ratio.of(Long.MAX_VALUE);
        for (long period : new long[] {2, 3, 1_000_000_000_039L}) {
            ClosedBands search = exact(of(1, period), of(period - 1, period));
            for (int shift = -2; shift <= 2; shift++) {
                Ratio from = end.plus(Ratio.of(shift));
                assertThat(search.atLeast(from, meter()).at())
                        .isEqualTo(from.dividedBy(period).ceil().times(period));
                assertThat(search.atMost(from, meter()).map(Landing::at))
                        .contains(from.dividedBy(period).floor().times(period));
            }
        }
    }

    /**
     * A trace of 1 in P = 10^12 + 39 within 1 %: one division of it needs at least P/1.01 in all and allows at most P/0.99,
     * two need at least 2P/1.01. The other line is wide enough everywhere.
     */
    @Test
    void a_trace_has_its_first_divisions_where_its_share_says() {
        Ratio p = Ratio.of(1_000_000_000_039L);
        for (Ratio tau : List.of(of(1, 100), of(1, 100).plus(HAIR))) {
            ClosedBands search =
                    bands(List.of(p.reciprocal(), Ratio.ONE.minus(p.reciprocal())), List.of(tau, tau), Ratio.ZERO);
            Ratio first = p.dividedBy(Ratio.ONE.plus(tau)).ceil();
            Ratio last = p.dividedBy(Ratio.ONE.minus(tau)).floor();
            Ratio second = p.times(2).dividedBy(Ratio.ONE.plus(tau)).ceil();
            assertThat(search.atLeast(Ratio.ONE, meter())).isEqualTo(Landing.by(0, first));
            assertThat(search.atLeast(last, meter())).isEqualTo(Landing.resting(last));
            assertThat(search.atLeast(last.plus(Ratio.ONE), meter())).isEqualTo(Landing.by(0, second));
            assertThat(search.atMost(second.minus(Ratio.ONE), meter())).contains(Landing.by(0, last));
            assertThat(search.atMost(first.minus(Ratio.ONE), meter())).isEmpty();
        }
    }

    @Test
    void the_order_of_the_lines_changes_neither_the_total_nor_the_work() {
        ClosedBands one = search(new long[] {1, 7, 30, 101}, of(2, 100), Ratio.ZERO);
        ClosedBands other = search(new long[] {101, 30, 7, 1}, of(2, 100), Ratio.ZERO);
        for (int from = 1; from < 200; from += 9) {
            SearchMeter meter = meter();
            SearchMeter reversed = meter();
            assertThat(other.atLeast(Ratio.of(from), reversed).at())
                    .isEqualTo(one.atLeast(Ratio.of(from), meter).at());
            assertThat(reversed.checks()).isEqualTo(meter.checks());
        }
    }

    @Test
    void every_total_passes_from_where_all_are_said_to() {
        RandomFormulas random = new RandomFormulas(82);
        for (int run = 0; run < 40; run++) {
            long[] parts = Arrays.copyOf(random.parts(5), 2 + run % 2);
            Arrays.setAll(parts, i -> Math.max(parts[i], 1));
            long half = run % 2;
            ClosedBands search = search(parts, of(1, 4), of(half, 2));
            Ratio from = search.allFrom().orElseThrow();
            assertThat(from.isInteger()).isTrue();
            for (int total = 0; total < 200; total++) {
                Ratio at = from.plus(Ratio.of(total));
                assertThat(search.atLeast(at, meter()).at()).isEqualTo(at);
            }
        }
        // Halves within 25 %: a band of w·N/2 is one division wide from N = 4 on; the sums of the ends, which rounding
        // moves by less than a division a line, enclose N from 2/(1 − 0.75) = 8 on.
        assertThat(search(new long[] {1, 1}, of(1, 4), Ratio.ZERO).allFrom()).contains(Ratio.of(8));
        // Thirds off by half a division each: the largest fall short by 1.5 + 1.25 · 0.5 and 3 in all: 5.125/0.25 =
        // 20.5.
        assertThat(search(new long[] {1, 1, 1}, of(1, 4), of(1, 2)).allFrom()).contains(Ratio.of(21));
        assertThat(exact(of(1, 2), of(1, 2)).allFrom()).isEmpty();
    }

    @Test
    void a_line_is_hopeless_only_if_it_must_be_exact_and_its_reading_is_not() {
        List<Ratio> weights = List.of(of(1, 4), of(3, 4));
        List<Ratio> second = List.of(of(1, 10), Ratio.ZERO);
        assertThat(bands(weights, second, of(1, 2)).hopelessLine()).hasValue(1);
        assertThat(bands(weights, second, Ratio.ZERO).hopelessLine()).isEmpty();
        assertThat(bands(weights, List.of(of(1, 10), of(1, 10)), of(1, 2)).hopelessLine())
                .isEmpty();
    }

    /** Halves within 1 %, off by half a division each: ⌈0.495·N + 0.5⌉ is above ⌊0.505·N − 0.5⌋ up to N = 100, 50 and 50. */
    @Test
    void below_the_first_reading_at_all_nothing_is_looked_at() {
        SearchMeter up = meter();
        ClosedBands search = search(new long[] {1, 1}, of(1, 100), of(1, 2));
        assertThat(search.smallest(up)).isEqualTo(Landing.by(0, Ratio.of(100)));
        assertThat(up.checks()).isZero();
        assertThat(search.atMost(Ratio.of(99), meter())).isEmpty();
    }
}
