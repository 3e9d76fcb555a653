package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * A balance as its user knows it: the step of its display, what it can carry, and the least load it is meant for.
 *
 * <p>The readability d is the smallest step by which the displayed mass changes (OIML R 76-1, T.3.2.2, calls it the
 * actual scale interval; from memory). It may be 0.1 g, but also 0.2 g or 0.05 oz; amounts keep the unit they were given
 * in. The capacity counts everything on the pan, the vessel included.
 *
 * <p>What else is known of its errors is its {@link ErrorModel}. Two balances that are equal in all this are taken for one
 * and the same; a name tells twins apart.
 *
 * <p>Example: {@code Balance.of("0.1 g", "2000 g").withErrors(ErrorModel.readabilityOnly().withLinearityOfIndication("0.1 g"))}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param readability the step of the display, above 0
 * @param capacity the largest load, vessel included, at least the readability
 * @param minimumLoad the least net mass to weigh on it, from 0 to the capacity; 0 if none was given
 * @param errors what is known of its errors beyond its readability
 * @param name what it is called at the bench; empty if none was given
 */
public record Balance(
        Amount<Mass> readability, Amount<Mass> capacity, Amount<Mass> minimumLoad, ErrorModel errors, String name)
        implements Serializable {

    /**
     * Checks the amounts.
     *
     * @param readability the step of the display, above 0
     * @param capacity the largest load, at least the readability
     * @param minimumLoad the least net mass to weigh on it, from 0 to the capacity
     * @param errors what is known of its errors
     * @param name what it is called, or nothing
     * @throws IllegalArgumentException if an amount is out of range
     */
    public Balance {
        Amount.requirePositive("readability", readability);
        Amount.requirePositive("capacity", capacity);
        if (capacity.compareTo(readability) < 0) {
            throw new IllegalArgumentException(
                    "capacity is " + Excerpt.of(capacity) + ", less than one step of the display ("
                            + Excerpt.of(readability) + "): the two may have been exchanged");
        }
        if (Objects.requireNonNull(minimumLoad, "minimumLoad").signum() < 0 || minimumLoad.compareTo(capacity) > 0) {
            throw new IllegalArgumentException("minimumLoad is " + Excerpt.of(minimumLoad)
                    + ": it must lie between 0 and the capacity, " + Excerpt.of(capacity));
        }
        Objects.requireNonNull(errors, "errors");
        Objects.requireNonNull(name, "name");
    }

    /**
     * A balance.
     *
     * @param readability the step of the display, above 0
     * @param capacity the largest load, at least the readability
     * @return the balance, without a minimum load
     * @throws IllegalArgumentException if an amount is out of range
     */
    public static Balance of(Amount<Mass> readability, Amount<Mass> capacity) {
        return new Balance(
                readability,
                capacity,
                Objects.requireNonNull(readability, "readability").times(Ratio.ZERO),
                ErrorModel.readabilityOnly(),
                "");
    }

    /**
     * A balance, its figures as text.
     *
     * @param readability the step of the display, for example {@code "0.1 g"}
     * @param capacity the largest load, for example {@code "2 kg"}
     * @return the balance, without a minimum load
     * @throws IllegalArgumentException if a text is no mass, or an amount out of range
     */
    public static Balance of(String readability, String capacity) {
        return of(Amount.mass(readability), Amount.mass(capacity));
    }

    /**
     * The same balance with a least load below which its user does not trust it.
     *
     * @param load the least net mass to weigh on it, from 0 to the capacity
     * @return the balance with the minimum load
     * @throws IllegalArgumentException if the load is negative or above the capacity
     */
    public Balance withMinimumLoad(Amount<Mass> load) {
        return new Balance(readability, capacity, load, errors, name);
    }

    /**
     * The same balance with what is known of its errors.
     *
     * @param model the errors
     * @return the balance with them
     */
    public Balance withErrors(ErrorModel model) {
        return new Balance(readability, capacity, minimumLoad, model, name);
    }

    /**
     * The same balance under a name, to tell several apart.
     *
     * @param newName what it is called at the bench, for example {@code fine}; the index of its symbols in a working
     * @return the balance with the name
     * @throws IllegalArgumentException if the name is blank
     */
    public Balance named(String newName) {
        if (Objects.requireNonNull(newName, "newName").isBlank()) {
            throw new IllegalArgumentException("newName is blank: give the balance a name");
        }
        return new Balance(readability, capacity, minimumLoad, errors, newName);
    }

    /**
     * Whether the balance carries a load.
     *
     * @param load everything on the pan
     * @return true up to its capacity
     */
    public boolean carries(Amount<Mass> load) {
        return Objects.requireNonNull(load, "load").compareTo(capacity) <= 0;
    }

    /**
     * By how much a load is more than the balance carries.
     *
     * @param load everything on the pan
     * @return load minus capacity, in the unit of the readability; below 0 if the balance carries more
     */
    public Amount<Mass> excess(Amount<Mass> load) {
        return Objects.requireNonNull(load, "load").minus(capacity).inUnitOf(readability);
    }

    /**
     * The largest mass that can be weighed into a vessel on this balance.
     *
     * @param vessel the vessel on the pan
     * @return capacity minus vessel, in the unit of the readability
     * @throws IllegalArgumentException if the vessel alone is more than the balance carries
     */
    public Amount<Mass> capacityUnder(Vessel vessel) {
        Amount<Mass> excess = excess(Objects.requireNonNull(vessel, "vessel").mass());
        if (excess.signum() > 0) {
            throw new IllegalArgumentException("the vessel (" + vessel.mass().told() + ") alone overloads the balance ("
                    + capacity.told() + ") by " + excess.told() + ": take a lighter vessel");
        }
        return excess.unaryMinus();
    }

    /**
     * A mass in steps of the display, exactly.
     *
     * @param mass the mass
     * @return mass divided by readability, usually no whole number
     */
    public Ratio divisions(Amount<Mass> mass) {
        return Objects.requireNonNull(mass, "mass").canonical().dividedBy(readability.canonical());
    }

    @Override
    public String toString() {
        return "balance " + (name.isEmpty() ? "" : name + " ") + "d = " + readability.toldExactly() + ", capacity "
                + capacity.toldExactly()
                + (minimumLoad.isZero() ? "" : ", minimum load " + minimumLoad.toldExactly())
                + (errors.equals(ErrorModel.readabilityOnly()) ? "" : ", " + errors);
    }
}
