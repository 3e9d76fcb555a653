package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.ErrorTerm.Load;
import java.util.List;

/** The weights c in a sum Σ c · mass over the lines. */
@SuppressWarnings("ClassInitializationDeadlock") // Total is made here only
sealed interface Weights {

    /** All 1: the sum of the masses. */
    Weights TOTAL = new Total();

    Ratio of(int line);

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
        public Ratio sensitivity(ErrorTerm term) {
            for (Load load : term.loads()) {
                if (load.line() == line) {
                    return load.factor();
                }
            }
            return Ratio.ZERO;
        }
    }

    /** A weight per line. */
    record PerLine(List<Ratio> weights) implements Weights {

        public PerLine {
            weights = List.copyOf(weights);
        }

        @Override
        public Ratio of(int line) {
            return weights.get(line);
        }
    }
}
