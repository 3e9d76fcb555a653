package io.github.formulationmath.series;

/** How many sizes may still be tried, so that no question hangs. */
final class Effort {

    private static final int MOST = 300_000;

    private int left = MOST;

    /** Counts one more; false if none is left. */
    boolean spends() {
        if (left > 0) {
            left--;
            return true;
        }
        return false;
    }

    boolean isSpent() {
        return left == 0;
    }
}
