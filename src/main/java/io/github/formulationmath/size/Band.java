package io.github.formulationmath.size;

import io.github.formulationmath.number.Ratio;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/**
 * The whole numbers n of divisions that let one line pass at a size u: from {@code ⌈low(u)⌉} to {@code ⌊up(u)⌋}. Both ends
 * rise with u in a straight line.
 *
 * @param line the index of the line
 * @param low the lower end
 * @param up the upper end
 */
record Band(int line, End low, End up) {

    /** A line rounded by itself: {@code (1 − τ)·w·u ≤ n ≤ (1 + τ)·w·u}, from the share and what it is multiplied with. */
    static Band of(int line, Ratio share, Ratio under, Ratio over) {
        return new Band(line, End.of(share, under), End.of(share, over));
    }

    /**
     * The readings of one line that keep it within tolerance when N divisions are made: from {@code ⌈w(1 − τ)(N + (k − 2)e) +
     * e⌉} to {@code ⌊w(1 + τ)(N − (k − 2)e) − e⌋}, for k lines and a reading error of ±e divisions.
     *
     * <p>Why: with true amounts n_j + δ_j, |δ_j| ≤ e, the share {@code (n_i + δ_i) / (N + Σδ)} rises with δ_i and falls with
     * every other δ_j. It is largest at δ_i = e and all others −e, {@code (n_i + e) / (N − (k − 2)e)}, and smallest the other
     * way round, {@code (n_i − e) / (N + (k − 2)e)}. The two must not leave {@code [w(1 − τ), w(1 + τ)]}.
     */
    static Band closed(int line, Ratio weight, Ratio tolerance, Ratio error, int lines) {
        Ratio others = error.times(lines - 2L);
        return new Band(
                line,
                End.of(weight, Ratio.ONE.minus(tolerance), others, error),
                End.of(weight, Ratio.ONE.plus(tolerance), others.unaryMinus(), error.unaryMinus()));
    }

    boolean fitsLongs() {
        return low.fitsLongs() && up.fitsLongs();
    }

    /** Whether the line has no tolerance: its band is no wider at larger sizes. */
    boolean isExact() {
        return low.compareSlope(up) == 0;
    }

    /** Whether no size at all lets the line pass: it must be exact, and its reading is not. */
    boolean isHopeless() {
        return isExact() && low.shift().compareTo(up.shift()) > 0;
    }

    /** The smallest whole number that is not below the band. */
    Ratio least(Ratio size) {
        return low.at(size, RoundingMode.CEILING);
    }

    /** The largest whole number that is not above the band. */
    Ratio most(Ratio size) {
        return up.at(size, RoundingMode.FLOOR);
    }

    /** Whether a whole number is not above the band. */
    boolean holds(Ratio n, Ratio size) {
        return up.isAtLeast(n, size);
    }

    /** The smallest whole size whose largest number reaches n. */
    Ratio reaches(Ratio n) {
        return up.meets(n, RoundingMode.CEILING);
    }

    /** The largest whole size whose smallest number is still no more than n. */
    Ratio stillAllows(Ratio n) {
        return low.meets(n, RoundingMode.FLOOR);
    }

    /** From which size on the band is at least one division wide, so that it always holds a whole number. */
    Ratio alwaysFrom() {
        return asWideAs(Ratio.ONE);
    }

    /** From which size on its ends, not rounded, lie so many divisions apart. */
    Ratio asWideAs(Ratio divisions) {
        return divisions.minus(up.shift().minus(low.shift())).dividedBy(width());
    }

    private Ratio width() {
        return up.slope().minus(low.slope());
    }

    /** Of a line by itself: the first size at which the band reaches a number. */
    Ratio reached(Ratio n) {
        return n.dividedBy(up.slope());
    }

    /** Of a line by itself: the last size at which a number is in the band. */
    Ratio left(Ratio n) {
        return n.dividedBy(low.slope());
    }

