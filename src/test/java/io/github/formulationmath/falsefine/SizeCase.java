package io.github.formulationmath.falsefine;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A size of a batch on a display, with the tolerance that every line has.
 *
 * @param shares of 10⁴, the first the rest
 * @param size in steps; 0 asks for none in particular
 * @param percent the tolerance, of 100
 * @param vessel the vessel on the pan, in steps
 * @param capacity what the balance carries, in steps
 * @param closed whether the readings are to make the batch
 * @param within whether the size is good
 */
record SizeCase(int[] shares, Exact size, int percent, long vessel, long capacity, boolean closed, boolean within)
        implements Proven {

    /** A share of 10⁴ times a tolerance of 100. */
    private static final long WHOLE = 1_000_000;

    @Override
    public boolean holds() {
        boolean good = size.compareTo(Exact.ZERO) == 0 || isGood();
        return good == within;
    }

    private boolean isGood() {
        return closed ? isGoodClosed() : isGoodAlone();
    }

    /** What a line should read, in steps. */
    Exact target(int line) {
        return size.times(shares[line]).over(Exact.of(10_000));
    }

    /** Every line, to the nearest step, is within; and the balance carries the readings. */
    private boolean isGoodAlone() {
        boolean lines = IntStream.range(0, shares.length).allMatch(i -> isNear(i, nearest(i)));
        long load = vessel
                + IntStream.range(0, shares.length).mapToLong(this::nearest).sum();
        return lines && load <= capacity;
    }

    /** At a tie the lower: a display shows the even one, and both are as near. */
    private long nearest(int line) {
        long high = target(line).nearest().longValueExact();
        return target(line).isNearest(BigInteger.valueOf(high - 1)) ? high - 1 : high;
    }

    private boolean isNear(int line, long steps) {
        Exact off = target(line).minus(Exact.of(steps)).abs();
        return !off.times(100).isAbove(target(line).times(percent));
    }

    /** The size is whole steps, and some whole numbers that make it are within, each of its own line. */
    private boolean isGoodClosed() {
        long steps = size.floor().longValueExact();
        if (!size.isWhole() || vessel + steps > capacity) {
            return false;
        }
        long least = 0;
        long most = 0;
        for (int i = 0; i < shares.length; i++) {
            // ⌈w(1−τ)N⌉ and ⌊w(1+τ)N⌋ with w of 10⁴ and τ of 100.
            long low = -Math.floorDiv(-(shares[i] * (100L - percent) * steps), WHOLE);
            long high = Math.floorDiv(shares[i] * (100L + percent) * steps, WHOLE);
            if (low > high) {
                return false;
            }
            least += low;
            most += high;
        }
        return least <= steps && steps <= most;
    }

    /** Whether readings, in steps, keep the tolerance: of their targets, or closed of what they make. */
    boolean areWithin(Exact[] readings) {
        Exact made = closed ? Arrays.stream(readings).reduce(Exact.ZERO, Exact::plus) : size;
        return IntStream.range(0, readings.length).allMatch(i -> {
            Exact target = made.times(shares[i]);
            Exact off = readings[i].times(10_000).minus(target).abs();
            return !off.times(100).isAbove(target.times(percent));
        });
    }

    /** Another size on the same balance. */
    SizeCase of(Exact other) {
        return new SizeCase(shares, other, percent, vessel, capacity, closed, true);
    }

    /** The same on a balance that carries so many steps. */
    SizeCase carrying(long steps) {
        return new SizeCase(shares, size, percent, vessel, steps, closed, within);
    }

    /** Any bench, whatever fits on it. */
    static SizeCase bench(Dice dice) {
        boolean closed = dice.oneIn(2);
        long vessel = dice.oneIn(2) ? 0 : dice.between(1L, 500L);
        long capacity = vessel + dice.between(2L, dice.of(60L, 600L, 6000L));
        return new SizeCase(shares(dice), Exact.ZERO, dice.of(1, 2, 5, 10, 20), vessel, capacity, closed, true);
    }

    static SizeCase bad(Dice dice) {
        return search(dice, false);
    }

    static SizeCase good(Dice dice) {
        return search(dice, true);
    }

    private static SizeCase search(Dice dice, boolean within) {
        while (true) {
            boolean closed = dice.oneIn(2);
            long size = dice.between(5L, 3000L) * (closed ? 100 : 1) + (closed ? 0 : 10_000 * dice.between(0, 9));
            long steps = size / 100;
            long vessel = dice.oneIn(2) ? 0 : dice.between(1L, 500L);
            long capacity = vessel + steps + dice.between(0L, 1L) * (dice.oneIn(2) ? 1 : 1000);
            int percent = dice.of(1, 2, 5, 10, 20);
            SizeCase made = new SizeCase(
                    shares(dice), Exact.of(size, 100), percent, vessel, Math.max(1, capacity), closed, within);
            // Where the last half steps decide, a window may end a little earlier; of that nothing is asked.
            if (!made.hasTie() && (!within || made.hasRoom()) && made.capacity > made.vessel + 1 && made.holds()) {
                return made;
            }
        }
    }

    private boolean hasRoom() {
        return !size.plus(Exact.of(shares.length)).isAbove(Exact.of(capacity - vessel));
    }

    private boolean hasTie() {
        return IntStream.range(0, shares.length)
                .anyMatch(i -> target(i).plus(Exact.of(1, 2)).isWhole());
    }

    private static int[] shares(Dice dice) {
        int lines = dice.between(2, 5);
        int[] shares = new int[lines];
        shares[0] = 10_000;
        for (int i = 1; i < lines; i++) {
            shares[i] = dice.between(20, 2000);
            shares[0] -= shares[i];
        }
        return shares;
    }

    @Override
    public String toString() {
        return Arrays.toString(shares) + " of 10000, " + size + " steps, within " + percent + " %, vessel " + vessel
                + ", capacity " + capacity + (closed ? ", closed" : "");
    }
}
