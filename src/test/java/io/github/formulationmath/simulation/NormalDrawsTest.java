package io.github.formulationmath.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;

class NormalDrawsTest {

    /** The ziggurat is right if its top closes: layer 255 ends where the density reaches 1. */
    @Test
    void the_top_layer_closes() {
        double[] edges = NormalDraws.edges();
        double last = edges[255];
        double area = 0.00492867323399;
        assertThat(last * (1 - Math.exp(-0.5 * last * last))).isCloseTo(area, within(1e-9));
        assertThat(edges[256]).isZero();
    }

    /** All layers have one area; that of the lowest is a strip up to the last edge, and the tail beyond it. */
    @Test
    void all_layers_are_equal() {
        double[] edges = NormalDraws.edges();
        double area = 0.00492867323399;
        for (int layer = 1; layer < 256; layer++) {
            assertThat(edges[layer] * (density(edges[layer + 1]) - density(edges[layer])))
                    .isCloseTo(area, within(1e-9));
        }
        double tail = Math.sqrt(2 * Math.PI) * new NormalDistribution(null, 0, 1).cumulativeProbability(-edges[1]);
        assertThat(edges[1] * density(edges[1]) + tail).isCloseTo(area, within(1e-9));
        // The lowest is drawn as a rectangle of the height of its strip.
        assertThat(edges[0] * density(edges[1])).isCloseTo(area, within(1e-9));
    }

    private static double density(double x) {
        return Math.exp(-0.5 * x * x);
    }

    /** Half of the tail lies on either side. */
    @Test
    void the_tail_has_two_sides() {
        SplittableRandom random = new SplittableRandom(7);
        int trials = 4_000_000;
        int above = 0;
        int below = 0;
        for (int i = 0; i < trials; i++) {
            double x = NormalDraws.next(random);
            above += x > 3.7 ? 1 : 0;
            below += x < -3.7 ? 1 : 0;
        }
        double expected = trials * new NormalDistribution(null, 0, 1).cumulativeProbability(-3.7);
        assertThat((double) above).isCloseTo(expected, within(4 * Math.sqrt(expected)));
        assertThat((double) below).isCloseTo(expected, within(4 * Math.sqrt(expected)));
    }

    /** Against the normal law of Commons Math, by the test of Kolmogorov and Smirnov; the seed is fixed. */
    @Test
    void they_follow_the_normal_law() {
        SplittableRandom random = new SplittableRandom(5);
        double[] sample = new double[200_000];
        for (int i = 0; i < sample.length; i++) {
            sample[i] = NormalDraws.next(random);
        }
        double p = new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new NormalDistribution(null, 0, 1), sample, false);
        assertThat(p).isGreaterThan(0.01);
    }

    /** The tail beyond 3.654 holds 2.58e-4 of the law. */
    @Test
    void the_tail_is_as_heavy_as_it_should_be() {
        SplittableRandom random = new SplittableRandom(6);
        int trials = 20_000_000;
        int beyond = 0;
        int farBeyond = 0;
        for (int i = 0; i < trials; i++) {
            double x = Math.abs(NormalDraws.next(random));
            beyond += x > 3.7 ? 1 : 0;
            farBeyond += x > 4.5 ? 1 : 0;
        }
        NormalDistribution law = new NormalDistribution(null, 0, 1);
        double expected = 2 * trials * law.cumulativeProbability(-3.7);
        double expectedFar = 2 * trials * law.cumulativeProbability(-4.5);
        assertThat((double) beyond).isCloseTo(expected, within(4 * Math.sqrt(expected)));
        assertThat((double) farBeyond).isCloseTo(expectedFar, within(4 * Math.sqrt(expectedFar)));
    }

    /** Pinned: the same bits on every release of Java. */
    @Test
    void the_bits_do_not_change() {
        SplittableRandom random = new SplittableRandom(1).split();
        long hash = 0;
        for (int i = 0; i < 100_000; i++) {
            hash = 31 * hash + Double.doubleToLongBits(NormalDraws.next(random));
        }
        assertThat(hash).isEqualTo(5_231_559_481_568_220_560L);
    }
}
