package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.io.Serial;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * One end of a {@link BatchWindow}: the size, what forbids to go beyond, and the line or part concerned. Its working leads
 * from the given figures to the size by the relation that binds.
 *
 * <p>Immutable and thread-safe.
 */
public final class WindowEnd implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Formula formula;
    private final Bench bench;
    private final BatchConstraints constraints;
    private final boolean lower;
    private final Landing at;
    private final int binding;

    /** The binding counts the requirements first, then the ceilings; -1 at a lower end that nothing binds. */
    WindowEnd(WindowQuestion question, boolean lower, Landing at, int binding) {
        this.formula = question.formula();
        this.bench = question.bench();
        this.constraints = question.constraints();
        this.lower = lower;
        this.at = at;
        this.binding = binding;
    }

    /**
     * The size at this end; it belongs to the window.
     *
     * @return the mass in the unit of the balance
     */
    public Amount<Mass> mass() {
        return BalanceUnit.amount(bench.balance(), at.at());
    }

    /**
     * What forbids to go beyond.
     *
     * @return the criterion or the ceiling in words
     */
    public Phrase boundBy() {
        return asked().nameOf(binding);
    }

    /**
     * The line that forbids to go beyond.
     *
     * @return the line; empty if it is the total, or something that is no line
     */
    public Optional<FormulaLine> bindingLine() {
        Optional<Ceiling> ceiling = asked().ceiling(binding);
        if (ceiling.isPresent()) {
            return ceiling.get().line();
        }
        return at.line() >= 0 ? Optional.of(formula.lines().get(at.line())) : Optional.empty();
    }

    private WindowQuestion asked() {
        return new WindowQuestion(formula, bench, constraints);
    }

    @Override
    public Phrase question() {
        return Phrase.of(lower ? "question.smallest-batch" : "question.largest-batch", formula.name());
    }

    @Override
    public Ratio result() {
        return at.at();
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        if (!lower) {
            bench.notConsidered().forEach(phrase -> r.note(() -> phrase));
        }
        return asked().derive(r, lower, at, binding);
    }

    @Override
    public String toString() {
        return BalanceUnit.text(mass()) + " (" + boundBy() + ")";
    }
}
