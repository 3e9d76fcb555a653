package io.github.formulationmath.pot;

import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Symbol;

/** The letters for what is in the pot; each mending has its own, so that before and after can meet in one working. */
record PotSymbols(int stage) {

    private static final int PRIMES = 3;

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
        return Symbol.of("Z" + mark() + (stage > PRIMES ? "" : "_") + "now", "content-now", Kind.MASS);
    }

    Symbol evaporated() {
        return Symbol.of("E" + mark(), "evaporated-mass", Kind.MASS);
    }

    PotSymbols next() {
        return new PotSymbols(stage + 1);
    }

    /** z, z′, z′′, z′′′, and then z_(4): no plain number, which would be the index of a line. */
    private String mark() {
        return stage > PRIMES ? "_(" + stage + ")" : "′".repeat(stage);
    }
}
