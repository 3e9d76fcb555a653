package io.github.formulationmath.falsefine;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Figures of a claim, in whole steps, beside what they should be; and whether they are a legitimate rounding. Three ways are
 * (each line to the nearest, ties either way; all but the rest so, and the rest is the batch less the others; the line below
 * or above, so that all make the batch and the largest remainders went up), and a few habits are told apart from wrong.
 *
 * @param shares of 10⁴, the first takes the rest
 * @param batch tenths of a step
 * @param shown steps
 */
record Figures(int[] shares, long batch, long[] shown) {

    private static final int WHOLE = 10_000;

    /** What a line should be, in steps. */
    Exact target(int line) {
        return Exact.of(shares[line] * batch, WHOLE * 10L);
    }

    int size() {
        return shares.length;
    }

    /** All figures rounded to the nearest step, at ties as the dice fall. */
    static Figures rounded(Dice dice, int[] shares, long batch) {
        Figures blank = new Figures(shares, batch, new long[shares.length]);
        for (int i = 0; i < shares.length; i++) {
            long high = blank.target(i).nearest().longValueExact();
            boolean tie = blank.target(i).isNearest(BigInteger.valueOf(high - 1));
            blank.shown[i] = tie && dice.oneIn(2) ? high - 1 : high;
        }
        return blank;
    }

    Figures with(int line, long figure) {
        long[] other = shown.clone();
        other[line] = figure;
        return new Figures(shares, batch, other);
    }

    long sum() {
        return Arrays.stream(shown).sum();
    }

    private boolean isNear(int line) {
        return target(line).isNearest(BigInteger.valueOf(shown[line]));
    }

    private boolean isBatch(long steps) {
        return Exact.of(batch, 10).isNearest(BigInteger.valueOf(steps));
    }

    /** Whether the figures are a rounding of what they should be, under any rule for ties. */
    boolean isRounding() {
        return isEachNear() || takesTheRest(0) || isLargestRemainder();
    }

    private boolean isEachNear() {
        return IntStream.range(0, size()).allMatch(this::isNear);
    }

    /** All others to the nearest, this line the batch less the others. */
    private boolean takesTheRest(int line) {
        boolean others = IntStream.range(0, size()).allMatch(i -> i == line || isNear(i));
        return others && shown[line] >= 0 && isBatch(sum());
    }

    private boolean isLargestRemainder() {
        if (!isBatch(sum())) {
            return false;
        }
        Exact largestDown = Exact.ZERO;
        Exact smallestUp = Exact.of(1);
        for (int i = 0; i < size(); i++) {
            Exact remainder = target(i).minus(new Exact(target(i).floor(), BigInteger.ONE));
            BigInteger above = BigInteger.valueOf(shown[i]).subtract(target(i).floor());
            if (remainder.top().signum() == 0) {
                if (above.signum() != 0) {
                    return false;
                }
            } else if (above.signum() == 0) {
                largestDown = largestDown.max(remainder);
            } else if (above.equals(BigInteger.ONE)) {
                smallestUp = smallestUp.isAbove(remainder) ? remainder : smallestUp;
            } else {
                return false;
            }
        }
        return largestDown.compareTo(smallestUp) <= 0;
    }

    /** Whether a habit explains them that has a name: another line takes the rest, fewer digits, a coarser grid. */
    boolean isHabit() {
        return IntStream.range(0, size()).anyMatch(this::takesTheRest)
                || IntStream.rangeClosed(2, 6).anyMatch(this::isToDigits)
                || isOnGrid(5)
                || isOnGrid(50)
                || isOnGrid(500);
    }

    private boolean isOnGrid(long grid) {
        return IntStream.range(0, size()).allMatch(i -> isOnGrid(target(i), shown[i], grid));
    }

    private boolean isToDigits(int digits) {
        return IntStream.range(0, size()).allMatch(i -> isToDigits(i, digits));
    }

    /** A multiple of the last of so many digits, of the target or of the figure, and within half of it. */
    private boolean isToDigits(int line, int digits) {
        return isToDigits(target(line), shown[line], digits);
    }

    private static boolean isToDigits(Exact exact, long figure, int digits) {
        return Stream.of(exact.floor(), BigInteger.valueOf(figure)).anyMatch(number -> {
            BigInteger unit = BigInteger.TEN.pow(Math.max(0, number.toString().length() - digits));
            return isOnGrid(exact, figure, unit.longValueExact());
        });
    }

    private static boolean isOnGrid(Exact exact, long figure, long grid) {
        Exact off = exact.minus(Exact.of(figure)).abs();
        return figure % grid == 0 && !off.times(2).isAbove(Exact.of(grid));
    }

    /** Whether the habit that the figures have gives a total, too. */
    boolean hasHabitOf(long total) {
        Exact whole = Exact.of(batch, 10);
        return IntStream.rangeClosed(2, 6).anyMatch(k -> isToDigits(k) && isToDigits(whole, total, k))
                || LongStream.of(5, 50, 500).anyMatch(grid -> isOnGrid(grid) && isOnGrid(whole, total, grid));
    }

    @Override
    public String toString() {
        return "shares " + Arrays.toString(shares) + " of " + batch + " tenths, shown " + Arrays.toString(shown);
    }
}
