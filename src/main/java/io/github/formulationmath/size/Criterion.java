package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.weighing.MinimumWeight;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * What makes a batch large enough for a balance. Several rules are in use under the one name "minimum batch"; they
 * disagree, so each has its own name here. Lines have shares w, the balance steps of d, the batch a mass M; x = w·M/d is a
 * line in divisions, n what the display shows.
 *
 * <table>
 * <caption>The criteria</caption>
 * <tr><th>name</th><th>a batch passes if, for every line,</th><th>passing sizes</th></tr>
 * <tr><td>{@link #oneDivision}</td><td>w·M ≥ d</td><td>all from one size on</td></tr>
 * <tr><td>{@link #errorBound}</td><td>the worst error of the addition ≤ τ·w·M</td><td>all from one size on</td></tr>
 * <tr><td>{@link #roundingWithin}</td><td>|n − x| ≤ τ·x</td><td>islands, then all from one size on</td></tr>
 * <tr><td>{@link #madeWithin}</td><td>M = N·d, and some whole n that add up to N have |n/N − w| ≤ τ·w</td><td>certain
 * N, then all from some N on</td></tr>
 * <tr><td>{@link #exactReadings}</td><td>x is whole</td><td>the multiples of one size</td></tr>
 * <tr><td>{@link #leastNetMass}, {@link #minimumWeight()}</td><td>w·M ≥ the least net mass</td><td>all from one size on</td></tr>
 * <tr><td>{@link #capKept}</td><td>(for a substance) its guaranteed share ≤ its cap</td><td>all from one size on, or
 * none</td></tr>
 * </table>
 *
 * <p>{@link #limitKept} is {@link #capKept} for what a limit counts; {@link #sumKept} is the same for any weighted sum.
 *
 * <p>Two questions are easily mixed. <em>From which size on is every batch safe?</em> is answered before any rounding is
 * known, by bounds that hold whatever the targets round to: {@link #errorBound}, {@link #leastNetMass}, {@link #capKept}; for
 * rounding alone by {@link Sizes#allFrom()}. <em>Which is the smallest size that passes as it happens to round?</em> is
 * not monotone, a larger size may fail: {@link #roundingWithin}, {@link #madeWithin} and {@link #exactReadings} answer it.
 * Under the whole error of an addition only the first question is answered here; a smaller size whose targets happen to
 * round well may pass too, and {@link ExpectedProduct} says of a plan whether it does.
 *
 * <p>A criterion of your own is a record that implements {@link #on}: {@link Sizes#from} takes the relation that gives a
 * line's least size and proves it, {@link Sizes#and} adds what another criterion asks. Its name is a {@link
 * io.github.formulationmath.reckoning.Phrase} of the wording. Equal criteria ask the same; those here are records, immutable
 * and thread-safe, and what they give is.
 */
public interface Criterion {

    /**
     * The sizes at which the criterion holds.
     *
     * @param formula the formula
     * @param bench where it is weighed
     * @return the sizes, each with its proof; none, with the reason, if it holds at no size
     * @throws IllegalArgumentException if the criterion names something that the formula does not have
     */
    Sizes on(Formula formula, Bench bench);

    /**
     * The same bench with the closure under which a plan shows the readings that the criterion speaks of: for {@link
     * #madeWithin(Tolerances)} those of its own tolerances, for {@link #roundingWithin} each line by itself.
     *
     * @param bench where it is weighed
     * @return the bench; empty if the criterion does not look at readings, and any closure will do
     */
    default Optional<Bench> showing(Bench bench) {
        Objects.requireNonNull(bench, "bench");
        return Optional.empty();
    }

    /**
     * The sizes at which one line by itself meets the criterion on a bench. Where a criterion holds if it holds for every line,
     * whatever the others do, lines may be weighed on several balances, each judged on its own.
     *
     * @param line the line, of the formula, with a share above 0
     * @param formula the formula
     * @param bench where this line is weighed
     * @param method how this line is weighed, in place of what the criterion says of all
     * @return the sizes of the batch; empty if the criterion looks at lines together, as that of a cap or of a total does
     * @throws IllegalArgumentException if the criterion names something that the formula does not have
     */
    default Optional<Sizes> forLine(FormulaLine line, Formula formula, Bench bench, WeighingMethod method) {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(bench, "bench");
        Objects.requireNonNull(method, "method");
        return Optional.empty();
    }

    /**
     * Every line is at least one division: {@code M ≥ d / min w}. Common practice at the bench, no published source; it
     * bounds no error but that of losing a line altogether.
     *
     * <p>Example: 0.5 % on a display of 1 g needs 200 g; on one of 0.1 g, 20 g.
     *
     * @return the criterion
     */
    static Criterion oneDivision() {
        return new LeastLine.OneDivision();
    }

    /**
     * The worst error of every addition, against its exact target, is within tolerance: rounding the target to the display,
     * tare, reading, linearity, and from a boat what stays behind. Known before any size is chosen, so it is the size from
     * which on every batch is safe, not the smallest that passes with the rounding it happens to have. Repeatability has no bound and is left out. Lines are rounded each by itself ({@link
     * Closure#INDEPENDENT}); a {@link BatchWindow} counts what the closure of its bench may move a line by instead: a whole
     * division, or more for a line that takes a rest.
     *
     * <p>Example: on a display of 0.1 g of which nothing else is known the worst error is 0.05 + 0.05 + 0.05 = 0.15 g; a
     * line of 0.5 % within 5 % needs 0.15 / (0.05 · 0.005) = 600 g.
     *
     * @param tolerances how far each line may be off
     * @param method how it is weighed
     * @return the criterion
     */
    static Criterion errorBound(Tolerances tolerances, WeighingMethod method) {
        return new ErrorBound(
                Objects.requireNonNull(tolerances, "tolerances"), Objects.requireNonNull(method, "method"), Ratio.ZERO);
    }

    /**
     * As {@link #errorBound(Tolerances, WeighingMethod)}, with k times the repeatability of the balance taken in.
     *
     * @param tolerances how far each line may be off
     * @param method how it is weighed
     * @param coverage the coverage factor k
     * @return the criterion
     */
    static Criterion errorBound(Tolerances tolerances, WeighingMethod method, CoverageFactor coverage) {
        return new ErrorBound(
                Objects.requireNonNull(tolerances, "tolerances"),
                Objects.requireNonNull(method, "method"),
                Objects.requireNonNull(coverage, "coverage").factor());
    }

    /**
     * No line is below the least net mass that the balance weighs well enough, by a standard of balances or the balance's
     * own minimum load: the minimum weighable quantity of pharmacy, for example ({@link MinimumWeight#bySensitivity}).
     *
     * <p>Example: a display of 0.01 g that weighs from 8.2 g on (820 d); a line of 0.5 % then needs a batch of 1640 g.
     *
     * @param least the least net mass, above 0
     * @return the criterion
     * @throws IllegalArgumentException if the mass is not above 0
     */
    static Criterion leastNetMass(Amount<Mass> least) {
        return new LeastLine.LeastNetMass(Amount.requirePositive("least", least));
    }

    /**
     * As {@link #leastNetMass}, by the pharmacopoeial rule for whatever balance is asked about: {@code 2·s ≤ 0.10 %} of the
     * line, with s at least 0.41 d; see {@link MinimumWeight#pharmacopoeial}.
     *
     * @return the criterion
     */
    static Criterion minimumWeight() {
        return minimumWeight(MassFraction.parse("0.1 %"), CoverageFactor.of(2));
    }

    /**
     * The structure of the pharmacopoeial rule with another tolerance: {@code k·s ≤ τ} of the line, with s at least 0.41 d.
     *
     * @param tolerance the permitted relative error τ, above 0
     * @param factor the coverage factor k
     * @return the criterion
     * @throws IllegalArgumentException if the tolerance is 0
     */
    static Criterion minimumWeight(MassFraction tolerance, CoverageFactor factor) {
        if (Objects.requireNonNull(tolerance, "tolerance").equals(MassFraction.ZERO)) {
            throw new IllegalArgumentException("tolerance is " + Excerpt.of(tolerance) + ": it must be above 0");
        }
        return new LeastLine.RepeatabilityMinimum(tolerance.fraction(), Objects.requireNonNull(factor, "factor"));
    }

    /**
     * A substance stays at or below its cap in what is really made, whatever the worst errors of all additions do. The cap
     * is a share of the substance itself in the whole; for one stated otherwise (as acid, say, or of a group or a phase) there
     * is {@link #limitKept}. If the target
     * equals the cap no batch keeps it; {@link CapTarget} then gives the largest target that a batch can keep. Errors are as
     * for {@link #errorBound(Tolerances, WeighingMethod)}; those that cumulative weighing makes neighbours share are not set
     * off against each other, so that the batch may be larger than need be there, never too small.
     *
     * <p>The size is sufficient before anything is read: it and every larger one keep the cap, however the targets round and
     * whatever the balance does. A smaller batch may keep it too. Whether one plan does, with the readings it has, is
     * another question, put to {@code LimitChecker} with an {@link ExpectedProduct}; a plan below the size may
     * well be within there, because its own readings happen to round down.
     *
     * @param substance the substance, through all lines that contain it
     * @param cap the largest share permitted
     * @param method how it is weighed
     * @return the criterion
     */
    static Criterion capKept(Substance substance, MassFraction cap, WeighingMethod method) {
        return CapKept.of(substance, cap, method);
    }

    /**
     * A limit is kept in what is really made, whatever the worst errors of all additions do: as {@link #capKept}, with what
     * the limit counts, on its basis, sums and conversions included, and as a share of the phase if it is of one. A lowest
     * effective share is kept from below; limits that are declared above are treated like highest shares.
     *
     * <p>Example: a preservative at 0.9 % under a cap of 1 %, in three lines on a display of 0.1 g, E = 0.15 g: H = 0.99 ·
     * 0.15 + 2 · 0.01 · 0.15 = 0.1515 g, G = 0.1 %, M = H/G = 151.5 g.
     *
     * <p>It defers to the law in force and a qualified safety assessor, as every verdict does.
     *
     * @param verdict a verdict on the formula, as written or as weighed; the criterion can be asked about that formula only
     * @param method how it is weighed
     * @return the criterion
     * @throws IllegalArgumentException if the verdict could not be assessed
     */
    static Criterion limitKept(Verdict verdict, WeighingMethod method) {
        return CapKept.of(verdict, method);
    }

    /**
     * A weighted sum of what is weighed stays at or above 0, whatever the worst errors of all additions do. As for {@link
     * #capKept} the size is known before anything is read: it and every larger one pass, a smaller one may as well. On a balance
     * that has a repeatability no size passes, for that has no bound: see {@link #sumKept(KeptSum, WeighingMethod, CoverageFactor)}.
     *
     * @param sum what has to be kept
     * @param method how it is weighed
     * @return the criterion
     */
    static Criterion sumKept(KeptSum sum, WeighingMethod method) {
        return new SumKept(Objects.requireNonNull(sum, "sum"), Objects.requireNonNull(method, "method"), Ratio.ZERO);
    }

    /**
     * As {@link #sumKept(KeptSum, WeighingMethod)}, with k times the repeatability of the balance taken in; then it holds within that
     * coverage and not for certain.
     *
     * @param sum what has to be kept
     * @param method how it is weighed
     * @param coverage the coverage factor k
     * @return the criterion
     */
    static Criterion sumKept(KeptSum sum, WeighingMethod method, CoverageFactor coverage) {
        return new SumKept(
                Objects.requireNonNull(sum, "sum"),
                Objects.requireNonNull(method, "method"),
                Objects.requireNonNull(coverage, "coverage").factor());
    }

    /**
     * Rounding to the display, each line alone, stays within tolerance: {@code |n − x| ≤ τ·x}. Nothing but rounding is
     * counted. A larger batch is not always better: between the islands of passing sizes there are failing ones.
     *
     * @param tolerances how far each line may be off
     * @return the criterion
     */
    static Criterion roundingWithin(Tolerances tolerances) {
        return new RoundingWithin(Objects.requireNonNull(tolerances, "tolerances"));
    }

    /**
     * The product as made stays within tolerance, its readings adding up: there are whole n, together N, with {@code |n/N
     * − w| ≤ τ·w} for every line. The readings are taken as true. {@link MinimumBatch.Found#plan()}, {@link BatchWindow.Feasible#plan} and
     * any plan on the bench that {@link #showing} gives show such readings; the closures {@link Closure#INDEPENDENT} and
     * {@link Closure#CLOSED} may not.
     *
     * @param tolerances how far each share may be off
     * @return the criterion
     */
    static Criterion madeWithin(Tolerances tolerances) {
        return madeWithin(tolerances, Amount.grams(Ratio.ZERO));
    }

    /**
     * As {@link #madeWithin(Tolerances)}, when what lies in the vessel may differ from each reading by up to e: every line
     * stays within tolerance even if it is off by e one way and all others by e the other way.
     *
     * @param tolerances how far each share may be off
     * @param readingError e, the half-width of the error of one addition, at least 0
     * @return the criterion
     * @throws IllegalArgumentException if the reading error is negative
     */
    static Criterion madeWithin(Tolerances tolerances, Amount<Mass> readingError) {
        Objects.requireNonNull(tolerances, "tolerances");
        return new MadeWithin(tolerances, Amount.requireNotNegative("readingError", readingError));
    }

    /**
     * Every line is a whole number of divisions, so that nothing is rounded: M is a multiple of d·L, L the least common
     * multiple of all 1/w.
     *
     * @return the criterion
     */
    static Criterion exactReadings() {
        return new ExactReadings();
    }

    /**
     * Something that has to hold of the masses m_j that are weighed: {@code Σ a_j·m_j ≥ 0}. Being linear and homogeneous it is about what
     * a batch is made of, and {@link Criterion#sumKept} finds the size from which on no error of the balance breaks it.
     *
     * <p>Example: an acid has to be neutralised, 1 g of it by 0.4 g of a base: a = 1 for the base, −0.4 for the acid, 0 for the rest.
     *
     * <p>Implementations are immutable, with {@code equals} and {@code hashCode} by value, best as records.
     */
    interface KeptSum {

        /**
         * What is asked.
         *
         * @return it in words, a phrase of the wording
         */
        Phrase asked();

        /**
         * Why no batch keeps it, however large, where the exact targets leave it no room.
         *
         * @return the reason, and what would change it
         */
        Phrase obstacle();

        /**
         * What each gram of a line counts for.
         *
         * @param <V> what a value is
         * @param r the arithmetic to use
         * @param line the line
         * @return a_j, the same number whenever it is asked for; negative if the line makes it worse
         * @throws IllegalArgumentException if the line is of another formula than the sum is about
         */
        <V> V coefficient(Reckoning<V> r, FormulaLine line);
    }
}
