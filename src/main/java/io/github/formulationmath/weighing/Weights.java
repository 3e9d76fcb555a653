package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.ErrorTerm.Load;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;

/** The weights c in a sum Σ c · mass over the lines. */
@SuppressWarnings("ClassInitializationDeadlock") // Total is made here only
sealed interface Weights {

    /** All 1: the sum of the masses. */
    Weights TOTAL = new Total();

    Ratio of(int line);

    /** Every line of so many whose weight is not 0, ascending, with its weight. */
    default void forEach(int lines, BiConsumer<Integer, Ratio> visitor) {
        for (int i = 0; i < lines; i++) {
            visitor.accept(i, of(i));
        }
    }

    /** How much the sum changes with the error q of a term. */
    default Ratio sensitivity(ErrorTerm term) {
        Ratio sum = Ratio.ZERO;
        for (Load load : term.loads()) {
            sum = sum.plus(of(load.line()).times(load.factor()));
        }
        return sum;
    }

    /** The sum of all masses. */
    record Total() implements Weights {

        @Override
        public Ratio of(int line) {
            return Ratio.ONE;
        }

        @Override
        public Ratio sensitivity(ErrorTerm term) {
            return term.totalLoad();
        }
    }

    /** The mass of one line alone. */
    record OneLine(int line) implements Weights {

        @Override
        public Ratio of(int other) {
            return other == line ? Ratio.ONE : Ratio.ZERO;
        }

        @Override
        public void forEach(int lines, BiConsumer<Integer, Ratio> visitor) {
            visitor.accept(line, Ratio.ONE);
        }

        @Override
        public Ratio sensitivity(ErrorTerm term) {
            for (Load load : term.loads()) {
                if (load.line() == line) {
                    return load.factor();
                }
            }
            return Ratio.ZERO;
        }
    }

    /** A weight for each of some lines, ascending and none of them 0; all other lines have weight 0. */
    record PerLine(SortedMap<Integer, Ratio> weights) implements Weights {

        public PerLine {
            weights = new TreeMap<>(weights);
            weights.values().removeIf(Ratio::isZero);
        }

        /** A weight for every line. */
        PerLine(List<Ratio> weights) {
            this(byLine(weights));
        }

        private static SortedMap<Integer, Ratio> byLine(List<Ratio> weights) {
            SortedMap<Integer, Ratio> all = new TreeMap<>();
            for (Ratio weight : weights) {
                all.put(all.size(), weight);
            }
            return all;
        }

        @Override
        public Ratio of(int line) {
            return weights.getOrDefault(line, Ratio.ZERO);
        }

        @Override
        public void forEach(int lines, BiConsumer<Integer, Ratio> visitor) {
            weights.forEach(visitor);
        }
    }
}
