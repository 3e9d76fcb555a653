package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.io.Serial;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The worst error of an addition is at most τ·m: {@code M = E / (τ·w)}, or the same with too much and too little apart. */
final class ErrorBound extends LineBoundCriterion {

    @Serial
    private static final long serialVersionUID = 2L;

    private final Tolerances tolerances;
    private final WeighingMethod method;
    private final Ratio coverage;
    private final Closure closure;

    ErrorBound(Tolerances tolerances, WeighingMethod method, Ratio coverage) {
        this(tolerances, method, coverage, Closure.INDEPENDENT);
    }

    private ErrorBound(Tolerances tolerances, WeighingMethod method, Ratio coverage, Closure closure) {
        this.tolerances = tolerances;
        this.method = method;
        this.coverage = coverage;
        this.closure = closure;
    }

    @Override
    ErrorBound closedBy(Closure other) {
        return new ErrorBound(tolerances, method, coverage, other);
    }

    @Override
    Phrase name() {
        return coverage.isZero()
                ? Phrase.of("criterion.error-bound", tolerances.toString())
                : Phrase.of("criterion.error-bound-repeated", tolerances.toString(), coverage.toString());
    }

    @Override
    void check(Formula formula) {
        tolerances.checkedFor(formula);
    }

    @Override
    Optional<Phrase> obstacle(Formula formula, Balance balance) {
        AdditionBound error = new AdditionBound(balance, method, coverage);
        return formula.lines().stream()
                .filter(line -> room(Reckoning.plain(), error, line, true).signum() <= 0
                        || room(Reckoning.plain(), error, line, false).signum() <= 0)
                .findFirst()
                .map(line -> Phrase.of("obstacle.no-room-for-error", line.name()));
    }

    /** What the tolerance leaves, per gram, after what is in proportion: (1 + τ) − β, or β − (1 − τ). */
    private <V> V room(Reckoning<V> r, AdditionBound error, FormulaLine line, boolean over) {
        V tau = tolerances.value(r, line);
        if (error.isEven()) {
            return tau;
        }
        return over
                ? r.difference(r.sum(r.literal(1), tau), error.factor(r, true))
                : r.difference(error.factor(r, false), r.difference(r.literal(1), tau));
    }

    @Override
    <V> V bound(Reckoning<V> r, Formula formula, Balance balance, FormulaLine line) {
        Ratio rounding = RoundingReach.of(closure, line, formula.lines().size());
        AdditionBound error = new AdditionBound(balance, method, coverage, rounding);
        V over = mass(r, error, line, true);
        return error.isEven() ? over : r.maximum(List.of(over, mass(r, error, line, false)));
    }

    private <V> V mass(Reckoning<V> r, AdditionBound error, FormulaLine line, boolean over) {
        V constant = error.constant(r, over, closure == Closure.INDEPENDENT ? null : line);
        return r.quotient(constant, r.product(room(r, error, line, over), r.known(line)));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ErrorBound that
                && tolerances.equals(that.tolerances)
                && method == that.method
                && coverage.equals(that.coverage)
                && closure == that.closure;
    }

    @Override
    public int hashCode() {
        return Objects.hash(tolerances, method, coverage, closure);
    }

    @Override
    public String toString() {
        return "worst error of every addition within " + tolerances
                + (coverage.isZero() ? "" : ", " + coverage + " times the repeatability taken in");
    }
}
