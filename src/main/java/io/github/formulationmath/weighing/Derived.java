package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;

/** A number and the relation it came from. */
record Derived(Phrase question, Ratio result, Relation relation) implements Explained {

    static Derived of(Phrase question, Relation relation) {
        return new Derived(question, relation.in(Reckoning.plain()), relation);
    }

    @Override
    public <V> V derive(Reckoning<V> reckoning) {
        return relation.in(reckoning);
    }

    @Override
    public String toString() {
        return result.toString();
    }
}
