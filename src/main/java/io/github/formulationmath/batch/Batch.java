package io.github.formulationmath.batch;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Lines;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
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

    private static final Symbol BATCH_MASS = Symbol.of("M", "batch-mass", Kind.MASS);
    private static final Symbol PACKS = Symbol.of("n", "packs", Kind.NUMBER);
    private static final Symbol FILL = Symbol.of("f", "fill-mass", Kind.MASS);
    private static final Symbol OVERAGE = Symbol.of("o", "overage", Kind.SHARE);
    private static final Symbol STOCK = Symbol.of("q", "stock", Kind.MASS);
    private static final Symbol VOLUME = Symbol.of("V", "volume-to-fill", Kind.VOLUME);
    private static final Symbol DENSITY = Symbol.of("ρ", "density", Kind.DENSITY);
    private static final Symbol PRODUCT_DENSITY = Symbol.of("ρ", "product-density", Kind.DENSITY);

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
        if (size instanceof BatchSize.OfMass stated) {
            return r.given(BATCH_MASS, stated.mass(), Source.user());
        }
        if (size instanceof BatchSize.OfPacks packs) {
            return r.named(BATCH_MASS, filling(r, packs));
        }
        if (size instanceof BatchSize.OfStock stock) {
            return r.named(BATCH_MASS, usingUp(r, stock));
        }
        return r.named(BATCH_MASS, filling(r, (BatchSize.OfVolume) size));
    }

    private static <V> V filling(Reckoning<V> r, BatchSize.OfPacks packs) {
        V n = r.given(PACKS, Ratio.of(packs.packs()), Source.user());
        V fill = r.given(FILL, packs.fillMass(), Source.user());
        V extra = r.given(OVERAGE, packs.overage().fraction(), Source.user());
        return r.product(r.product(n, fill), r.sum(r.literal(1), extra));
    }

    private <V> V usingUp(Reckoning<V> r, BatchSize.OfStock stock) {
        FormulaLine line = formula.line(stock.line());
        V inStock = r.given(STOCK, line, stock.stock(), Source.user());
        List<V> shares = new ArrayList<>(1);
        for (FormulaLine each : formula.lines()) {
            if (each.isNamed(line.name())) {
                shares.add(r.known(each));
            }
        }
        return r.quotient(inStock, r.sum(shares));
    }

    private <V> V filling(Reckoning<V> r, BatchSize.OfVolume space) {
        V volume = r.given(VOLUME, space.volume(), Source.user());
        return r.product(
                volume,
                space.density()
                        .map(density -> r.given(PRODUCT_DENSITY, density.gramsPerMillilitre(), Source.user()))
                        .orElseGet(() -> densityByIngredients(r)));
    }

    private <V> V densityByIngredients(Reckoning<V> r) {
        r.note(() -> Phrase.of("note.volumes-add-up"));
        List<V> specificVolumes = new ArrayList<>();
        for (FormulaLine line : formula.lines()) {
            V density = r.given(DENSITY, line, densityOf(line).gramsPerMillilitre(), Source.user());
            specificVolumes.add(r.quotient(r.known(line), density));
        }
        return r.named(PRODUCT_DENSITY, r.quotient(r.literal(1), r.sum(specificVolumes)));
    }

    private static Density densityOf(FormulaLine line) {
        return line.ingredient()
                .density()
                .orElseThrow(() -> new IllegalArgumentException(Excerpt.of(line.name())
                        + " has no density: give it one with withDensity, or size the batch with ofVolume(volume,"
                        + " density)"));
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
