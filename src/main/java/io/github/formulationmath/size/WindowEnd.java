package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.BalanceUnit;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * One end of a {@link BatchWindow}: the size, what forbids to go beyond, and the line or part concerned. Its working leads
 * from the given figures to the size by the relation that binds.
 *
 * <p>Immutable and thread-safe.
 */
public final class WindowEnd implements Explained {

    private final Formula formula;
    private final Bench bench;
    private final boolean lower;
    private final Landing at;
    private final WindowBound bound;

    WindowEnd(Formula formula, Bench bench, boolean lower, Landing at, WindowBound bound) {
        this.formula = formula;
        this.bench = bench;
        this.lower = lower;
        this.at = at;
        this.bound = bound;
    }

    /**
     * The size at this end; it belongs to the window.
     *
     * @return the mass in the unit of the balance
     */
    public Amount<Mass> mass() {
        return BalanceUnit.amount(bench.balance(), at.at()).withWorking(WindowEnd::question, this, WindowEnd::size);
    }

    private Phrase question() {
        return Phrase.of(lower ? "question.smallest-batch" : "question.largest-batch", formula.name());
    }

    private <V> V size(Reckoning<V> r) {
        if (!lower) {
            bench.notConsidered().forEach(phrase -> r.note(() -> phrase));
        }
        V size = bound.shown(r, at, lower);
        return lower
                ? r.named(BatchSymbols.LOWER, BatchSymbols.LOW, size)
                : r.named(BatchSymbols.UPPER, BatchSymbols.HIGH, size);
    }

    /** As {@link #mass()}. */
    @Override
    public Origin origin() {
        return mass().origin();
    }

    Ratio grams() {
        return at.at();
    }

    /**
     * What forbids to go beyond.
     *
     * @return the criterion or the ceiling in words
     */
    public Phrase boundBy() {
        return bound.name();
    }

    /**
     * The line that forbids to go beyond.
     *
     * @return the line; empty if it is the total, or something that is no line
     */
    public Optional<FormulaLine> bindingLine() {
        return bound.line(formula, at);
    }

    /** Equal if what is to be made, where, the size and what binds are. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WindowEnd that
                && lower == that.lower
                && at.equals(that.at)
                && formula.equals(that.formula)
                && bench.equals(that.bench)
                && boundBy().equals(that.boundBy());
    }

    @Override
    public int hashCode() {
        return Objects.hash(lower, at, formula);
    }

    @Override
    public String toString() {
        return BalanceUnit.text(mass()) + " (" + boundBy() + ")";
    }
}
