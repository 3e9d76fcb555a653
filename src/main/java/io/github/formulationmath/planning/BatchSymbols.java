package io.github.formulationmath.planning;

import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;

/** The symbols that the relations about batch sizes share. */
final class BatchSymbols {

    static final Symbol READABILITY = Symbol.of("d", "readability", Kind.MASS);
    static final Symbol LINE_MASS = Symbol.of("m", "line-mass", Kind.MASS);
    static final Symbol LEAST_FOR = Symbol.of("M", "least-batch-for", Kind.MASS);
    static final Symbol LEAST = Symbol.of("M", "least-batch", Kind.MASS);
    static final Symbol LOWER = Symbol.of("M", "smallest-of-window", Kind.MASS);
    static final Symbol UPPER = Symbol.of("M", "largest-of-window", Kind.MASS);

    static final Subject MIN = Subject.of("min", "");
    static final Subject LOW = Subject.of("low", "");
    static final Subject HIGH = Subject.of("high", "");

    private BatchSymbols() {}

    static <V> V readability(Reckoning<V> r, Balance balance) {
        return r.given(READABILITY, balance.gramsPerDivision(), Source.user());
    }
}
