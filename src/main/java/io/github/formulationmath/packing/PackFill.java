package io.github.formulationmath.packing;

import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * What goes into one pack: a mass, or a volume at a density, {@code f = V·ρ}.
 *
 * <p>Example: 50 mL at 0.98 g/mL are 49 g. Whipped air changes the density; measure that of the finished product.
 *
 * <p>Immutable and thread-safe.
 */
public final class PackFill implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol FILL = Symbol.of("f", "fill-mass", Kind.MASS);
    private static final Symbol VOLUME = Symbol.of("V", "fill-volume", Kind.VOLUME);
    private static final Symbol DENSITY = Symbol.of("ρ", "product-density", Kind.DENSITY);

    private final @Nullable Amount<Mass> mass;
    private final @Nullable Amount<Volume> volume;
    private final @Nullable Density density;

    private PackFill(@Nullable Amount<Mass> mass, @Nullable Amount<Volume> volume, @Nullable Density density) {
        this.mass = mass;
        this.volume = volume;
        this.density = density;
    }

    /**
     * A fill by mass.
     *
     * @param mass what goes into a pack, above 0
     * @return the fill
     * @throws IllegalArgumentException if the mass is not above 0
     */
    public static PackFill ofMass(Amount<Mass> mass) {
        Amount.requirePositive("mass", mass);
        return new PackFill(mass, null, null);
    }

    /**
     * A fill by mass, as text.
     *
     * @param mass what goes into a pack, for example {@code "50 g"}
     * @return the fill
     * @throws IllegalArgumentException if the text is no mass, or not above 0
     */
    public static PackFill ofMass(String mass) {
        return ofMass(Amount.mass(mass));
    }

    /**
     * A fill by volume.
     *
     * @param volume what goes into a pack, above 0
     * @param density the density of the finished product
     * @return the fill
     * @throws IllegalArgumentException if the volume is not above 0
     */
    public static PackFill ofVolume(Amount<Volume> volume, Density density) {
        Amount.requirePositive("volume", volume);
        return new PackFill(null, volume, Objects.requireNonNull(density, "density"));
    }

    /**
     * The mass in a pack.
     *
     * @return the fill mass, in its own unit if it was given as a mass, else in grams, with its working
     */
    public Amount<Mass> mass() {
        return (mass != null ? mass : Amount.grams(mass(Reckoning.plain())))
                .withWorking(fill -> Phrase.of("question.fill-mass"), this, PackFill::mass);
    }

    /**
     * The volume, if the fill was given as one.
     *
     * @return the volume as given
     */
    public Optional<Amount<Volume>> volume() {
        return Optional.ofNullable(volume);
    }

    /**
     * The density, if the fill was given as a volume.
     *
     * @return the density as given
     */
    public Optional<Density> density() {
        return Optional.ofNullable(density);
    }

    private <V> V mass(Reckoning<V> r) {
        if (volume != null && density != null) {
            V space = r.given(VOLUME, volume, Source.written(volume.toString()));
            V perVolume = r.given(DENSITY, density.gramsPerMillilitre(), Source.user());
            return r.named(FILL, r.product(space, perVolume));
        }
        Amount<Mass> given = Objects.requireNonNull(mass);
        return r.given(FILL, given, Source.written(given.toString()));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PackFill that
                && Objects.equals(mass, that.mass)
                && Objects.equals(volume, that.volume)
                && Objects.equals(density, that.density);
    }

    @Override
    public int hashCode() {
        return Objects.hash(mass, volume, density);
    }

    @Override
    public String toString() {
        return volume == null ? mass().told() : volume + " at " + density;
    }
}
