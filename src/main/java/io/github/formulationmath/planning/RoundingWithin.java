package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import java.io.Serial;
import org.jspecify.annotations.Nullable;

/** |n − x| ≤ τ·x. */
final class RoundingWithin extends BatchCriterion {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Tolerances tolerances;

    RoundingWithin(Tolerances tolerances) {
        this.tolerances = tolerances;
    }

    Tolerances tolerances() {
        return tolerances;
    }

    @Override
    Phrase name() {
        return Phrase.of("criterion.rounding-within", tolerances.toString());
    }

    @Override
    Bench showing(Bench bench) {
        return bench.closing(Closure.INDEPENDENT);
    }

    @Override
    Requirement of(Formula formula, Balance balance) {
        return new RoundingRequirement(formula, balance, tolerances.checkedFor(formula));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RoundingWithin that && tolerances.equals(that.tolerances);
    }

    @Override
    public int hashCode() {
        return tolerances.hashCode();
    }

    @Override
    public String toString() {
        return "rounding of each line within " + tolerances;
    }
}
