package io.github.formulationmath.formula;

import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serial;
import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A material as it stands on the shelf: its name, the substances it declares, and a density where one is known.
 *
 * <p>Most materials are one substance; {@link #blend} makes those that are several, for example a solution of 30 %
 * active matter in water. The declared parts always make up 100 %.
 *
 * <p>Example: {@code Ingredient.blend("Betaine solution").part("Cocamidopropyl Betaine", "30 %").rest("Aqua")} counts
 * 10 % of it in a formula as 3 % of Cocamidopropyl Betaine and 7 % of water.
 *
 * <p>Immutable and thread-safe.
 */
public final class Ingredient implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String name;
    private final Map<Substance, MassFraction> parts;
    private final @Nullable Density density;
    /** Worked out when somebody first asks. */
    private transient volatile @Nullable String normalName;

    private Ingredient(String name, Map<Substance, MassFraction> parts, @Nullable Density density) {
        this.name = name;
        this.parts = parts;
        this.density = density;
    }

    /**
     * A material that is one substance of the same name.
     *
     * @param name the name of the material and of the substance
     * @return the ingredient
     */
    public static Ingredient of(String name) {
        Ingredient alone = of(name, Substance.of(name));
        alone.normalName = alone.parts.keySet().iterator().next().normalName();
        return alone;
    }

    /**
     * A material that is one substance under a name of its own.
     *
     * @param name the name used at the bench
     * @param substance the substance
     * @return the ingredient
     */
    public static Ingredient of(String name, Substance substance) {
        Map<Substance, MassFraction> whole =
                Collections.singletonMap(Objects.requireNonNull(substance, "substance"), MassFraction.WHOLE);
        return new Ingredient(SubstanceName.require("name", name), whole, null);
    }

    /**
     * A material made of several substances.
     *
     * @param name the name used at the bench
     * @return a builder that takes the parts
     */
    public static BlendBuilder blend(String name) {
        return new BlendBuilder(SubstanceName.require("name", name));
    }

    static Ingredient ofParts(String name, Map<Substance, MassFraction> parts) {
        return new Ingredient(name, new LinkedHashMap<>(parts), null);
    }

    /**
     * The same material with its density, so that volumes can be turned into masses.
     *
     * @param newDensity the density
     * @return the ingredient with the density
     */
    public Ingredient withDensity(Density newDensity) {
        return new Ingredient(name, parts, Objects.requireNonNull(newDensity, "newDensity"));
    }

    /**
     * The same material with its density, as text.
     *
     * @param newDensity the density, for example {@code "0.91 g/mL"}
     * @return the ingredient with the density
     * @throws IllegalArgumentException if the text is no density or not above 0
     */
    public Ingredient withDensity(String newDensity) {
        return withDensity(Density.parse(Objects.requireNonNull(newDensity, "newDensity")));
    }

    /**
     * The name used at the bench.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * The name in the form in which names are compared.
     *
     * @return the normal form, see {@link SubstanceName#normalise}
     */
    public String normalName() {
        String normal = normalName;
        if (normal == null) {
            normal = SubstanceName.normalise(name);
            normalName = normal;
        }
        return normal;
    }

    /**
     * The declared parts, in the order declared; they make up 100 %.
     *
     * @return an unmodifiable map from substance to its mass fraction of the material as supplied
     */
    public Map<Substance, MassFraction> parts() {
        return Collections.unmodifiableMap(parts);
    }

    /**
     * How much of the material as supplied a substance makes up, going by what the material itself declares; what is the
     * same in a formula also through other lines, {@link SubstanceShare#strengthIn} tells.
     *
     * @param substance the substance, in any spelling
     * @return its mass fraction; empty if the material does not contain it
     * @throws IllegalArgumentException if what is asked for and what is declared would be one substance with two CAS
     *     numbers
     */
    public Optional<MassFraction> strengthOf(Substance substance) {
        return Composition.of(this).shareOf(substance).map(one -> one.strengthIn(this));
    }

    /**
     * The density, where one is known.
     *
     * @return the density
     */
    public Optional<Density> density() {
        return Optional.ofNullable(density);
    }

    @Serial
    private Object readResolve() {
        return new Ingredient(name, new LinkedHashMap<>(parts), density);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Ingredient that
                && name.equals(that.name)
                && parts.equals(that.parts)
                && Objects.equals(density, that.density);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, parts, density);
    }

    @Override
    public String toString() {
        return name;
    }
}
