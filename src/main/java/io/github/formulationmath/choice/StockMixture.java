package io.github.formulationmath.choice;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * A stock from which a line too small to weigh is taken: made in one step or in two, each step a small batch with a plan of
 * its own, to be printed, read, and written down like any other.
 *
 * <p>Example: 3 g and 33 g make a stock 1 in 12; 3 g of that and 36 g make 1 in 156, which is weighed into the batch.
 *
 * <p>Immutable and thread-safe.
 *
 * @param line the line that is diluted, of the formula as written
 * @param carrier the line that gives the diluent
 * @param factors the parts of each step, each at least 2; the parts of the stock are their product
 * @param steps the plan of each step: the substance, or the stock before, and the diluent
 */
public record StockMixture(FormulaLine line, FormulaLine carrier, List<Ratio> factors, List<WeighingPlan> steps)
        implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    /**
     * Copies the lists.
     *
     * @param line the line that is diluted, of the formula as written
     * @param carrier the line that gives the diluent
     * @param factors the parts of each step
     * @param steps the plan of each step
     */
    public StockMixture {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(carrier, "carrier");
        factors = List.copyOf(Objects.requireNonNull(factors, "factors"));
        steps = List.copyOf(Objects.requireNonNull(steps, "steps"));
    }

    /** The stock of which each step begins with so many grams. */
    static StockMixture of(
            Batch batch, FormulaLine line, FormulaLine carrier, Balance balance, List<Ratio> factors, Ratio begin) {
        Ingredient diluent = batch.formula().lines().get(carrier.index()).ingredient();
        Ingredient substance = batch.formula().lines().get(line.index()).ingredient();
        Ingredient before = substance;
        List<WeighingPlan> steps = new ArrayList<>();
        Ratio all = Ratio.ONE;
        for (Ratio factor : factors) {
            all = all.times(factor);
            Formula formula = Formula.inParts(name(substance, all))
                    .line(before, Ratio.ONE)
                    .line(diluent, factor.minus(Ratio.ONE))
                    .build();
            Ratio mass = begin.times(factor);
            steps.add(WeighingPlan.of(
                    Batch.of(formula, BatchSize.ofMass(Amount.grams(mass).inUnitOf(balance.readability()))),
                    Bench.of(balance)));
            before = diluted(substance, diluent, all);
        }
        return new StockMixture(line, carrier, factors, steps);
    }

    private static String name(Ingredient substance, Ratio parts) {
        return substance.name() + " 1 in " + parts;
    }

    /** The material in so many parts of which there is one of the substance: what both are made of, once each. */
    private static Ingredient diluted(Ingredient substance, Ingredient diluent, Ratio parts) {
        Map<String, Substance> names = new LinkedHashMap<>();
        Map<String, Ratio> shares = new LinkedHashMap<>();
        add(names, shares, substance, Ratio.ONE.dividedBy(parts));
        add(names, shares, diluent, parts.minus(Ratio.ONE).dividedBy(parts));
        var blend = Ingredient.blend(name(substance, parts));
        shares.forEach((key, share) -> blend.part(Objects.requireNonNull(names.get(key)), MassFraction.of(share)));
        return blend.build();
    }

    private static void add(
            Map<String, Substance> names, Map<String, Ratio> shares, Ingredient material, Ratio strength) {
        material.parts().forEach((substance, own) -> {
            String key = SubstanceName.normalise(substance.toString());
            names.putIfAbsent(key, substance);
            shares.merge(key, own.fraction().times(strength), Ratio::plus);
        });
    }

    /**
     * How many parts of stock hold one part of the substance.
     *
     * @return the product of the factors, a whole number
     */
    public Ratio parts() {
        return factors.stream().reduce(Ratio.ONE, Ratio::times);
    }

    /** What is weighed into the batch, as a material. */
    Ingredient ingredient(Batch batch) {
        return diluted(
                batch.formula().lines().get(line.index()).ingredient(),
                batch.formula().lines().get(carrier.index()).ingredient(),
                parts());
    }

    /**
     * Everything that is weighed for the stock, used or left over.
     *
     * @return the sum over the steps, what a step takes of the one before counted once
     */
    public Amount<Mass> weighed() {
        Amount<Mass> sum = steps.get(0).total();
        for (WeighingPlan step : steps.subList(1, steps.size())) {
            sum = sum.plus(step.lines().get(1).reading());
        }
        return sum;
    }

    /**
     * Where the share of the substance in the stock is sure to lie, every step weighed as planned.
     *
     * @return from the least to the greatest share, exact; around 1 in {@link #parts()}
     */
    public Interval<MassFraction> strength() {
        return strength(steps.stream()
                .map(step -> (Weighed) ExpectedProduct.of(step, WeighingMethod.TARE_EACH))
                .toList());
    }

    /**
     * Where the share of the substance in the stock is sure to lie, by what was weighed for each step: an expected product, or
     * what the readings of the step made.
     *
     * @param made what was weighed, one for each step
     * @return from the least to the greatest share, exact
     * @throws IllegalArgumentException if there is not one for each step, or one is of another formula
     */
    public Interval<MassFraction> strength(List<? extends Weighed> made) {
        Ratio least = Ratio.ONE;
        Ratio most = Ratio.ONE;
        requireOwn(made);
        for (Weighed step : made) {
            var share = step.masses().madeShare(0).bounds();
            least = least.times(share.least().canonical());
            most = most.times(share.greatest().canonical());
        }
        return Interval.of(MassFraction.of(least.max(Ratio.ZERO)), MassFraction.of(most.min(Ratio.ONE)));
    }

    /** What is most likely the strength. */
    Ratio estimate(List<? extends Weighed> made) {
        Ratio share = Ratio.ONE;
        for (Weighed step : made) {
            share = share.times(step.masses().additions().get(0).estimate().canonical())
                    .dividedBy(step.masses().total().canonical());
        }
        return share;
    }

    private void requireOwn(List<? extends Weighed> made) {
        boolean own = made.size() == steps.size();
        for (int i = 0; own && i < made.size(); i++) {
            own = made.get(i).formula().equals(steps.get(i).formula());
        }
        if (!own) {
            throw new IllegalArgumentException("made has " + made.size() + " products, which are not those of the "
                    + steps.size() + " steps of the stock: give one for each step, of its own plan and in order");
        }
    }

    @Override
    public String toString() {
        List<String> said = new ArrayList<>();
        for (WeighingPlan step : steps) {
            said.add(step.lines().get(0).reading() + " " + step.lines().get(0).name() + " and "
                    + step.lines().get(1).reading() + " " + step.lines().get(1).name() + " make "
                    + step.formula().name());
        }
        return String.join("; ", said);
    }
}
