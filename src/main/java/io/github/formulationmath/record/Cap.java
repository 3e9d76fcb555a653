package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.io.Serializable;

/** The most that a substance may make up, and the strengths of the lines that bring it in. */
record Cap(int number, Substance substance, MassFraction most) implements Subject, Serializable {

    private static final Symbol CAP = Symbol.of("cap", "cap", Kind.SHARE);
    private static final Symbol STRENGTH = Symbol.of("c", "strength", Kind.SHARE);

    <V> V cap(Reckoning<V> r) {
        return r.given(
                CAP,
                this,
                most.fraction(),
                most.asWritten().map(Source::written).orElseGet(Source::user));
    }

    boolean isIn(FormulaLine line) {
        return line.ingredient().strengthOf(substance).isPresent();
    }

    <V> V strength(Reckoning<V> r, FormulaLine line) {
        Ratio strength = line.ingredient().strengthOf(substance).orElseThrow().fraction();
        return r.given(STRENGTH, Subject.of(number + "," + line.subscript(), line.name()), strength, Source.user());
    }

    @Override
    public String subscript() {
        return Integer.toString(number);
    }

    @Override
    public String name() {
        return substance.name();
    }
}