    /** Of a line by itself: from which size on every size passes. Its windows n and n + 1 touch from n ≥ (1 − τ)/(2τ) on. */
    Ratio rayStart() {
        return reached(low.slope().dividedBy(width()).ceil().max(Ratio.ONE));
    }

    /** Where the windows around a passing size start: its own window, or the ray if the size lies on it. */
    Ratio startAround(Ratio passing) {
        return !isExact() && passing.compareTo(rayStart()) >= 0 ? rayStart() : reached(least(passing));
    }

    /**
     * One end of a band of readings, as a line over the size x: {@code slope·(x + before) + after}.
     *
     * <p>A search asks for it at thousands of sizes. It is kept as {@code (a·x + b)/c} in whole numbers, not in lowest terms, in 64
     * bits where they fit; a sum or product that does not fit is reckoned with {@link Ratio}.
     */
    static final class End {

        private final long a;
        private final long b;
        private final long c;
        private final Ratio weight;
        private final Ratio factor;
        private final Ratio before;
        private final Ratio after;

        /** In lowest terms; few lines of many are ever asked for it, those again and again. */
        private @Nullable Ratio slope;

        private End(Ratio weight, Ratio factor, Ratio before, Ratio after, long a, long b, long c) {
            this.weight = weight;
            this.factor = factor;
            this.before = before;
            this.after = after;
            this.a = a;
            this.b = b;
            this.c = c;
        }

        /** Of a slope {@code weight·factor} above 0, and 0 at size 0. */
        static End of(Ratio weight, Ratio factor) {
            return of(weight, factor, Ratio.ZERO, Ratio.ZERO);
        }

        /** Of a slope {@code weight·factor} above 0. */
        static End of(Ratio weight, Ratio factor, Ratio before, Ratio after) {
            if (weight.fitsLongs() && factor.fitsLongs() && before.fitsLongs() && after.fitsLongs()) {
                try {
                    long a = Math.multiplyExact(weight.longNumerator(), factor.longNumerator());
                    long c = Math.multiplyExact(weight.longDenominator(), factor.longDenominator());
                    if (before.isZero() && after.isZero()) {
                        return new End(weight, factor, before, after, a, 0, c);
                    }
                    long p = before.longDenominator();
                    long q = after.longDenominator();
                    long b = Math.addExact(
                            Math.multiplyExact(Math.multiplyExact(a, before.longNumerator()), q),
                            Math.multiplyExact(Math.multiplyExact(c, after.longNumerator()), p));
                    long both = Math.multiplyExact(p, q);
                    return new End(
                            weight, factor, before, after, Math.multiplyExact(a, both), b, Math.multiplyExact(c, both));
                } catch (ArithmeticException e) {
                    // The numbers without a bound serve.
                }
            }
            return new End(weight, factor, before, after, 0, 0, 0);
        }

        /** Whether the three whole numbers fit. */
        boolean fitsLongs() {
            return c != 0;
        }

        Ratio slope() {
            Ratio known = slope;
            if (known == null) {
                known = weight.times(factor);
                slope = known;
            }
            return known;
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

        /** Whether the end at a size is at least n, a whole number; without a division, which takes longer than all else. */
        boolean isAtLeast(Ratio n, Ratio size) {
            if (fitsLongs() && size.fitsLongs() && n.fitsLongs()) {
                try {
                    long m = size.longDenominator();
                    return Math.addExact(Math.multiplyExact(a, size.longNumerator()), Math.multiplyExact(b, m))
                            >= Math.multiplyExact(Math.multiplyExact(c, m), n.longNumerator());
                } catch (ArithmeticException e) {
                    // The numbers without a bound serve.
                }
            }
            return n.compareTo(at(size, RoundingMode.FLOOR)) <= 0;
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
        int compareSlope(End other) {
            if (!fitsLongs() || !other.fitsLongs()) {
                return slope().compareTo(other.slope());
            }
            int high = Long.compare(Math.multiplyHigh(a, other.c), Math.multiplyHigh(other.a, c));
            return high != 0 ? high : Long.compareUnsigned(a * other.c, other.a * c);
        }
    }
}
