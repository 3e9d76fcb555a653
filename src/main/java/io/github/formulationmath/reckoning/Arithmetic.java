package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import java.util.List;

/** The exact operations. */
public enum Arithmetic implements Operation {
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
