package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.simulation.CoverageFactor;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Several additions together, with everything their errors have in common: where each mass and each share of the whole is
 * sure to lie, and how uncertain it is. Lines are counted from 0; which formula they are of, {@link Weighed} tells.
 *
 * <p>What the errors have in common depends on the method. Weighed cumulatively, one reading ends one addition and begins
 * the next, so that neighbours are anti-correlated and the errors in between cancel from the total. The scale of a
 * balance is common to all that is weighed on it, and cancels from the shares. See {@link WeighingMethod}.
 *
 * <p>Example: 10.0 g and 30.0 g, each tared, on a display of 0.1 g, lie within 0.1 g. The share of the first is at most
 * 10.1/(10.1 + 29.9) = 25.25 % and at least 9.9/(9.9 + 30.1) = 24.75 %.
 *
 * <p>Immutable and thread-safe.
 */
public final class MadeMasses {

    private static final Symbol TOTAL = Symbol.of("S", "made-total", Kind.MASS);
    private static final Symbol VARIANCE = Symbol.of("v_S", "total-variance", Kind.MASS_SQUARED);

    private final MassRelations relations;
    private final List<AdditionError> additions;
    private final MassBox box;
    private final Amount<Mass> total;

    /** Added up when somebody first asks how uncertain the whole is; bounds alone need none of it. */
    private volatile @Nullable Uncertainty uncertainty;

    private record Uncertainty(Map<ErrorSource, Ratio> bySource, Derived variance) {}

    private MadeMasses(MassRelations relations) {
        this.relations = relations;
        List<AdditionError> errors = new ArrayList<>(relations.additions().size());
        for (int line = 0; line < relations.additions().size(); line++) {
            errors.add(new AdditionError(relations, line));
        }
        this.additions = List.copyOf(errors);
        this.box = new MassBox(relations, additions);
        Ratio grams = total(Reckoning.plain());
        this.total = Amount.grams(grams)
                .withWorking(whole -> Phrase.of("question.made-total"), this, MadeMasses::total)
                .inUnitOf(relations.additions().get(0).reading());
        if (grams.signum() <= 0) {
            throw new IllegalArgumentException("additions are " + Excerpt.of(relations.additions())
                    + ": after what stays behind in boats " + Excerpt.of(total)
                    + " are left, no whole to take shares of; is the residue in the right unit?");
        }
    }

    /**
     * Additions in the order in which they are made.
     *
     * @param additions the additions, at least one; balances of different figures need different names
     * @return the masses together
     * @throws IllegalArgumentException if there is no addition, if all readings are 0 or less than what stays behind, or
     *     if two balances that differ have the same name
     */
    public static MadeMasses of(List<Addition> additions) {
        List<Addition> copy = List.copyOf(Objects.requireNonNull(additions, "additions"));
        requireSomething(copy);
        requireNames(copy);
        return new MadeMasses(MassRelations.of(copy));
    }

    private static void requireSomething(List<Addition> additions) {
        for (Addition addition : additions) {
            if (!addition.reading().isZero()) {
                return;
            }
        }
        throw new IllegalArgumentException("additions are " + Excerpt.of(additions)
                + ": no display reads anything, so that there is no whole to take shares of");
    }

    @SuppressWarnings("ReferenceEquality") // The same object is the common case; others meet in the set.
    private static void requireNames(List<Addition> additions) {
        // One and the same balance, as most sequences use, need not be compared with itself.
        Map<Balance, Balance> used = new IdentityHashMap<>();
        additions.forEach(addition -> used.put(addition.balance(), addition.balance()));
        if (used.size() > 1) {
            requireNames(additions.stream().map(Addition::balance).toList());
        }
    }

    /**
     * Refuses balances that differ and have the same name, for their figures could not be told apart.
     *
     * @param all the balances that are used together
     * @throws IllegalArgumentException if two that differ have the same name
     */
    public static void requireNames(Collection<Balance> all) {
        Set<Balance> balances = new HashSet<>();
        Set<String> names = new HashSet<>();
        for (Balance balance : all) {
            if (balances.add(balance) && !names.add(balance.name())) {
                throw new IllegalArgumentException(
                        "two different balances are both called \"" + Excerpt.of(balance.name())
                                + "\": name them with Balance.named, so that their figures can be told apart");
            }
        }
    }

    /**
     * The same masses with their unbounded errors, repeatability and calibration, taken into the bounds: each as far as k
     * times its standard deviation. What was guaranteed then holds with the coverage that k has for each of them.
     *
     * @param factor the coverage factor k
     * @return the masses with wider bounds; variances do not change
     */
    public MadeMasses covering(CoverageFactor factor) {
        return new MadeMasses(relations.covering(Objects.requireNonNull(factor, "factor")));
    }

