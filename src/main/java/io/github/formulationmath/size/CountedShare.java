package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import java.util.List;

/** What has to stay on one side of a bound: the share {@code Σ c_i·m_i / Σ m_i} over the lines of a whole. */
sealed interface CountedShare permits CappedSubstance, LimitedShare {

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
}
