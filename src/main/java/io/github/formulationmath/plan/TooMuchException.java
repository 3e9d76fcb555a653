package io.github.formulationmath.plan;

import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.number.Sentence;
import io.github.formulationmath.quantity.Amount;
import java.io.Serial;
import java.util.Objects;
import javax.measure.quantity.Mass;

/** A batch is too heavy or too full for its bench; carries which batch would do. */
abstract sealed class TooMuchException extends IllegalArgumentException implements Refusal
        permits OverloadException, OverfillException {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Sentence said;
    private final Amount<Mass> largestContent;

    TooMuchException(Sentence said, Amount<Mass> largestContent) {
        super(said.getMessage());
        this.said = said;
        this.largestContent = Objects.requireNonNull(largestContent, "largestContent");
    }

    /** The largest content in few digits, rounded down: less is carried and held wherever more is. */
    static String told(Amount<Mass> largestContent) {
        return BalanceUnit.greatest(largestContent, less -> less.compareTo(largestContent) <= 0);
    }

    @Override
    public Sentence said() {
        return said;
    }

    /**
     * The largest batch that the bench carries and holds.
     *
     * @return a mass that can be planned on the same bench, in the unit of the mass asked for: capacity minus vessel or what
     *     the vessel holds, if less, and if the readings of that would be too much, the largest whole number of divisions whose
     *     readings are not; of a line in a boat what the boat can take of it, in the unit of its balance
     */
    public Amount<Mass> largestContent() {
        return largestContent;
    }
}
