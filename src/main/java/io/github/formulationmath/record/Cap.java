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
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** The most that a substance may make up, and the strengths of the lines that bring it in. */
record Cap(int number, Substance substance, MassFraction most) implements Subject, Serializable {

    private static final Symbol CAP = Symbol.of("cap", "cap", Kind.SHARE);
    private static final Symbol STRENGTH = Symbol.of("c", "strength", Kind.SHARE);

    <V> V cap(Reckoning<V> r) {
        return r.given(CAP, this, most.fraction(), Sources.of(most));
    }

    /** Whether the substance is not to be there at all. */
    boolean isBan() {
        return most.fraction().isZero();
    }

    boolean isIn(FormulaLine line) {
        return line.ingredient().strengthOf(substance).isPresent();
    }

    <V> V strength(Reckoning<V> r, FormulaLine line) {
        Ratio strength = line.ingredient().strengthOf(substance).orElseThrow().fraction();
        return r.given(STRENGTH, Subject.of(number + "," + line.subscript(), line.name()), strength, Source.user());
    }

    /** What each line that contains the substance brings in, given an amount of each. */
    <V> List<V> parts(Reckoning<V> r, List<MadeLine> lines, Function<MadeLine, V> amount) {
        List<V> parts = new ArrayList<>();
        for (MadeLine line : lines) {
            if (isIn(line.line())) {
                parts.add(r.product(strength(r, line.line()), amount.apply(line)));
            }
        }
        return parts;
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
