package io.github.formulationmath.pot;

import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Symbol;

/** The letters for what is in the pot; each mending has its own, so that before and after can meet in one working. */
record PotSymbols(int stage) {

    Symbol mass() {
        return Symbol.of("z" + mark(), "made-mass", Kind.MASS);
    }

    Symbol total() {
        return Symbol.of("Z" + mark(), "made-total", Kind.MASS);
    }

    Symbol share() {
        return Symbol.of("v" + mark(), "made-share", Kind.SHARE);
    }

    Symbol added() {
        return Symbol.of("x" + mark(), "added-mass", Kind.MASS);
    }

    Symbol contentNow() {
        return Symbol.of("Znow" + mark(), "content-now", Kind.MASS);
    }

    Symbol evaporated() {
        return Symbol.of("E" + mark(), "evaporated-mass", Kind.MASS);
    }

    PotSymbols next() {
        return new PotSymbols(stage + 1);
    }

    private String mark() {
        return stage == 0 ? "" : Integer.toString(stage);
    }
}
