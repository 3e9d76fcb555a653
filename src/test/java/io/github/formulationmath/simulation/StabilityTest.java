package io.github.formulationmath.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The procedure of JCGM 101:2008, 7.9.4, on blocks of a few trials that can be counted by hand. */
class StabilityTest {

    private static Stability stability(double[]... blocks) {
        Stability stability = Stability.ofStandard(0.5, 1);
        for (double[] block : blocks) {
            stability.add(SortedTrials.of(block));
        }
        return stability;
    }

    /** Three values with the standard deviation 2, and the symmetric 50 % interval ±2 about the middle. */
    private static double[] about(double middle) {
        return new double[] {middle - 2, middle, middle + 2};
    }

    /** What is reported comes from all trials together, whatever the sizes of their blocks. */
    @Test
    void blocks_are_pooled() {
        Stability stability = stability(new double[] {1, 2, 3}, new double[] {5, 7});
        assertThat(stability.trials()).isEqualTo(5);
        SortedTrials all = stability.all();
        assertThat(all.size()).isEqualTo(5);
        assertThat(all.mean()).isCloseTo(3.6, within(1e-15));
        // 2.6² + 1.6² + 0.6² + 1.4² + 3.4² = 23.2
        assertThat(all.standardDeviation()).isCloseTo(Math.sqrt(23.2 / 4), within(1e-15));
    }

    /** 7.9.2: half a unit of the last digit of the standard deviation of all trials, here of one digit. */
    @Test
    void tolerance_is_half_a_unit_of_the_last_digit() {
        // 4 · 0.87² / 3 = 1.0092, u = 1.0: with a divisor of 4 or 5 it were 0.9 or 0.8, and the tolerance a tenth.
        assertThat(stability(new double[] {-0.87, -0.87}, new double[] {0.87, 0.87})
                        .tolerance())
                .isEqualTo(0.5);
        // 48 / 3 = 16, u = 4.
        assertThat(stability(new double[] {0, 0}, new double[] {0, 8}).tolerance())
                .isEqualTo(0.5);
        assertThat(stability(new double[] {3, 3}, new double[] {3, 3}).tolerance())
                .isZero();
    }

    /** With two blocks at ±δ about their mean, s = δ; all of u = 1.8 and so a tolerance of 0.5: settled if 2 δ ≤ 0.5. */
    @Test
    void two_blocks_are_enough_if_they_agree() {
        assertThat(stability(about(10)).isReached()).isFalse();
        assertThat(stability(about(10), about(10)).isReached()).isTrue();
        assertThat(stability(about(9.75), about(10.25)).isReached()).isTrue();
        assertThat(stability(about(9.734375), about(10.265625)).isReached()).isFalse();
    }

    /** s² = Σ (y − ȳ)² / (h (h − 1)) over h blocks; with three blocks at −δ, 0, δ it is δ²/3. */
    @Test
    void the_deviation_is_that_of_a_mean_of_blocks() {
        assertThat(stability(about(9.5625), about(10), about(10.4375)).isReached())
                .as("0.4375/√3 = 0.2526")
                .isFalse();
        assertThat(stability(about(9.578125), about(10), about(10.421875)).isReached())
                .as("0.421875/√3 = 0.2436")
                .isTrue();
    }

    /** Means and ends that agree do not hide standard deviations that do not. */
    @Test
    void each_figure_counts() {
        double[] narrow = {-2, -2, 0, 0, 0, 2, 2, 2};
        double[] wide = {-2, -2, -2, -2, 2, 2, 2, 4};
        Stability stability = stability(narrow, wide);
        assertThat(SortedTrials.of(narrow).mean())
                .isEqualTo(SortedTrials.of(wide).mean());
        assertThat(SortedTrials.of(narrow).symmetric(0.5))
                .isEqualTo(SortedTrials.of(wide).symmetric(0.5));
        // √(19.5/7) = 1.67 and √(43.5/7) = 2.49: s = 0.41.
        assertThat(stability.tolerance()).isEqualTo(0.5);
        assertThat(stability.isReached()).isFalse();
    }
}
