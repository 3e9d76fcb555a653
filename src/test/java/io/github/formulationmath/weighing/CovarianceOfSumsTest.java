package io.github.formulationmath.weighing;

import static io.github.formulationmath.support.Made.covariance;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.support.ManyLines;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A covariance of sums is added up in one pass; here line by line. */
class CovarianceOfSumsTest {

    @Property(tries = 50)
    void covariances_of_sums_are_sums_of_covariances(@ForAll long seed) {
        Random random = new Random(seed);
        MadeMasses masses =
                ManyLines.exactly(ManyLines.inTwoPhases(2 + random.nextInt(5))).masses();
        Map<Integer, Ratio> a = weights(random, masses.size());
        Map<Integer, Ratio> b = weights(random, masses.size());
        Ratio slow = Ratio.ZERO;
        for (Map.Entry<Integer, Ratio> one : a.entrySet()) {
            for (Map.Entry<Integer, Ratio> other : b.entrySet()) {
                slow = slow.plus(
                        one.getValue().times(other.getValue()).times(covariance(masses, one.getKey(), other.getKey())));
            }
        }
        assertThat(covariance(masses, a, b)).isEqualTo(slow);
    }

    private static Map<Integer, Ratio> weights(Random random, int lines) {
        Map<Integer, Ratio> weights = new HashMap<>();
        for (int i = 0; i < lines; i++) {
            if (random.nextBoolean()) {
                weights.put(i, Ratio.of(random.nextInt(7) - 3, 2));
            }
        }
        return weights;
    }
}
