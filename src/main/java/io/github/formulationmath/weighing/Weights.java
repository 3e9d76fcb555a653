package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The weights c in a sum Σ c · mass over the lines. */
final class Weights {

    /** All 1: the sum of the masses. */
    static final Weights TOTAL = new Weights(null, new Ratio[0], false);

    /** Some of the lines, ascending; all other lines have weight 0. Null if every line has the weight 1. */
    private final int @Nullable [] few;

    /** The weight of each of them, not 0. */
    private final Ratio[] weights;

    private final boolean areStrengths;

    private Weights(int @Nullable [] few, Ratio[] weights, boolean areStrengths) {
        this.few = few;
        this.weights = weights;
        this.areStrengths = areStrengths;
    }

    /** What is done with a line and its weight. */
    interface Visitor {
        void visit(int line, Ratio weight);
    }

    /** The mass of one line alone. */
    static Weights line(int line) {
        return new Weights(new int[] {line}, new Ratio[] {Ratio.ONE}, false);
    }

    /** How much of each mass counts. */
    static Weights strengths(Map<Integer, Ratio> strengths) {
        int[] lines = new int[strengths.size()];
        Ratio[] weights = new Ratio[lines.length];
        int count = 0;
        for (Map.Entry<Integer, Ratio> each : strengths.entrySet()) {
            int line = each.getKey();
            if (count > 0 && line < lines[count - 1]) {
                return strengths(new TreeMap<>(strengths));
            }
            if (!each.getValue().isZero()) {
                lines[count] = line;
                weights[count++] = each.getValue();
            }
        }
        return new Weights(Arrays.copyOf(lines, count), Arrays.copyOf(weights, count), true);
    }

    /** Whether the weights are strengths, which a working tells, and not just which line is meant. */
    boolean areStrengths() {
        return areStrengths;
    }

    boolean isTotal() {
        return few == null;
    }

    /** Of how many lines; of all if it is the total. */
    int size() {
        return few == null ? Integer.MAX_VALUE : few.length;
    }

    Ratio of(int line) {
        if (few == null) {
            return Ratio.ONE;
        }
        int at = Arrays.binarySearch(few, line);
        return at < 0 ? Ratio.ZERO : weights[at];
    }

    /** Every line of so many whose weight is not 0, ascending, with its weight. */
    void forEach(int lines, Visitor visitor) {
        if (few == null) {
            for (int i = 0; i < lines; i++) {
                visitor.visit(i, Ratio.ONE);
            }
            return;
        }
        for (int i = 0; i < few.length; i++) {
            visitor.visit(few[i], weights[i]);
        }
    }
}
