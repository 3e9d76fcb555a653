package io.github.formulationmath.batch;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Lines;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A formula at a size: the exact mass of the batch and of each line. Nothing is rounded; the lines add up to the batch
 * exactly.
 *
 * <p>Example: {@code Batch.of(formula, BatchSize.ofMass("400 g")).line("Glycerin").mass()} is 10 g for a line at 2.5 %.
 *
 * <p>Immutable and thread-safe.
 */
public final class Batch implements Lines<BatchLine>, Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Formula formula;
    private final BatchSize size;
    private final Ratio grams;
    private final List<BatchLine> lines;

    private Batch(Formula formula, BatchSize size) {
        this.formula = formula;
        this.size = size;
        this.grams = massIn(Reckoning.plain());
        List<BatchLine> all = new ArrayList<>(formula.lines().size());
        for (FormulaLine line : formula.lines()) {
            all.add(new BatchLine(this, line));
        }
        this.lines = List.copyOf(all);
    }

    /**
     * Scales a formula.
     *
     * @param formula the formula
     * @param size what fixes the size
     * @return the batch
     * @throws IllegalArgumentException if the size needs something the formula does not have: the line in stock, or a
     *     density of every ingredient
     */
    public static Batch of(Formula formula, BatchSize size) {
        return new Batch(Objects.requireNonNull(formula, "formula"), Objects.requireNonNull(size, "size"));
    }

    @Override
    public Formula formula() {
        return formula;
    }

    /**
     * What fixed the size.
     *
     * @return the size as given
     */
    public BatchSize size() {
        return size;
    }

    /**
     * The mass of the whole batch.
     *
     * @return the exact mass, above 0, with its working; in the unit of the mass that fixed the size, if one did, else in grams
     */
    public Amount<Mass> mass() {
        return size.statedMass()
                .map(unit -> Amount.grams(grams).inUnitOf(unit))
                .orElseGet(() -> Amount.grams(grams))
                .withWorking(origin());
    }

    @Override
    public List<BatchLine> lines() {
        return lines;
    }

    /**
     * The batch written down as masses, a formula again; its shares are those of this batch's formula.
     *
     * @return the formula in masses
     */
    public Formula asMasses() {
        return formula.withMasses(line -> line(line).mass());
    }

    /** The mass of the whole batch. */
    @Override
    public Origin origin() {
        return Origin.of(batch -> Phrase.of("question.batch-mass", batch.formula.name()), grams, this, Batch::massIn);
    }

    private <V> V massIn(Reckoning<V> r) {
        return BatchMass.in(r, size, formula);
    }

    /** Equal if formula and size are. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Batch that && formula.equals(that.formula) && size.equals(that.size);
    }

    @Override
    public int hashCode() {
        return Objects.hash(formula, size);
    }

    @Override
    public String toString() {
        return formula.name() + ", " + mass().toldExactly();
    }
}
