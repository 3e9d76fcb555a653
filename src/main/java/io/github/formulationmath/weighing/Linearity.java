package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.simulation.InputQuantity.Law;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A stated linearity: how far, how spread, and of what.
 *
 * @param halfWidth the most either way, at least 0
 * @param law a law with bounds
 * @param basis of what it is stated; null if it is 0, so that nothing is nothing however it was said
 */
record Linearity(Amount<Mass> halfWidth, Law law, @Nullable LinearityBasis basis) implements Serializable {

    static final Linearity NONE = new Linearity(Amount.grams(Ratio.ZERO), Law.RECTANGULAR, null);

    static Linearity of(Amount<Mass> halfWidth, Law law, LinearityBasis basis) {
        Amount.requireNotNegative("halfWidth", halfWidth);
        if (!Objects.requireNonNull(law, "law").isBounded()) {
            throw new IllegalArgumentException(
                    "law is " + law + ", which has no half-width: take RECTANGULAR or TRIANGULAR");
        }
        return new Linearity(halfWidth, law, halfWidth.isZero() ? null : basis);
    }

    @Override
    public String toString() {
        return "linearity " + (halfWidth.isZero() ? "0" : halfWidth.toldExactly()) + " " + law
                + (basis == null ? "" : basis == LinearityBasis.INDICATION ? " of an indication" : " of a net reading");
    }
}
