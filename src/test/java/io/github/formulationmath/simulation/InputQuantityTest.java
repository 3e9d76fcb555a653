package io.github.formulationmath.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.simulation.InputQuantity.Law;
import io.github.formulationmath.support.ValueContract;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.RealDistribution;
import org.apache.commons.math3.distribution.TriangularDistribution;
import org.apache.commons.math3.distribution.UniformRealDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;

/** The laws of the inputs as JCGM 101:2008, 6.4, defines them, and as Commons Math knows them. */
class InputQuantityTest implements ValueContract<InputQuantity> {

    private static final int DRAWN = 20_000;

    @Override
    public List<InputQuantity> different() {
        return List.of(
                InputQuantity.rectangular(2, 6),
                InputQuantity.triangular(2, 6),
                InputQuantity.normal(4, 2),
                InputQuantity.triangular(3, 7),
                InputQuantity.triangular(1, 7));
    }

    @Override
    public List<InputQuantity> same() {
        return List.of(
                new InputQuantity(Law.RECTANGULAR, 4, 2),
                new InputQuantity(Law.TRIANGULAR, 4, 2),
                new InputQuantity(Law.NORMAL, 4, 2),
                new InputQuantity(Law.TRIANGULAR, 5, 2),
                new InputQuantity(Law.TRIANGULAR, 4, 3));
    }

    @Test
    void bounds_become_a_middle_and_a_half_width() {
        InputQuantity quantity = InputQuantity.triangular(2, 6);
        assertThat(quantity.law()).isEqualTo(Law.TRIANGULAR);
        assertThat(quantity.middle()).isEqualTo(4);
        assertThat(quantity.scale()).isEqualTo(2);
        assertThat(quantity).hasToString("TRIANGULAR 4.0 ± 2.0");
        // The largest bounds there are do not overflow.
        assertThat(InputQuantity.triangular(-Double.MAX_VALUE, Double.MAX_VALUE).scale())
                .isEqualTo(Double.MAX_VALUE);
    }

    /** JCGM 101:2008, 6.4.5: expectation (a + b)/2, variance (b − a)²/24. */
    @Test
    void a_triangular_quantity_follows_its_law() {
        follows(InputQuantity.triangular(2, 6), new TriangularDistribution(null, 2, 4, 6), 4, 16.0 / 24);
    }

    /** JCGM 101:2008, 6.4.2: expectation (a + b)/2, variance (b − a)²/12. */
    @Test
    void a_rectangular_quantity_follows_its_law() {
        follows(InputQuantity.rectangular(2, 6), new UniformRealDistribution(null, 2, 6), 4, 16.0 / 12);
    }

    /** JCGM 101:2008, 6.4.7: expectation x, variance u²(x). */
    @Test
    void a_normal_quantity_follows_its_law() {
        follows(InputQuantity.normal(4, 2), new NormalDistribution(null, 4, 2), 4, 4);
    }

    /** Mean and variance within four standard deviations of such a sample; the seed is fixed. */
    private static void follows(InputQuantity quantity, RealDistribution law, double mean, double variance) {
        double[] sample = new double[DRAWN];
        Draws draws = new Draws(List.of(quantity));
        SplittableRandom random = new SplittableRandom(645);
        double[] one = new double[1];
        for (int i = 0; i < DRAWN; i++) {
            draws.fill(one, random);
            sample[i] = one[0];
        }
        assertThat(StatUtils.mean(sample)).isCloseTo(mean, within(4 * Math.sqrt(variance / DRAWN)));
        // The normal law has the largest fourth moment of the three, 3 σ⁴.
        assertThat(StatUtils.variance(sample)).isCloseTo(variance, within(4 * variance * Math.sqrt(2.0 / DRAWN)));
        assertThat(new KolmogorovSmirnovTest().kolmogorovSmirnovTest(law, sample, false))
                .isGreaterThan(0.01);
    }
}
