package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.List;

/**
 * A slip and how well it explains the figures.
 *
 * @param slip the slip
 * @param detail what exactly went wrong, in a name or a number; may be empty
 * @param missed the lines whose figures it does not reproduce within their own rounding
 * @param worst the largest distance between a figure and the slip's, in steps of the figure
 */
public record Cause(Slip slip, String detail, List<FormulaLine> missed, Ratio worst) {

    /**
     * Copies.
     *
     * @param slip the slip
     * @param detail what exactly went wrong
     * @param missed the lines it does not reproduce
     * @param worst the largest distance in steps
     */
    public Cause {
        missed = List.copyOf(missed);
    }

    /**
     * Whether the slip reproduces every figure.
     *
     * @return true if no line is missed
     */
    public boolean explainsAll() {
        return missed.isEmpty();
    }
}
