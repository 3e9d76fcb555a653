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

    /**
     * The slips between a name and a piece of a text.
     *
     * @return their number, or one more than the most
     */
    int between(String name, String text, int from, int to) {
        int none = most + 1;
        int columns = to - from;
        if (Math.abs(name.length() - columns) > most) {
            return none;
        }
        // Place k of row i is column i + k - 1 - most; a place at each end is never reached.
        Arrays.fill(above, none);
        Arrays.fill(twoAbove, none);
        Arrays.fill(row, none);
        row[most + 1] = 0;
        for (int j = 1; j <= most && j <= columns; j++) {
            row[most + 1 + j] = row[most + j] + cost(text.charAt(from + j - 1));
        }
        for (int i = 1; i <= name.length(); i++) {
            int[] next = twoAbove;
            twoAbove = above;
            above = row;
            row = next;
            if (fill(name, i, text, from, columns) > most) {
                return none;
            }
        }
        return Math.min(none, row[columns - name.length() + most + 1]);
    }

    /** Fills the row of a letter and tells its least number. */
    private int fill(String name, int i, String text, int from, int columns) {
        int least = most + 1;
        char letter = name.charAt(i - 1);
        row[0] = least;
        row[2 * most + 2] = least;
        for (int k = 1; k <= 2 * most + 1; k++) {
            int j = i + k - 1 - most;
            row[k] = j < 0 || j > columns ? most + 1 : cell(name, i, text, from + j, j, k, letter);
            least = Math.min(least, row[k]);
        }
        return least;
    }

    private int cell(String name, int i, String text, int at, int j, int k, char letter) {
        int takenOut = above[k + 1] + cost(letter);
        if (j == 0) {
            return takenOut;
        }
        char other = text.charAt(at - 1);
        int exchanged = above[k] + (letter == other ? 0 : Math.max(cost(letter), cost(other)));
        int best = Math.min(exchanged, Math.min(takenOut, row[k - 1] + cost(other)));
        boolean areSwapped = i > 1 && j > 1 && letter == text.charAt(at - 2) && name.charAt(i - 2) == other;
        return areSwapped ? Math.min(best, twoAbove[k] + Math.min(cost(letter), cost(other))) : best;
    }

    /** What it costs to put a sign in, to take it out or to exchange it. */
    private int cost(char sign) {
        return digitsHold && sign >= '0' && sign <= '9' ? most + 1 : 1;
    }
}
