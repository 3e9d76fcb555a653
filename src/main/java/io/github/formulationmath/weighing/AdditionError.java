package io.github.formulationmath.weighing;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Operation;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Origin.Figure;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.simulation.CoverageFactor;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import javax.measure.quantity.Mass;

/**
 * How far the mass of one addition may be from what was wanted: the rounding error, which is known, and the errors of
 * tare, reading and balance, of which only bounds and variances are known.
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
    private final Ratio estimate;
    private final Ratio lowest;
    private final Ratio highest;

    AdditionError(MassRelations relations, int line) {
        this.relations = relations;
        this.line = line;
        this.estimate = estimate(Reckoning.plain());
        this.lowest = lowest(Reckoning.plain());
        this.highest = highest(Reckoning.plain());
    }

    /**
     * The error of one addition by itself. Weighed cumulatively, it is the first after the tare.
     *
     * @param addition the addition
     * @return its error
     */
    public static AdditionError of(Addition addition) {
        return new AdditionError(MassRelations.of(List.of(Objects.requireNonNull(addition, "addition"))), 0);
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
     * @return reading minus target, negative if too little
     */
    public Amount<Mass> roundingError() {
        return grams(e -> e.question("question.addition-rounding-error"), AdditionError::rounding);
    }

    /**
     * The mass that is most likely there: the reading, corrected for what is known of residue and air, and not below 0. It
     * lies within the {@link #bounds()}.
     *
     * @return the estimate
     */
    public Amount<Mass> estimate() {
        return Amount.grams(estimate)
                .withWorking(e -> e.question("question.estimated-mass"), this, AdditionError::estimate)
                .inUnitOf(addition().reading());
    }

    /**
     * Where the mass is sure to lie. What has no bound, repeatability and calibration, is left out, or taken in with the
     * coverage factor of {@link MadeMasses#covering(CoverageFactor)}. A mass is not negative; the lower end is cut off
     * there.
     *
     * @return the least and the most that can be there, each with its working
     */
    public Interval<Amount<Mass>> bounds() {
        return Interval.of(lowest(), highest());
    }

    Amount<Mass> lowest() {
        return Amount.grams(lowest)
                .withWorking(e -> e.question("question.lowest-mass"), this, AdditionError::lowest)
                .inUnitOf(addition().reading());
    }

    Amount<Mass> highest() {
        return Amount.grams(highest)
                .withWorking(e -> e.question("question.highest-mass"), this, AdditionError::highest)
                .inUnitOf(addition().reading());
    }

    /** The lower of the {@link #bounds()} as a bare number, in grams. */
    Ratio leastGrams() {
        return lowest;
    }

    /** The upper one. */
    Ratio mostGrams() {
        return highest;
    }

    /**
     * The largest possible error against the exact target.
     *
     * @return the largest possible |mass − target|
     */
    public Amount<Mass> largest() {
        return grams(e -> e.question("question.largest-addition-error"), AdditionError::largest);
    }

    /** The working of the {@link #largest() largest possible error}. */
    @Override
    public Origin origin() {
        return largest().origin();
    }

    /**
     * The standard uncertainty of the mass.
     *
     * @return the root of the variance, to {@value Operation.Root#DIGITS} digits
     */
    public Amount<Mass> uncertainty() {
        return grams(e -> e.question("question.mass-uncertainty"), AdditionError::uncertainty);
    }

    /**
     * The variance of the mass, for relations to build on.
     *
     * @return u² in g², exact
     */
    public Explained variance() {
        return Derived.of(e -> e.question("question.mass-variance"), this, AdditionError::variance);
    }

    /**
     * The variance of the mass, source by source.
     *
     * @return the budget, in the square of the unit of the reading
     */
    public ErrorBudget budget() {
        Weights one = Weights.line(line);
        Amount<Mass> reading = addition().reading();
        return new ErrorBudget(
                relations.bySource(one, one), Amount.grams(reading.unitSize()).inUnitOf(reading));
    }

    private Amount<Mass> grams(Function<AdditionError, Phrase> question, Figure<AdditionError> figure) {
        Ratio grams = figure.in(this, Reckoning.plain());
        return Amount.grams(grams)
                .withWorking(question, this, figure)
                .inUnitOf(addition().reading());
    }

    private Phrase question(String key) {
        return Phrase.of(key, subject().name());
    }

    private <V> V largest(Reckoning<V> r) {
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

    private <V> V estimate(Reckoning<V> r) {
        return r.named(ESTIMATE, subject(), notNegative(r, relations.estimate(r, line)));
    }

    private <V> V lowest(Reckoning<V> r) {
        V sum = relations.massAt(r, line, entry -> entry.factor().signum() < 0);
        return r.named(LOWEST, subject(), notNegative(r, sum));
    }

    private <V> V highest(Reckoning<V> r) {
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
        Weights one = Weights.line(line);
        return r.named(VARIANCE, subject(), relations.covariance(r, one, one));
    }

    private <V> V uncertainty(Reckoning<V> r) {
        return r.named(UNCERTAINTY, subject(), r.root(variance(r)));
    }

    private Subject subject() {
        return addition().subject();
    }

    /**
     * A standard deviation of the mass by what nothing bounds, repeatability and calibration, as if both always went the same way: on the safe
     * side.
     *
     * @return the deviation in the unit of the display
     */
    public Amount<Mass> unbounded() {
        ErrorModel errors = addition().balance().errors();
        return Amount.grams(errors.repeatability()
                        .canonical()
                        .plus(errors.calibration().times(addition().reading().canonical())))
                .inUnitOf(addition().balance().readability());
    }

    @Override
    public String toString() {
        Amount<Mass> least = lowest();
        return addition() + ": [" + NumberText.of(least.exactValue()) + ", "
                + NumberText.of(highest().exactValue()) + "] " + least.symbol();
    }
}
