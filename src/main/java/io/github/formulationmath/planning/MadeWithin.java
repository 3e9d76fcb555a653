package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import java.io.Serial;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** Whole readings that add up keep every made share within tolerance. */
final class MadeWithin extends BatchCriterion {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Tolerances tolerances;
    private final Amount<Mass> readingError;

    MadeWithin(Tolerances tolerances, Amount<Mass> readingError) {
        this.tolerances = tolerances;
        this.readingError = readingError;
    }

    @Override
    Phrase name() {
        return readingError.isZero()
                ? Phrase.of("criterion.made-within", tolerances.toString())
                : Phrase.of("criterion.made-within-error", tolerances.toString(), readingError.toString());
    }

    @Override
    Bench showing(Bench bench) {
        return bench.closingWithin(tolerances, readingError);
    }

    @Override
    MadeRequirement of(Formula formula, Balance balance) {
        return new MadeRequirement(formula, balance, tolerances.checkedFor(formula), readingError);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MadeWithin that
                && tolerances.equals(that.tolerances)
                && readingError.equals(that.readingError);
    }

    @Override
    public int hashCode() {
        return Objects.hash(tolerances, readingError);
    }

    @Override
    public String toString() {
        return "every share as made within " + tolerances
                + (readingError.isZero() ? "" : ", readings off by up to " + readingError);
    }
}
