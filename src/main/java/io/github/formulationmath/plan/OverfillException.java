package io.github.formulationmath.plan;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Sentence;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Vessel;
import java.io.Serial;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** A batch takes more room than can be worked in the vessel; carries by how much, and which batch would fit. */
public final class OverfillException extends TooMuchException {

    @Serial
    private static final long serialVersionUID = 3L;

    private final Amount<Volume> excess;

    /** Says no more than its parent, so that who may throw it does not load it before. */
    static IllegalArgumentException of(
            String batch, Amount<Volume> volume, Vessel vessel, Amount<Volume> room, Amount<Mass> largestContent) {
        Amount<Volume> excess = volume.inUnitOf(room).minus(room);
        return new OverfillException(
                Sentence.of(
                        "refusal.overfill",
                        "{batch} takes {volume} and overfills {vessel} (working volume {room}) by {excess}: at most"
                                + " {largest} fit; make less or take a larger vessel",
                        "batch",
                        Excerpt.of(batch),
                        "volume",
                        volume.inUnitOf(room).told(),
                        "vessel",
                        Excerpt.of(vessel),
                        "room",
                        room.told(),
                        "excess",
                        excess.told(),
                        "largest",
                        told(largestContent)),
                excess,
                largestContent);
    }

    private OverfillException(Sentence said, Amount<Volume> excess, Amount<Mass> largestContent) {
        super(said, largestContent);
        this.excess = excess;
    }

    /**
     * By how much the batch passes the working volume.
     *
     * @return the excess, above 0, in the unit of the working volume
     */
    public Amount<Volume> excess() {
        return excess;
    }
}
