package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import java.util.List;

/** The square root, correctly rounded to {@value #DIGITS} significant digits. */
public enum RootOperation implements Operation {
    /** √a. */
    SQUARE_ROOT;

    /** Significant digits of a root: as many as a {@code double} can tell apart, so that printing loses nothing. */
    public static final int DIGITS = 17;

    @Override
    public Ratio apply(List<Ratio> inputs) {
        return inputs.get(0).sqrt(DIGITS);
    }
}
