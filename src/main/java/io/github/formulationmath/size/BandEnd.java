package io.github.formulationmath.size;

import io.github.formulationmath.number.Ratio;
import java.math.RoundingMode;

/**
 * One end of a band of readings, as a line over the size x: {@code slope·(x + before) + after}.
 *
 * <p>A search asks for it at thousands of sizes. It is kept as {@code (a·x + b)/c} in whole numbers, not in lowest terms, in 64
 * bits where they fit; a sum or product that does not fit is reckoned with {@link Ratio}.
 */
final class BandEnd {

    private final long a;
    private final long b;
    private final long c;
    private final Ratio weight;
    private final Ratio factor;
    private final Ratio before;
    private final Ratio after;

    private BandEnd(Ratio weight, Ratio factor, Ratio before, Ratio after, long a, long b, long c) {
        this.weight = weight;
        this.factor = factor;
        this.before = before;
        this.after = after;
        this.a = a;
        this.b = b;
        this.c = c;
    }

    /** Of a slope {@code weight·factor} above 0, and 0 at size 0. */
    static BandEnd of(Ratio weight, Ratio factor) {
        return of(weight, factor, Ratio.ZERO, Ratio.ZERO);
    }

    /** Of a slope {@code weight·factor} above 0. */
    static BandEnd of(Ratio weight, Ratio factor, Ratio before, Ratio after) {
        if (weight.fitsLongs() && factor.fitsLongs() && before.fitsLongs() && after.fitsLongs()) {
            try {
                long a = Math.multiplyExact(weight.longNumerator(), factor.longNumerator());
                long c = Math.multiplyExact(weight.longDenominator(), factor.longDenominator());
                long p = before.longDenominator();
                long q = after.longDenominator();
                long b = Math.addExact(
                        Math.multiplyExact(Math.multiplyExact(a, before.longNumerator()), q),
                        Math.multiplyExact(Math.multiplyExact(c, after.longNumerator()), p));
                long both = Math.multiplyExact(p, q);
                return new BandEnd(
                        weight, factor, before, after, Math.multiplyExact(a, both), b, Math.multiplyExact(c, both));
            } catch (ArithmeticException e) {
                // The numbers without a bound serve.
            }
        }
        return new BandEnd(weight, factor, before, after, 0, 0, 0);
    }

    /** Whether the three whole numbers fit. */
    boolean fitsLongs() {
        return c != 0;
    }

    Ratio slope() {
        return weight.times(factor);
    }

    /** The end at size 0. */
    Ratio shift() {
        return slope().times(before).plus(after);
    }

    /** The end at a size, as a whole number. */
    Ratio at(Ratio size, RoundingMode mode) {
        if (fitsLongs() && size.fitsLongs()) {
            try {
                long m = size.longDenominator();
                return whole(
                        Math.addExact(Math.multiplyExact(a, size.longNumerator()), Math.multiplyExact(b, m)),
                        Math.multiplyExact(c, m),
                        mode);
            } catch (ArithmeticException e) {
                // The numbers without a bound serve.
            }
        }
        return slope().times(size.plus(before)).plus(after).toWhole(mode);
    }

    /** The size at which the end is n, as a whole number. */
    Ratio meets(Ratio n, RoundingMode mode) {
        if (fitsLongs() && n.fitsLongs()) {
            try {
                return whole(Math.subtractExact(Math.multiplyExact(c, n.longNumerator()), b), a, mode);
            } catch (ArithmeticException e) {
                // The numbers without a bound serve.
            }
        }
        return n.minus(after).dividedBy(slope()).minus(before).toWhole(mode);
    }

    private static Ratio whole(long top, long bottom, RoundingMode mode) {
        return Ratio.of(
                mode == RoundingMode.FLOOR
                        ? Math.floorDiv(top, bottom)
                        : Math.negateExact(Math.floorDiv(Math.negateExact(top), bottom)));
    }

    /** Compares slopes. */
    int compareSlope(BandEnd other) {
        if (!fitsLongs() || !other.fitsLongs()) {
            return slope().compareTo(other.slope());
        }
        int high = Long.compare(Math.multiplyHigh(a, other.c), Math.multiplyHigh(other.a, c));
        return high != 0 ? high : Long.compareUnsigned(a * other.c, other.a * c);
    }
}
