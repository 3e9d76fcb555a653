package io.github.formulationmath.falsefine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What may lie in the pot, in half steps of the display. A reading of n steps is 2n half steps; taring and reading hide one
 * half step each, whatever is weighed; a linearity of an indication enters at both, one of a net reading once. The extremes
 * of a share are at corners, since the share of a sum is monotone in every single error.
 */
final class Corners {

    private Corners() {}

    /** How additions are weighed. */
    enum Way {
        /** Tared before each. */
        EACH,
        /** Tared once, readings add up. */
        CUMULATIVE,
        /** From a boat, in which something stays. */
        BOAT,
        /** From a boat that is weighed back. */
        DIFFERENCE
    }

    /**
     * A balance and how it is used.
     *
     * @param way how
     * @param linearity how far the balance may be off beside its steps, in half steps
     * @param ofIndication whether that is of one indication, else of a net reading
     * @param least what stays in a boat at least, in half steps
     * @param most what stays in it at most
     */
    record Scale(Way way, long linearity, boolean ofIndication, long least, long most) {

        /** What one net weighing into the tared pot may be off by, in half steps. */
        long net() {
            return 2 + (ofIndication ? 2 * linearity : linearity);
        }

        /** What an addition may be off by; of a boat that is weighed back two readings count. */
        private long addition() {
            return way == Way.DIFFERENCE ? 2 + 2 * linearity : net();
        }

        /** The least that lies in the pot after a reading of so many steps. */
        long lowest(long steps) {
            return Math.max(0, 2 * steps - addition() - (way == Way.BOAT ? most : 0));
        }

        /** The most. */
        long highest(long steps) {
            return Math.max(0, 2 * steps + addition() - (way == Way.BOAT ? least : 0));
        }

        /** The error of one of a row of indications, at its end; with a linearity of net readings the tare has none. */
        long indication(int index) {
            return 1 + (index == 0 && !ofIndication ? 0 : linearity);
        }
    }

    /** Any balance, used in any way. */
    static Scale scale(Dice dice) {
        Way way = dice.of(Way.values());
        long least = way == Way.BOAT ? dice.between(0, 3) : 0;
        long most = way == Way.BOAT ? least + dice.between(0, 4) : 0;
        return new Scale(way, dice.oneIn(2) ? 0 : dice.between(1, 6), dice.oneIn(2), least, most);
    }

    /** The masses at every corner of the errors. */
    static List<long[]> all(long[] steps, Scale scale) {
        List<long[]> corners = new ArrayList<>();
        for (int signs = 0; signs < 1 << errors(steps, scale); signs++) {
            long[] masses = at(steps, scale, signs);
            if (Arrays.stream(masses).allMatch(mass -> mass >= 0)) {
                corners.add(masses);
            }
        }
        return corners;
    }

    static boolean areAllPossible(long[] steps, Scale scale) {
        return all(steps, scale).size() == 1 << errors(steps, scale);
    }

    private static int errors(long[] steps, Scale scale) {
        return steps.length + (scale.way() == Way.CUMULATIVE ? 1 : 0);
    }

    /** The masses where bit i says whether error i is at its upper end. */
    static long[] at(long[] steps, Scale scale, int signs) {
        long[] masses = new long[steps.length];
        for (int i = 0; i < masses.length; i++) {
            if (scale.way() == Way.CUMULATIVE) {
                // Every indication has its own error, and is the end of one addition and the beginning of the next.
                masses[i] = 2 * steps[i] + error(scale, signs, i + 1) - error(scale, signs, i);
            } else {
                masses[i] = isUp(signs, i) ? scale.highest(steps[i]) : scale.lowest(steps[i]);
            }
        }
        return masses;
    }

    /** The error of an indication. */
    static long error(Scale scale, int signs, int indication) {
        return (isUp(signs, indication) ? 1 : -1) * scale.indication(indication);
    }

    private static boolean isUp(int signs, int bit) {
        return (signs >> bit & 1) == 1;
    }

    /** What is counted of all there is: strengths of 10⁶. */
    static Exact share(long[] masses, long[] strengths) {
        long counted = 0;
        long total = 0;
        for (int i = 0; i < masses.length; i++) {
            counted = Math.addExact(counted, Math.multiplyExact(masses[i], strengths[i]));
            total += masses[i];
        }
        return Exact.of(counted, Math.multiplyExact(total, Recipe.MATERIAL));
    }

    static Exact largestShare(long[] steps, Scale scale, long[] strengths) {
        return all(steps, scale).stream()
                .filter(masses -> total(masses) > 0)
                .map(masses -> share(masses, strengths))
                .reduce(Exact.ZERO, Exact::max);
    }

    static long total(long[] masses) {
        long sum = 0;
        for (long mass : masses) {
            sum += mass;
        }
        return sum;
    }
}
