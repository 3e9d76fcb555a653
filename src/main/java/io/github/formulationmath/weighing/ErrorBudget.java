package io.github.formulationmath.weighing;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The variance of a result, source by source. The sources are independent of each other, so their variances add up to
 * the whole, exactly.
 *
 * <p>Example: with d = 0.1 g and a linearity of 0.1 g of a net reading, tare and reading contribute 0.01/12 g² each and the linearity 0.01/3
 * g²: 16.7 %, 16.7 % and 66.7 %.
 *
 * @param variances the variances by source, those that contribute nothing left out; an unmodifiable map in the order of the
 *     sources, in g² for a mass, a plain number for a share
 */
public record ErrorBudget(Map<ErrorSource, Ratio> variances) {

    /**
     * Copies the variances.
     *
     * @param variances the variances by source, in g² for a mass, a plain number for a share
     */
    public ErrorBudget {
        Map<ErrorSource, Ratio> ordered = new EnumMap<>(ErrorSource.class);
        ordered.putAll(variances);
        variances = Collections.unmodifiableMap(ordered);
    }

    /**
     * The variance from one source.
     *
     * @param source the source
     * @return its variance, 0 if it contributes nothing
     */
    public Ratio variance(ErrorSource source) {
        return variances.getOrDefault(Objects.requireNonNull(source, "source"), Ratio.ZERO);
    }

    /**
     * The variance of the result.
     *
     * @return the sum over the sources
     */
    public Ratio total() {
        return variances.values().stream().reduce(Ratio.ZERO, Ratio::plus);
    }

    /**
     * The part of one source in the whole variance.
     *
     * @param source the source
     * @return a number from 0 to 1; 0 if there is no variance at all
     */
    public Ratio share(ErrorSource source) {
        Ratio variance = variance(source);
        return variance.isZero() ? variance : variance.dividedBy(total());
    }

    /** The part of each source in the variance, rounded. */
    @Override
    public String toString() {
        return variances.keySet().stream()
                .map(source -> source + " " + NumberText.percent(share(source)))
                .collect(Collectors.joining(", ", "variance from [", "]"));
    }
}
