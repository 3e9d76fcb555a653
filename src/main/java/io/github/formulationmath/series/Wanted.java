package io.github.formulationmath.series;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Mass;

/** Everything that is asked of a series. Stock, and what is kept out of a base, stand under the normalised name of the material. */
record Wanted(
        List<Formula> versions,
        Amount<Mass> least,
        Tolerances tolerances,
        Bench bench,
        Bench baseBench,
        WeighingMethod method,
        Amount<Mass> left,
        Optional<Amount<Mass>> step,
        Optional<Amount<Mass>> most,
        Map<String, Amount<Mass>> stock,
        Set<String> keptOut) {

    Wanted on(Bench newBaseBench) {
        return new Wanted(versions, least, tolerances, bench, newBaseBench, method, left, step, most, stock, keptOut);
    }

    Wanted by(WeighingMethod newMethod) {
        return new Wanted(versions, least, tolerances, bench, baseBench, newMethod, left, step, most, stock, keptOut);
    }

    Wanted leaving(Amount<Mass> newLeft) {
        return new Wanted(versions, least, tolerances, bench, baseBench, method, newLeft, step, most, stock, keptOut);
    }

    Wanted in(Amount<Mass> newStep) {
        return new Wanted(
                versions,
                least,
                tolerances,
                bench,
                baseBench,
                method,
                left,
                Optional.of(newStep),
                most,
                stock,
                keptOut);
    }

    Wanted upTo(Optional<Amount<Mass>> newMost) {
        return new Wanted(versions, least, tolerances, bench, baseBench, method, left, step, newMost, stock, keptOut);
    }

    Wanted with(Map<String, Amount<Mass>> newStock) {
        return new Wanted(
                versions, least, tolerances, bench, baseBench, method, left, step, most, Map.copyOf(newStock), keptOut);
    }

    Wanted without(Set<String> newKeptOut) {
        return new Wanted(versions, least, tolerances, bench, baseBench, method, left, step, most, stock, newKeptOut);
    }

    /** The grid of the sizes, in grams. */
    Ratio grid() {
        return step.orElse(bench.balance().readability()).canonical();
    }

    /** The least size that is wanted, on the grid, in grams. */
    Ratio first() {
        return least.canonical().dividedBy(grid()).ceil().times(grid());
    }

    /** Whether there is enough of every material. */
    boolean hasStockFor(Map<String, Ratio> use) {
        return stock.entrySet().stream()
                .allMatch(entry -> use.getOrDefault(entry.getKey(), Ratio.ZERO)
                                .compareTo(entry.getValue().canonical())
                        <= 0);
    }
}
