package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.OneSubstance;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceShare;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The substance stays at or below its cap C whatever the additions do. With strengths c_i, made masses m_i between {@code
 * β⁻·w_i·M − E⁻} and {@code β⁺·w_i·M + E⁺}: the share Σ c·m / Σ m is at most C exactly if {@code Σ (c_i − C)·m_i ≤ 0}, and
 * that sum is largest with every line stronger than C at its upper and every other at its lower end. So {@code M·G ≥ H}
 * with {@code G = Σ (C − c_i)·β_i·w_i} and {@code H = Σ |c_i − C|·E_i}.
 */
final class CapKept extends LineBoundCriterion {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol CAP = Symbol.of("C", "largest-permitted-share", Kind.SHARE);
    private static final Symbol STRENGTH = Symbol.of("c", "strength", Kind.SHARE);
    private static final Symbol LARGEST = Symbol.of("y", "largest-target-under-cap", Kind.SHARE);

    private final Substance substance;
    private final MassFraction cap;
    private final WeighingMethod method;

    CapKept(Substance substance, MassFraction cap, WeighingMethod method) {
        this.substance = substance;
        this.cap = cap;
        this.method = method;
    }

    @Override
    Phrase name() {
        return Phrase.of("criterion.cap-kept", substance.name(), cap.toString());
    }

    @Override
    void check(Formula formula) {
        share(formula);
    }

    /** The line that carries most of the substance stands for it. */
    @Override
    List<FormulaLine> lines(Formula formula) {
        return List.of(share(formula).lines().get(0));
    }

    private SubstanceShare share(Formula formula) {
        return formula.composition().shareOf(substance).orElseThrow(() -> absent(formula));
    }

    /** The substance in all spellings that the formula uses. */
    private OneSubstance counted(Formula formula) {
        return formula.substances().find(substance).orElseThrow(() -> absent(formula));
    }

    private IllegalArgumentException absent(Formula formula) {
        return new IllegalArgumentException(
                "a cap is set for " + substance + ", which \"" + formula.name() + "\" does not contain");
    }

    @Override
    Optional<Phrase> obstacle(Formula formula, Balance balance) {
        return room(Reckoning.plain(), formula, balance).signum() > 0
                ? Optional.empty()
                : Optional.of(Phrase.of("obstacle.target-at-cap", substance.name(), cap.toString()));
    }

    @Override
    <V> V bound(Reckoning<V> r, Formula formula, Balance balance, FormulaLine line) {
        V errors = r.named(BatchSymbols.ERRORS_AGAINST_CAP, errors(r, formula, balance));
        V bound = r.quotient(errors, r.named(BatchSymbols.ROOM_UNDER_CAP, room(r, formula, balance)));
        // Where so much stays in the boat that errors only help, any batch passes that the display can show.
        return r.number(errors).signum() > 0 ? bound : r.maximum(List.of(bound, BatchSymbols.readability(r, balance)));
    }

    private <V> V cap(Reckoning<V> r) {
        return r.given(CAP, cap.fraction(), Source.user());
    }

    private <V> V strength(Reckoning<V> r, OneSubstance counted, FormulaLine line) {
        Ratio strength = counted.strengthIn(line.ingredient());
        return strength.isZero() || strength.equals(Ratio.ONE)
                ? r.literal(strength)
                : r.given(STRENGTH, line, strength, Source.user());
    }

    private boolean isStrong(OneSubstance counted, FormulaLine line) {
        return counted.strengthIn(line.ingredient()).compareTo(cap.fraction()) > 0;
    }

    /** G: the cap less the share, each line at what is in proportion. */
    private <V> V room(Reckoning<V> r, Formula formula, Balance balance) {
        AdditionBound error = new AdditionBound(balance, method, Ratio.ZERO);
        if (error.isEven()) {
            return r.difference(cap(r), r.known(share(formula)));
        }
        OneSubstance counted = counted(formula);
        List<V> parts = new ArrayList<>();
        for (FormulaLine line : formula.lines()) {
            V lack = r.difference(cap(r), strength(r, counted, line));
            parts.add(r.product(r.product(lack, error.factor(r, isStrong(counted, line))), r.known(line)));
        }
        return r.sum(parts);
    }

    /** H: what the errors can do against the cap. */
    private <V> V errors(Reckoning<V> r, Formula formula, Balance balance) {
        AdditionBound error = new AdditionBound(balance, method, Ratio.ZERO);
        OneSubstance counted = counted(formula);
        List<V> parts = new ArrayList<>();
        for (FormulaLine line : formula.lines()) {
            V size = r.absolute(r.difference(strength(r, counted, line), cap(r)));
            parts.add(r.product(size, error.constant(r, isStrong(counted, line))));
        }
        return r.sum(parts);
    }

    /** The largest share of the substance that a batch of M keeps under the cap: C − H/M. */
    <V> V largestTarget(Reckoning<V> r, Formula formula, Balance balance, V batchMass) {
        V taken = r.quotient(r.named(BatchSymbols.ERRORS_AGAINST_CAP, errors(r, formula, balance)), batchMass);
        return r.named(LARGEST, r.difference(cap(r), taken));
    }

    Substance substance() {
        return substance;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CapKept that
                && substance.equals(that.substance)
                && cap.equals(that.cap)
                && method == that.method;
    }

    @Override
    public int hashCode() {
        return Objects.hash(substance, cap, method);
    }

    @Override
    public String toString() {
        return substance + " never above " + cap;
    }
}