    /**
     * The coverage factor that unbounded errors were taken into the bounds with.
     *
     * @return the factor; empty if {@link #covering} was not asked for
     */
    public Optional<CoverageFactor> coverage() {
        return relations.coverage();
    }

    /**
     * Whether an error without a bound, repeatability or a calibration's uncertainty, stays outside the bounds, so that what is
     * said of them is not the whole of what may happen.
     *
     * @return true if there is one and {@link #covering} was not asked for
     */
    public boolean leavesErrorsOut() {
        return relations.leavesErrorsOut();
    }

    /**
     * Some of the masses by themselves, for example those of one phase, so that shares are shares of them alone. Their
     * errors stay what they are in the whole sequence: a line weighed on top of another that is not named here still begins
     * at the reading of that one. Bounds cover the same factor.
     *
     * @param lines the lines, from 0, each once
     * @return the masses of these lines, counted from 0 again
     * @throws IndexOutOfBoundsException if there is no such line
     * @throws IllegalArgumentException if no line is named, a line is named twice, or all their readings are 0
     */
    public MadeMasses part(List<Integer> lines) {
        List<Integer> copy = List.copyOf(Objects.requireNonNull(lines, "lines"));
        if (new HashSet<>(copy).size() < copy.size()) {
            throw new IllegalArgumentException("lines are " + Excerpt.of(copy) + ": name each line once");
        }
        copy.forEach(line -> Objects.checkIndex(line, size()));
        MassRelations part = relations.part(copy);
        requireSomething(part.additions());
        return new MadeMasses(part);
    }

    /**
     * How many additions there are.
     *
     * @return at least 1
     */
    public int size() {
        return additions.size();
    }

    /**
     * The errors of the masses, line by line, each as it is in this sequence.
     *
     * @return an unmodifiable list
     */
    public List<AdditionError> additions() {
        return additions;
    }

    /**
     * The covariance of two weighted sums of the masses against the square of the whole, Σ Σ a_i·b_j·cov(m_i, m_j) / S².
     *
     * @param weights the weights a by line, from 0; lines that are not in it have none
     * @param others the weights b, likewise; the same ones for the variance of the sum
     * @return the relative covariance, exact
     * @throws IndexOutOfBoundsException if there is no such line
     */
    public Ratio relativeCovariance(Map<Integer, Ratio> weights, Map<Integer, Ratio> others) {
        Ratio covariance = relations.bySource(perLine("weights", weights), perLine("others", others)).values().stream()
                .reduce(Ratio.ZERO, Ratio::plus);
        return covariance.dividedBy(total.canonical().times(total.canonical()));
    }

    private Weights perLine(String name, Map<Integer, Ratio> weights) {
        for (Map.Entry<Integer, Ratio> each :
                Objects.requireNonNull(weights, name).entrySet()) {
            Objects.checkIndex(each.getKey(), size());
            Objects.requireNonNull(each.getValue(), name);
        }
        return Weights.strengths(weights);
    }

    /**
     * Where a weighted sum of the masses is sure to lie, Σ c·m, with everything their errors have in common.
     *
     * @param weights the weights c by line, from 0, of either sign; lines that are not in it have none
     * @return the least and the greatest sum, each with its working
     * @throws IndexOutOfBoundsException if there is no such line
     */
    public Interval<Amount<Mass>> sum(Map<Integer, Ratio> weights) {
        Weights wanted = perLine("weights", weights);
        return Interval.of(new SumExtreme(this, wanted, false).sum(), new SumExtreme(this, wanted, true).sum());
    }

    /**
     * The least that a weighted sum of the masses may be, the lower end of {@link #sum}.
     *
     * @param weights the weights c by line, from 0, of either sign; lines that are not in it have none
     * @return the least sum, with its working
     * @throws IndexOutOfBoundsException if there is no such line
     */
    public Amount<Mass> leastSum(Map<Integer, Ratio> weights) {
        return new SumExtreme(this, perLine("weights", weights), false).sum();
    }

    /**
     * The most that a weighted sum of the masses may be, the upper end of {@link #sum}.
     *
     * @param weights the weights c by line, from 0, of either sign; lines that are not in it have none
     * @return the greatest sum, with its working
     * @throws IndexOutOfBoundsException if there is no such line
     */
    public Amount<Mass> greatestSum(Map<Integer, Ratio> weights) {
        return new SumExtreme(this, perLine("weights", weights), true).sum();
    }

    /**
     * Whether an error enters more than one of the masses, as the reading between two of them does. If none does, the masses are at
     * their ends independently of each other.
     *
     * @return true if some masses have an error in common
     */
    public boolean shareErrors() {
        return box.sharesAnything();
    }

