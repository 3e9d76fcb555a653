package io.github.formulationmath.size;

import io.github.formulationmath.number.Ratio;
import java.math.BigInteger;
import java.util.List;

/**
 * The least common multiple of the numbers 1/w: the smallest L > 0 at which every w·L is whole. For {@code w = a/b} in
 * lowest terms {@code 1/w = b/a}, and the least common multiple of fractions in lowest terms is that of the numerators
 * over the greatest common divisor of the denominators.
 */
final class CommonPeriod {

    private CommonPeriod() {}

    /** The least common multiple of sizes: the smallest size that is a whole multiple of each. */
    static Ratio ofSizes(List<Ratio> sizes) {
        return of(sizes.stream().map(Ratio::reciprocal).toList());
    }

    static Ratio of(List<Ratio> weights) {
        BigInteger multiple = BigInteger.ONE;
        BigInteger divisor = BigInteger.ZERO;
        for (Ratio weight : weights) {
            BigInteger b = weight.denominator();
            multiple = multiple.divide(multiple.gcd(b)).multiply(b);
            divisor = divisor.gcd(weight.numerator());
        }
        return Ratio.of(multiple, divisor);
    }
}
