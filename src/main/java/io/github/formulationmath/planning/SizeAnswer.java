package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.weighing.Balance;
import java.io.Serial;
import java.io.Serializable;

/** What every answer about the smallest batch was asked for. */
abstract sealed class SizeAnswer implements Serializable permits FoundBatch, ImpossibleBatch, UndecidedBatch {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Formula formula;
    private final Balance balance;
    private final BatchCriterion criterion;

    SizeAnswer(Formula formula, Balance balance, BatchCriterion criterion) {
        this.formula = formula;
        this.balance = balance;
        this.criterion = criterion;
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
     * The balance.
     *
     * @return what it is weighed on
     */
    public Balance balance() {
        return balance;
    }

    /**
     * The criterion.
     *
     * @return what makes a batch large enough
     */
    public BatchCriterion criterion() {
        return criterion;
    }

    final Requirement requirement() {
        return criterion.of(formula, balance);
    }

    final String describe(String finding) {
        return formula.name() + ": " + finding + " (" + criterion + ")";
    }
}