    /**
     * Where the quotient of two weighted sums of the masses is sure to lie. If no error enters both sums, their ends are independent and
     * the quotient of ends is the end of the quotient. Else it is searched for as Dinkelbach does: while a corner has more of
     * upper − t · lower than 0, its quotient is larger than t, and there are finitely many corners.
     *
     * @param upper the weights of the dividend by line, from 0
     * @param lower the weights of the divisor
     * @return the least and the greatest quotient
     * @throws IndexOutOfBoundsException if there is no such line
     * @throws IllegalArgumentException if the divisor is not above 0 whatever the masses are
     */
    public Interval<Ratio> quotient(Map<Integer, Ratio> upper, Map<Integer, Ratio> lower) {
        Weights divisor = perLine("lower", lower);
        SumExtreme least = new SumExtreme(this, divisor, false);
        if (least.value().signum() <= 0) {
            throw new IllegalArgumentException("the sum to divide by may be " + Excerpt.of(least.value())
                    + " g: it must be above 0 whatever the masses are");
        }
        Weights dividend = perLine("upper", upper);
        SumExtreme low = new SumExtreme(this, dividend, false);
        SumExtreme high = new SumExtreme(this, dividend, true);
        if (least.sharesNothingWith(high)) {
            Ratio most = new SumExtreme(this, divisor, true).value();
            return Interval.of(
                    low.value().dividedBy(low.value().signum() >= 0 ? most : least.value()),
                    high.value().dividedBy(high.value().signum() >= 0 ? least.value() : most));
        }
        return Interval.of(
                quotient(upper, lower, low, dividend, divisor, false),
                quotient(upper, lower, high, dividend, divisor, true));
    }

    private Ratio quotient(
            Map<Integer, Ratio> upper,
            Map<Integer, Ratio> lower,
            SumExtreme start,
            Weights dividend,
            Weights divisor,
            boolean largest) {
        Ratio t = start.value().dividedBy(start.at(divisor));
        while (true) {
            SumExtreme next = new SumExtreme(this, Weights.strengths(less(upper, lower, t)), largest);
            if (next.value().signum() * (largest ? 1 : -1) <= 0) {
                return t;
            }
            t = next.at(dividend).dividedBy(next.at(divisor));
        }
    }

    private static Map<Integer, Ratio> less(Map<Integer, Ratio> upper, Map<Integer, Ratio> lower, Ratio t) {
        Map<Integer, Ratio> difference = new HashMap<>(upper);
        lower.forEach((line, weight) -> difference.merge(line, weight.times(t).unaryMinus(), Ratio::plus));
        return difference;
    }

    /**
     * A share of the whole, with its bounds, its uncertainty and their workings.
     *
     * @param line the line, from 0
     * @return the share of the line
     */
    public MadeShare madeShare(int line) {
        Subject subject =
                additions.get(Objects.checkIndex(line, size())).addition().subject();
        return new MadeShare(this, Weights.line(line), subject);
    }

    /**
     * The share in the whole of something that some of the lines contain in different strengths, y = Σ c·m / Σ m. It costs
     * as much as these lines, however many there are in all.
     *
     * @param subject what it is; its subscript is the index of the symbols in a working
     * @param strengths the mass fraction c in the lines that contain it, by line, from 0
     * @return the share
     * @throws IndexOutOfBoundsException if there is no such line
     */
    public MadeShare madeShare(Subject subject, Map<Integer, Ratio> strengths) {
        Objects.requireNonNull(subject, "subject");
        return new MadeShare(this, perLine("strengths", strengths), subject);
    }

    MassRelations relations() {
        return relations;
    }

    MassBox box() {
        return box;
    }

    /**
     * All the masses together, every error at its middle.
     *
     * @return the estimate of their sum, above 0
     */
    public Amount<Mass> total() {
        return total;
    }

    private Uncertainty uncertainty() {
        Uncertainty known = uncertainty;
        if (known == null) {
            Map<ErrorSource, Ratio> bySource = relations.bySource(Weights.TOTAL, Weights.TOTAL);
            known = new Uncertainty(
                    bySource,
                    Derived.of(
                            whole -> Phrase.of("question.total-variance"),
                            bySource.values().stream().reduce(Ratio.ZERO, Ratio::plus),
                            this,
                            MadeMasses::variance));
            uncertainty = known;
        }
        return known;
    }

    /** The variance of the sum of all masses, in g². */
    Derived variance() {
        return uncertainty().variance();
    }

    /** The same, source by source. */
    Map<ErrorSource, Ratio> variances() {
        return uncertainty().bySource();
    }

    private <V> V total(Reckoning<V> r) {
        return r.named(
                TOTAL,
                relations.weighted(
                        r, Weights.TOTAL, line -> r.known(additions.get(line).estimate())));
    }

    private <V> V variance(Reckoning<V> r) {
        return r.named(VARIANCE, relations.covariance(r, Weights.TOTAL, Weights.TOTAL));
    }

    @Override
    public String toString() {
        return additions.toString();
    }
}
