package io.github.formulationmath.limit;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.limit.LimitKind.End;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;

/**
 * What one line brings in of one counted substance: {@code c · F}, divided by the substance's own limit in a sum of
 * ratios.
 */
record Contribution(int place, FormulaLine line, Substance substance, Ratio strength, Counting counting)
        implements Subject {

    private static final Symbol STRENGTH = Symbol.of("c", "counted-strength", Kind.SHARE);
    private static final Symbol OWN_LIMIT = Symbol.of("L", "own-limit", Kind.SHARE);

    /** How much of the line counts; what is not known, at the greatest content possible. */
    <V> V weight(Reckoning<V> r) {
        V strengthOrOne = strength.equals(Ratio.ONE) ? r.literal(1) : r.given(STRENGTH, this, strength, Source.user());
        V converted = converted(r, strengthOrOne);
        UsageLimit own = counting.own();
        return own == null
                ? converted
                : r.quotient(
                        converted,
                        r.given(
                                OWN_LIMIT,
                                this,
                                own.share().fraction(),
                                own.citation().source()));
    }

    /** The same as a bare number, if what is converted through molar masses is as little, or as much, as it surely is. */
    Ratio weightAt(End end) {
        Ratio converted = strength.times(counting.conversion().factorAt(end));
        UsageLimit own = counting.own();
        return own == null ? converted : converted.dividedBy(own.share().fraction());
    }

    private <V> V converted(Reckoning<V> r, V strengthOrOne) {
        if (counting.conversion().isIdentity()) {
            return strengthOrOne;
        }
        V factor = counting.conversion().in(r, this);
        return strength.equals(Ratio.ONE) ? factor : r.product(strengthOrOne, factor);
    }

    /** Whether the whole line counts, neither more nor less. */
    boolean isWhole() {
        return strength.equals(Ratio.ONE) && counting.conversion().isIdentity() && counting.own() == null;
    }

    @Override
    public String subscript() {
        return line.subscript() + (place == 0 ? "" : "." + place);
    }

    @Override
    public String name() {
        return SubstanceName.areAlike(substance.name(), line.name())
                ? substance.name()
                : substance.name() + " in " + line.name();
    }
}
