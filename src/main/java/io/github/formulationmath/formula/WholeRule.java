package io.github.formulationmath.formula;

import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Symbol;

/** What the lines of a formula are shares of. */
enum WholeRule {
    /** Percentages that must make up 100 %. */
    HUNDRED_PERCENT("w", Kind.SHARE),
    /** Percentages that are divided by whatever they add up to, because the caller asked for it. */
    NORMALISED("a", Kind.SHARE),
    /** Parts, divided by their sum. */
    PARTS("p", Kind.NUMBER),
    /** Masses, divided by their sum. */
    MASSES("g", Kind.MASS),
    /** Masses and a q.s. line that fills up to a stated mass. */
    MASSES_TO_MAKE("g", Kind.MASS);

    private final Symbol written;
    private final Symbol whole;

    WholeRule(String letter, Kind kind) {
        this.written = Symbol.of(letter, "written-amount", kind);
        this.whole = Symbol.of(letter + "_total", "written-total", kind);
    }

    /** The symbol of an amount as written. */
    Symbol written() {
        return written;
    }

    /** The symbol of the whole. */
    Symbol whole() {
        return whole;
    }
}
