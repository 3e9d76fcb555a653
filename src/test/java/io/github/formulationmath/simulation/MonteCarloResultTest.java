package io.github.formulationmath.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import javax.measure.quantity.Dimensionless;
import org.junit.jupiter.api.Test;

/** What a result says of the ten values from 1 to 10. */
class MonteCarloResultTest {

    private static MonteCarlo.Result<Dimensionless> oneToTen(boolean stable) {
        return new MonteCarlo.Result<>(
                SortedTrials.of(new double[] {1, 2, 3, 4, 5, 6, 7, 8, 9, 10}), 0.5, 0.25, stable, Plain.one(1));
    }

    @Test
    void it_keeps_what_it_was_asked_for() {
        assertThat(oneToTen(true).probability()).isEqualTo(0.5);
        assertThat(Plain.number(oneToTen(true).tolerance())).isEqualTo(0.25);
        assertThat(oneToTen(true).symmetricInterval()).isEqualTo(Plain.between(3, 8));
    }

    @Test
    void a_share_of_all_is_a_share_and_a_share_of_none_is_not() {
        MonteCarlo.Result<Dimensionless> result = oneToTen(true);
        assertThat(Plain.number(result.quantile(1))).isEqualTo(10);
        assertThat(Plain.number(result.quantile(Double.MIN_VALUE))).isEqualTo(1);
        for (double bad : new double[] {0, -0.1, Math.nextUp(1.0), Double.NaN}) {
            assertThatThrownBy(() -> result.quantile(bad))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("share is " + bad)
                    .hasMessageContaining("above 0 and at most at 1");
        }
    }

    /** JCGM 101:2008, 8.1: both ends differ by no more than the tolerance. */
    @Test
    void an_interval_is_validated_up_to_the_tolerance_at_either_end() {
        MonteCarlo.Result<Dimensionless> result = oneToTen(true);
        assertThat(result.validates(Plain.between(2.75, 8.25))).isTrue();
        assertThat(result.validates(Plain.between(3.25, 7.75))).isTrue();
        assertThat(result.validates(Plain.between(2.7, 8))).isFalse();
        assertThat(result.validates(Plain.between(3, 8.3))).isFalse();
    }

    @Test
    void its_text_says_whether_it_settled() {
        assertThat(oneToTen(true).toString())
                .startsWith("5.5, standard uncertainty ≈ 3.0276")
                .endsWith(" at p = 0.5 from 10 trials");
        assertThat(oneToTen(false).toString()).endsWith(" at p = 0.5 from 10 trials, not settled");
    }
}
