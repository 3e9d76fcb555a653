package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import java.io.InvalidObjectException;
import java.io.Serial;
import java.io.Serializable;

/** What an {@link Amount} is written as: its exact value and the symbol of its unit. */
record SerializedAmount(Ratio value, String unit) implements Serializable {

    /** The grain was written so before its symbol was spelt out; a text of people is never read like that. */
    private static final String FORMER_GRAIN = "gr";

    @Serial
    private Object readResolve() throws InvalidObjectException {
        if (value == null || unit == null) {
            throw new InvalidObjectException("an amount needs a value and a unit");
        }
        try {
            return Amount.ofScale(value, KnownUnit.bySymbol(unit.equals(FORMER_GRAIN) ? "grain" : unit));
        } catch (IllegalArgumentException e) {
            throw (InvalidObjectException) new InvalidObjectException(e.getMessage()).initCause(e);
        }
    }
}
