package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A slip, how well it explains the figures, and how much speaks for it.
 *
 * @param slip the slip
 * @param detail what exactly went wrong, in a name or a number; may be empty
 * @param restFollows whether the q.s. line took what the slip left, so that its figure follows from the others
 * @param missed the lines whose figures it does not reproduce within their own rounding
 * @param worst the largest distance between a figure and the slip's, in steps of the figure
 * @param figures how many wrong figures speak for it: those it reproduces, but for 0 and for a q.s. line that follows
 * @param digits how many digits count in them together
 */
public record Cause(
        Slip slip, String detail, boolean restFollows, List<FormulaLine> missed, Ratio worst, int figures, int digits) {

    private static final Rounding STEPS = Rounding.toSignificantDigits(2);

    /** A single digit is met by chance too often: many numbers become the same one. */
    private static final int DIGITS_THAT_TELL = 2;

    /**
     * Copies.
     *
     * @param slip the slip
     * @param detail what exactly went wrong
     * @param restFollows whether the q.s. line follows
     * @param missed the lines it does not reproduce
     * @param worst the largest distance in steps
     * @param figures how many wrong figures speak for it
     * @param digits how many digits count in them
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

    /**
     * Whether the figures tell it, and do not merely allow it: it reproduces every figure, and at least two digits count in
     * the wrong ones.
     *
     * @return false if it would fit, and so might much else
     */
    public boolean isTold() {
        return explainsAll() && digits >= DIGITS_THAT_TELL;
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
