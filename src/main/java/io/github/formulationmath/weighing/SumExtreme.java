package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.MassBox.Felt;
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
    private final Felt felt;
    /** Which of the felt variables stand at their upper end. */
    private final boolean[] high;

    private final Ratio value;

    SumExtreme(MadeMasses masses, Weights weights, boolean largest) {
        this.masses = masses;
        this.weights = weights;
        this.largest = largest;
        MassBox box = masses.box();
        this.felt = box.felt(weights);
        this.high = new boolean[felt.size()];
        Ratio sum = box.fixed(weights);
        for (int i = 0; i < high.length; i++) {
            high[i] = felt.factor(i).signum() > 0 == largest;
            sum = sum.plus(felt.factor(i).times(end(felt.variable(i), high[i])));
        }
        this.value = sum;
    }

    private Ratio end(int variable, boolean up) {
        return masses.box().variables().get(variable).end(up);
    }

    /** Whether a variable stands at its upper end; one that this sum does not feel may stand anywhere. */
    private boolean isHigh(int variable, boolean otherwise) {
        int place = felt.placeOf(variable);
        return place < 0 ? otherwise : high[place];
    }

    Ratio value() {
        return value;
    }

    /** Whether no variable that this sum feels is felt by another. */
    boolean sharesNothingWith(SumExtreme other) {
        for (int i = 0; i < felt.size(); i++) {
            if (other.felt.placeOf(felt.variable(i)) >= 0) {
                return false;
            }
        }
        return true;
    }

    /** Another sum of the masses at the corner where this one is extreme; variables that it does not feel give most of the other. */
    Ratio at(Weights others) {
        MassBox box = masses.box();
        Felt entering = box.felt(others);
        Ratio sum = box.fixed(others);
        for (int i = 0; i < entering.size(); i++) {
            boolean up = isHigh(entering.variable(i), entering.factor(i).signum() > 0);
            sum = sum.plus(entering.factor(i).times(end(entering.variable(i), up)));
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
            return masses.relations().massAt(r, line, entry -> isHigh(box.variableOf(entry.term()), largest));
        }
        AdditionError error = masses.additions().get(line);
        return r.known(isHigh(box.massOf(line), largest) ? error.highest() : error.lowest());
    }
}
