package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import javax.measure.quantity.Mass;

/** A mass that the caller gives and nothing explains. */
record GivenMass(Symbol symbol, Subject subject, Ratio grams) implements Explained {

    private static final Symbol TARGET = Symbol.of("m", "target-mass", Kind.MASS);
    private static final Symbol READING = Symbol.of("r", "reading", Kind.MASS);

    static GivenMass target(Subject subject, Amount<Mass> mass) {
        return new GivenMass(TARGET, subject, mass.in(FormulationUnits.GRAM));
    }

    static GivenMass reading(Subject subject, Amount<Mass> mass) {
        return new GivenMass(READING, subject, mass.in(FormulationUnits.GRAM));
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.given-mass", subject.name());
    }

    @Override
    public Ratio result() {
        return grams;
    }

    @Override
    public <V> V derive(Reckoning<V> reckoning) {
        return reckoning.given(symbol, subject, grams, Source.user());
    }
}
