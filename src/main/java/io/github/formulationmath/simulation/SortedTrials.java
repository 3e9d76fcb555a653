package io.github.formulationmath.simulation;

import java.util.Arrays;
import java.util.List;

/** Model values in order, and the intervals they give (JCGM 101:2008, 7.5 to 7.7). */
final class SortedTrials {

    /** Where an interval begins and ends. */
    record Ends(double low, double high) {}

    private final double[] values;
    private final double mean;
    private final double squares;

    private SortedTrials(double[] values, double mean, double squares) {
        this.values = values;
        this.mean = mean;
        this.squares = squares;
    }

    /** Takes the array over and sorts it. */
    static SortedTrials of(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        double mean = sum / values.length;
        double squares = 0;
        for (double value : values) {
            double deviation = value - mean;
            squares += deviation * deviation;
        }
        Arrays.sort(values);
        return new SortedTrials(values, mean, squares);
    }

    /** All values of several blocks, with the mean and the squares that follow from those of the blocks. */
    static SortedTrials of(List<SortedTrials> blocks, double mean, double squares) {
        double[] all = new double[blocks.stream().mapToInt(SortedTrials::size).sum()];
        int from = 0;
        for (SortedTrials block : blocks) {
            System.arraycopy(block.values, 0, all, from, block.size());
            from += block.size();
        }
        // The blocks are in order already, and the sort of the JDK merges what is.
        Arrays.sort(all);
        return new SortedTrials(all, mean, squares);
    }

    double mean() {
        return mean;
    }

    /** Σ (value − mean)². */
    double squares() {
        return squares;
    }

    double standardDeviation() {
        return Math.sqrt(squares / (values.length - 1));
    }

    int size() {
        return values.length;
    }

    /** As many values on one side as on the other (7.7.2). */
    Ends symmetric(double probability) {
        int inside = inside(probability);
        int below = (values.length - inside + 1) / 2;
        return interval(Math.max(below, 1), inside);
    }

    /** The first of the shortest (7.7.3). */
    Ends shortest(double probability) {
        int inside = inside(probability);
        int best = 1;
        double length = Double.POSITIVE_INFINITY;
        for (int r = 1; r <= values.length - inside; r++) {
            double candidate = values[r + inside - 1] - values[r - 1];
            if (candidate < length) {
                length = candidate;
                best = r;
            }
        }
        return interval(best, inside);
    }

    /** From the r-th to the (r + q)-th value, counted from 1 as the standard does. */
    private Ends interval(int r, int inside) {
        return new Ends(values[r - 1], values[r + inside - 1]);
    }

    private int inside(double probability) {
        return Math.min((int) (probability * values.length + 0.5), values.length - 1);
    }

    double quantile(double probability) {
        int place = (int) StrictMath.ceil(probability * values.length);
        return values[Math.min(Math.max(place, 1), values.length) - 1];
    }

    /** How many values are at most a number. */
    int countAtMost(double limit) {
        int low = 0;
        int high = values.length;
        while (low < high) {
            int middle = low + high >>> 1;
            if (values[middle] <= limit) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
