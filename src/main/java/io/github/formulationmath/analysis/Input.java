package io.github.formulationmath.analysis;

import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;

/**
 * A number of a relation that is uncertain. Two inputs that are equal are one, so that a factor shared by two titrations is counted
 * once.
 */
record Input(Symbol symbol, Subject subject, Estimate<?> estimate) {

    <V> V in(Reckoning<V> r) {
        return r.given(symbol, subject, estimate.value(), Source.user());
    }

    Sensitivities.Key key() {
        return new Sensitivities.Key(symbol, subject, estimate.value().canonical());
    }

    /** The symbol with its index, as V(sample). */
    @Override
    public String toString() {
        return symbol.letter() + "(" + subject.subscript() + ")";
    }
}
