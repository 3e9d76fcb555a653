package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A slip and how well it explains the figures.
 *
 * @param slip the slip
 * @param detail what exactly went wrong, in a name or a number; may be empty
 * @param missed the lines whose figures it does not reproduce within their own rounding
 * @param worst the largest distance between a figure and the slip's, in steps of the figure
 */
public record Cause(Slip slip, String detail, List<FormulaLine> missed, Ratio worst) {

    private static final Rounding STEPS = Rounding.toSignificantDigits(2);

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

    /** The slip with its detail, how many figures it leaves unexplained, and how far off the farthest figure is. */
    @Override
    public String toString() {
        String name = slip + (detail.isEmpty() ? "" : " (" + detail + ")");
        String reach = missed.isEmpty()
                ? "explains every figure"
                : "misses " + missed.stream().map(FormulaLine::name).collect(Collectors.joining(", "));
        return name + ": " + reach + ", at most " + STEPS.format(worst) + " steps of the display away";
    }
}
