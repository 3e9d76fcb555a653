package io.github.formulationmath.number;

import io.github.formulationmath.oracle.Rational;
import java.math.BigInteger;
import java.util.SplittableRandom;

/** Random numbers where exact arithmetic breaks if it breaks: near powers of two, coprime, equal but for the last bit. */
final class Hard {

    private static final int[] EDGES = {1, 2, 31, 32, 53, 61, 62, 63};

    private final SplittableRandom random;

    Hard(long seed) {
        this.random = new SplittableRandom(seed);
    }

    long number() {
        return switch (random.nextInt(6)) {
            case 0 -> random.nextLong(-20, 21);
            case 1 -> random.nextLong() >> random.nextInt(64);
            case 2 -> (1L << EDGES[random.nextInt(EDGES.length)]) + random.nextLong(-2, 3);
            case 3 -> random.nextBoolean() ? Long.MIN_VALUE + random.nextInt(3) : Long.MAX_VALUE - random.nextInt(3);
            case 4 -> random.nextLong(-1_000_000, 1_000_001);
            default -> 1L << random.nextInt(64);
        };
    }

    long notZero() {
        long value = number();
        return value == 0 ? 1 : value;
    }

    boolean coin() {
        return random.nextBoolean();
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    static Rational plain(Ratio value) {
        return new Rational(value.numerator(), value.denominator());
    }

    static Ratio ratio(Rational value) {
        return Ratio.of(value.top(), value.bottom());
    }

    static Ratio whole(BigInteger value) {
        return Ratio.of(value);
    }
}
