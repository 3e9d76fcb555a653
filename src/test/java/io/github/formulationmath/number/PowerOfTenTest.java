package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Bounds of 10^(p/q) are proved by whole powers: lower^q ≤ 10^p ≤ upper^q. */
class PowerOfTenTest {

    private static final int CASES = 400 * Math.max(1, Integer.getInteger("formulationmath.cases", 1));

    @Test
    void bounds_are_proved_by_whole_powers() {
        SplittableRandom random = new SplittableRandom(20_201);
        for (int i = 0; i < CASES; i++) {
            int q = random.nextInt(1, 60);
            int p = random.nextInt(-20 * q, 20 * q + 1);
            Bounds bounds = PowerOfTen.of(Ratio.of(p, q));
            Ratio lower = bounds.lower().orElseThrow();
            Ratio upper = bounds.upper().orElseThrow();
            assertThat(power(lower, q, p)).as("lower end of 10^(%s/%s)", p, q).isLessThanOrEqualTo(0);
            assertThat(power(upper, q, p)).as("upper end of 10^(%s/%s)", p, q).isGreaterThanOrEqualTo(0);
            assertThat(upper.minus(lower).times(Ratio.parse("1e40"))).isLessThanOrEqualTo(lower);
        }
    }

    /** The sign of x^q − 10^p, in whole numbers. */
    private static int power(Ratio x, int q, int p) {
        BigInteger left = x.numerator().pow(q);
        BigInteger right = x.denominator().pow(q);
        BigInteger ten = BigInteger.TEN.pow(Math.abs(p));
        return p >= 0 ? left.compareTo(right.multiply(ten)) : left.multiply(ten).compareTo(right);
    }

    @Test
    void whole_powers_are_exact() {
        for (int p = -40; p <= 40; p++) {
            assertThat(PowerOfTen.of(Ratio.of(p))).isEqualTo(Bounds.point(Ratio.parse("1e" + p)));
        }
    }

    @Test
    void exponents_next_to_a_whole_number_are_enclosed_too() {
        for (String text : new String[] {"1e-50", "-1e-50", "0.99999999999999999999999999999999999999999999999999"}) {
            Ratio exponent = Ratio.parse(text);
            Bounds bounds = PowerOfTen.of(exponent);
            Ratio whole = Ratio.parse("1e" + (exponent.compareTo(Ratio.of(1, 2)) > 0 ? 1 : 0));
            Ratio distance = whole.times(Ratio.parse("1e-40"));
            assertThat(bounds.lower().orElseThrow()).isGreaterThan(whole.minus(distance));
            assertThat(bounds.upper().orElseThrow()).isLessThan(whole.plus(distance));
            if (exponent.signum() > 0 && whole.equals(Ratio.ONE)) {
                assertThat(bounds.upper().orElseThrow()).isGreaterThan(Ratio.ONE);
            } else {
                assertThat(bounds.lower().orElseThrow()).isLessThan(whole);
            }
        }
    }

    @Test
    void an_exponent_too_large_is_refused() {
        assertThatThrownBy(() -> PowerOfTen.of(Ratio.parse("1e9")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must lie between");
    }

    @Test
    void an_exponent_of_a_thousand_is_the_largest_in_size() {
        assertThat(PowerOfTen.of(Ratio.of(1000))).isEqualTo(Bounds.point(Ratio.parse("1e1000")));
        assertThat(PowerOfTen.of(Ratio.of(-1000))).isEqualTo(Bounds.point(Ratio.parse("1e-1000")));
        for (String beyond : new String[] {"1000.5", "-1000.5", "1001", "-1001", "1000000"}) {
            assertThatThrownBy(() -> PowerOfTen.of(Ratio.parse(beyond)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("exponent is " + beyond + ": it must lie between -1000 and 1000");
        }
    }
}
