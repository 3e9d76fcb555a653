package io.github.formulationmath.limit;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;

/** Evidence that is nothing but numbers. */
record NumberEvidence(Ratio value, Ratio lowest, Ratio highest, Ratio variance) implements Evidence {

    private static final Symbol VALUE = Symbol.of("y", "counted-share", Kind.SHARE);
    private static final Symbol LOWEST = Symbol.of("ylo", "counted-lowest", Kind.SHARE);
    private static final Symbol HIGHEST = Symbol.of("yhi", "counted-highest", Kind.SHARE);
    private static final Symbol VARIANCE = Symbol.of("vy", "counted-variance", Kind.NUMBER);

    static NumberEvidence of(Ratio value, Bounds interval, Ratio variance) {
        Ratio low = interval.lower().orElseThrow(() -> open(interval));
        Ratio high = interval.upper().orElseThrow(() -> open(interval));
        return new NumberEvidence(value, low, high, variance);
    }

    private static IllegalArgumentException open(Bounds interval) {
        return new IllegalArgumentException("interval is " + Excerpt.of(interval) + ": give both ends");
    }

    @Override
    public <V> V value(Reckoning<V> r) {
        return r.given(VALUE, value, Source.user());
    }

    @Override
    public <V> V lowest(Reckoning<V> r) {
        return r.given(LOWEST, lowest, Source.user());
    }

    @Override
    public <V> V highest(Reckoning<V> r) {
        return r.given(HIGHEST, highest, Source.user());
    }

    @Override
    public <V> V variance(Reckoning<V> r) {
        return r.given(VARIANCE, variance, Source.user());
    }
}
