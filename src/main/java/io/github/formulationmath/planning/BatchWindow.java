package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import java.io.Serializable;
import java.util.Objects;

/**
 * Which batch sizes can be made on a bench: from the smallest that is large enough for the balance to the largest that
 * balance, vessel and stock allow, with what binds at each end; or none, with what would open the window.
 *
 * <p>Upper ends: the capacity of the balance less the vessel on it; the working volume of the vessel, if it and the
 * density of the product are known; the stock of an ingredient over its share. They count exact masses; readings that are
 * rounded up line by line may come to half a division more for each line.
 *
 * <p>Both ends belong to the window. Sizes between them may fail, under criteria that leave gaps: ask {@link
 * FeasibleWindow#contains}.
 *
 * <p>Example: 0.5 % as the smallest line, a display of 0.1 g and 2 kg, a beaker of 214 g, every line at least one
 * division: from 20 g to 1786 g.
 */
public sealed interface BatchWindow extends Serializable permits FeasibleWindow, EmptyWindow {

    /**
     * Looks for the window with the standard {@link SearchEffort}.
     *
     * @param formula the formula
     * @param bench where it is weighed
     * @param constraints what a batch must meet
     * @return the window
     * @throws IllegalArgumentException if a constraint names a line or phase that the formula does not have, or the vessel
     *     overloads the balance by itself
     * @throws SearchLimitException if the search reaches its limit
     */
    static BatchWindow of(Formula formula, Bench bench, BatchConstraints constraints) {
        return of(formula, bench, constraints, SearchEffort.standard());
    }

    /**
     * Looks for the window.
     *
     * @param formula the formula
     * @param bench where it is weighed
     * @param constraints what a batch must meet
     * @param effort how much work may be done
     * @return the window
     * @throws IllegalArgumentException if a constraint names a line or phase that the formula does not have
     * @throws SearchLimitException if the search reaches its limit
     * @throws java.util.concurrent.CancellationException if the thread is interrupted while it searches
     */
    static BatchWindow of(Formula formula, Bench bench, BatchConstraints constraints, SearchEffort effort) {
        Objects.requireNonNull(effort, "effort");
        return new WindowQuestion(
                        Objects.requireNonNull(formula, "formula"),
                        Objects.requireNonNull(bench, "bench"),
                        Objects.requireNonNull(constraints, "constraints"))
                .answer(new SearchMeter(effort));
    }

    /**
     * The formula.
     *
     * @return what is to be made
     */
    Formula formula();

    /**
     * The bench.
     *
     * @return where it is weighed
     */
    Bench bench();

    /**
     * The constraints.
     *
     * @return what a batch must meet
     */
    BatchConstraints constraints();
}
