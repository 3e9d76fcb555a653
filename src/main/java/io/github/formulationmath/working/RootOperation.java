package io.github.formulationmath.working;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Roots;
import java.util.List;

/** The square root, correctly rounded to {@value #DIGITS} significant digits. */
public enum RootOperation implements Operation {
    /** √a. */
    SQUARE_ROOT;

    /** Significant digits of a root: as many as a {@code double} can tell apart, so that printing loses nothing. */
    public static final int DIGITS = 17;

    @Override
    public Ratio apply(List<Ratio> inputs) {
        return Roots.sqrt(inputs.get(0), DIGITS);
    }
}
