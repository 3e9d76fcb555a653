package io.github.formulationmath.batch;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.List;

/** The relations between what fixes the size of a batch and its mass M. */
final class BatchMass {

    private static final Symbol BATCH_MASS = Symbol.of("M", "batch-mass", Kind.MASS);
    private static final Symbol PACKS = Symbol.of("n", "packs", Kind.NUMBER);
    private static final Symbol FILL = Symbol.of("f", "fill-mass", Kind.MASS);
    private static final Symbol OVERAGE = Symbol.of("o", "overage", Kind.SHARE);
    private static final Symbol STOCK = Symbol.of("q", "stock", Kind.MASS);
    private static final Symbol VOLUME = Symbol.of("V", "volume-to-fill", Kind.VOLUME);
    private static final Symbol DENSITY = Symbol.of("ρ", "density", Kind.DENSITY);
    private static final Symbol PRODUCT_DENSITY = Symbol.of("ρ", "product-density", Kind.DENSITY);

    private BatchMass() {}

    /** The batch mass of a formula in grams. */
    static <V> V in(Reckoning<V> r, BatchSize size, Formula formula) {
        if (size instanceof BatchSize.OfMass stated) {
            return r.given(BATCH_MASS, stated.mass(), Source.user());
        }
        if (size instanceof BatchSize.OfPacks packs) {
            return r.named(BATCH_MASS, of(r, packs));
        }
        if (size instanceof BatchSize.OfStock stock) {
            return r.named(BATCH_MASS, of(r, stock, formula));
        }
        return r.named(BATCH_MASS, of(r, (BatchSize.OfVolume) size, formula));
    }

    private static <V> V of(Reckoning<V> r, BatchSize.OfPacks packs) {
        V n = r.given(PACKS, Ratio.of(packs.packs()), Source.user());
        V fill = r.given(FILL, packs.fillMass(), Source.user());
        V extra = r.given(OVERAGE, packs.overage().fraction(), Source.user());
        return r.product(r.product(n, fill), r.sum(r.literal(1), extra));
    }

    private static <V> V of(Reckoning<V> r, BatchSize.OfStock stock, Formula formula) {
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

    private static <V> V of(Reckoning<V> r, BatchSize.OfVolume size, Formula formula) {
        V space = r.given(VOLUME, size.volume(), Source.user());
        return r.product(
                space,
                size.density()
                        .map(density -> r.given(PRODUCT_DENSITY, density.gramsPerMillilitre(), Source.user()))
                        .orElseGet(() -> densityByIngredients(r, formula)));
    }

    private static <V> V densityByIngredients(Reckoning<V> r, Formula formula) {
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
}
