package io.github.formulationmath.plan;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Sentence;
import io.github.formulationmath.quantity.Amount;
import java.io.Serial;
import javax.measure.quantity.Mass;

/** A batch and its vessel are more than the balance carries; carries by how much, and which batch would fit. */
public final class OverloadException extends TooMuchException {

    @Serial
    private static final long serialVersionUID = 3L;

    private final Amount<Mass> excess;

    /** Says no more than its parent, so that who may throw it does not load it before. */
    static IllegalArgumentException of(String batch, Bench bench, Amount<Mass> excess, Amount<Mass> largestContent) {
        return new OverloadException(
                Sentence.of(
                        "refusal.overload",
                        "{batch} in {vessel} overloads the balance (capacity {capacity}) by {excess}: at most {largest} can"
                                + " be weighed in this vessel; make less, take a lighter vessel, or a balance that carries"
                                + " more",
                        "batch",
                        Excerpt.of(batch),
                        "vessel",
                        Excerpt.of(bench.vessel()),
                        "capacity",
                        bench.balance().capacity().told(),
                        "excess",
                        excess.told(),
                        "largest",
                        told(largestContent)),
                excess,
                largestContent);
    }

    private OverloadException(Sentence said, Amount<Mass> excess, Amount<Mass> largestContent) {
        super(said, largestContent);
        this.excess = excess;
    }

    /**
     * By how much the load passes the capacity.
     *
     * @return the excess, above 0, in the unit of the mass asked for
     */
    public Amount<Mass> excess() {
        return excess;
    }
}
