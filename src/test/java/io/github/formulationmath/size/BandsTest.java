package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Bands of lines at sizes in divisions: the same at every scale of numbers, and with the work they cost. */
class BandsTest {

    private static final Ratio QUARTER = Ratio.of(1, 4);

    /** One line within 25 %: n = 1 from 0.8 to 4/3, n = 2 from 1.6 on, which reaches n = 3 at 2.4 before it ends at 8/3. */
    private static final Bands ALONE = Bands.of(List.of(Ratio.ONE), List.of(QUARTER));

    private static SearchMeter meter() {
        return new SearchMeter(SearchEffort.ofChecks(100_000));
    }

    private static Bands bands(Ratio scale, Ratio tolerance, long... parts) {
        List<Ratio> weights = java.util.Arrays.stream(parts)
                .mapToObj(part -> Ratio.of(part).times(scale))
                .toList();
        return Bands.of(weights, Collections.nCopies(parts.length, tolerance));
    }

    @Test
    void the_windows_of_one_line_by_hand() {
        assertThat(ALONE.smallest(meter())).isEqualTo(Landing.by(0, Ratio.of(4, 5)));
        assertThat(ALONE.atLeast(Ratio.of(3, 2), meter())).isEqualTo(Landing.by(0, Ratio.of(8, 5)));
        assertThat(ALONE.atMost(Ratio.of(3, 2), meter())).contains(Landing.by(0, Ratio.of(4, 3)));
        assertThat(ALONE.atMost(Ratio.of(1, 2), meter())).isEmpty();
        assertThat(ALONE.endAround(Ratio.ONE, meter())).contains(Ratio.of(4, 3));
        assertThat(ALONE.after(Ratio.of(4, 3), meter())).isEqualTo(Ratio.of(8, 5));
        assertThat(ALONE.passes(Ratio.of(4, 5))).as("both ends pass").isTrue();
        assertThat(ALONE.passes(Ratio.of(4, 3))).isTrue();
        assertThat(ALONE.passes(Ratio.of(3, 2))).isFalse();
    }

    /** Each question above looks at the one line twice: where it begins, and where it comes to rest. */
    @Test
    void every_look_at_a_line_counts() {
        SearchMeter up = meter();
        ALONE.atLeast(Ratio.of(3, 2), up);
        assertThat(up.checks()).isEqualTo(2);
        SearchMeter down = meter();
        ALONE.atMost(Ratio.of(3, 2), down);
        assertThat(down.checks()).isEqualTo(2);
        SearchMeter end = meter();
        ALONE.endAround(Ratio.ONE, end);
        assertThat(end.checks()).isEqualTo(2);
        SearchMeter after = meter();
        ALONE.after(Ratio.of(4, 3), after);
        assertThat(after.checks()).isEqualTo(2);
    }

    @Test
    void every_search_stops_at_its_limit() {
        Bands tight = bands(Ratio.ONE, Ratio.of(1, 1_000_000_000), 1_000_003, 998_244_353, 999_999_937);
        assertThatThrownBy(() -> tight.smallest(new SearchMeter(SearchEffort.ofChecks(200))))
                .isInstanceOf(SearchLimitException.class);
        assertThatThrownBy(() -> tight.atMost(Ratio.of(10_007, 1_000_003), new SearchMeter(SearchEffort.ofChecks(200))))
                .isInstanceOf(SearchLimitException.class);
    }

    /** With every weight s times as large the same happens at sizes s times smaller, in 64 bits or beyond. */
    @Test
    void the_scale_of_the_numbers_does_not_matter() {
        Ratio tau = Ratio.of(3, 100);
        Bands plain = bands(Ratio.ONE, tau, 3, 7, 19);
        for (int power : new int[] {-40, -18, -15, -12, -9, -6, -3, 3, 6, 9, 12, 15, 16, 17, 18, 19, 20, 40}) {
            Ratio scale = tenTo(power);
            Bands scaled = bands(scale, tau, 3, 7, 19);
            for (int step = 1; step <= 60; step++) {
                Ratio from = Ratio.of(step, 17);
                SearchMeter few = meter();
                SearchMeter many = meter();
                Landing expected = plain.atLeast(from, few);
                Landing found = scaled.atLeast(from.dividedBy(scale), many);
                assertThat(found.at().times(scale)).isEqualTo(expected.at());
                assertThat(found.line()).isEqualTo(expected.line());
                assertThat(many.checks()).isBetween(few.checks(), 16 * few.checks());
                assertThat(Math.abs(power) < 40 || many.checks() == 16 * few.checks())
                        .as("beyond 64 bits a check counts as sixteen")
                        .isTrue();
                assertThat(power != 3 || many.checks() == few.checks()).isTrue();
                assertThat(scaled.passes(from.dividedBy(scale))).isEqualTo(plain.passes(from));
            }
            assertThat(scaled.smallest(meter()).at().times(scale))
                    .isEqualTo(plain.smallest(meter()).at());
        }
    }

    private static Ratio tenTo(int power) {
        Ratio ten = Ratio.of(java.math.BigInteger.TEN.pow(Math.abs(power)));
        return power < 0 ? ten.reciprocal() : ten;
    }

    @Test
    void the_order_of_the_lines_changes_neither_the_size_nor_the_work() {
        Ratio tau = Ratio.of(1, 50);
        Bands one = bands(Ratio.ONE, tau, 1, 7, 30, 101);
        Bands other = bands(Ratio.ONE, tau, 101, 30, 7, 1);
        SearchMeter meter = meter();
        SearchMeter reversed = meter();
        assertThat(other.smallest(reversed).at()).isEqualTo(one.smallest(meter).at());
        assertThat(reversed.checks()).isEqualTo(meter.checks());
    }

    @Test
    void of_several_lines_that_must_be_exact_the_first_is_named() {
        Bands exact = Bands.of(
                List.of(Ratio.of(1, 2), Ratio.of(1, 6), Ratio.of(1, 3)), List.of(QUARTER, Ratio.ZERO, Ratio.ZERO));
        assertThat(exact.smallest(meter())).isEqualTo(Landing.by(1, Ratio.of(6)));
        assertThat(exact.allFrom()).isEmpty();
    }

    /** A quarter and a hair is no longer a number of 64 bits: the windows are those of a quarter, a hair wider. */
    @Test
    void a_window_beyond_64_bits_begins_and_ends_a_hair_further_out() {
        Ratio hair = Ratio.parse("0.0000000000000000000000000000000000000001");
        Bands wide = Bands.of(List.of(Ratio.ONE), List.of(QUARTER.plus(hair)));
        Ratio start = Ratio.ONE.dividedBy(Ratio.parse("1.25").plus(hair));
        Ratio end = Ratio.ONE.dividedBy(Ratio.parse("0.75").minus(hair));
        assertThat(wide.smallest(meter())).isEqualTo(Landing.by(0, start));
        assertThat(wide.passes(start)).isTrue();
        assertThat(wide.passes(start.minus(hair))).isFalse();
        assertThat(wide.passes(end)).isTrue();
        assertThat(wide.passes(end.plus(hair))).isFalse();
        assertThat(wide.atMost(Ratio.of(3, 2), meter())).contains(Landing.by(0, end));
    }
}
