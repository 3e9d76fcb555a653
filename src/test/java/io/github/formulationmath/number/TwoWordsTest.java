package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The greatest common divisor in two words, held against that of the JDK, whose numbers have no end. */
class TwoWordsTest {

    private final Random random = new Random(20261126);

    @Test
    void is_that_of_the_jdk_whatever_the_two_have_in_common() {
        for (int i = 0; i < 20_000; i++) {
            BigInteger common = ofAtMost(1 + random.nextInt(80));
            int left = TwoWords.MOST_BITS - common.bitLength();
            BigInteger a = common.multiply(ofAtMost(1 + random.nextInt(left)));
            BigInteger b = common.multiply(ofAtMost(1 + random.nextInt(left)));
            assertThat(TwoWords.gcd(a, b)).as("%s and %s", a, b).isEqualTo(a.gcd(b));
        }
    }

    @Test
    void powers_of_two_and_their_neighbours_cross_the_border_of_the_words() {
        BigInteger[] edges = IntStream.range(1, TwoWords.MOST_BITS)
                .mapToObj(BigInteger.ONE::shiftLeft)
                .flatMap(power ->
                        IntStream.of(-1, 0, 1, 2).mapToObj(BigInteger::valueOf).map(power::add))
                .filter(edge -> edge.signum() > 0)
                .toArray(BigInteger[]::new);
        for (BigInteger a : edges) {
            for (BigInteger b : edges) {
                if (!TwoWords.gcd(a, b).equals(a.gcd(b))) {
                    assertThat(TwoWords.gcd(a, b)).as("%s and %s", a, b).isEqualTo(a.gcd(b));
                }
            }
        }
        BigInteger most = BigInteger.ONE.shiftLeft(TwoWords.MOST_BITS).subtract(BigInteger.ONE);
        assertThat(TwoWords.gcd(most, most)).isEqualTo(most);
    }

    private BigInteger ofAtMost(int bits) {
        return new BigInteger(bits, random).max(BigInteger.ONE);
    }
}
