package io.github.formulationmath.scaling;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * A batch that fills a volume: {@code M = V · ρ}, or {@code V / Σ(w_i/ρ_i)} when the density of the product is not known. Made by
 * {@link BatchSize#ofVolume(Amount, Density)}.
 *
 * <p>Immutable and thread-safe.
 */
public final class VolumeSize extends BatchSize {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol VOLUME = Symbol.of("V", "volume-to-fill", Kind.VOLUME);
    private static final Symbol DENSITY = Symbol.of("ρ", "density", Kind.DENSITY);
    private static final Symbol PRODUCT_DENSITY = Symbol.of("ρ", "product-density", Kind.DENSITY);

    private final Amount<Volume> volume;
    private final @Nullable Density density;

    VolumeSize(Amount<Volume> volume, @Nullable Density density) {
        this.volume = volume;
        this.density = density;
    }

    @Override
    <V> V mass(Reckoning<V> r, Formula formula) {
        V space = r.given(VOLUME, volume.in(FormulationUnits.MILLILITRE), Source.user());
        return r.named(BATCH_MASS, r.product(space, productDensity(r, formula)));
    }

    private <V> V productDensity(Reckoning<V> r, Formula formula) {
        if (density != null) {
            return r.given(PRODUCT_DENSITY, density.gramsPerMillilitre(), Source.user());
        }
        r.note(() -> Phrase.of("note.volumes-add-up"));
        List<V> specificVolumes = new ArrayList<>();
        for (FormulaLine line : formula.lines()) {
            V lineDensity = r.given(DENSITY, line, densityOf(line).gramsPerMillilitre(), Source.user());
            specificVolumes.add(r.quotient(r.known(line), lineDensity));
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

    /**
     * The volume to fill.
     *
     * @return the volume as given, above 0
     */
    public Amount<Volume> volume() {
        return volume;
    }

    /**
     * The density of the product, if it was given.
     *
     * @return the density; empty if those of the ingredients are taken
     */
    public Optional<Density> density() {
        return Optional.ofNullable(density);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof VolumeSize that && volume.equals(that.volume) && Objects.equals(density, that.density);
    }

    @Override
    public int hashCode() {
        return Objects.hash(volume, density);
    }

    @Override
    public String toString() {
        return density == null ? volume + " by the densities of its ingredients" : volume + " at " + density;
    }
}
