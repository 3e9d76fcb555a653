package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is counted stays at or below its cap C whatever the additions do. With strengths c_i, made masses m_i between {@code
 * β⁻·w_i·M − E⁻} and {@code β⁺·w_i·M + E⁺}: the share Σ c·m / Σ m is at most C exactly if {@code Σ (c_i − C)·m_i ≤ 0}, and
 * that sum is largest with every line stronger than C at its upper and every other at its lower end. So {@code M·G ≥ H}
 * with {@code G = Σ (C − c_i)·β_i·w_i} and {@code H = Σ |c_i − C|·E_i}, over the lines of which the cap is a share. For a
 * lowest share all is mirrored.
 */
final class CapKept extends LineBoundCriterion {

    @Serial
    private static final long serialVersionUID = 3L;

    private static final Symbol LARGEST = Symbol.of("y", "largest-target-under-cap", Kind.SHARE);

    private final CountedShare share;
    private final WeighingMethod method;
    private final Closure closure;

    CapKept(CountedShare share, WeighingMethod method) {
        this(share, method, Closure.INDEPENDENT);
    }

    private CapKept(CountedShare share, WeighingMethod method, Closure closure) {
        this.share = share;
        this.method = method;
        this.closure = closure;
    }

    @Override
    CapKept closedBy(Closure other) {
        return new CapKept(share, method, other);
    }

    @Override
    Phrase name() {
        return share.name();
    }

    @Override
    void check(Formula formula) {
        share.check(formula);
    }

    /** The line that carries most of what is counted stands for it. */
    @Override
    List<FormulaLine> lines(Formula formula) {
        return List.of(share.carrier(formula));
    }

    @Override
    Optional<Phrase> obstacle(Formula formula, Balance balance) {
        return room(Reckoning.plain(), formula, balance).signum() > 0
                ? Optional.empty()
                : Optional.of(share.obstacle());
    }

    @Override
    <V> V bound(Reckoning<V> r, Formula formula, Balance balance, FormulaLine line) {
        share.caution(r);
        V errors = r.named(BatchSymbols.ERRORS_AGAINST_CAP, errors(r, formula, balance));
        V bound = r.quotient(errors, r.named(BatchSymbols.ROOM_UNDER_CAP, room(r, formula, balance)));
        // Where so much stays in the boat that errors only help, any batch passes that the display can show.
        return r.number(errors).signum() > 0 ? bound : r.maximum(List.of(bound, BatchSymbols.readability(r, balance)));
    }

    /** G: the cap less the share, each line at what is in proportion. */
    private <V> V room(Reckoning<V> r, Formula formula, Balance balance) {
        AdditionBound error = new AdditionBound(balance, method, Ratio.ZERO);
        if (error.isEven()) {
            return share.evenRoom(r, formula);
        }
        List<V> parts = new ArrayList<>();
        for (FormulaLine line : share.whole(formula)) {
            V inProportion = error.factor(r, share.isHarmful(formula, line));
            parts.add(r.product(r.product(share.lack(r, formula, line), inProportion), r.known(line)));
        }
        return r.sum(parts);
    }

    /** H: what the errors can do against the cap. */
    private <V> V errors(Reckoning<V> r, Formula formula, Balance balance) {
        List<V> parts = new ArrayList<>();
        for (FormulaLine line : share.whole(formula)) {
            Ratio rounding = RoundingReach.of(closure, line, formula.lines().size());
            AdditionBound error = new AdditionBound(balance, method, Ratio.ZERO, rounding);
            V size = r.absolute(r.difference(share.strength(r, formula, line), share.bound(r)));
            parts.add(r.product(
                    size,
                    error.constant(r, share.isHarmful(formula, line), closure == Closure.INDEPENDENT ? null : line)));
        }
        return r.sum(parts);
    }

    /** The largest share of the substance that a batch of M keeps under the cap: C − H/M. */
    <V> V largestTarget(Reckoning<V> r, Formula formula, Balance balance, V batchMass) {
        V taken = r.quotient(r.named(BatchSymbols.ERRORS_AGAINST_CAP, errors(r, formula, balance)), batchMass);
        return r.named(LARGEST, r.difference(share.bound(r), taken));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CapKept that
                && share.equals(that.share)
                && method == that.method
                && closure == that.closure;
    }

    @Override
    public int hashCode() {
        return Objects.hash(share, method, closure);
    }

    @Override
    public String toString() {
        return share.toString();
    }
}
