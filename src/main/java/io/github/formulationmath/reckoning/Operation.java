package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.PowerOfTen;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.util.List;

/**
 * What is done to numbers in one operation of a relation. The same object computes the value when the relation runs and
 * again when a working is checked.
 */
public sealed interface Operation
        permits Arithmetic, Operation.Rounded, Operation.Root, Operation.Power, Operation.Statistic {

    /**
     * Computes the value.
     *
     * @param inputs the numbers the operation works on, in order
     * @return the exact result, or the result under the rounding that the operation states
     * @throws ArithmeticException if there is no such number (division by 0, root of a negative number)
     */
    Ratio apply(List<Ratio> inputs);

    /**
     * Rounding as an operation of its own, so that a reader sees where the digits went.
     *
     * @param rounding the grid and the mode
     */
    record Rounded(Rounding rounding) implements Operation {

        @Override
        public Ratio apply(List<Ratio> inputs) {
            return rounding.apply(inputs.get(0));
        }
    }

    /** The square root, correctly rounded to {@value #DIGITS} significant digits. */
    enum Root implements Operation {
        /** √a. */
        SQUARE_ROOT;

        /** Significant digits of a root: as many as a {@code double} can tell apart, so that printing loses nothing. */
        public static final int DIGITS = 17;

        @Override
        public Ratio apply(List<Ratio> inputs) {
            return inputs.get(0).sqrt(DIGITS);
        }
    }

    /** Ten to a power, correctly rounded to {@value Root#DIGITS} significant digits; exact where the exponent is whole. */
    enum Power implements Operation {
        /** 10^a. */
        TEN_TO;

        @Override
        public Ratio apply(List<Ratio> inputs) {
            Bounds bounds = PowerOfTen.of(inputs.get(0));
            Ratio middle = bounds.lower()
                    .orElseThrow()
                    .plus(bounds.upper().orElseThrow())
                    .dividedBy(2);
            return Rounding.toSignificantDigits(Root.DIGITS).apply(middle);
        }
    }

    /**
     * A statistical function as an operation; its result is a {@code double}, kept by its decimal digits.
     *
     * @param function the function
     */
    record Statistic(StatisticalFunction function) implements Operation {

        @Override
        public Ratio apply(List<Ratio> inputs) {
            return Ratio.from(function.applyAsDouble(
                    inputs.stream().mapToDouble(Ratio::doubleValue).toArray()));
        }
    }
}
