package io.github.formulationmath.weighing;

/**
 * How one addition after another is weighed.
 *
 * <p>Example: on a display of 0.1 g an addition hides up to 0.05 g when tared and up to 0.05 g when read, by any of these
 * methods; they differ in which of the two is shared with the neighbours, and in what stays behind.
 */
public enum WeighingMethod {
    /** The balance is tared before every addition: the errors of the additions have nothing in common but the scale. */
    TARE_EACH,
    /**
     * The balance is tared once, and the readings add up. An addition is the difference of two readings, each of which
     * is the end of one addition and the beginning of the next: what the one has too much, the other has too little.
     */
    CUMULATIVE,
    /** Every addition is weighed in a tared boat and poured over; what stays in the boat is missing. */
    FROM_BOAT,
    /**
     * Every addition is the difference of two readings of a boat, before and after it was poured over. What stays in the
     * boat is weighed back, and so is no error; the tare is none either, for it is in both readings.
     */
    BY_DIFFERENCE;

    /**
     * Whether additions are weighed in a boat of their own, which with them is all that rests on the balance, and not in
     * the vessel of the batch.
     *
     * @return true for {@link #FROM_BOAT} and {@link #BY_DIFFERENCE}
     */
    public boolean usesBoat() {
        return this == FROM_BOAT || this == BY_DIFFERENCE;
    }
}
