package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import javax.measure.quantity.Mass;

/**
 * The largest or the least Σ c·m over everything the masses may be. It is affine in the variables of the box, so that each of them
 * stands at the end that the sign of its own sensitivity asks for.
 */
final class SumExtreme {

    private static final Symbol LOWEST = Symbol.of("S_lo", "lowest-weighted-sum", Kind.MASS);
    private static final Symbol HIGHEST = Symbol.of("S_hi", "highest-weighted-sum", Kind.MASS);

    private final MadeMasses masses;
    private final Weights weights;
    private final boolean largest;
    private final Map<Integer, Boolean> high = new HashMap<>();
    private final Ratio value;

    SumExtreme(MadeMasses masses, Weights weights, boolean largest) {
        this.masses = masses;
        this.weights = weights;
        this.largest = largest;
        MassBox box = masses.box();
        Ratio sum = box.fixed(weights);
        for (Map.Entry<Integer, Ratio> entry : box.sensitivities(weights).entrySet()) {
            boolean up = entry.getValue().signum() > 0 == largest;
            high.put(entry.getKey(), up);
            sum = sum.plus(
                    entry.getValue().times(box.variables().get(entry.getKey()).end(up)));
        }
        this.value = sum;
    }

    Ratio value() {
        return value;
    }

    /** Whether no variable that this sum feels is felt by another. */
    boolean sharesNothingWith(SumExtreme other) {
        return Collections.disjoint(high.keySet(), other.high.keySet());
    }

    /** Another sum of the masses at the corner where this one is extreme; variables that it does not feel give most of the other. */
    Ratio at(Weights others) {
        MassBox box = masses.box();
        Ratio sum = box.fixed(others);
        for (Map.Entry<Integer, Ratio> entry : box.sensitivities(others).entrySet()) {
            boolean up = high.getOrDefault(entry.getKey(), entry.getValue().signum() > 0);
            sum = sum.plus(
                    entry.getValue().times(box.variables().get(entry.getKey()).end(up)));
        }
        return sum;
    }

    Amount<Mass> sum() {
        return Amount.grams(value)
                .withWorking(SumExtreme::question, this, SumExtreme::in)
                .inUnitOf(masses.relations().additions().get(0).reading());
    }

    private Phrase question() {
        return Phrase.of(largest ? "question.highest-weighted-sum" : "question.lowest-weighted-sum");
    }

    private <V> V in(Reckoning<V> r) {
        return r.named(largest ? HIGHEST : LOWEST, masses.relations().weighted(r, weights, line -> massAt(r, line)));
    }

    private <V> V massAt(Reckoning<V> r, int line) {
        MassBox box = masses.box();
        if (box.isShared(line)) {
            return masses.relations()
                    .massAt(r, line, entry -> high.getOrDefault(box.variableOf(entry.term()), largest));
        }
        AdditionError error = masses.additions().get(line);
        return r.known(high.getOrDefault(box.massOf(line), largest) ? error.highest() : error.lowest());
    }
}
