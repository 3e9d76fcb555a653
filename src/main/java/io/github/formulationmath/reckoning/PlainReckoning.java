package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Entry.Comparison;
import java.util.List;
import java.util.function.Supplier;

/** Bare numbers: nothing is recorded or allocated beyond the results. */
enum PlainReckoning implements Reckoning<Ratio> {
    INSTANCE;

    @Override
    public Ratio number(Ratio value) {
        return value;
    }

    @Override
    public Ratio literal(Ratio value) {
        return value;
    }

    @Override
    public Ratio literal(long value) {
        return Ratio.of(value);
    }

    @Override
    public Ratio given(Symbol symbol, Subject subject, Ratio value, Source source) {
        return value;
    }

    @Override
    public Ratio given(Symbol symbol, Subject subject, Ratio value, Supplier<Source> source) {
        return value;
    }

    @Override
    public Ratio known(Explained earlier) {
        return earlier.origin().number();
    }

    @Override
    public Ratio named(Symbol symbol, Subject subject, Ratio value) {
        return value;
    }

    @Override
    public Ratio apply(Operation operation, List<Ratio> inputs) {
        return operation.apply(inputs);
    }

    @Override
    public Ratio sum(Ratio a, Ratio b) {
        return a.plus(b);
    }

    @Override
    public Ratio difference(Ratio a, Ratio b) {
        return a.minus(b);
    }

    @Override
    public Ratio product(Ratio a, Ratio b) {
        return a.times(b);
    }

    @Override
    public Ratio quotient(Ratio a, Ratio b) {
        return a.dividedBy(b);
    }

    @Override
    public Ratio rounded(Ratio a, Rounding rounding) {
        return rounding.apply(a);
    }

    @Override
    public boolean holds(Ratio a, Comparison comparison, Ratio b) {
        return comparison.holds(a, b);
    }

    @Override
    public void note(Supplier<Phrase> phrase) {
        // Nobody reads it.
    }
}
