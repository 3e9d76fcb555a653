package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * What a batch is made in: its own mass, which the balance carries too, and how much it holds.
 *
 * <p>The brim volume is what it holds when full; the working volume what can be stirred in it without spilling. Either
 * may be unknown.
 *
 * <p>Example: {@code Vessel.of("beaker", "214 g").holding("600 mL", "450 mL")}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Vessel implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Vessel NONE = new Vessel("no vessel", Amount.grams(Ratio.ZERO), null, null);

    private final String name;
    private final Amount<Mass> mass;
    private final @Nullable Amount<Volume> brim;
    private final @Nullable Amount<Volume> working;

    private Vessel(String name, Amount<Mass> mass, @Nullable Amount<Volume> brim, @Nullable Amount<Volume> working) {
        this.name = name;
        this.mass = mass;
        this.brim = brim;
        this.working = working;
    }

    /**
     * No vessel worth counting: mass 0, volume unknown.
     *
     * @return the vessel that limits nothing
     */
    public static Vessel none() {
        return NONE;
    }

    /**
     * A vessel of known mass and unknown volume.
     *
     * @param name what it is called at the bench
     * @param mass its own mass, at least 0
     * @return the vessel
     * @throws IllegalArgumentException if the name is blank or the mass negative
     */
    public static Vessel of(String name, Amount<Mass> mass) {
        if (Objects.requireNonNull(name, "name").isBlank()) {
            throw new IllegalArgumentException("name is blank: give the vessel a name");
        }
        if (Objects.requireNonNull(mass, "mass").signum() < 0) {
            throw new IllegalArgumentException("mass is " + Excerpt.of(mass) + ": a vessel weighs at least 0");
        }
        return new Vessel(name, mass, null, null);
    }

    /**
     * A vessel of known mass and unknown volume, its mass as text.
     *
     * @param name what it is called at the bench
     * @param mass its own mass, for example {@code "214 g"}
     * @return the vessel
     * @throws IllegalArgumentException if the name is blank or the text is no mass
     */
    public static Vessel of(String name, String mass) {
        Objects.requireNonNull(name, "name");
        return of(name, Amount.mass(mass));
    }

    /**
     * The same vessel with its volumes.
     *
     * @param brimVolume what it holds to the brim, above 0
     * @param workingVolume what can be worked in it, above 0 and at most the brim volume
     * @return the vessel with its volumes
     * @throws IllegalArgumentException if a volume is out of range
     */
    public Vessel holding(Amount<Volume> brimVolume, Amount<Volume> workingVolume) {
        Amount.requirePositive("brimVolume", brimVolume);
        Amount.requirePositive("workingVolume", workingVolume);
        if (workingVolume.compareTo(brimVolume) > 0) {
            throw new IllegalArgumentException(
                    "workingVolume is " + Excerpt.of(workingVolume) + ", more than the vessel holds to" + " the brim ("
                            + Excerpt.of(brimVolume) + "): the two may have been exchanged");
        }
        return new Vessel(name, mass, brimVolume, workingVolume);
    }

    /**
     * The same vessel with its volumes as text.
     *
     * @param brimVolume what it holds to the brim, for example {@code "600 mL"}
     * @param workingVolume what can be worked in it, for example {@code "450 mL"}
     * @return the vessel with its volumes
     * @throws IllegalArgumentException if a text is no volume, or a volume out of range
     */
    public Vessel holding(String brimVolume, String workingVolume) {
        return holding(Amount.volume(brimVolume), Amount.volume(workingVolume));
    }

    /**
     * The same vessel with one volume, up to which it may be filled: brim and working volume are the same. Somebody who
     * stirs in it leaves room, and gives {@linkplain #holding(String, String) both}.
     *
     * @param volume what it holds, above 0, for example {@code "120 mL"}
     * @return the vessel with its volume
     * @throws IllegalArgumentException if the text is no volume, or the volume not above 0
     */
    public Vessel holding(String volume) {
        Amount<Volume> both = Amount.volume(volume);
        return holding(both, both);
    }

    /**
     * What the vessel is called.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * The mass of the empty vessel.
     *
     * @return its mass, at least 0
     */
    public Amount<Mass> mass() {
        return mass;
    }

    /**
     * What the vessel holds to the brim.
     *
     * @return the brim volume, if known
     */
    public Optional<Amount<Volume>> brimVolume() {
        return Optional.ofNullable(brim);
    }

    /**
     * What can be worked in the vessel.
     *
     * @return the working volume, if known
     */
    public Optional<Amount<Volume>> workingVolume() {
        return Optional.ofNullable(working);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Vessel that
                && name.equals(that.name)
                && mass.equals(that.mass)
                && Objects.equals(brim, that.brim)
                && Objects.equals(working, that.working);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, mass, brim, working);
    }

    /**
     * The vessel in words.
     *
     * @param wording the words
     * @return its name, mass and volumes, as far as they are known
     */
    public String text(Wording wording) {
        Objects.requireNonNull(wording, "wording");
        String own = equals(NONE)
                ? wording.say("vessel.none")
                : mass.isZero() ? name : wording.say("vessel.with-mass", name, mass.toString());
        return brim == null || working == null
                ? own
                : wording.say("vessel.with-volume", own, working.toString(), brim.toString());
    }

    @Override
    public String toString() {
        String own = mass.isZero() ? name : name + " (" + mass + ")";
        return brim == null || working == null ? own : own + " for " + working + " of " + brim;
    }
}
