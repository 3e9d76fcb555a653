package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.PowerOfTen;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.util.List;
import java.util.Objects;

/**
 * What is done to numbers in one operation of a relation. The same object computes the value when the relation runs and
 * again when a working is checked.
 */
public sealed interface Operation
        permits Operation.Arithmetic, Operation.Rounded, Operation.Root, Operation.Power, Operation.Statistic {

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

        /**
         * Nothing may be missing.
         *
         * @param rounding the grid and the mode
         */
        public Rounded {
            Objects.requireNonNull(rounding, "rounding");
        }

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

        /**
         * Nothing may be missing.
         *
         * @param function the function
         */
        public Statistic {
            Objects.requireNonNull(function, "function");
        }

        @Override
        public Ratio apply(List<Ratio> inputs) {
            return Ratio.from(function.applyAsDouble(
                    inputs.stream().mapToDouble(Ratio::doubleValue).toArray()));
        }
    }

    /** The exact operations. */
    enum Arithmetic implements Operation {
        /** a + b + … */
        SUM {
            @Override
            public Ratio apply(List<Ratio> inputs) {
                Ratio total = Ratio.ZERO;
                for (Ratio input : inputs) {
                    total = total.plus(input);
                }
                return total;
            }
        },
        /** a − b. */
        DIFFERENCE {
            @Override
            public Ratio apply(List<Ratio> inputs) {
                return inputs.get(0).minus(inputs.get(1));
            }
        },
        /** a · b. */
        PRODUCT {
            @Override
            public Ratio apply(List<Ratio> inputs) {
                return inputs.get(0).times(inputs.get(1));
            }
        },
        /** a / b. */
        QUOTIENT {
            @Override
            public Ratio apply(List<Ratio> inputs) {
                return inputs.get(0).dividedBy(inputs.get(1));
            }
        },
        /** |a|. */
        ABSOLUTE {
            @Override
            public Ratio apply(List<Ratio> inputs) {
                return inputs.get(0).abs();
            }
        },
        /** The smallest of a, b, … */
        MINIMUM {
            @Override
            public Ratio apply(List<Ratio> inputs) {
                return inputs.stream().reduce(inputs.get(0), Ratio::min);
            }
        },
        /** The largest of a, b, … */
        MAXIMUM {
            @Override
            public Ratio apply(List<Ratio> inputs) {
                return inputs.stream().reduce(inputs.get(0), Ratio::max);
            }
        };
    }

    /** A function whose values are not exact: a probability, a quantile. Implemented where the function is needed. */
    interface StatisticalFunction {

        /**
         * The name as printed before the bracket.
         *
         * @return for example {@code Φ}
         */
        String symbol();

        /**
         * The value of the function.
         *
         * @param arguments the arguments
         * @return a finite number
         */
        double applyAsDouble(double... arguments);
    }
}
