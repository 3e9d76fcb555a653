package io.github.formulationmath.formula;

import io.github.formulationmath.number.Ratio;
import java.io.Serial;

/** The lines of a formula do not make up a whole; carries what they do make up. */
public final class FormulaTotalException extends IllegalArgumentException {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Ratio total;

    FormulaTotalException(String message, Ratio total) {
        super(message);
        this.total = total;
    }

    /**
     * What the lines add up to.
     *
     * @return the sum as a fraction of the whole (1 would be 100 %)
     */
    public Ratio total() {
        return total;
    }

    /**
     * By how much the lines pass the whole.
     *
     * @return sum minus 1; negative if they fall short
     */
    public Ratio difference() {
        return total.minus(Ratio.ONE);
    }
}
