package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/**
 * The weights c in a sum Σ c · mass over the lines.
 *
 * @param few a weight for each of some lines, ascending and none of them 0; all other lines have weight 0. Null if every
 *     line has the weight 1
 * @param areStrengths whether the weights are strengths, which a working tells, and not just which line is meant
 */
record Weights(@Nullable SortedMap<Integer, Ratio> few, boolean areStrengths) {

    /** All 1: the sum of the masses. */
    static final Weights TOTAL = new Weights(null, false);

    /** The mass of one line alone. */
    static Weights line(int line) {
        return new Weights(new TreeMap<>(Map.of(line, Ratio.ONE)), false);
    }

    /** How much of each mass counts. */
    static Weights strengths(Map<Integer, Ratio> strengths) {
        SortedMap<Integer, Ratio> few = new TreeMap<>(strengths);
        few.values().removeIf(Ratio::isZero);
        return new Weights(few, true);
    }

    boolean isTotal() {
        return few == null;
    }

    /** Of how many lines; of all if it is the total. */
    int size() {
        return few == null ? Integer.MAX_VALUE : few.size();
    }

    Ratio of(int line) {
        return few == null ? Ratio.ONE : few.getOrDefault(line, Ratio.ZERO);
    }

    /** Every line of so many whose weight is not 0, ascending, with its weight. */
    void forEach(int lines, BiConsumer<Integer, Ratio> visitor) {
        if (few != null) {
            few.forEach(visitor);
            return;
        }
        for (int i = 0; i < lines; i++) {
            visitor.accept(i, Ratio.ONE);
        }
    }
}
