package io.github.formulationmath.plan;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.number.Sentence;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Vessel;
import java.io.Serial;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** A batch takes more room than can be worked in the vessel; carries by how much, and which batch would fit. */
public final class OverfillException extends IllegalArgumentException implements Refusal {

    @Serial
    private static final long serialVersionUID = 2L;

    private final Sentence said;
    private final Amount<Volume> excess;
    private final Amount<Mass> largestContent;

    /** Says no more than its parent, so that who may throw it does not load it before. */
    static IllegalArgumentException of(
            String batch, Amount<Volume> volume, Vessel vessel, Amount<Volume> room, Amount<Mass> largestContent) {
        Amount<Volume> needed = volume.inUnitOf(room);
        return new OverfillException(
                Sentence.of(
                        "refusal.overfill",
                        "{batch} takes {volume} and overfills {vessel} (working volume {room}) by {excess}: at most"
                                + " {largest} fit; make less or take a larger vessel",
                        "batch",
                        Excerpt.of(batch),
                        "volume",
                        needed.told(),
                        "vessel",
                        Excerpt.of(vessel),
                        "room",
                        Excerpt.of(room),
                        "excess",
                        needed.minus(room).told(),
                        "largest",
                        BalanceUnit.greatest(largestContent, mass -> mass.compareTo(largestContent) <= 0)),
                needed.minus(room),
                largestContent);
    }

    private OverfillException(Sentence said, Amount<Volume> excess, Amount<Mass> largestContent) {
        super(said.getMessage());
        this.said = said;
        this.excess = excess;
        this.largestContent = largestContent;
    }

    @Override
    public Sentence said() {
        return said;
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
