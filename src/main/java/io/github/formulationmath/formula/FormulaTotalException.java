package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.number.Sentence;
import java.io.Serial;

/** The lines of a formula do not make up a whole; carries what they do make up. */
public final class FormulaTotalException extends IllegalArgumentException implements Refusal {

    @Serial
    private static final long serialVersionUID = 2L;

    private final Sentence said;
    private final Ratio total;

    private FormulaTotalException(Sentence said, Ratio total) {
        super(said.getMessage());
        this.said = said;
        this.total = total;
    }

    // The factories say no more than its parent, so that who may throw it does not load it before.
    static IllegalArgumentException notWhole(String formula, Ratio total) {
        Ratio difference = total.minus(Ratio.ONE);
        boolean isMore = difference.signum() > 0;
        return new FormulaTotalException(
                Sentence.of(
                        isMore ? "refusal.total-more" : "refusal.total-less",
                        "the lines of \"{formula}\" add up to {total} % and not to 100 % (in percentage points {difference} too "
                                + (isMore ? "many" : "few")
                                + "): correct a line, make one q.s., or call buildNormalised()",
                        "formula",
                        Excerpt.of(formula),
                        "total",
                        Excerpt.of(total.times(100)),
                        "difference",
                        Excerpt.of(difference.abs().times(100))),
                total);
    }

    static IllegalArgumentException nothingLeft(String line, Ratio total) {
        return new FormulaTotalException(
                Sentence.of(
                        "refusal.nothing-left",
                        "the lines before q.s. add up to {total} %, which leaves {left} % for the q.s. line {line}:"
                                + " something above 0 must be left",
                        "total",
                        Excerpt.of(total.times(100)),
                        "left",
                        Excerpt.of(Ratio.ONE.minus(total).times(100)),
                        "line",
                        Excerpt.of(line)),
                total);
    }

    @Override
    public Sentence said() {
        return said;
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
