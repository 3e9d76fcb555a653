package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.oracle.Rational;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Three quarters of a million random cases against the independent oracle, hard around the 64-bit border. */
class RatioOracleTest {

    private static final int CASES = 250_000;

    @Tag("long")
    @Test
    void the_four_operations_and_the_order_agree_with_plain_fractions() {
        operations(CASES);
    }

    private static void operations(int cases) {
        Hard hard = new Hard(20261125);
        for (int i = 0; i < cases; i++) {
            long a = hard.number();
            long b = hard.notZero();
            long c = hard.number();
            long d = hard.notZero();
            agree(Ratio.of(a, b), Rational.of(a, b), Ratio.of(c, d), Rational.of(c, d));
        }
    }

    private static void agree(Ratio x, Rational p, Ratio y, Rational q) {
        same(x, p);
        same(x.plus(y), p.add(q));
        same(x.minus(y), p.subtract(q));
        same(x.times(y), p.multiply(q));
        if (!y.isZero()) {
            same(x.dividedBy(y), p.divide(q));
        }
        check(Integer.signum(x.compareTo(y)) == p.compare(q), x, y);
        check(x.equals(y) == (p.compare(q) == 0), x, y);
        // The same numbers by a way through numbers too large for 64 bits.
        Ratio detour = x.times(HUGE).plus(y.times(HUGE)).dividedBy(HUGE);
        check(detour.equals(x.plus(y)) && detour.hashCode() == x.plus(y).hashCode(), x, y);
    }

    private static final Ratio HUGE = Ratio.of(BigInteger.ONE.shiftLeft(200).add(BigInteger.ONE));

    private static void same(Ratio value, Rational expected) {
        boolean same =
                value.numerator().equals(expected.top()) && value.denominator().equals(expected.bottom());
        boolean small = fits(expected.top()) && fits(expected.bottom());
        if (!same || value.fitsLongs() != small) {
            throw new AssertionError(value + " instead of " + expected + " (fits longs: " + value.fitsLongs() + ")");
        }
    }

    private static boolean fits(BigInteger value) {
        return value.abs().bitLength() < Long.SIZE;
    }

    private static void check(boolean right, Ratio x, Ratio y) {
        if (!right) {
            throw new AssertionError("x = " + x + ", y = " + y);
        }
    }

    @Tag("long")
    @Test
    void rounding_to_a_grid_agrees_with_plain_fractions_ties_included() {
        grids(CASES);
    }

    private static void grids(int cases) {
        Hard hard = new Hard(7);
        int ties = 0;
        for (int i = 0; i < cases; i++) {
            Rational step = Rational.of(Math.max(1, Math.abs(hard.number() >> 1)), 1L << hard.below(40));
            // Every second case lies exactly between two lines of the grid.
            Rational value = hard.coin()
                    ? Rational.of(hard.number(), hard.notZero())
                    : Rational.of(hard.number() | 1, 2).multiply(step);
            Rational expected = value.toGrid(step);
            ties += value.subtract(expected)
                                    .multiply(Rational.of(2, 1))
                                    .divide(step)
                                    .compare(Rational.of(1, 1))
                            == 0
                    ? 1
                    : 0;
            same(Rounding.toMultipleOf(Hard.ratio(step)).apply(Hard.ratio(value)), expected);
        }
        assertThat(ties).isGreaterThan(cases / 10);
    }

    @Tag("long")
    @Test
    void numbers_that_differ_in_the_last_place_compare_right() {
        neighbours(CASES);
    }

    private static void neighbours(int cases) {
        Hard hard = new Hard(11);
        for (int i = 0; i < cases; i++) {
            long n = hard.number() >> 1;
            long d = (hard.notZero() >>> 1) + 1;
            Ratio x = Ratio.of(n, d);
            Ratio y = Ratio.of(n + 1 - hard.below(3), d == Long.MAX_VALUE ? d : d + hard.below(2));
            check(Integer.signum(x.compareTo(y)) == Hard.plain(x).compare(Hard.plain(y)), x, y);
            check(x.minus(y).signum() == Integer.signum(x.compareTo(y)), x, y);
        }
    }

    @Tag("long")
    @Test
    void the_nearest_double_is_the_nearest_double() {
        doubles(CASES);
    }

    private static void doubles(int cases) {
        Hard hard = new Hard(13);
        for (int i = 0; i < cases / 10; i++) {
            BigInteger n = BigInteger.valueOf(hard.number()).pow(1 + hard.below(18));
            BigInteger d = BigInteger.valueOf(hard.notZero()).abs().pow(1 + hard.below(18));
            Ratio x = Ratio.of(n, d);
            double nearest = x.doubleValue();
            check(isNearest(Hard.plain(x), nearest), x, Ratio.ZERO);
        }
    }

    /** No neighbour is nearer, and of two equally near ones the even one is taken. */
    private static boolean isNearest(Rational x, double value) {
        if (Double.isInfinite(value)) {
            // 2^1024 - 2^970 is the smallest size that rounds to infinity.
            BigInteger limit = BigInteger.ONE.shiftLeft(1024).subtract(BigInteger.ONE.shiftLeft(970));
            return size(x).compare(Rational.whole(limit)) >= 0
                    && value > 0 == x.top().signum() > 0;
        }
        Rational off = size(x.subtract(exact(value)));
        return beats(off, x, Math.nextUp(value), value) && beats(off, x, Math.nextDown(value), value);
    }

    private static boolean beats(Rational off, Rational x, double neighbour, double value) {
        if (Double.isInfinite(neighbour)) {
            return true;
        }
        int nearer = off.compare(size(x.subtract(exact(neighbour))));
        return nearer < 0 || nearer == 0 && (Double.doubleToLongBits(value) & 1) == 0;
    }

    private static Rational size(Rational x) {
        return x.top().signum() < 0 ? Rational.of(0, 1).subtract(x) : x;
    }

    private static Rational exact(double value) {
        BigDecimal decimal = new BigDecimal(value);
        return decimal.scale() > 0
                ? new Rational(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()))
                : Rational.whole(decimal.toBigIntegerExact());
    }

    /** The first cases of every law, in a moment. */
    @Test
    void the_first_cases_agree() {
        operations(2_000);
        grids(2_000);
        neighbours(2_000);
        doubles(5_000);
    }

    @Test
    void square_roots_agree_with_the_jdk() {
        Hard hard = new Hard(17);
        for (int i = 0; i < 5_000; i++) {
            int digits = 1 + hard.below(40);
            BigInteger n = BigInteger.valueOf(hard.number()).abs();
            int places = hard.below(12);
            // BigDecimal.sqrt is exactly rounded, half up or even alike: an irrational root has no ties.
            BigDecimal expected =
                    new BigDecimal(n, places).sqrt(new MathContext(digits, java.math.RoundingMode.HALF_EVEN));
            assertThat(Ratio.of(new BigDecimal(n, places)).sqrt(digits)).isEqualTo(Ratio.of(expected));
        }
    }
}
