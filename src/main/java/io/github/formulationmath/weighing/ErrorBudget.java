package io.github.formulationmath.weighing;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The variance of a result, source by source. The sources are independent of each other, so their variances add up to
 * the whole, exactly.
 *
 * <p>Variances are in the square of the unit of the result: {@code g²} of a mass in grams, {@code oz²} of one in ounces; those
 * of a share are plain numbers, of a share as a fraction of one.
 *
 * <p>Example: with d = 0.1 g and a linearity of 0.1 g of a net reading, tare and reading contribute 0.01/12 g² each and the linearity 0.01/3
 * g²: 16.7 %, 16.7 % and 66.7 %.
 *
 * <p>Immutable and thread-safe.
 */
public final class ErrorBudget {

    private final Map<ErrorSource, Ratio> variances;
    private final Amount<?> unit;

    /**
     * Of variances in the canonical unit.
     *
     * @param variances the variances by source, in g² for a mass, a plain number for a share
     * @param unit one unit of the result, in whose square they are told
     */
    ErrorBudget(Map<ErrorSource, Ratio> variances, Amount<?> unit) {
        this.variances = new EnumMap<>(ErrorSource.class);
        this.variances.putAll(variances);
        this.unit = unit;
    }

    /**
     * The variances by source.
     *
     * @return an unmodifiable map in the order of the sources, those that contribute nothing left out
     */
    public Map<ErrorSource, Amount<?>> variances() {
        Map<ErrorSource, Amount<?>> all = new EnumMap<>(ErrorSource.class);
        variances.keySet().forEach(source -> all.put(source, variance(source)));
        return Collections.unmodifiableMap(all);
    }

    /**
     * The variance from one source.
     *
     * @param source the source
     * @return its variance, 0 if it contributes nothing
     */
    public Amount<?> variance(ErrorSource source) {
        return inSquares(number(source));
    }

    private Ratio number(ErrorSource source) {
        return variances.getOrDefault(Objects.requireNonNull(source, "source"), Ratio.ZERO);
    }

    private Amount<?> inSquares(Ratio variance) {
        return unit.multiply(unit).times(variance.dividedBy(unit.canonical().times(unit.canonical())));
    }

    /**
     * The variance of the result.
     *
     * @return the sum over the sources
     */
    public Amount<?> total() {
        return inSquares(sum());
    }

    private Ratio sum() {
        return variances.values().stream().reduce(Ratio.ZERO, Ratio::plus);
    }

    /**
     * The part of one source in the whole variance.
     *
     * @param source the source
     * @return a number from 0 to 1; 0 if there is no variance at all
     */
    public Ratio share(ErrorSource source) {
        Ratio variance = number(source);
        return variance.isZero() ? variance : variance.dividedBy(sum());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ErrorBudget that && variances.equals(that.variances) && unit.equals(that.unit);
    }

    @Override
    public int hashCode() {
        return Objects.hash(variances, unit);
    }

    /** The part of each source in the variance, rounded. */
    @Override
    public String toString() {
        return variances.keySet().stream()
                .map(source -> source + " " + NumberText.percent(share(source)))
                .collect(Collectors.joining(", ", "variance from [", "]"));
    }
}
