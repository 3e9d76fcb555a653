package io.github.formulationmath.size;

import io.github.formulationmath.number.Ratio;
import java.util.List;

/**
 * The least common multiple of the numbers 1/w: the smallest L > 0 at which every w·L is whole.
 */
final class CommonPeriod {

    private CommonPeriod() {}

    static Ratio of(List<Ratio> weights) {
        return weights.stream()
                .filter(weight -> !weight.isZero())
                .map(Ratio::reciprocal)
                .reduce(Ratio::leastCommonMultiple)
                .orElseThrow();
    }
}
