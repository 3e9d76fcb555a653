package io.github.formulationmath.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The intervals of JCGM 101:2008, 7.7, on ten values that can be counted by hand. */
class SortedTrialsTest {

    private static SortedTrials trials(double... values) {
        return SortedTrials.of(values);
    }

    private static SortedTrials oneToTen() {
        return trials(7, 3, 10, 1, 9, 2, 8, 4, 6, 5);
    }

    @Test
    void mean_and_spread_are_those_of_the_values() {
        assertThat(oneToTen().size()).isEqualTo(10);
        assertThat(oneToTen().mean()).isEqualTo(5.5);
        assertThat(oneToTen().squares()).isEqualTo(82.5);
        assertThat(oneToTen().standardDeviation()).isCloseTo(Math.sqrt(82.5 / 9), within(1e-15));
    }

    @Test
    void the_symmetric_interval_leaves_as_many_below_as_above() {
        // q = 8 of M = 10, r = (10 - 8 + 1) / 2 rounded down = 1: from the first to the ninth value.
        assertThat(oneToTen().symmetric(0.8)).isEqualTo(new SortedTrials.Ends(1, 9));
        // q = 5, r = 3: from the third to the eighth.
        assertThat(oneToTen().symmetric(0.5)).isEqualTo(new SortedTrials.Ends(3, 8));
        // q would be 10; no interval holds more than from the first to the last.
        assertThat(oneToTen().symmetric(0.99)).isEqualTo(new SortedTrials.Ends(1, 10));
        // pM = 4.6 is no whole number: q = 5.
        assertThat(oneToTen().symmetric(0.46)).isEqualTo(new SortedTrials.Ends(3, 8));
    }

    @Test
    void the_shortest_interval_is_found_wherever_it_lies_and_the_first_of_equals_counts() {
        assertThat(trials(0, 10, 11, 12, 13, 14, 30, 40, 50, 60).shortest(0.4))
                .isEqualTo(new SortedTrials.Ends(10, 14));
        assertThat(trials(0, 10, 20, 30, 40, 50, 51, 52, 53, 54).shortest(0.4))
                .isEqualTo(new SortedTrials.Ends(50, 54));
        assertThat(trials(0, 1, 2, 3, 4, 50, 60, 70, 80, 90).shortest(0.4)).isEqualTo(new SortedTrials.Ends(0, 4));
        assertThat(oneToTen().shortest(0.4)).isEqualTo(new SortedTrials.Ends(1, 5));
    }

    @Test
    void quantiles_are_values() {
        assertThat(oneToTen().quantile(0.25)).isEqualTo(3);
        assertThat(oneToTen().quantile(0.5)).isEqualTo(5);
        assertThat(oneToTen().quantile(0)).isEqualTo(1);
        assertThat(oneToTen().quantile(1)).isEqualTo(10);
    }

    @Test
    void values_up_to_a_limit_are_counted_the_limit_included() {
        SortedTrials values = trials(1, 2, 2, 2, 3);
        assertThat(values.countAtMost(0.9)).isZero();
        assertThat(values.countAtMost(1)).isEqualTo(1);
        assertThat(values.countAtMost(2)).isEqualTo(4);
        assertThat(values.countAtMost(2.5)).isEqualTo(4);
        assertThat(values.countAtMost(3)).isEqualTo(5);
    }

    @Test
    void blocks_come_together_in_order() {
        SortedTrials all = SortedTrials.of(List.of(trials(5, 1), trials(4, 2, 3)), 3, 10);
        assertThat(all.size()).isEqualTo(5);
        assertThat(all.quantile(0.4)).isEqualTo(2);
        assertThat(all.standardDeviation()).isCloseTo(Math.sqrt(2.5), within(1e-15));
    }
}
