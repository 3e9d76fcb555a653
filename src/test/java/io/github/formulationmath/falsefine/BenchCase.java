package io.github.formulationmath.falsefine;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A batch that is weighed on several balances, and what lies in the pot: each line is drawn within the errors of the balance
 * on which it was weighed, most often at an end of them. Whoever says that it is surely something else is wrong. All masses
 * are in milligrams.
 *
 * @param places the balances, the first under the pot
 * @param parts what is asked of each line
 * @param at the place of each line
 * @param batch the batch
 * @param readings what was read of each line, in milligrams
 * @param event what happened
 * @param line to which line
 * @param other the place it was read at instead of its own
 * @param added what was added to it, as read
 * @param truth what lies in the pot
 */
record BenchCase(
        List<Place> places,
        long[] parts,
        int[] at,
        long batch,
        long[] readings,
        Event event,
        int line,
        int other,
        long added,
        long[] truth)
        implements Proven {

    /** How an addition gets into the pot. */
    enum Way {
        /** Weighed into the tared pot. */
        POT,
        /** From a boat, in which something stays. */
        BOAT,
        /** From a boat that is weighed back. */
        DIFFERENCE
    }

    /** What happened. */
    enum Event {
        /** Nothing yet: a plan. */
        PLANNED,
        /** All was read where it was planned. */
        WRITTEN,
        /** One line was read on another balance. */
        ELSEWHERE,
        /** More of one line was added, on its balance. */
        ADDED,
        /** The same, written down in a record. */
        RECORDED
    }

    /**
     * A balance and how lines get from it into the pot.
     *
     * @param way how
     * @param step of the display
     * @param linearity how far the balance may be off beside its steps
     * @param ofIndication whether that is of one indication, else of a net reading
     * @param least what stays in its boat at least
     * @param most what stays there at most
     */
    record Place(Way way, long step, long linearity, boolean ofIndication, long least, long most) {

        static Place pot(Dice dice) {
            return new Place(Way.POT, dice.of(100L, 200L, 500L, 1000L), linearity(dice, 500), dice.oneIn(2), 0, 0);
        }

        static Place fine(Dice dice) {
            Way way = dice.of(Way.values());
            long least = dice.between(0, 30);
            return new Place(
                    way,
                    dice.of(10L, 20L, 50L, 100L),
                    linearity(dice, 40),
                    dice.oneIn(2),
                    least,
                    least + dice.between(0, 60));
        }

        private static long linearity(Dice dice, int most) {
            return dice.oneIn(2) ? 0 : dice.between(1, most);
        }

        private long half(Way how) {
            return step + (how == Way.DIFFERENCE || ofIndication ? 2 * linearity : linearity);
        }

        /** No pour takes anything out. */
        long lowest(Way how, long reading) {
            return Math.max(0, reading - half(how) - (how == Way.BOAT ? most : 0));
        }

        long highest(Way how, long reading) {
            return Math.max(0, reading + half(how) - (how == Way.BOAT ? least : 0));
        }
    }

    @Override
    public boolean holds() {
        for (int i = 0; i < truth.length; i++) {
            if (truth[i] < 0 || truth[i] < end(i, false) || truth[i] > end(i, true)) {
                return false;
            }
        }
        return total() > 0;
    }

    /** The least or the most of a line that what was read allows. */
    private long end(int i, boolean high) {
        boolean elsewhere = event == Event.ELSEWHERE && i == line;
        Place own = places.get(at[i]);
        Way way = elsewhere && other == 0 ? Way.POT : own.way();
        Place used = elsewhere ? places.get(other) : own;
        long end = high ? used.highest(way, readings[i]) : used.lowest(way, readings[i]);
        boolean more = (event == Event.ADDED || event == Event.RECORDED) && i == line;
        return more ? end + (high ? own.highest(own.way(), added) : own.lowest(own.way(), added)) : end;
    }

    static BenchCase any(Dice dice) {
        while (true) {
            BenchCase made = attempt(dice, dice.of(Event.values()));
            if (made != null && made.holds()) {
                return made;
            }
        }
    }

    private static BenchCase attempt(Dice dice, Event event) {
        List<Place> places = new ArrayList<>(List.of(Place.pot(dice), Place.fine(dice)));
        if (dice.oneIn(2)) {
            places.add(Place.fine(dice));
        }
        int lines = dice.between(2, 5);
        long[] parts = new long[lines];
        Arrays.setAll(parts, i -> dice.between(1, i == 0 ? 2000 : 300));
        int[] at = new int[lines];
        Arrays.setAll(at, i -> dice.between(0, places.size() - 1));
        long batch = dice.between(10L, 5000L) * 100;
        long[] readings = new long[lines];
        for (int i = 0; i < lines; i++) {
            Exact steps =
                    target(parts, i, batch).over(Exact.of(places.get(at[i]).step()));
            if (steps.times(2).minus(Exact.of(1)).over(Exact.of(2)).isWhole()) {
                return null;
            }
            readings[i] = steps.nearest().longValueExact() * places.get(at[i]).step();
        }
        int line = dice.between(0, lines - 1);
        int other = dice.between(0, places.size() - 1);
        if (event != Event.PLANNED) {
            for (int i = 0; i < lines; i++) {
                Place used = places.get(event == Event.ELSEWHERE && i == line ? other : at[i]);
                long steps = readings[i] / used.step() + dice.between(-3, 3);
                readings[i] = Math.max(1, steps) * used.step();
            }
        }
        long added = dice.between(1, 100) * places.get(at[line]).step();
        BenchCase asked = new BenchCase(places, parts, at, batch, readings, event, line, other, added, new long[lines]);
        Arrays.setAll(asked.truth, i -> drawn(dice, asked.end(i, false), asked.end(i, true)));
        return asked;
    }

    private static long drawn(Dice dice, long low, long high) {
        return dice.oneIn(6) ? dice.between(low, high) : dice.of(low, high);
    }

    private static Exact target(long[] parts, int line, long batch) {
        return new Exact(
                BigInteger.valueOf(parts[line]).multiply(BigInteger.valueOf(batch)),
                BigInteger.valueOf(Arrays.stream(parts).sum()));
    }

    private long total() {
        return Arrays.stream(truth).sum();
    }

    /** The share of a line, of what lies in the pot. */
    Exact share(int index) {
        return Exact.of(truth[index], total());
    }

    Exact grams(int index) {
        return Exact.of(truth[index], 1000);
    }

    static String text(long milligrams) {
        return Texts.grams(milligrams, 3);
    }

    @Override
    public String toString() {
        return places + ", parts " + Arrays.toString(parts) + " at " + Arrays.toString(at) + ", " + batch + " mg, read "
                + Arrays.toString(readings) + ", " + event + " of line " + (line + 1) + " at " + other + ": " + added
                + ", in the pot " + Arrays.toString(truth);
    }
}
