package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.io.Serial;
import java.util.List;
import java.util.Optional;

/** A criterion that each line answers with a least batch mass; the largest of them binds, and every larger batch passes. */
abstract sealed class LineBoundCriterion extends BatchCriterion
        permits OneDivision, ErrorBound, LeastNetMass, RepeatabilityMinimum, CapKept {

    @Serial
    private static final long serialVersionUID = 1L;

    /** Refuses a formula that lacks something the criterion names. */
    void check(Formula formula) {}

    /** Why a formula cannot pass in any size. */
    Optional<Phrase> obstacle(Formula formula, Balance balance) {
        return Optional.empty();
    }

    /** The lines that have a say. */
    List<FormulaLine> lines(Formula formula) {
        return formula.lines();
    }

    /** The least batch mass for a line. */
    abstract <V> V bound(Reckoning<V> r, Formula formula, Balance balance, FormulaLine line);

    @Override
    final Requirement of(Formula formula, Balance balance) {
        check(formula);
        return new LineBoundRequirement(this, formula, balance);
    }
}
