package io.github.formulationmath.weighing;

import io.github.formulationmath.quantity.Amount;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * A balance and what stands on it while lines of a batch are weighed there: the vessel in which the batch is made, or a
 * boat from which each addition is poured over.
 *
 * <p>Example: {@code WeighingStation.inVessel(kitchen, beaker)}, {@code WeighingStation.fromBoat(pocket, boat)}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param balance the balance
 * @param vessel what stands on it: the vessel of the batch, or the boat
 * @param method how it is weighed there: tared before each addition, from a boat, or by difference of the boat before and
 *     after
 */
public record WeighingStation(Balance balance, Vessel vessel, WeighingMethod method) implements Serializable {

    /**
     * Refuses what no station is.
     *
     * @param balance the balance
     * @param vessel what stands on it
     * @param method how it is weighed there
     * @throws IllegalArgumentException if the method is {@link WeighingMethod#CUMULATIVE}: a line may be weighed elsewhere
     *     before it
     */
    public WeighingStation {
        Objects.requireNonNull(balance, "balance");
        Objects.requireNonNull(vessel, "vessel");
        if (Objects.requireNonNull(method, "method") == WeighingMethod.CUMULATIVE) {
            throw new IllegalArgumentException("method is " + method
                    + ": a station is tared before each addition, for other lines may be weighed elsewhere");
        }
    }

    /**
     * A balance under the vessel of the batch, tared before every addition. It carries the vessel, all lines before and the
     * addition.
     *
     * @param balance the balance
     * @param vessel the vessel in which the batch is made
     * @return the station
     */
    public static WeighingStation inVessel(Balance balance, Vessel vessel) {
        return new WeighingStation(balance, vessel, WeighingMethod.TARE_EACH);
    }

    /**
     * A balance under a boat. It carries the boat and the addition alone; what stays in the boat is an error of its own
     * ({@link io.github.formulationmath.weighing.ErrorModel#withResidue}).
     *
     * @param balance the balance
     * @param boat the boat
     * @return the station
     */
    public static WeighingStation fromBoat(Balance balance, Vessel boat) {
        return new WeighingStation(balance, Objects.requireNonNull(boat, "boat"), WeighingMethod.FROM_BOAT);
    }

    /**
     * A balance under a boat that is read before and after it is poured over, so that what stays in the boat is no error.
     * It carries the boat and the addition alone.
     *
     * @param balance the balance
     * @param boat the boat
     * @return the station
     */
    public static WeighingStation byDifference(Balance balance, Vessel boat) {
        return new WeighingStation(balance, Objects.requireNonNull(boat, "boat"), WeighingMethod.BY_DIFFERENCE);
    }

    /**
     * Whether an addition is weighed apart from the pot, in a boat with which it is all that rests on the balance.
     *
     * @return true if the vessel is a boat
     */
    public boolean isBoat() {
        return method.usesBoat();
    }

    /**
     * What the balance still carries beside the vessel.
     *
     * @return capacity minus vessel, in the unit of the readability
     * @throws IllegalArgumentException if the vessel alone is more than the balance carries
     */
    public Amount<Mass> room() {
        return balance.capacityUnder(vessel);
    }

    @Override
    public String toString() {
        return balance
                + switch (method) {
                    case TARE_EACH, CUMULATIVE -> ", in ";
                    case FROM_BOAT -> ", from ";
                    case BY_DIFFERENCE -> ", by difference of ";
                }
                + vessel;
    }
}
