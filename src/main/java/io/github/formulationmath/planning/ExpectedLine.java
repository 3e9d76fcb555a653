package io.github.formulationmath.planning;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Line;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.CoverageFactor;
import io.github.formulationmath.weighing.ErrorBudget;
import io.github.formulationmath.weighing.MadeShare;
import io.github.formulationmath.working.Comparison;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Symbol;
import io.github.formulationmath.working.Working;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Dimensionless;

/**
 * One line of a formula as it will really have been made: the share that is most likely, the interval in which it is sure
 * to lie, and how uncertain it is.
 *
 * <p>The result is the largest possible difference to the share in the formula, {@code Δ = max(φhi − w, w − φlo)}.
 *
 * <p>Example: 25 % of 40 g on a display of 0.1 g, each line tared: 24.75 % to 25.25 %, at most 0.25 % of the whole or 1 %
 * of the line itself off.
 *
 * <p>Immutable and thread-safe.
 */
public final class ExpectedLine implements Line, Explained {

    private static final Symbol DEVIATION = Symbol.of("Δ", "largest-deviation", Kind.SHARE);
    private static final Symbol RELATIVE = Symbol.of("δ", "largest-relative-deviation", Kind.SHARE);
    private static final Symbol ALLOWED = Symbol.of("Δmax", "allowed-deviation", Kind.SHARE);

    private final PlannedLine planned;
    private final AdditionError addition;
    private final MadeShare made;
    private final Amount<Dimensionless> lowest;
    private final Amount<Dimensionless> highest;
    private final Ratio deviation;

    ExpectedLine(PlannedLine planned, AdditionError addition, MadeShare made) {
        this.planned = planned;
        this.addition = addition;
        this.made = made;
        Interval<Amount<Dimensionless>> bounds = made.bounds();
        this.lowest = bounds.least();
        this.highest = bounds.greatest();
        this.deviation = derive(Reckoning.plain());
    }

    @Override
    public FormulaLine line() {
        return planned.line();
    }

    /**
     * The line as it is planned.
     *
     * @return exact mass and reading
     */
    public PlannedLine planned() {
        return planned;
    }

    /**
     * The error of the mass.
     *
     * @return bounds and variance of the mass itself
     */
    public AdditionError addition() {
        return addition;
    }

    /**
     * The share as made.
     *
     * @return its estimate, extremes, variance and simulation, with their workings
     */
    public MadeShare made() {
        return made;
    }

    /**
     * Where the share is sure to lie.
     *
     * @return lowest to highest, as plain fractions
     */
    public Bounds bounds() {
        return Bounds.closed(lowest.canonical(), highest.canonical());
    }

    /**
     * The standard uncertainty of the share.
     *
     * @return u, a plain fraction
     */
    public double standardUncertainty() {
        return made.uncertainty().canonical().doubleValue();
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
     * @return the budget
     */
    public ErrorBudget budget() {
        return made.budget();
    }

    /**
     * The largest possible difference to the share in the formula, against that share.
     *
     * @return Δ / w
     * @throws ArithmeticException if the formula has none of it
     */
    public Explained relativeDeviation() {
        return new RelativeDeviation();
    }

    /**
     * Whether the line keeps its tolerance.
     *
     * @param tolerances how far each line may be off
     * @return the verdict, decided exactly
     */
    public ToleranceVerdict verdict(Tolerances tolerances) {
        return decide(Reckoning.plain(), Objects.requireNonNull(tolerances, "tolerances"));
    }

    /**
     * How {@link #verdict(Tolerances)} comes about.
     *
     * @param tolerances how far each line may be off
     * @return the working, with the comparisons that decide
     */
    public Working verdictWorking(Tolerances tolerances) {
        Objects.requireNonNull(tolerances, "tolerances");
        return Working.of(Phrase.of("question.tolerance-verdict", name()), deviation, r -> {
            decide(r, tolerances);
            return derive(r);
        });
    }

    private <V> ToleranceVerdict decide(Reckoning<V> r, Tolerances tolerances) {
        V share = r.known(line());
        V tolerance = tolerances.value(r, line());
        V allowed = r.named(ALLOWED, this, r.product(tolerance, share));
        if (r.holds(derive(r), Comparison.AT_MOST, allowed)) {
            return ToleranceVerdict.WITHIN;
        }
        boolean outside = r.holds(r.known(lowest), Comparison.GREATER, r.sum(share, allowed))
                || r.holds(r.known(highest), Comparison.LESS, r.difference(share, allowed));
        return outside ? ToleranceVerdict.OUTSIDE : ToleranceVerdict.NOT_SHOWN_WITHIN;
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.largest-deviation", name());
    }

    /** The largest possible |made share − share in the formula|, a plain fraction. */
    @Override
    public Ratio result() {
        return deviation;
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        V share = r.known(planned.target().line());
        V above = r.difference(r.known(highest), share);
        V below = r.difference(share, r.known(lowest));
        return r.named(DEVIATION, this, r.maximum(List.of(above, below)));
    }

    @Override
    public String toString() {
        return made.toString();
    }

    /** Δ / w. */
    private final class RelativeDeviation implements Explained {

        private final Ratio value = derive(Reckoning.plain());

        @Override
        public Phrase question() {
            return Phrase.of("question.largest-relative-deviation", name());
        }

        @Override
        public Ratio result() {
            return value;
        }

        @Override
        public <V> V derive(Reckoning<V> r) {
            V share = r.known(planned.target().line());
            return r.named(RELATIVE, ExpectedLine.this, r.quotient(r.known(ExpectedLine.this), share));
        }

        @Override
        public String toString() {
            return value.toString();
        }
    }
}
