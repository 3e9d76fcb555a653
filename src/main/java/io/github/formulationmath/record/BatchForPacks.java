package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.scaling.BatchSize;
import io.github.formulationmath.weighing.CoverageFactor;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * How much to make so that a number of packs is filled in spite of what is lost: {@code M = (n·f + r̄ + κ·s)/(1 − ℓ)}.
 *
 * <p>Example: 8 packs of 50 g, 8 g lost with a spread of 2 g, allowed for twice: 412 g; with 3 % steam besides, 424.74 g.
 *
 * <p>With κ spreads allowed for, the packs are filled as often as the normal law says for one side (97.7 % at 2), if losses
 * follow it; from few past batches, less often.
 *
 * <p>Immutable and thread-safe.
 */
public final class BatchForPacks implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol PACKS = Symbol.of("n", "packs", Kind.NUMBER);
    private static final Symbol FACTOR = Symbol.of("κ", "spreads-allowed-for", Kind.NUMBER);
    private static final Symbol MASS = Symbol.of("M", "batch-to-make", Kind.MASS);

    private final int packs;
    private final PackFill fill;
    private final ExpectedLoss loss;
    private final CoverageFactor factor;
    private final Ratio grams;

    private BatchForPacks(int packs, PackFill fill, ExpectedLoss loss, CoverageFactor factor) {
        this.packs = packs;
        this.fill = fill;
        this.loss = loss;
        this.factor = factor;
        this.grams = derive(Reckoning.plain());
    }

    static BatchForPacks of(int packs, PackFill fill, ExpectedLoss loss, CoverageFactor factor) {
        if (packs <= 0) {
            throw new IllegalArgumentException("packs is " + packs + ": it must be above 0");
        }
        return new BatchForPacks(
                packs, Objects.requireNonNull(fill, "fill"), loss, Objects.requireNonNull(factor, "factor"));
    }

    /**
     * The batch to make.
     *
     * @return the mass in grams
     */
    public Amount<Mass> mass() {
        return Amount.grams(grams);
    }

    /**
     * The batch to make, as a size to scale a formula by.
     *
     * @return the size
     */
    public BatchSize size() {
        return BatchSize.ofMass(mass());
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.batch-for-packs");
    }

    @Override
    public Ratio result() {
        return grams;
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        V wanted = r.product(r.given(PACKS, Ratio.of(packs), Source.user()), r.known(fill));
        V spare = r.product(r.given(FACTOR, factor.factor(), Source.user()), loss.spread(r));
        V needed = r.sum(java.util.List.of(wanted, loss.mean(r), spare));
        return loss.share().fraction().isZero()
                ? r.named(MASS, needed)
                : r.named(MASS, r.quotient(needed, r.difference(r.literal(1), loss.share(r))));
    }

    @Override
    public String toString() {
        return mass() + " for " + packs + " packs of " + fill;
    }
}
