package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * What a batch must meet besides what the bench can carry and hold: criteria for being large enough, what is in stock, a
 * step to which its size is to be rounded, and a least size.
 *
 * <p>Example: {@code BatchConstraints.of(Criterion.oneDivision()).withStock("Glycerin", "35 g").inStepsOf("5 g")}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param criteria what makes a batch large enough, at least one; an unmodifiable list
 * @param stock what is in stock, by the name of the ingredient, in any spelling that {@link SubstanceName} forgives; an
 *     unmodifiable map
 * @param step the step to which sizes are rounded, if there is one
 * @param leastSize the least size wished for, if there is one
 */
public record BatchConstraints(
        List<Criterion> criteria,
        Map<String, Amount<Mass>> stock,
        Optional<Amount<Mass>> step,
        Optional<Amount<Mass>> leastSize) {

    /**
     * Keeps copies of its own.
     *
     * @param criteria what makes a batch large enough, at least one
     * @param stock what is in stock
     * @param step the step, if there is one
     * @param leastSize the least size, if there is one
     * @throws IllegalArgumentException if there is no criterion, two different criteria are {@link
     *     Criterion#madeWithin(Tolerances)} (the readings that meet one need not be those that meet the other), or a stock,
     *     the step or the least size is not above 0
     */
    public BatchConstraints {
        criteria = atLeastOne("criteria", criteria);
        stock = Collections.unmodifiableMap(new LinkedHashMap<>(stock));
        stock.forEach((name, inStock) -> Amount.requirePositive("inStock", inStock));
        step.ifPresent(every -> Amount.requirePositive("newStep", every));
        leastSize.ifPresent(size -> Amount.requirePositive("size", size));
        if (criteria.stream().filter(MadeWithin.class::isInstance).distinct().count() > 1) {
            throw new IllegalArgumentException(
                    "criteria are " + Excerpt.of(criteria) + ": two ask for readings that add up, and each may"
                            + " need others; state one, with the tighter tolerance of every line");
        }
    }

    /**
     * Constraints by criteria, all of which a batch must meet.
     *
     * @param criterion what makes a batch large enough
     * @param more further criteria
     * @return the constraints
     * @throws IllegalArgumentException if two different criteria are {@link Criterion#madeWithin(Tolerances)}: the
     *     readings that meet one need not be those that meet the other
     */
    public static BatchConstraints of(Criterion criterion, Criterion... more) {
        List<Criterion> all = new ArrayList<>();
        all.add(Objects.requireNonNull(criterion, "criterion"));
        all.addAll(List.of(Objects.requireNonNull(more, "more")));
        return new BatchConstraints(all, Map.of(), Optional.empty(), Optional.empty());
    }

    /**
     * The same with what is in stock of an ingredient, over all lines it stands on.
     *
     * @param ingredientName the name of the ingredient, in any spelling that {@link SubstanceName} forgives
     * @param inStock how much there is, above 0
     * @return the constraints
     * @throws IllegalArgumentException if the stock is not above 0
     */
    public BatchConstraints withStock(String ingredientName, Amount<Mass> inStock) {
        Objects.requireNonNull(ingredientName, "ingredientName");
        Map<String, Amount<Mass>> all = new LinkedHashMap<>(stock);
        all.keySet().removeIf(name -> SubstanceName.areAlike(name, ingredientName));
        all.put(ingredientName, Objects.requireNonNull(inStock, "inStock"));
        return new BatchConstraints(criteria, all, step, leastSize);
    }

    /**
     * The same with what is in stock of an ingredient, as text.
     *
     * @param ingredientName the name of the ingredient
     * @param inStock how much there is, for example {@code "35 g"}
     * @return the constraints
     * @throws IllegalArgumentException if the text is no mass or not above 0
     */
    public BatchConstraints withStock(String ingredientName, String inStock) {
        return withStock(ingredientName, Amount.mass(inStock));
    }

    /**
     * The same for batches that are whole multiples of a step.
     *
     * @param newStep for example {@code "5 g"}, above 0
     * @return the constraints
     * @throws IllegalArgumentException if the text is no mass or not above 0
     */
    public BatchConstraints inStepsOf(String newStep) {
        return new BatchConstraints(criteria, stock, Optional.of(Amount.mass(newStep)), leastSize);
    }

    /**
     * The same for batches of a least size.
     *
     * @param size for example {@code "100 g"}, above 0
     * @return the constraints
     * @throws IllegalArgumentException if the text is no mass or not above 0
     */
    public BatchConstraints withLeastSize(String size) {
        return new BatchConstraints(criteria, stock, step, Optional.of(Amount.mass(size)));
    }

    /** The sizes that are large enough for all of it on a bench, under every closure under which a batch is to be planned. */
    Sizes sizes(Formula formula, Bench bench) {
        List<Sizes> all = new ArrayList<>();
        for (Criterion criterion : criteria) {
            benches(bench).forEach(each -> all.add(criterion.on(formula, each)));
        }
        leastSize.ifPresent(size -> all.add(Sizes.of(formula, bench, Wish.atLeast(size))));
        step.ifPresent(every -> all.add(Sizes.of(formula, bench, Wish.inStepsOf(every))));
        if (bench.closure() == Closure.QS_TAKES_REST) {
            all.add(Sizes.of(formula, bench, RestLeft.part(formula, bench.balance())));
        }
        return all.stream().reduce(Sizes::and).orElseThrow();
    }

    /** The share of all lines of an ingredient. */
    static Ratio shareOf(Formula formula, String ingredientName) {
        return formula.lines().stream()
                .filter(line -> line.isNamed(ingredientName))
                .map(line -> line.fraction())
                .reduce(Ratio.ZERO, Ratio::plus);
    }

    /** The bench with the closure that shows what the criteria ask for; readings that add up go first. */
    Bench showing(Bench bench) {
        List<Bench> asked = criteria.stream()
                .flatMap(criterion -> criterion.showing(bench).stream())
                .toList();
        return asked.stream()
                .filter(each -> each.closure() == Closure.WITHIN_TOLERANCE)
                .findFirst()
                .or(() -> asked.stream().findFirst())
                .orElse(bench);
    }

    /** The bench itself and, if it is another, the one that shows what the criteria ask for. */
    List<Bench> benches(Bench bench) {
        Bench other = showing(bench);
        return other.equals(bench) ? List.of(bench) : List.of(bench, other);
    }

    static void requireLine(Formula formula, String ingredientName) {
        if (shareOf(formula, ingredientName).isZero()) {
            throw new IllegalArgumentException(
                    "a stock is given for " + Excerpt.of(ingredientName) + ", which is no line of \""
                            + Excerpt.of(formula.name()) + "\": name it as the formula does, or leave the stock out");
        }
    }

    @Override
    public String toString() {
        return criteria
                + (stock.isEmpty() ? "" : ", stock " + stock)
                + step.map(every -> ", in steps of " + every).orElse("")
                + leastSize.map(size -> ", at least " + size).orElse("");
    }

    /** An unmodifiable copy of a list that must hold something. */
    static <T> List<T> atLeastOne(String name, List<T> list) {
        List<T> copy = List.copyOf(Objects.requireNonNull(list, name));
        if (copy.isEmpty()) {
            throw new IllegalArgumentException(name + " is empty: at least one is needed");
        }
        return copy;
    }
}
