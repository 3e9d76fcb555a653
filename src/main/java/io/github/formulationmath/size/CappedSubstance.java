package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceShare;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.util.List;

/** One substance, through all lines that contain it, in the whole product. */
record CappedSubstance(Substance substance, MassFraction cap) implements CountedShare {

    private static final Symbol CAP = Symbol.of("C", "largest-permitted-share", Kind.SHARE);
    private static final Symbol STRENGTH = Symbol.of("c", "strength", Kind.SHARE);

    @Override
    public Phrase name() {
        return Phrase.of("criterion.cap-kept", substance.name(), cap.toString());
    }

    @Override
    public Phrase obstacle() {
        return Phrase.of("obstacle.target-at-cap", substance.name(), cap.toString());
    }

    @Override
    public void check(Formula formula) {
        share(formula);
    }

    @Override
    public List<FormulaLine> whole(Formula formula) {
        return formula.lines();
    }

    @Override
    public FormulaLine carrier(Formula formula) {
        return share(formula).lines().get(0);
    }

    private SubstanceShare share(Formula formula) {
        return formula.composition().shareOf(substance).orElseThrow(() -> absent(formula));
    }

    private IllegalArgumentException absent(Formula formula) {
        return new IllegalArgumentException(
                "a cap is set for " + Excerpt.of(substance) + ", which \"" + Excerpt.of(formula.name())
                        + "\" does not contain: name it as the formula does, or leave the cap out");
    }

    @Override
    public boolean isUpper() {
        return true;
    }

    @Override
    public Ratio bound() {
        return cap.fraction();
    }

    @Override
    public <V> V bound(Reckoning<V> r) {
        return r.given(CAP, cap.fraction(), Source.user());
    }

    /** The substance counts in every spelling that the formula has for it. */
    @Override
    public Ratio strength(Formula formula, FormulaLine line) {
        return share(formula).strengthIn(line.ingredient()).fraction();
    }

    @Override
    public <V> V strength(Reckoning<V> r, Formula formula, FormulaLine line) {
        Ratio strength = strength(formula, line);
        return strength.isZero() || strength.equals(Ratio.ONE)
                ? r.literal(strength)
                : r.given(STRENGTH, line, strength, Source.user());
    }

    @Override
    public <V> V evenRoom(Reckoning<V> r, Formula formula) {
        return r.difference(bound(r), r.known(share(formula)));
    }

    @Override
    public String toString() {
        return substance + " never above " + cap;
    }
}
