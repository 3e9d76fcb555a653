package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import java.io.Serial;
import org.jspecify.annotations.Nullable;

/** Every line a whole number of divisions. */
final class ExactReadings extends BatchCriterion {

    @Serial
    private static final long serialVersionUID = 1L;

    @Override
    Phrase name() {
        return Phrase.of("criterion.exact-readings");
    }

    @Override
    Requirement of(Formula formula, Balance balance) {
        return new ExactRequirement(formula, balance);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ExactReadings;
    }

    @Override
    public int hashCode() {
        return ExactReadings.class.getName().hashCode();
    }

    @Override
    public String toString() {
        return "every line a whole number of divisions";
    }
}
