package io.github.formulationmath.planning;

import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A balance and what stands on it while lines of a batch are weighed there: the vessel in which the batch is made, or a
 * boat from which each addition is poured over.
 *
 * <p>Example: {@code WeighingStation.inVessel(kitchen, beaker)}, {@code WeighingStation.fromBoat(pocket, boat)}.
 *
 * <p>Immutable and thread-safe.
 */
public final class WeighingStation implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Balance balance;
    private final Vessel vessel;
    private final WeighingMethod method;

    private WeighingStation(Balance balance, Vessel vessel, WeighingMethod method) {
        this.balance = Objects.requireNonNull(balance, "balance");
        this.vessel = vessel;
        this.method = method;
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
        return new WeighingStation(balance, Objects.requireNonNull(vessel, "vessel"), WeighingMethod.TARE_EACH);
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
     * The balance.
     *
     * @return the balance
     */
    public Balance balance() {
        return balance;
    }

    /**
     * What stands on it.
     *
     * @return the vessel of the batch, or the boat
     */
    public Vessel vessel() {
        return vessel;
    }

    /**
     * How it is weighed there.
     *
     * @return tared before each addition, from a boat, or by difference of the boat before and after
     */
    public WeighingMethod method() {
        return method;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WeighingStation that
                && balance.equals(that.balance)
                && vessel.equals(that.vessel)
                && method == that.method;
    }

    @Override
    public int hashCode() {
        return Objects.hash(balance, vessel, method);
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
