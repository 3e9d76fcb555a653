package io.github.formulationmath.choice;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.size.Criterion;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * A formula that is to be made at some size of a range, and what must hold of each of its lines then. One such size is enough.
 *
 * <p>Example: {@code Demand.of(lotion, "20 g", "100 g", "5 %")}: a test batch of at most 100 g in which the display may round each
 * line by 5 % of it.
 *
 * <p>Immutable and thread-safe.
 *
 * @param formula the formula
 * @param sizes the batch sizes wanted, from a least, 0 or more, to a greatest, above 0
 * @param criterion what must hold of each line; one that looks at lines together (a cap, a total) is refused when it is asked about
 * @param step the step of which the size is to be a multiple, if there is one
 */
public record Demand(Formula formula, Interval<Amount<Mass>> sizes, Criterion criterion, Optional<Amount<Mass>> step) {

    /**
     * Checks the sizes.
     *
     * @param formula the formula
     * @param sizes the batch sizes wanted
     * @param criterion what must hold of each line
     * @param step the step, if there is one
     * @throws IllegalArgumentException if the least size is negative, or the greatest or the step is not above 0
     */
    public Demand {
        Objects.requireNonNull(formula, "formula");
        Amount.requireNotNegative(
                "sizes.least", Objects.requireNonNull(sizes, "sizes").least());
        Amount.requirePositive("sizes.greatest", sizes.greatest());
        Objects.requireNonNull(criterion, "criterion");
        Objects.requireNonNull(step, "step").ifPresent(every -> Amount.requirePositive("step", every));
    }

    /**
     * A formula at some size of a range, under a criterion.
     *
     * @param formula the formula
     * @param least the least size wanted, for example {@code "20 g"}; 0 if any will do
     * @param greatest the greatest size wanted, for example {@code "100 g"}
     * @param criterion what must hold of each line
     * @return the demand
     * @throws IllegalArgumentException if a text is no mass or out of range
     */
    public static Demand of(Formula formula, String least, String greatest, Criterion criterion) {
        Interval<Amount<Mass>> sizes = Interval.of(Amount.mass(least), Amount.mass(greatest));
        return new Demand(formula, sizes, criterion, Optional.empty());
    }

    /**
     * A formula at some size of a range, each line of which the display rounds by no more than a tolerance ({@link
     * Criterion#roundingWithin}).
     *
     * @param formula the formula
     * @param least the least size wanted, for example {@code "20 g"}
     * @param greatest the greatest size wanted, for example {@code "100 g"}
     * @param tolerance how far a line may be off by rounding, as a share of it, for example {@code "5 %"}
     * @return the demand
     * @throws IllegalArgumentException if a text is no mass or no share, or out of range
     */
    public static Demand of(Formula formula, String least, String greatest, String tolerance) {
        return of(formula, least, greatest, Criterion.roundingWithin(Tolerances.of(tolerance)));
    }

    /**
     * The same with sizes that are whole multiples of a step.
     *
     * @param every the step, above 0, for example {@code "5 g"}
     * @return the demand
     * @throws IllegalArgumentException if the text is no mass or not above 0
     */
    public Demand inStepsOf(String every) {
        return new Demand(formula, sizes, criterion, Optional.of(Amount.mass(every)));
    }

    /** The same formula up to another size. */
    Demand upTo(Amount<Mass> greatest) {
        return new Demand(formula, Interval.of(sizes.least(), greatest), criterion, step);
    }

    @Override
    public String toString() {
        return formula.name() + " at " + sizes.least() + " to " + sizes.greatest()
                + step.map(every -> " in steps of " + every).orElse("") + ", " + criterion;
    }
}
