package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Operation;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.simulation.MonteCarlo;
import java.util.EnumMap;
import java.util.Map;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;

/**
 * A share of what was really made, y = Σ c·m / Σ m: of one line (its c is 1, all others 0), or of something that several
 * lines contain. With the interval in which it is sure to lie and its uncertainty.
 *
 * <p>Its variance follows from the sensitivities ∂y/∂m_j = (c_j − y)/S with S = Σ m and the covariances of the masses; put
 * together they are u²(y) = (u²(N) − 2·y·u(N, S) + y²·u²(S)) / S² with N = Σ c·m.
 *
 * <p>Example: 10 g in 40 g, both lines with u² = 0.01/6 g² and independent. y = 1/4, N is the first line alone: u²(y) =
 * (0.01/6 − 2/4 · 0.01/6 + 1/16 · 0.02/6) / 1600 = 6.51e-7, u(y) = 0.081 %.
 *
 * <p>Source: JCGM 100:2008 (GUM), 5.2.2, equation (13).
 *
 * <p>Immutable and thread-safe.
 *
 * <p>Shares are amounts in percent, and not mass fractions: counted as another substance, a part may weigh more than the
 * whole.
 */
public final class MadeShare implements Explained {

    private static final Symbol SHARE = Symbol.of("φ", "made-share", Kind.SHARE);
    private static final Symbol OWN_VARIANCE = Symbol.of("v_N", "part-variance", Kind.MASS_SQUARED);
    private static final Symbol COVARIANCE = Symbol.of("v_NS", "part-total-covariance", Kind.MASS_SQUARED);
    private static final Symbol VARIANCE = Symbol.of("v_φ", "share-variance", Kind.NUMBER);
    private static final Symbol UNCERTAINTY = Symbol.of("u_φ", "share-uncertainty", Kind.SHARE);

    private static final Amount<Dimensionless> WHOLE = percent(Ratio.ONE);

    private final MadeMasses whole;
    private final Weights weights;
    private final Subject subject;
    /** Each searched for when somebody asks first: a cap needs the highest alone. */
    private volatile @Nullable ShareExtreme lowest;

    private volatile @Nullable ShareExtreme highest;

    MadeShare(MadeMasses whole, Weights weights, Subject subject) {
        this.whole = whole;
        this.weights = weights;
        this.subject = subject;
    }

    MadeMasses whole() {
        return whole;
    }

    Weights weights() {
        return weights;
    }

    Subject subject() {
        return subject;
    }

    /**
     * The share, every error at its middle.
     *
     * @return the share in percent
     */
    public Amount<Dimensionless> share() {
        Ratio fraction = in(Reckoning.plain());
        return percent(fraction).withWorking(MadeShare::question, this, MadeShare::in);
    }

    /** The working of the {@link #share() share}. */
    @Override
    public Origin origin() {
        return share().origin();
    }

    /**
     * Where the share is sure to lie: its true extremes over everything the bounded errors allow, and over what {@link
     * MadeMasses#covering(CoverageFactor)} adds.
     *
     * <p>Masses that share errors are not cut off at 0 one by one; if one of them could be negative, the interval may be
     * wider than the truth, never narrower, and it is cut off at the least and the largest strength (0 and 1 for a line).
     * If all the masses together could be 0, the interval is everything between those two.
     *
     * @return the least and the most that it can be, in percent, each with its working
     */
    public Interval<Amount<Dimensionless>> bounds() {
        ShareExtreme known = lowest;
        if (known == null) {
            known = new ShareExtreme(this, false);
            lowest = known;
        }
        return Interval.of(known.share(), highest());
    }

    /**
     * The greatest of the {@link #bounds() bounds}, without a search for the least.
     *
     * @return the most that the share can be, in percent, with its working
     */
    public Amount<Dimensionless> highest() {
        ShareExtreme known = highest;
        if (known == null) {
            known = new ShareExtreme(this, true);
            highest = known;
        }
        return known.share();
    }

    /**
     * The standard uncertainty of the share, within the linear approximation of the GUM.
     *
     * @return the root of the variance in percent of the whole, to {@value Operation.Root#DIGITS} digits
     */
    public Amount<Dimensionless> uncertainty() {
        Ratio fraction = uncertainty(Reckoning.plain());
        return percent(fraction)
                .withWorking(
                        made -> Phrase.of("question.share-uncertainty", made.subject.name()),
                        this,
                        MadeShare::uncertainty);
    }

    /**
     * The variance of the share, for relations to build on.
     *
     * @return u², a plain number, exact within the linear approximation of the GUM
     */
    public Explained variance() {
        return Derived.of(made -> Phrase.of("question.share-variance", made.subject.name()), this, MadeShare::variance);
    }

    /**
     * The variance of the share, source by source.
     *
     * @return the budget, in plain numbers
     */
    public ErrorBudget budget() {
        MassRelations relations = whole.relations();
        Ratio share = in(Reckoning.plain());
        Ratio total = whole.total().canonical();
        Map<ErrorSource, Ratio> sum = new EnumMap<>(ErrorSource.class);
        add(sum, relations.bySource(weights, weights), Ratio.ONE);
        add(sum, relations.bySource(weights, Weights.TOTAL), share.times(-2));
        add(sum, whole.variances(), share.times(share));
        sum.values().removeIf(Ratio::isZero);
        sum.replaceAll((source, variance) -> variance.dividedBy(total.times(total)));
        return new ErrorBudget(sum, WHOLE);
    }

    private static void add(Map<ErrorSource, Ratio> sum, Map<ErrorSource, Ratio> parts, Ratio factor) {
        parts.forEach((source, part) -> sum.merge(source, part.times(factor), Ratio::plus));
    }

    /**
     * The same share by drawing all its errors from their laws, to hold against {@link #uncertainty()}. Masses are not cut
     * off at 0.
     *
     * @return the simulation of the share in percent, to be run
     * @throws IllegalArgumentException if there is no error to draw
     */
    public MonteCarlo<Dimensionless> simulation() {
        ShareModel model = new ShareModel(whole, weights);
        return MonteCarlo.of(model.inputs(), model, WHOLE);
    }

    static Amount<Dimensionless> percent(Ratio fraction) {
        return Amount.percent(fraction.times(100));
    }

    private Phrase question() {
        return Phrase.of("question.made-share", subject.name());
    }

    private <V> V in(Reckoning<V> r) {
        V part = whole.relations()
                .weighted(
                        r, weights, line -> r.known(whole.additions().get(line).estimate()));
        return r.named(SHARE, subject, r.quotient(part, r.known(whole.total())));
    }

    private <V> V variance(Reckoning<V> r) {
        V share = in(r);
        V total = r.known(whole.total());
        MassRelations relations = whole.relations();
        V own = r.named(OWN_VARIANCE, subject, relations.covariance(r, weights, weights));
        V common = r.named(COVARIANCE, subject, relations.covariance(r, weights, Weights.TOTAL));
        V twice = r.product(r.literal(2), r.product(share, common));
        V square = r.product(r.product(share, share), r.known(whole.variance()));
        V sum = r.sum(r.difference(own, twice), square);
        return r.named(VARIANCE, subject, r.quotient(sum, r.product(total, total)));
    }

    private <V> V uncertainty(Reckoning<V> r) {
        return r.named(UNCERTAINTY, subject, r.root(variance(r)));
    }

    @Override
    public String toString() {
        Interval<Amount<Dimensionless>> bounds = bounds();
        return subject.name() + " "
                + NumberText.percent(
                        share().canonical(),
                        Bounds.closed(
                                bounds.least().canonical(), bounds.greatest().canonical()));
    }
}
