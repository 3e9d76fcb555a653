package io.github.formulationmath.planning;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Vessel;
import java.io.Serial;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** A batch takes more room than can be worked in the vessel; carries by how much, and which batch would fit. */
public final class OverfillException extends IllegalArgumentException {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Amount<Volume> excess;
    private final Amount<Mass> largestContent;

    OverfillException(
            String batch, Amount<Volume> volume, Vessel vessel, Amount<Volume> room, Amount<Mass> largestContent) {
        super(Excerpt.of(batch) + " takes " + Excerpt.of(volume) + " and overfills " + Excerpt.of(vessel)
                + " (working volume " + Excerpt.of(room) + ") by " + Excerpt.of(volume.minus(room)) + ": at most "
                + Excerpt.of(largestContent) + " fit; make less or take a larger vessel");
        this.excess = volume.minus(room);
        this.largestContent = largestContent;
    }

    /**
     * By how much the batch passes the working volume.
     *
     * @return the excess, above 0
     */
    public Amount<Volume> excess() {
        return excess;
    }

    /**
     * The largest batch that fits.
     *
     * @return a mass that can be planned on the same bench, as {@link OverloadException#largestContent()}
     */
    public Amount<Mass> largestContent() {
        return largestContent;
    }
}
