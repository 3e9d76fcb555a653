package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What a batch must meet besides what the bench can carry and hold: criteria for being large enough, what is in stock, a
 * step to which its size is to be rounded, and a least size.
 *
 * <p>Example: {@code BatchConstraints.of(BatchCriterion.oneDivision()).withStock("Glycerin", "35 g").inStepsOf("5 g")}.
 *
 * <p>Immutable and thread-safe.
 */
public final class BatchConstraints implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final List<BatchCriterion> criteria;
    private final Map<String, Amount<Mass>> stock;
    private final @Nullable Amount<Mass> step;
    private final @Nullable Amount<Mass> leastSize;

    private BatchConstraints(
            List<BatchCriterion> criteria,
            Map<String, Amount<Mass>> stock,
            @Nullable Amount<Mass> step,
            @Nullable Amount<Mass> leastSize) {
        this.criteria = criteria;
        this.stock = stock;
        this.step = step;
        this.leastSize = leastSize;
    }

    /**
     * Constraints by criteria, all of which a batch must meet.
     *
     * @param criterion what makes a batch large enough
     * @param more further criteria
     * @return the constraints
     * @throws IllegalArgumentException if two different criteria are {@link BatchCriterion#madeWithin(Tolerances)}: the
     *     readings that meet one need not be those that meet the other
     */
    public static BatchConstraints of(BatchCriterion criterion, BatchCriterion... more) {
        List<BatchCriterion> all = new ArrayList<>();
        all.add(Objects.requireNonNull(criterion, "criterion"));
        all.addAll(List.of(Objects.requireNonNull(more, "more")));
        if (all.stream().filter(MadeWithin.class::isInstance).distinct().count() > 1) {
            throw new IllegalArgumentException(
                    "criteria are " + Excerpt.of(all) + ": two ask for readings that add up, and each may"
                            + " need others; state one, with the tighter tolerance of every line");
        }
        return new BatchConstraints(List.copyOf(all), Map.of(), null, null);
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
        all.put(ingredientName, Amount.requirePositive("inStock", inStock));
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
        return new BatchConstraints(
                criteria, stock, Amount.requirePositive("newStep", Amount.mass(newStep)), leastSize);
    }

    /**
     * The same for batches of a least size.
     *
     * @param size for example {@code "100 g"}, above 0
     * @return the constraints
     * @throws IllegalArgumentException if the text is no mass or not above 0
     */
    public BatchConstraints withLeastSize(String size) {
        return new BatchConstraints(criteria, stock, step, Amount.requirePositive("size", Amount.mass(size)));
    }

    /**
     * The criteria for being large enough.
     *
     * @return an unmodifiable list
     */
    public List<BatchCriterion> criteria() {
        return criteria;
    }

    /**
     * What is in stock.
     *
     * @return an unmodifiable map from ingredient names
     */
    public Map<String, Amount<Mass>> stock() {
        return Collections.unmodifiableMap(stock);
    }

    /**
     * The step to which sizes are rounded.
     *
     * @return the step, if there is one
     */
    public Optional<Amount<Mass>> step() {
        return Optional.ofNullable(step);
    }

    /**
     * The least size wished for.
     *
     * @return the size, if there is one
     */
    public Optional<Amount<Mass>> leastSize() {
        return Optional.ofNullable(leastSize);
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
        return criteria.stream()
                .filter(MadeWithin.class::isInstance)
                .findFirst()
                .or(() -> criteria.stream()
                        .filter(RoundingWithin.class::isInstance)
                        .findFirst())
                .map(bench::closingFor)
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
    public boolean equals(@Nullable Object other) {
        return other instanceof BatchConstraints that
                && criteria.equals(that.criteria)
                && stock.equals(that.stock)
                && Objects.equals(step, that.step)
                && Objects.equals(leastSize, that.leastSize);
    }

    @Override
    public int hashCode() {
        return Objects.hash(criteria, stock, step, leastSize);
    }

    @Override
    public String toString() {
        return criteria
                + (stock.isEmpty() ? "" : ", stock " + stock)
                + (step == null ? "" : ", in steps of " + step)
                + (leastSize == null ? "" : ", at least " + leastSize);
    }
}
