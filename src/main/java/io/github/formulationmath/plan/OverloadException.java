package io.github.formulationmath.plan;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.number.Sentence;
import io.github.formulationmath.quantity.Amount;
import java.io.Serial;
import javax.measure.quantity.Mass;

/** A batch and its vessel are more than the balance carries; carries by how much, and which batch would fit. */
public final class OverloadException extends IllegalArgumentException implements Refusal {

    @Serial
    private static final long serialVersionUID = 2L;

    private final Sentence said;
    private final Amount<Mass> excess;
    private final Amount<Mass> largestContent;

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
                        Excerpt.of(bench.balance().capacity()),
                        "excess",
                        excess.told(),
                        "largest",
                        BalanceUnit.greatest(largestContent, mass -> mass.compareTo(largestContent) <= 0)),
                excess,
                largestContent);
    }

    private OverloadException(Sentence said, Amount<Mass> excess, Amount<Mass> largestContent) {
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
     * By how much the load passes the capacity.
     *
     * @return the excess, above 0
     */
    public Amount<Mass> excess() {
        return excess;
    }

    /**
     * The largest batch that could be weighed in this vessel.
     *
     * @return a mass that can be planned on the same bench: capacity minus vessel or what the vessel holds, if less, and if
     *     the readings of that would be too much, the largest whole number of divisions whose readings are not
     */
    public Amount<Mass> largestContent() {
        return largestContent;
    }
}
