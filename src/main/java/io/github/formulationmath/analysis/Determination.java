package io.github.formulationmath.analysis;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.simulation.CoverageFactor;
import java.math.RoundingMode;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What was determined: the exact value for the readings as given, its working, its budget of uncertainty, and the value ± U.
 *
 * <p>{@code equals} means the same value and the same budget. Immutable.
 *
 * @param <T> what was determined
 */
public final class Determination<T extends Comparable<? super T>> implements Explained {

    private static final int DIGITS_OF_ENDS = 4;

    private final Relation relation;
    private final Result<T> result;
    private final Ratio number;
    private final T value;
    private final Budget budget;

    Determination(Relation relation, Result<T> result) {
        this.relation = relation;
        this.result = result;
        this.number = relation.in(Reckoning.plain());
        this.value = result.of(number, relation);
        this.budget = Budget.of(relation, result.unit(), result.size());
    }

    /**
     * The value.
     *
     * @return the exact value; a share carries its working
     */
    public T value() {
        return value;
    }

    /** The value as a number with its working. */
    @Override
    public Origin origin() {
        return Origin.of(Relation::question, number, relation, Relation::in);
    }

    /**
     * What makes the value uncertain.
     *
     * @return the budget
     */
    public Budget budget() {
        return budget;
    }

    /**
     * The value with its expanded uncertainty.
     *
     * @param probability the level of confidence, such as {@code "95 %"}
     * @return value ± U
     * @throws IllegalArgumentException if the probability is not between 0 and 100 %, or no input has an uncertainty
     */
    public Expanded<T> expanded(String probability) {
        Ratio p = probability(probability);
        if (budget.variance().isZero()) {
            throw new IllegalArgumentException("the uncertainty is 0 for " + Excerpt.of(value)
                    + ": no input has one; state that of mass, volume and factor with standard(…), rectangular(…) or"
                    + " triangular(…)");
        }
        CoverageFactor factor = Expanded.factor(p, budget);
        Ratio uncertainty = factor.factor().times(budget.variance().sqrt(Budget.DIGITS));
        Ratio shown = number.dividedBy(result.size());
        Interval<T> interval = Interval.of(
                end(shown.minus(uncertainty), uncertainty, RoundingMode.FLOOR),
                end(shown.plus(uncertainty), uncertainty, RoundingMode.CEILING));
        return new Expanded<>(interval, shown, uncertainty, factor, budget);
    }

    private T end(Ratio shown, Ratio uncertainty, RoundingMode outwards) {
        Ratio step = Rounding.toSignificantDigits(DIGITS_OF_ENDS).stepFor(uncertainty);
        Ratio rounded = Rounding.toMultipleOf(step).with(outwards).apply(shown);
        return result.cut(rounded.times(result.size()));
    }

    private static Ratio probability(String text) {
        String plain = Objects.requireNonNull(text, "probability").strip();
        if (!plain.endsWith("%")) {
            throw new IllegalArgumentException("probability is \"" + Excerpt.of(text)
                    + "\": a level of confidence is given in per cent, as in \"95 %\"");
        }
        Ratio p = Ratio.parse(plain.substring(0, plain.length() - 1).strip()).dividedBy(100);
        if (p.signum() <= 0 || p.compareTo(Ratio.ONE) >= 0) {
            throw new IllegalArgumentException("probability is " + Excerpt.of(text)
                    + ": a level of confidence lies between 0 and 100 %, often at 95 %");
        }
        return p;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Determination<?> that && value.equals(that.value) && budget.equals(that.budget);
    }

    @Override
    public int hashCode() {
        return Objects.hash(value, budget);
    }

    /** The exact value. */
    @Override
    public String toString() {
        return value.toString();
    }
}
