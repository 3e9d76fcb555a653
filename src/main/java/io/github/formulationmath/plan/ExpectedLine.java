package io.github.formulationmath.plan;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Line;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.MadeShare;
import java.util.Objects;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;

/**
 * One line of a formula as it will really have been made: the share that is most likely, the interval in which it is sure
 * to lie, and how uncertain it is.
 *
 * <p>Example: 25 % of 40 g on a display of 0.1 g, each line tared: 24.75 % to 25.25 %, at most 0.25 % of the whole or 1 %
 * of the line itself off.
 *
 * <p>Immutable and thread-safe.
 */
public final class ExpectedLine implements Line, Explained {

    private static final Symbol RELATIVE = Symbol.of("δ", "largest-relative-deviation", Kind.SHARE);

    private final PlannedLine planned;
    private final MadeMasses masses;
    /** Made when somebody first asks; it keeps the bounds that it was asked for. */
    private volatile @Nullable MadeShare made;

    ExpectedLine(PlannedLine planned, MadeMasses masses) {
        this.planned = planned;
        this.masses = masses;
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
        return masses.additions().get(index());
    }

    /**
     * The share as made.
     *
     * @return its estimate, extremes, variance and simulation, with their workings
     */
    public MadeShare made() {
        MadeShare known = made;
        if (known == null) {
            known = masses.madeShare(index());
            made = known;
        }
        return known;
    }

    /**
     * Where the share is sure to lie.
     *
     * @return lowest to highest, in percent
     */
    public Interval<Amount<Dimensionless>> bounds() {
        return made().bounds();
    }

    /**
     * The largest possible difference to the share in the formula, {@code Δ = max(φ_hi − w, w − φ_lo)}.
     *
     * @return Δ, in percent of the whole
     */
    public Amount<Dimensionless> deviation() {
        return Amount.percent(deviation(Reckoning.plain()).times(100))
                .withWorking(
                        line -> Phrase.of("question.largest-deviation", line.name()), this, ExpectedLine::deviation);
    }

    /** As {@link #deviation()}. */
    @Override
    public Origin origin() {
        return deviation().origin();
    }

    private <V> V deviation(Reckoning<V> r) {
        return largest().deviation(r);
    }

    private LargestDeviation largest() {
        return new LargestDeviation(line(), bounds());
    }

    /**
     * The largest possible difference to the share in the formula, against that share.
     *
     * @return Δ / w, in percent
     * @throws ArithmeticException if the formula has none of it
     */
    public Amount<Dimensionless> relativeDeviation() {
        return Amount.percent(relative(Reckoning.plain()).times(100))
                .withWorking(
                        line -> Phrase.of("question.largest-relative-deviation", line.name()),
                        this,
                        ExpectedLine::relative);
    }

    private <V> V relative(Reckoning<V> r) {
        return r.named(RELATIVE, this, r.quotient(r.known(deviation()), r.known(line())));
    }

    /**
     * Whether the line keeps its tolerance.
     *
     * @param tolerances how far each line may be off
     * @return the verdict, decided exactly; {@link #deviationAgainst} tells how
     */
    public ToleranceVerdict verdict(Tolerances tolerances) {
        return Objects.requireNonNull(tolerances, "tolerances").verdict(line(), bounds());
    }

    /**
     * {@link #deviation()} held against the tolerance of the line: its working has the comparisons that decide {@link
     * #verdict(Tolerances)}.
     *
     * @param tolerances how far each line may be off
     * @return Δ, in percent of the whole
     */
    public Amount<Dimensionless> deviationAgainst(Tolerances tolerances) {
        Trial trial = new Trial(largest(), Objects.requireNonNull(tolerances, "tolerances"));
        return deviation()
                .withWorking(asked -> Phrase.of("question.tolerance-verdict", asked.name()), trial, Trial::deviation);
    }

    /** A line and its tolerance. */
    private record Trial(LargestDeviation largest, Tolerances tolerances) {

        String name() {
            return largest.line().name();
        }

        <V> V deviation(Reckoning<V> r) {
            largest.decide(r, tolerances);
            return largest.deviation(r);
        }
    }

    @Override
    public String toString() {
        return made().toString();
    }
}
