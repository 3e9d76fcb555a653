package io.github.formulationmath.packing;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.simulation.CoverageFactor;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What is usually lost on the way, and how much that varies: a residue r̄ that does not depend on the batch (the film in the
 * beaker), with the standard deviation of a single batch, and a share ℓ that does (steam).
 *
 * <p>From past batches the next one is expected at the mean of k losses, with the spread {@code s·√(1 + 1/k)}: that of a
 * single batch and that of the mean (a prediction; any textbook of statistics).
 *
 * <p>Example: 6, 8 and 10 g were lost: mean 8 g, s = 2 g, spread for the next 2·√(4/3) = 2.31 g.
 *
 * <p>With κ spreads allowed for, packs are filled as often as the normal law says for one side (97.7 % at 2), if losses
 * follow it; from few past batches, less often. Example: 8 packs of 50 g, 8 g lost with a spread of 2 g, allowed for twice:
 * 412 g; with 3 % steam besides, 424.74 g.
 *
 * <p>Immutable and thread-safe.
 */
public final class ExpectedLoss implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol PAST = Symbol.of("r", "past-loss", Kind.MASS);
    private static final Symbol COUNT = Symbol.of("k", "past-batches", Kind.NUMBER);
    private static final Symbol MEAN = Symbol.of("r_mean", "mean-loss", Kind.MASS);
    private static final Symbol SPREAD = Symbol.of("s", "loss-spread", Kind.MASS);
    private static final Symbol SHARE = Symbol.of("l", "lost-share", Kind.SHARE);

    private final List<Amount<Mass>> past;
    private final Amount<Mass> mean;
    private final Amount<Mass> spread;
    private final MassFraction share;

    private ExpectedLoss(List<Amount<Mass>> past, Amount<Mass> mean, Amount<Mass> spread, MassFraction share) {
        this.past = List.copyOf(past);
        this.mean = mean;
        this.spread = spread;
        this.share = share;
    }

    /**
     * A loss that is known from experience.
     *
     * @param mean what is lost on average, at least 0
     * @param standardDeviation by how much a single batch varies, at least 0
     * @return the loss
     * @throws IllegalArgumentException if an amount is negative
     */
    public static ExpectedLoss of(Amount<Mass> mean, Amount<Mass> standardDeviation) {
        Amount.requireNotNegative("mean", mean);
        Amount.requireNotNegative("standardDeviation", standardDeviation);
        return new ExpectedLoss(List.of(), mean, standardDeviation, MassFraction.ZERO);
    }

    /**
     * A loss taken from past batches.
     *
     * @param losses what was lost, batch by batch, at least two, each at least 0
     * @return the loss to expect from the next
     * @throws IllegalArgumentException if there are fewer than two, or one is negative
     */
    public static ExpectedLoss ofPast(List<Amount<Mass>> losses) {
        List<Amount<Mass>> copy = List.copyOf(Objects.requireNonNull(losses, "losses"));
        copy.forEach(loss -> Amount.requireNotNegative("losses", loss));
        if (copy.size() < 2) {
            throw new IllegalArgumentException("losses has " + copy.size()
                    + " entries: a spread takes at least two; give of(mean, standardDeviation) instead");
        }
        ExpectedLoss loss = new ExpectedLoss(copy, copy.get(0), copy.get(0), MassFraction.ZERO);
        Reckoning<Ratio> plain = Reckoning.plain();
        return new ExpectedLoss(
                copy,
                Amount.grams(loss.mean(plain)).inUnitOf(copy.get(0)),
                Amount.grams(loss.spread(plain)).inUnitOf(copy.get(0)),
                MassFraction.ZERO);
    }

    /**
     * The same with a share of the batch that goes off as well.
     *
     * @param lost the share of the batch, below 100 %
     * @return the loss
     * @throws IllegalArgumentException if the share is 100 %
     */
    public ExpectedLoss withShare(MassFraction lost) {
        if (Objects.requireNonNull(lost, "lost").equals(MassFraction.WHOLE)) {
            throw new IllegalArgumentException("lost is " + Excerpt.of(lost) + ": nothing would be left");
        }
        return new ExpectedLoss(past, mean, spread, lost);
    }

    /**
     * The mean loss.
     *
     * @return the mass lost on average, exact
     */
    public Amount<Mass> mean() {
        return mean;
    }

    /**
     * How much the loss of the next batch may differ from the mean.
     *
     * @return one standard deviation, to 17 digits
     */
    public Amount<Mass> spread() {
        return spread;
    }

    /**
     * The share of the batch that is lost besides.
     *
     * @return the share; 0 if none was given
     */
    public MassFraction share() {
        return share;
    }

    /**
     * The batch that will fill a number of packs in spite of the loss.
     *
     * @param packs how many, above 0
     * @param fill what goes into each
     * @param factor how many spreads to allow for
     * @return the mass of the batch to make in the unit of the fill, {@code M = (n·f + r̄ + κ·s)/(1 − ℓ)}, with its working
     * @throws IllegalArgumentException if the number of packs is not above 0
     */
    public Amount<Mass> toFill(int packs, PackFill fill, CoverageFactor factor) {
        return new BatchForPacks(packs, fill, this, factor).mass();
    }

    <V> V mean(Reckoning<V> r) {
        if (past.isEmpty()) {
            return r.given(MEAN, mean, Source.written(mean.toString()));
        }
        return r.named(MEAN, r.quotient(r.sum(all(r)), count(r)));
    }

    /** s = √(Σ(r − r̄)²/(k − 1)) · √(1 + 1/k). */
    <V> V spread(Reckoning<V> r) {
        if (past.isEmpty()) {
            return r.given(SPREAD, spread, Source.written(spread.toString()));
        }
        List<V> squares = new ArrayList<>();
        for (V loss : all(r)) {
            V off = r.difference(loss, mean(r));
            squares.add(r.product(off, off));
        }
        V one = r.literal(1);
        V variance = r.quotient(r.sum(squares), r.difference(count(r), one));
        return r.named(SPREAD, r.root(r.product(variance, r.sum(one, r.quotient(one, count(r))))));
    }

    <V> V share(Reckoning<V> r) {
        return r.given(SHARE, share.fraction(), share.source());
    }

    private <V> V count(Reckoning<V> r) {
        return r.given(COUNT, Ratio.of(past.size()), Source.user());
    }

    private <V> List<V> all(Reckoning<V> r) {
        List<V> losses = new ArrayList<>();
        for (int i = 0; i < past.size(); i++) {
            Amount<Mass> loss = past.get(i);
            String number = Integer.toString(i + 1);
            losses.add(r.given(PAST, Subject.of(number, number), loss, Source.written(loss.toString())));
        }
        return losses;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ExpectedLoss that
                && past.equals(that.past)
                && mean.equals(that.mean)
                && spread.equals(that.spread)
                && share.equals(that.share);
    }

    @Override
    public int hashCode() {
        return Objects.hash(past, mean, spread, share);
    }

    @Override
    public String toString() {
        return "loss " + mean.told() + " ± "
                + spread.told()
                + (share.fraction().isZero() ? "" : " and " + share) + (past.isEmpty() ? "" : ", from " + past);
    }
}
