package io.github.formulationmath.planning;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.limit.Conformity;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * The batch from which on a formula is sure to keep one limit, whatever the additions do: on the basis of the limit, sums
 * and conversions included, and of the phase if the limit is of one.
 *
 * <p>With T the limit, c_i what is counted of line i and E_i the worst error of its addition, the share is at most T
 * exactly if {@code Σ (c_i − T)·m_i ≤ 0}; at worst that is {@code M·G ≥ H} with {@code G = Σ (T − c_i)·w_i} and {@code H =
 * Σ |c_i − T|·E_i}. Hence M = H/G. For a lowest effective share all is mirrored. Limits that are declared above are treated
 * like highest shares.
 *
 * <p>Example: a preservative at 0.9 % under a cap of 1 %, in three lines on a display of 0.1 g, E = 0.15 g: H = 0.99 · 0.15
 * + 2 · 0.01 · 0.15 = 0.1515 g, G = 0.1 %, M = 151.5 g.
 *
 * <p>It is sufficient before anything is read; the plan of a smaller batch may be within too, if its own readings round
 * favourably: that is what a verdict on the plan says.
 *
 * <p>It defers to the law in force and a qualified safety assessor, as every verdict does. Immutable and thread-safe.
 */
public final class SafeBatch implements Explained {

    private static final Symbol LIMIT = Symbol.of("T", "usage-limit", Kind.SHARE);
    private static final Symbol COUNTED = Symbol.of("C", "counted-per-line", Kind.SHARE);
    private static final Symbol BATCH = Symbol.of("Msafe", "safe-batch", Kind.MASS);

    private final Verdict verdict;
    private final AdditionBound error;

    private SafeBatch(Verdict verdict, AdditionBound error) {
        this.verdict = verdict;
        this.error = error;
    }

    /**
     * The smallest safe batch.
     *
     * @param verdict a verdict on the formula, as written or as weighed
     * @param balance the balance on which every line is weighed
     * @param method how it is weighed; not from a boat, which leaves a residue
     * @return the batch; empty if no batch is safe, because the formula aims at the limit or beyond it
     * @throws IllegalArgumentException if the verdict could not be assessed, the method leaves a residue, or the balance
     *     has a correction for buoyancy
     */
    public static Optional<SafeBatch> of(Verdict verdict, Balance balance, WeighingMethod method) {
        Objects.requireNonNull(verdict, "verdict");
        if (verdict.conformity() == Conformity.NOT_ASSESSABLE) {
            throw new IllegalArgumentException("verdict is " + verdict + ": without all figures no batch can be named");
        }
        requireEven(Objects.requireNonNull(balance, "balance"), Objects.requireNonNull(method, "method"));
        SafeBatch batch = new SafeBatch(verdict, new AdditionBound(balance, method, Ratio.ZERO));
        return batch.room(Reckoning.plain()).signum() > 0 ? Optional.of(batch) : Optional.empty();
    }

    private static void requireEven(Balance balance, WeighingMethod method) {
        Bounds air = balance.errors().buoyancy();
        if (!air.equals(Bounds.point(Ratio.ZERO)) || method == WeighingMethod.FROM_BOAT) {
            throw new IllegalArgumentException("method is " + method + ", buoyancy correction " + air
                    + ": name a method without residue and a balance without correction, or ask for a minimum batch");
        }
    }

    /**
     * The smallest mass of a safe batch; every larger one is safe too.
     *
     * @return the mass in grams, exact
     */
    public Amount<Mass> mass() {
        return Amount.grams(result());
    }

    /**
     * What the batch keeps.
     *
     * @return the verdict with its limit
     */
    public Verdict verdict() {
        return verdict;
    }

    @Override
    public Phrase question() {
        return Phrase.of(
                "question.safe-batch", verdict.counted(), verdict.limit().id());
    }

    @Override
    public Ratio result() {
        return derive(Reckoning.plain());
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        r.note(() -> Phrase.of("caution.limit-short"));
        return r.named(
                BATCH,
                r.quotient(
                        r.named(BatchSymbols.ERRORS_AGAINST_CAP, errors(r)),
                        r.named(BatchSymbols.ROOM_UNDER_CAP, room(r))));
    }

    /** T − c, or c − T for a lowest share: positive if more of the line is harmless. */
    private <V> V lack(Reckoning<V> r, int line) {
        V limit = r.given(
                LIMIT,
                verdict.limit().share().fraction(),
                Source.published(verdict.limit().citation().toString(), ""));
        Ratio strength = verdict.strengths().get(line);
        V counted = strength.isZero()
                ? r.literal(0)
                : r.given(COUNTED, verdict.wholeLines().get(line), strength, Source.user());
        return verdict.limit().kind().isUpper() ? r.difference(limit, counted) : r.difference(counted, limit);
    }

    private <V> V room(Reckoning<V> r) {
        List<V> parts = new ArrayList<>();
        List<FormulaLine> lines = verdict.wholeLines();
        for (int i = 0; i < lines.size(); i++) {
            parts.add(r.product(lack(r, i), r.known(lines.get(i))));
        }
        return r.sum(parts);
    }

    private <V> V errors(Reckoning<V> r) {
        List<V> parts = new ArrayList<>();
        for (int i = 0; i < verdict.wholeLines().size(); i++) {
            parts.add(r.product(r.absolute(lack(r, i)), error.constant(r, true)));
        }
        return r.sum(parts);
    }

    @Override
    public String toString() {
        return verdict.counted() + ": safe from " + mass() + " on";
    }
}
