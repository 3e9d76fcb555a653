package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import java.io.Serial;

/** The lines of a formula do not make up a whole; carries what they do make up. */
public final class FormulaTotalException extends IllegalArgumentException {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Ratio total;

    private FormulaTotalException(String message, Ratio total) {
        super(message);
        this.total = total;
    }

    /** Percentages that add up to something else than 100 %. */
    static IllegalArgumentException notWhole(String formulaName, Ratio total) {
        Ratio difference = total.minus(Ratio.ONE);
        return new FormulaTotalException(
                "the lines of \"" + Excerpt.of(formulaName) + "\" add up to " + percent(total) + ", "
                        + percent(difference.abs()) + " " + (difference.signum() > 0 ? "more" : "less")
                        + " than 100 %: correct a line, make one q.s., or call buildNormalised()",
                total);
    }

    /** Lines that leave nothing for the q.s. line. */
    static IllegalArgumentException nothingLeft(String restName, Ratio total) {
        return new FormulaTotalException(
                "the lines before q.s. add up to " + percent(total) + ", which leaves "
                        + percent(Ratio.ONE.minus(total)) + " for the q.s. line " + Excerpt.of(restName)
                        + ": something above 0 must be left",
                total);
    }

    private static String percent(Ratio share) {
        return Excerpt.of(share.times(100)) + " %";
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
