package io.github.formulationmath.number;

import java.io.InvalidObjectException;
import java.io.Serial;
import java.io.Serializable;
import java.math.BigInteger;

/** What a {@link Ratio} is written as; reading it back goes through the checks of {@link Ratio#of}. */
record SerializedRatio(BigInteger numerator, BigInteger denominator) implements Serializable {

    @Serial
    private Object readResolve() throws InvalidObjectException {
        if (numerator == null || denominator == null || denominator.signum() == 0) {
            throw new InvalidObjectException("no ratio: " + numerator + "/" + denominator);
        }
        return Ratio.of(numerator, denominator);
    }
}
