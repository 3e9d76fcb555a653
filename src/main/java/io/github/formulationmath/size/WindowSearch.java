package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.size.SizeSearch.Landing;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The search for the window that constraints and a bench leave.
 *
 * @param formula what is to be made
 * @param weighed what is weighed: the formula, or it with some of its lines as dilutions
 * @param bench where it is weighed
 * @param constraints what a batch must meet
 * @param sizes the sizes that are large enough
 * @param ceilings what keeps a batch from being larger, at least one
 */
record WindowSearch(
        Formula formula,
        Formula weighed,
        Bench bench,
        BatchConstraints constraints,
        Sizes sizes,
        List<Ceiling> ceilings) {

    static WindowSearch of(Formula formula, Bench bench, BatchConstraints constraints) {
        return of(formula, formula, bench, constraints);
    }

    private static WindowSearch of(Formula formula, Formula weighed, Bench bench, BatchConstraints constraints) {
        return new WindowSearch(
                formula,
                weighed,
                bench,
                constraints,
                constraints.sizes(weighed, bench),
                Ceiling.of(formula, weighed, bench, constraints));
    }

    WindowSearch with(Bench newBench) {
        return of(formula, weighed, newBench, constraints);
    }

    WindowSearch with(BatchConstraints newConstraints) {
        return of(formula, weighed, bench, newConstraints);
    }

    WindowSearch weighing(Formula withDilutions) {
        return of(formula, withDilutions, bench, constraints);
    }

    /** The largest batch under the lowest ceiling. */
    Ratio top() {
        return lowest().most(Reckoning.plain());
    }

    /** The first of the lowest ceilings. */
    private Ceiling lowest() {
        return ceilings.stream()
                .min(Comparator.comparing(ceiling -> ceiling.most(Reckoning.plain())))
                .orElseThrow();
    }

    /** The upper end as the ceilings alone set it, or at a size beyond that they allow. */
    BatchWindow.End ceilingAt(Ratio grams) {
        return new BatchWindow.End(this, false, Landing.resting(grams), lowest());
    }

    private BatchWindow.End end(boolean lower, Sizes.Rest rest) {
        return new BatchWindow.End(this, lower, rest.landing(), rest.by().orElseThrow());
    }

    /** The smallest batch, if there is one, and it fits. */
    private Optional<Sizes.Rest> smallest(SearchMeter meter) {
        Optional<Ratio> top = ceilings.stream().map(Ceiling::bound).reduce(Ratio::min);
        return sizes.smallest(meter, top)
                .filter(rest -> ceilings.stream().allMatch(ceiling -> ceiling.allows(rest.at())));
    }

    boolean hasBatch(SearchMeter meter) {
        return smallest(meter).isPresent();
    }

    /** The smallest size that is large enough, whatever the bench allows, within a million times its capacity. */
    Optional<Sizes.Rest> beyond(SearchMeter meter) {
        Ratio far = bench.balance().capacity().canonical().times(1_000_000);
        return sizes.smallest(meter, Optional.of(far));
    }

    BatchWindow answer(SearchMeter meter) {
        Optional<Sizes.Rest> low = smallest(meter);
        if (low.isEmpty()) {
            Optional<Sizes.Rest> needed = beyond(meter);
            return new BatchWindow.Empty(
                    this,
                    needed.map(rest -> end(true, rest)),
                    needed.map(new Openings(this)::forNeeded).orElse(List.of()));
        }
        BatchWindow.End lower = end(true, low.get());
        Ratio least = low.get().at();
        Ratio top = top();
        if (least.compareTo(top) >= 0) {
            return new BatchWindow.Feasible(this, lower, ceilingAt(least));
        }
        Sizes.Rest high = sizes.atMost(top, meter).orElseThrow();
        return new BatchWindow.Feasible(this, lower, high.by().isEmpty() ? ceilingAt(top) : end(false, high));
    }
}
