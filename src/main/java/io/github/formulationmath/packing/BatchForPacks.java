package io.github.formulationmath.packing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.simulation.CoverageFactor;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;

/** How much to make so that a number of packs is filled in spite of what is lost: {@code M = (n·f + r̄ + κ·s)/(1 − ℓ)}. */
record BatchForPacks(int packs, PackFill fill, ExpectedLoss loss, CoverageFactor factor) {

    private static final Symbol PACKS = Symbol.of("n", "packs", Kind.NUMBER);
    private static final Symbol FACTOR = Symbol.of("κ", "spreads-allowed-for", Kind.NUMBER);
    private static final Symbol MASS = Symbol.of("M", "batch-to-make", Kind.MASS);

    BatchForPacks {
        if (packs <= 0) {
            throw new IllegalArgumentException("packs is " + packs + ": it must be above 0");
        }
        Objects.requireNonNull(fill, "fill");
        Objects.requireNonNull(factor, "factor");
    }

    Amount<Mass> mass() {
        return Amount.grams(mass(Reckoning.plain()))
                .withWorking(batch -> Phrase.of("question.batch-for-packs"), this, BatchForPacks::mass)
                .inUnitOf(fill.mass());
    }

    private <V> V mass(Reckoning<V> r) {
        V wanted = r.product(r.given(PACKS, Ratio.of(packs), Source.user()), r.known(fill.mass()));
        V spare = r.product(r.given(FACTOR, factor.factor(), Source.user()), loss.spread(r));
        V needed = r.sum(List.of(wanted, loss.mean(r), spare));
        return loss.share().fraction().isZero()
                ? r.named(MASS, needed)
                : r.named(MASS, r.quotient(needed, r.difference(r.literal(1), loss.share(r))));
    }
}
