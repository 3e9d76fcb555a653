package io.github.formulationmath.number;

import java.io.Serial;
import java.io.Serializable;
import java.math.BigInteger;

/** What a {@link Ratio} is written as; reading it back goes through the checks of {@link Ratio#of}. */
record SerializedRatio(BigInteger numerator, BigInteger denominator) implements Serializable {

    @Serial
    private Object readResolve() {
        return Ratio.of(numerator, denominator);
    }
}
