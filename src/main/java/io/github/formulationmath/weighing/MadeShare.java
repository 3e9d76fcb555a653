package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Roots;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.RootOperation;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

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
 */
public final class MadeShare implements Explained {

    private static final Symbol SHARE = Symbol.of("φ", "made-share", Kind.SHARE);
    private static final Symbol OWN_VARIANCE = Symbol.of("vN", "part-variance", Kind.MASS_SQUARED);
    private static final Symbol COVARIANCE = Symbol.of("vNS", "part-total-covariance", Kind.MASS_SQUARED);
    private static final Symbol VARIANCE = Symbol.of("vφ", "share-variance", Kind.NUMBER);
    private static final Symbol UNCERTAINTY = Symbol.of("uφ", "share-uncertainty", Kind.SHARE);

    private final Whole whole;
    private final Weights weights;
    private final Subject subject;

    MadeShare(Whole whole, Weights weights, Subject subject) {
        this.whole = whole;
        this.weights = weights;
        this.subject = subject;
    }

    /**
     * Where the share is sure to lie: its true extremes over everything the bounded errors allow, and over what {@link
     * MadeMasses#covering(CoverageFactor)} adds.
     *
     * <p>Masses that share errors are not cut off at 0 one by one; if one of them could be negative, the interval may be
     * wider than the truth, never narrower, and it is cut off at the least and the largest strength (0 and 1 for a line).
     * If all the masses together could be 0, the interval is everything between those two.
     *
     * @return lowest to highest, as plain fractions
     */
    public Bounds bounds() {
        return Bounds.closed(lowest().result(), highest().result());
    }

    /**
     * The least that the share can be.
     *
     * @return the lower end of {@link #bounds()}
     */
    public Explained lowest() {
        return new ShareExtreme(whole, weights, subject, false);
    }

    /**
     * The most that the share can be.
     *
     * @return the upper end of {@link #bounds()}
     */
    public Explained highest() {
        return new ShareExtreme(whole, weights, subject, true);
    }

    /**
     * The variance of the share.
     *
     * @return u², a plain number, exact within the linear approximation of the GUM
     */
    public Explained variance() {
        return Derived.of(Phrase.of("question.share-variance", subject.name()), this::variance);
    }

    /**
     * The standard uncertainty of the share.
     *
     * @return the root of the variance, to {@value RootOperation#DIGITS} digits
     */
    public Explained uncertainty() {
        return Derived.of(Phrase.of("question.share-uncertainty", subject.name()), this::uncertainty);
    }

    /**
     * The standard uncertainty of the share as a {@code double}.
     *
     * @return u, a plain fraction
     */
    public double standardUncertainty() {
        return Roots.sqrt(variance().result(), RootOperation.DIGITS).doubleValue();
    }

    /**
     * The expanded uncertainty of the share.
     *
     * @param factor the coverage factor k
     * @return k · u, a plain fraction
     */
    public double expanded(CoverageFactor factor) {
        return Objects.requireNonNull(factor, "factor").factor().doubleValue() * standardUncertainty();
    }

    /**
     * The variance of the share, source by source.
     *
     * @return the budget, in plain numbers
     */
    public ErrorBudget budget() {
        CommonErrors errors = whole.relations().errors();
        Ratio share = result();
        Ratio total = whole.total().result();
        Map<ErrorSource, Ratio> sum = new EnumMap<>(ErrorSource.class);
        add(sum, errors.bySource(weights, weights), Ratio.ONE);
        add(sum, errors.bySource(weights, Weights.TOTAL), share.times(-2));
        add(sum, whole.variances(), share.times(share));
        sum.values().removeIf(Ratio::isZero);
        sum.replaceAll((source, variance) -> variance.dividedBy(total.times(total)));
        return new ErrorBudget(sum);
    }

    private static void add(Map<ErrorSource, Ratio> sum, Map<ErrorSource, Ratio> parts, Ratio factor) {
        parts.forEach((source, part) -> sum.merge(source, part.times(factor), Ratio::plus));
    }

    /**
     * The same share by drawing all its errors from their laws, to hold against {@link #standardUncertainty()}. Masses are
     * not cut off at 0.
     *
     * @return the simulation, to be run
     * @throws IllegalArgumentException if there is no error to draw
     */
    public MonteCarlo simulation() {
        ShareModel model = new ShareModel(whole, weights);
        return MonteCarlo.of(model.inputs(), model);
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.made-share", subject.name());
    }

    /** The share, every error at its middle: a plain fraction. */
    @Override
    public Ratio result() {
        return derive(Reckoning.plain());
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        V part = whole.weighted(r, weights, i -> r.known(whole.estimate(i)));
        return r.named(SHARE, subject, r.quotient(part, r.known(whole.total())));
    }

    private <V> V variance(Reckoning<V> r) {
        V share = derive(r);
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
        return subject.name() + " " + NumberText.percent(result(), bounds());
    }
}
