package io.github.formulationmath.analysis;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.simulation.CoverageFactor;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A result with its expanded uncertainty {@code U = k · u} for a level of confidence p (JCGM 100:2008, 6.2 and G.4): k is the quantile of
 * Student's law for the effective degrees of freedom, cut to the whole number below, as G.4.1 allows; of the normal law if there are
 * infinitely many.
 *
 * <p>Printed, U has two digits and is rounded up, and the value ends at the same place: {@code 15.37 ± 0.12 mg KOH/g}.
 *
 * <p>It is an interval of coverage and no bound: what is built on it holds within the coverage and not for certain.
 *
 * <p>Immutable.
 *
 * @param <T> what was determined
 */
public final class Expanded<T extends Comparable<? super T>> {

    /** Beyond it Student's law and the normal one agree in all digits that are printed. */
    private static final Ratio AS_GOOD_AS_INFINITE = Ratio.of(1_000_000);

    private final Interval<T> interval;
    private final Ratio value;
    private final Ratio uncertainty;
    private final CoverageFactor factor;
    private final Budget budget;

    Expanded(Interval<T> interval, Ratio value, Ratio uncertainty, CoverageFactor factor, Budget budget) {
        this.interval = interval;
        this.value = value;
        this.uncertainty = uncertainty;
        this.factor = factor;
        this.budget = budget;
    }

    static CoverageFactor factor(Ratio probability, Budget budget) {
        Optional<Ratio> degrees = budget.effectiveDegreesOfFreedom().filter(d -> d.compareTo(AS_GOOD_AS_INFINITE) < 0);
        return degrees.map(d -> CoverageFactor.student(probability, d.floor().toLongExact()))
                .orElseGet(() -> CoverageFactor.normal(probability));
    }

    /**
     * From value − U to value + U, the ends rounded outwards at the fourth digit of U; cut where there is nothing beyond, such as a
     * share below 0.
     *
     * @return the interval of coverage
     */
    public Interval<T> interval() {
        return interval;
    }

    /**
     * The factor k with its level of confidence.
     *
     * @return the factor, as a saponification value of a certificate takes it
     */
    public CoverageFactor coverageFactor() {
        return factor;
    }

    /** U to two digits, rounded up. */
    private Ratio shownUncertainty() {
        return Rounding.toSignificantDigits(2).with(RoundingMode.CEILING).apply(uncertainty);
    }

    /** The place of the last digit of U: 0.096 is rounded up to 0.10 and not to 0.100. */
    private Rounding place() {
        return Rounding.toMultipleOf(Rounding.toSignificantDigits(2).stepFor(shownUncertainty()));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Expanded<?> that
                && interval.equals(that.interval)
                && value.equals(that.value)
                && factor.equals(that.factor)
                && budget.equals(that.budget);
    }

    @Override
    public int hashCode() {
        return Objects.hash(interval, value, factor, budget);
    }

    /** Value, U and unit, and in brackets k, p and the effective degrees of freedom. */
    @Override
    public String toString() {
        Rounding place = place();
        String degrees = budget.effectiveDegreesOfFreedom()
                .filter(d -> d.compareTo(AS_GOOD_AS_INFINITE) < 0)
                .map(d -> d.floor().toString())
                .orElse("∞");
        return "(" + place.format(value) + " ± " + place.format(shownUncertainty()) + ") " + budget.unit() + " (k = "
                + Rounding.toDecimalPlaces(2).format(factor.factor()) + ", p = "
                + NumberText.percent(factor.probability().orElseThrow()) + ", ν_eff = " + degrees + ")";
    }
}
