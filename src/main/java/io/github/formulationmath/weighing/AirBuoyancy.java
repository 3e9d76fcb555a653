package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.util.List;
import java.util.Objects;

/**
 * The factor from what a balance shows to the true mass: air carries light matter more than the weights the balance was
 * adjusted with, {@code K = (1 − ρ_air/ρ_ref) / (1 − ρ_air/ρ)}.
 *
 * <p>Balances are adjusted to conventional mass: air of 1.2 kg/m³, weights of 8000 kg/m³. Oils and waters come out some 0.1
 * % heavier than shown, all by nearly the same; what matters to a formula is the difference between its ingredients.
 *
 * <p>Example: aluminium, 2.7 g/mL: K = 0.99985/(1 − 0.0012/2.7) = 1.000294575, so that 2000.000 mg shown are 2000.589 mg.
 *
 * <p>Source: NISTIR 6969 (2019), SOP 2; conventional values: OIML D 28:2004, JCGM 101:2008, 9.3.1.2.
 *
 * <p>Immutable and thread-safe.
 *
 * @param matter the density of what is weighed, above that of air
 * @param air the density of the air
 * @param weights the density of the weights with which the balance was adjusted, above that of air
 */
public record AirBuoyancy(Density matter, Density air, Density weights) implements Explained {

    /** The density of air by convention, 1.2 kg/m³. */
    public static final Density CONVENTIONAL_AIR = Density.ofGramsPerMillilitre("0.0012");

    /** The density of weights by convention, 8000 kg/m³. */
    public static final Density CONVENTIONAL_WEIGHTS = Density.ofGramsPerMillilitre("8");

    private static final Symbol MATTER = Symbol.of("ρ", "weighed-density", Kind.DENSITY);
    private static final Symbol AIR = Symbol.of("ρ_air", "air-density", Kind.DENSITY);
    private static final Symbol WEIGHTS = Symbol.of("ρ_ref", "weights-density", Kind.DENSITY);
    private static final Symbol FACTOR = Symbol.of("K", "buoyancy-factor", Kind.NUMBER);
    private static final Source CONVENTION = Source.published("OIML D 28:2004", "conventional mass");

    /**
     * Checks that everything is denser than air.
     *
     * @param matter the density of what is weighed, above that of air
     * @param air the density of the air
     * @param weights the density of the weights with which the balance was adjusted, above that of air
     * @throws IllegalArgumentException if something is not denser than air
     */
    public AirBuoyancy {
        Objects.requireNonNull(matter, "matter");
        Objects.requireNonNull(air, "air");
        Objects.requireNonNull(weights, "weights");
        requireHeavier("matter", matter, air);
        requireHeavier("weights", weights, air);
    }

    /**
     * The factor for matter of a density, in air and with weights of the conventional densities.
     *
     * @param matter the density of what is weighed, above that of air
     * @return the factor
     * @throws IllegalArgumentException if the matter is not denser than air
     */
    public static AirBuoyancy of(Density matter) {
        return new AirBuoyancy(matter, CONVENTIONAL_AIR, CONVENTIONAL_WEIGHTS);
    }

    /**
     * Where the relative correction K − 1 lies if the densities are known to lie between ends; for {@link
     * ErrorModel#withBuoyancy(Bounds)}. K rises or falls with each density throughout, so its extremes are at the ends.
     *
     * @param lightest the least density of what is weighed
     * @param heaviest the largest density of what is weighed
     * @param thinnestAir the least density of the air
     * @param thickestAir the largest density of the air
     * @return from the least to the largest K − 1, plain numbers, with conventional weights
     * @throws IllegalArgumentException if something is not denser than air
     */
    public static Bounds corrections(Density lightest, Density heaviest, Density thinnestAir, Density thickestAir) {
        Objects.requireNonNull(lightest, "lightest");
        Objects.requireNonNull(heaviest, "heaviest");
        Objects.requireNonNull(thinnestAir, "thinnestAir");
        Objects.requireNonNull(thickestAir, "thickestAir");
        List<Ratio> corners = List.of(
                new AirBuoyancy(lightest, thinnestAir, CONVENTIONAL_WEIGHTS).correction(),
                new AirBuoyancy(lightest, thickestAir, CONVENTIONAL_WEIGHTS).correction(),
                new AirBuoyancy(heaviest, thinnestAir, CONVENTIONAL_WEIGHTS).correction(),
                new AirBuoyancy(heaviest, thickestAir, CONVENTIONAL_WEIGHTS).correction());
        Ratio first = corners.get(0);
        return Bounds.closed(
                corners.stream().reduce(first, Ratio::min), corners.stream().reduce(first, Ratio::max));
    }

    private static void requireHeavier(String name, Density density, Density air) {
        if (density.compareTo(air) <= 0) {
            throw new IllegalArgumentException(name + " is " + Excerpt.of(density) + ", not above the air ("
                    + Excerpt.of(air) + "): it would float away; are the units right?");
        }
    }

    /**
     * The factor.
     *
     * @return K: mass = K · reading
     */
    public Ratio factor() {
        return in(Reckoning.plain());
    }

    /**
     * The relative correction.
     *
     * @return K − 1: mass = reading · (1 + this)
     */
    public Ratio correction() {
        return factor().minus(Ratio.ONE);
    }

    /** The working of the {@link #factor() factor}. */
    @Override
    public Origin origin() {
        return Origin.of(buoyancy -> Phrase.of("question.buoyancy-factor"), factor(), this, AirBuoyancy::in);
    }

    private <V> V in(Reckoning<V> r) {
        V airDensity = given(r, AIR, air, CONVENTIONAL_AIR);
        V below = r.quotient(airDensity, r.given(MATTER, matter.gramsPerMillilitre(), Source.user()));
        V above = r.quotient(airDensity, given(r, WEIGHTS, weights, CONVENTIONAL_WEIGHTS));
        return r.named(FACTOR, r.quotient(r.difference(r.literal(1), above), r.difference(r.literal(1), below)));
    }

    private static <V> V given(Reckoning<V> r, Symbol symbol, Density value, Density conventional) {
        return r.given(symbol, value.gramsPerMillilitre(), value.equals(conventional) ? CONVENTION : Source.user());
    }

    @Override
    public String toString() {
        return "buoyancy factor of " + matter + " in air of " + air;
    }
}
