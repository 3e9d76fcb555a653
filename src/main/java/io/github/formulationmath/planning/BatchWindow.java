package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * Which batch sizes can be made on a bench: from the smallest that is large enough for the balance to the largest that
 * balance, vessel and stock allow, with what binds at each end; or none, with what would open the window.
 *
 * <p>Upper ends: the capacity of the balance less the vessel on it; the working volume of the vessel, if it and the
 * density of the product are known (without the density the volume limits nothing, and {@link #notConsidered()} says so);
 * the stock of an ingredient over its share. Balance and vessel count the exact masses or the readings of the plan under
 * the closure of the bench, whichever add up to more, so that both ends can be planned on it; where the readings of an
 * exact fit would be too much, the largest batch is a whole number of divisions (or of the steps asked for). A stock counts
 * the same way, whole divisions of the display of it: up to the largest batch no reading needs more than there is.
 *
 * <p>Both ends belong to the window. Sizes between them may fail, under criteria that leave gaps: ask {@link
 * #contains(Amount)}, {@link #nearest(Amount)} or {@link FeasibleWindow#everySizeFrom()}. An end rounded to fewer digits may
 * fail too; {@link BatchConstraints#inStepsOf} asks for ends in whole grams.
 *
 * <p>Example: 0.5 % as the smallest line, a display of 0.1 g and 2 kg, a beaker of 214 g, every line at least one
 * division: from 20 g to 1786 g. Several benches side by side are a stream: {@code benches.stream().map(bench ->
 * BatchWindow.of(formula, bench, constraints))}.
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
     * Looks for the window on a balance without a vessel, under one criterion.
     *
     * @param formula the formula
     * @param balance what it is weighed on
     * @param criterion what makes a batch large enough
     * @return the window
     * @throws IllegalArgumentException if the criterion names a line or phase that the formula does not have
     * @throws SearchLimitException if the search reaches its limit
     */
    static BatchWindow of(Formula formula, Balance balance, BatchCriterion criterion) {
        return of(formula, Bench.of(balance), BatchConstraints.of(criterion));
    }

    /**
     * Looks for the window on a bench, under one criterion.
     *
     * @param formula the formula
     * @param bench where it is weighed
     * @param criterion what makes a batch large enough
     * @return the window
     * @throws IllegalArgumentException if the criterion names a line or phase that the formula does not have
     * @throws SearchLimitException if the search reaches its limit
     */
    static BatchWindow of(Formula formula, Bench bench, BatchCriterion criterion) {
        return of(formula, bench, BatchConstraints.of(criterion));
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

    /**
     * The smallest batch and what forbids less.
     *
     * @return the lower end; empty if no batch can be made
     */
    Optional<WindowEnd> smallest();

    /**
     * The largest batch and what forbids more.
     *
     * @return the upper end; empty if no batch can be made
     */
    Optional<WindowEnd> largest();

    /**
     * Whether a size lies in the window and meets every constraint.
     *
     * @param size a batch mass
     * @return true if it can be made
     */
    boolean contains(Amount<Mass> size);

    /**
     * Whether a size, as text, lies in the window and meets every constraint.
     *
     * @param size a batch mass, for example {@code "30 g"}
     * @return true if it can be made
     * @throws IllegalArgumentException if the text is no mass
     */
    default boolean contains(String size) {
        return contains(Amount.mass(size));
    }

    /**
     * The size in the window nearest to a wish; of two at the same distance, the smaller.
     *
     * @param wish the batch mass wished for
     * @return a size that can be made, in the unit of the balance; empty if there is none
     * @throws SearchLimitException if the search reaches its limit
     */
    Optional<Amount<Mass>> nearest(Amount<Mass> wish);

    /**
     * The size in the window nearest to a wish given as text.
     *
     * @param wish the batch mass wished for, for example {@code "30 g"}
     * @return a size that can be made, in the unit of the balance; empty if there is none
     * @throws IllegalArgumentException if the text is no mass
     * @throws SearchLimitException if the search reaches its limit
     */
    default Optional<Amount<Mass>> nearest(String wish) {
        return nearest(Amount.mass(wish));
    }

    /**
     * What could limit a batch but was not considered, because a figure is missing; see {@link Bench#notConsidered()}.
     *
     * @return an unmodifiable list, empty if everything given was considered
     */
    default List<Phrase> notConsidered() {
        return bench().notConsidered();
    }
}
