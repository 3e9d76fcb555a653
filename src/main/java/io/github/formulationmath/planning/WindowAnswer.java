package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import java.io.Serial;
import java.io.Serializable;

/** What every answer about the window of batch sizes was asked for. */
abstract sealed class WindowAnswer implements Serializable permits FeasibleWindow, EmptyWindow {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Formula formula;
    private final Bench bench;
    private final BatchConstraints constraints;

    WindowAnswer(WindowQuestion question) {
        this.formula = question.formula();
        this.bench = question.bench();
        this.constraints = question.constraints();
    }

    /**
     * The formula.
     *
     * @return what is to be made
     */
    public Formula formula() {
        return formula;
    }

    /**
     * The bench.
     *
     * @return where it is weighed
     */
    public Bench bench() {
        return bench;
    }

    /**
     * The constraints.
     *
     * @return what a batch must meet
     */
    public BatchConstraints constraints() {
        return constraints;
    }

    /** What was not considered, as the end of a text. */
    final String unconsidered() {
        return bench.unconsideredText();
    }

    final WindowQuestion question() {
        return new WindowQuestion(formula, bench, constraints);
    }
}
