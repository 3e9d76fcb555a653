package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What is counted stays at or below its cap C whatever the additions do. With strengths c_i, made masses m_i between {@code
 * β⁻·w_i·M − E⁻} and {@code β⁺·w_i·M + E⁺}: the share Σ c·m / Σ m is at most C exactly if {@code Σ (c_i − C)·m_i ≤ 0}, and
 * that sum is largest with every line stronger than C at its upper and every other at its lower end. So {@code M·G ≥ H}
 * with {@code G = Σ (C − c_i)·β_i·w_i} and {@code H = Σ |c_i − C|·E_i}, over the lines of which the cap is a share. For a
 * lowest share all is mirrored.
 */
record CapKept(CountedShare share, WeighingMethod method) implements Criterion {

    private static final Symbol ROOM_UNDER_CAP = Symbol.of("G", "room-under-cap", Kind.SHARE_DIFFERENCE);
    private static final Symbol ERRORS_AGAINST_CAP = Symbol.of("H", "errors-against-cap", Kind.MASS);
    private static final Symbol LARGEST = Symbol.of("y", "largest-target-under-cap", Kind.SHARE);

    static CapKept of(Substance substance, MassFraction cap, WeighingMethod method) {
        CountedShare.Capped share = new CountedShare.Capped(
                Objects.requireNonNull(substance, "substance"), Objects.requireNonNull(cap, "cap"));
        return new CapKept(share, Objects.requireNonNull(method, "method"));
    }

    static CapKept of(Verdict verdict, WeighingMethod method) {
        LimitedShare share = LimitedShare.of(Objects.requireNonNull(verdict, "verdict"));
        return new CapKept(share, Objects.requireNonNull(method, "method"));
    }

    @Override
    public Sizes on(Formula formula, Bench bench) {
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(bench, "bench");
        share.check(formula);
        Bound bound = new Bound(this, formula, bench);
        return bound.room(Reckoning.plain()).signum() > 0
                ? Sizes.from(formula, bench, share.name(), List.of(share.carrier(formula)), bound)
                : Sizes.none(formula, bench, share.obstacle());
    }

    /** The largest share of the substance that a batch of M keeps under the cap: C − H/M. */
    <V> V largestTarget(Reckoning<V> r, Formula formula, Balance balance, V batchMass) {
        V errors = new Bound(this, formula, Bench.of(balance)).errors(r);
        V taken = r.quotient(r.named(ERRORS_AGAINST_CAP, errors), batchMass);
        return r.named(LARGEST, r.difference(share.bound(r), taken));
    }

    /** The least batch, for the line that carries most of what is counted and stands for it. */
    private record Bound(CapKept criterion, Formula formula, Bench bench) implements Sizes.LineBound {

        @Override
        public <V> V of(Reckoning<V> r, FormulaLine carrier) {
            criterion.share.caution(r);
            V errors = r.named(ERRORS_AGAINST_CAP, errors(r));
            V bound = r.quotient(errors, r.named(ROOM_UNDER_CAP, room(r)));
            // Where so much stays in the boat that errors only help, any batch passes that the display can show.
            return r.number(errors).signum() > 0
                    ? bound
                    : r.maximum(List.of(bound, Divisions.readability(r, bench.balance())));
        }

        /** G: the cap less the share, each line at what is in proportion. */
        private <V> V room(Reckoning<V> r) {
            CountedShare share = criterion.share;
            List<V> parts = new ArrayList<>();
            for (FormulaLine line : share.whole(formula)) {
                AdditionBound error = error(line);
                if (error.isEven()) {
                    return share.evenRoom(r, formula);
                }
                V inProportion = error.factor(r, share.isHarmful(formula, line));
                parts.add(r.product(r.product(share.lack(r, formula, line), inProportion), r.known(line)));
            }
            return r.sum(parts);
        }

        /** H: what the errors can do against the cap. */
        private <V> V errors(Reckoning<V> r) {
            CountedShare share = criterion.share;
            List<V> parts = new ArrayList<>();
            for (FormulaLine line : share.whole(formula)) {
                V size = r.absolute(r.difference(share.strength(r, formula, line), share.bound(r)));
                parts.add(r.product(size, error(line).constant(r, share.isHarmful(formula, line))));
            }
            return r.sum(parts);
        }

        private AdditionBound error(FormulaLine line) {
            return AdditionBound.of(line, formula, bench, criterion.method, Ratio.ZERO);
        }
    }

    @Override
    public String toString() {
        return share.toString();
    }
}
