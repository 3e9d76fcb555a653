package io.github.formulationmath.formula;

import java.util.Arrays;

/**
 * How many slips of a pen lie between two names: letters put in, taken out or exchanged, and neighbours that changed places, each
 * letter in one slip at most (the optimal string alignment). Counted up to a most, beyond which nobody asks.
 *
 * <p>A search keeps one of these: it counts in rows of its own, of which only the part is looked at that so few steps reach.
 * Correct because that part holds every way of at most so many steps, and because a row all of which is too far ends the count: a way
 * over it in two rows at once is that of neighbours that changed places, of which one at least is no digit that holds, so that the
 * row between has a number one step above where that way begins, which is no more than where it ends.
 *
 * <p>Not thread-safe.
 */
final class PenSlip {

    /** One letter in so many may be wrong where a slip is meant. */
    private static final int ONE_IN = 6;

    private final int most;
    private final boolean digitsHold;
    private int[] row;
    private int[] above;
    private int[] twoAbove;

    /**
     * Counts up to a number.
     *
     * @param most the greatest number that is told
     * @param digitsHold whether a digit is no slip for another sign, nor two of them for each other: another number is another
     *     thing, Disperse Blue 2 no slip for Disperse Blue 1, nor 21 for 12
     */
    PenSlip(int most, boolean digitsHold) {
        this.most = most;
        this.digitsHold = digitsHold;
        row = new int[2 * most + 3];
        above = new int[2 * most + 3];
        twoAbove = new int[2 * most + 3];
    }

    /** How many slips a name of so many letters may have and still be meant: one, or one in six letters. */
    static int allowed(int letters) {
        return Math.max(1, letters / ONE_IN);
    }

    /** Which letters stand in a piece of a text, one bit each; letters that share a bit make the sieve coarser, not wrong. */
    static int letters(String text, int from, int to) {
        int bits = 0;
        for (int i = from; i < to; i++) {
            bits |= 1 << (text.charAt(i) & 31);
        }
        return bits;
    }

    /** Whether two texts of such letters can be so near: every letter that the other has not takes a slip of its own. */
    boolean mayBeNear(int letters, int others) {
        return Integer.bitCount(letters & ~others) <= most && Integer.bitCount(others & ~letters) <= most;
    }

    /**
     * The slips between a name and a piece of a text.
     *
     * @return their number, or one more than the most
     */
    int between(String name, String text, int from, int to) {
        int columns = to - from;
        if (Math.abs(name.length() - columns) > most) {
            return most + 1;
        }
        begin(text, from, columns);
        for (int i = 1; i <= name.length(); i++) {
            int[] next = twoAbove;
            twoAbove = above;
            above = row;
            row = next;
            if (fill(name, i, text, from, columns) > most) {
                return most + 1;
            }
        }
        return Math.min(most + 1, row[columns - name.length() + most + 1]);
    }

    /** The row before the first letter; place k of row i is column i + k - 1 - most, and one at each end is never reached. */
    private void begin(String text, int from, int columns) {
        Arrays.fill(row, most + 1);
        Arrays.fill(above, most + 1);
        row[most + 1] = 0;
        for (int j = 1; j <= most && j <= columns; j++) {
            row[most + 1 + j] = row[most + j] + cost(text.charAt(from + j - 1));
        }
    }

    /** Fills the row of a letter and tells its least number. */
    private int fill(String name, int i, String text, int from, int columns) {
        char letter = name.charAt(i - 1);
        int out = cost(letter);
        int first = Math.max(1, most + 1 - i);
        int last = Math.min(2 * most + 1, columns - i + most + 1);
        row[first - 1] = most + 1;
        row[last + 1] = most + 1;
        int least = most + 1;
        for (int k = first; k <= last; k++) {
            int j = i + k - 1 - most;
            int steps;
            if (j == 0) {
                steps = above[k + 1] + out;
            } else {
                char other = text.charAt(from + j - 1);
                steps = letter == other ? above[k] : unlike(k, out, cost(other));
                if (j > 1 && i > 1 && letter == text.charAt(from + j - 2) && other == name.charAt(i - 2)) {
                    steps = Math.min(steps, twoAbove[k] + Math.min(out, cost(other)));
                }
            }
            row[k] = steps;
            least = Math.min(least, steps);
        }
        return least;
    }

    /** Exchanged, taken out or put in, whichever leaves fewest. */
    private int unlike(int k, int out, int in) {
        return Math.min(above[k] + Math.max(out, in), Math.min(above[k + 1] + out, row[k - 1] + in));
    }

    /** What it costs to put a sign in, to take it out or to exchange it. */
    private int cost(char sign) {
        return digitsHold && sign >= '0' && sign <= '9' ? most + 1 : 1;
    }
}
