package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.RootOperation;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.util.List;
import java.util.Objects;

/**
 * How far the mass of one addition may be from what was wanted: the rounding error, which is known, and the errors of
 * tare, reading and balance, of which only bounds and variances are known.
 *
 * <p>All numbers are grams, or grams squared. The result is the largest possible error against the exact target.
 *
 * <p>Example: 12.34 g wanted, 12.3 g on a display of 0.1 g. The rounding error is −0.04 g. Tare and reading hide up to
 * 0.05 g each, so the mass lies in [12.2 g, 12.4 g], at most 0.14 g from the target. Its variance is 2 · 0.1²/12 g².
 *
 * <p>Source: JCGM 100:2008 (GUM), F.2.2.1 (resolution of an indication) and 5.1.2 (independent terms add in squares).
 *
 * <p>Immutable and thread-safe.
 */
public final class AdditionError implements Explained {

    private static final Symbol LOWEST = Symbol.of("lo", "lowest-mass", Kind.MASS);
    private static final Symbol HIGHEST = Symbol.of("hi", "highest-mass", Kind.MASS);
    private static final Symbol ROUNDING = Symbol.of("ρ", "addition-rounding-error", Kind.MASS);
    private static final Symbol LARGEST = Symbol.of("η", "largest-addition-error", Kind.MASS);
    private static final Symbol ESTIMATE = Symbol.of("μ", "estimated-mass", Kind.MASS);
    private static final Symbol VARIANCE = Symbol.of("v", "mass-variance", Kind.MASS_SQUARED);
    private static final Symbol UNCERTAINTY = Symbol.of("u", "mass-uncertainty", Kind.MASS);

    private final MassRelations relations;
    private final int line;

    AdditionError(MassRelations relations, int line) {
        this.relations = relations;
        this.line = line;
    }

    /**
     * The error of one addition by itself. Weighed cumulatively, it is the first after the tare.
     *
     * @param addition the addition
     * @return its error
     */
    public static AdditionError of(Addition addition) {
        List<Addition> alone = List.of(Objects.requireNonNull(addition, "addition"));
        return new AdditionError(new MassRelations(alone, new CommonErrors(1, ErrorTerms.of(alone)), null), 0);
    }

    /**
     * The addition.
     *
     * @return target, reading, balance and method
     */
    public Addition addition() {
        return relations.additions().get(line);
    }

    /**
     * The rounding error: what is known to be too much.
     *
     * @return reading minus target in grams, negative if too little
     */
    public Explained roundingError() {
        return Derived.of(Phrase.of("question.addition-rounding-error", name()), this::rounding);
    }

    /**
     * The mass that is most likely there: the reading, corrected for what is known of residue and air, and not below 0. It
     * lies within the {@link #bounds()}.
     *
     * @return the estimate in grams
     */
    public Explained estimate() {
        return Derived.of(Phrase.of("question.estimated-mass", name()), this::estimate);
    }

    /**
     * The least mass that can be there.
     *
     * @return the lower end of {@link #bounds()}
     */
    public Explained lowest() {
        return Derived.of(Phrase.of("question.lowest-mass", name()), this::lowest);
    }

    /**
     * The most that can be there.
     *
     * @return the upper end of {@link #bounds()}
     */
    public Explained highest() {
        return Derived.of(Phrase.of("question.highest-mass", name()), this::highest);
    }

    /**
     * Where the mass is sure to lie. What has no bound, repeatability and calibration, is left out, or taken in with the
     * coverage factor of {@link MadeMasses#covering(CoverageFactor)}. A mass is not negative; the lower end is cut off
     * there.
     *
     * @return lowest to highest, in grams
     */
    public Bounds bounds() {
        return Bounds.closed(lowest().result(), highest().result());
    }

    /**
     * The variance of the mass.
     *
     * @return u² in g², exact
     */
    public Explained variance() {
        return Derived.of(Phrase.of("question.mass-variance", name()), this::variance);
    }

    /**
     * The standard uncertainty of the mass.
     *
     * @return the root of the variance in grams, to {@value RootOperation#DIGITS} digits
     */
    public Explained uncertainty() {
        return Derived.of(Phrase.of("question.mass-uncertainty", name()), this::uncertainty);
    }

    /**
     * The standard uncertainty of the mass as a {@code double}.
     *
     * @return u in grams
     */
    public double standardUncertainty() {
        return variance().result().sqrt(RootOperation.DIGITS).doubleValue();
    }

    /**
     * The expanded uncertainty of the mass.
     *
     * @param factor the coverage factor k
     * @return k · u in grams
     */
    public double expanded(CoverageFactor factor) {
        return Objects.requireNonNull(factor, "factor").factor().doubleValue() * standardUncertainty();
    }

    /**
     * The variance of the mass, source by source.
     *
     * @return the budget in g²
     */
    public ErrorBudget budget() {
        Weights one = new Weights.OneLine(line);
        return new ErrorBudget(relations.errors().bySource(one, one));
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.largest-addition-error", name());
    }

    /** The largest possible |mass − target| in grams. */
    @Override
    public Ratio result() {
        return derive(Reckoning.plain());
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        V target = r.known(addition().target());
        return r.named(
                LARGEST,
                subject(),
                r.maximum(List.of(r.difference(highest(r), target), r.difference(target, lowest(r)))));
    }

    private <V> V rounding(Reckoning<V> r) {
        return r.named(
                ROUNDING,
                subject(),
                r.difference(r.known(addition().reading()), r.known(addition().target())));
    }

    <V> V estimate(Reckoning<V> r) {
        return r.named(ESTIMATE, subject(), notNegative(r, relations.estimate(r, line)));
    }

    <V> V lowest(Reckoning<V> r) {
        V sum = relations.massAt(r, line, entry -> entry.factor().signum() < 0);
        return r.named(LOWEST, subject(), notNegative(r, sum));
    }

    <V> V highest(Reckoning<V> r) {
        V sum = relations.massAt(r, line, entry -> entry.factor().signum() > 0);
        return r.named(HIGHEST, subject(), notNegative(r, sum));
    }

    private static <V> V notNegative(Reckoning<V> r, V sum) {
        if (r.number(sum).signum() >= 0) {
            return sum;
        }
        r.note(() -> Phrase.of("note.mass-not-negative"));
        return r.maximum(List.of(sum, r.literal(0)));
    }

    private <V> V variance(Reckoning<V> r) {
        Weights one = new Weights.OneLine(line);
        return r.named(VARIANCE, subject(), relations.covariance(r, one, one));
    }

    private <V> V uncertainty(Reckoning<V> r) {
        return r.named(UNCERTAINTY, subject(), r.root(variance(r)));
    }

    private Subject subject() {
        return addition().subject();
    }

    private String name() {
        return subject().name();
    }

    @Override
    public String toString() {
        return addition() + ": " + bounds() + " g";
    }
}
