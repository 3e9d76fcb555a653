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

/** What has to stay on one side of a bound: the share {@code Σ c_i·m_i / Σ m_i} over the lines of a whole. */
sealed interface CountedShare permits CountedShare.Capped, LimitedShare {

    /** What the criterion asks, in words. */
    Phrase name();

    /** Why no batch will do, if the target leaves no room. */
    Phrase obstacle();

    /** Refuses a formula to which the question does not belong. */
    void check(Formula formula);

    /** The lines of which the share is one. */
    List<FormulaLine> whole(Formula formula);

    /** The line that stands for the share: the one that carries most of it. */
    FormulaLine carrier(Formula formula);

    /** Whether the bound is a highest share, as against a lowest one. */
    boolean isUpper();

    /** The bound as a fraction of the whole. */
    Ratio bound();

    /** The bound in a working. */
    <V> V bound(Reckoning<V> r);

    /** How much of a line is counted, c. */
    Ratio strength(Formula formula, FormulaLine line);

    /** The same in a working. */
    <V> V strength(Reckoning<V> r, Formula formula, FormulaLine line);

    /** What errors that are not in proportion leave of the bound: {@code Σ (C − c_i)·w_i}, or its negative for a lowest one. */
    <V> V evenRoom(Reckoning<V> r, Formula formula);

    /** What has to be said with the answer. */
    default void caution(Reckoning<?> r) {}

    /** Whether more of a line brings the share nearer to the bound. */
    default boolean isHarmful(Formula formula, FormulaLine line) {
        int above = strength(formula, line).compareTo(bound());
        return isUpper() ? above > 0 : above < 0;
    }

    /** C − c, or c − C for a lowest share: positive if more of the line is harmless. */
    default <V> V lack(Reckoning<V> r, Formula formula, FormulaLine line) {
        V counted = strength(r, formula, line);
        return isUpper() ? r.difference(bound(r), counted) : r.difference(counted, bound(r));
    }

    /** One substance, through all lines that contain it, in the whole product. */
    record Capped(Substance substance, MassFraction cap) implements CountedShare {

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
}
