package io.github.formulationmath.analysis;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Operation;
import io.github.formulationmath.reckoning.Operation.Arithmetic;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/**
 * The reckoning that differentiates while it reckons: a value carries its exact derivatives by the inputs it came from. Run over a
 * relation it gives the sensitivity coefficients of JCGM 100:2008, 5.1.3, without a formula of their own.
 */
final class Sensitivities implements Reckoning<Sensitivities.Slope> {

    private final Set<Key> inputs;

    /** Which given number of a relation is meant. */
    record Key(Symbol symbol, Subject subject, Ratio value) {}

    /** A value and its derivatives, those that are 0 left out. */
    record Slope(Ratio value, Map<Key, Ratio> by) {

        static Slope constant(Ratio value) {
            return new Slope(value, Map.of());
        }

        Ratio by(Key input) {
            return by.getOrDefault(input, Ratio.ZERO);
        }
    }

    Sensitivities(Set<Key> inputs) {
        this.inputs = Set.copyOf(inputs);
    }

    /** p · da + q · db. */
    private static Map<Key, Ratio> combined(Slope a, Ratio p, Slope b, Ratio q) {
        Map<Key, Ratio> slopes = new HashMap<>();
        a.by().forEach((key, slope) -> slopes.merge(key, slope.times(p), Ratio::plus));
        b.by().forEach((key, slope) -> slopes.merge(key, slope.times(q), Ratio::plus));
        return slopes;
    }

    @Override
    public Ratio number(Slope value) {
        return value.value();
    }

    @Override
    public Slope literal(Ratio value) {
        return Slope.constant(value);
    }

    @Override
    public Slope literal(long value) {
        return Slope.constant(Ratio.of(value));
    }

    @Override
    public Slope given(Symbol symbol, Subject subject, Ratio value, Source source) {
        Key key = new Key(symbol, subject, value);
        return inputs.contains(key) ? new Slope(value, Map.of(key, Ratio.ONE)) : Slope.constant(value);
    }

    @Override
    public Slope known(Explained earlier) {
        return earlier.origin().derive(this);
    }

    @Override
    public Slope named(Symbol symbol, Subject subject, Slope value) {
        return value;
    }

    @Override
    public Slope apply(Operation operation, List<Slope> values) {
        if (operation != Arithmetic.SUM) {
            throw new UnsupportedOperationException(operation + " has corners: no sensitivity is defined there");
        }
        Slope sum = Slope.constant(Ratio.ZERO);
        for (Slope value : values) {
            sum = sum(sum, value);
        }
        return sum;
    }

    @Override
    public Slope sum(Slope a, Slope b) {
        return new Slope(a.value().plus(b.value()), combined(a, Ratio.ONE, b, Ratio.ONE));
    }

    @Override
    public Slope difference(Slope a, Slope b) {
        return new Slope(a.value().minus(b.value()), combined(a, Ratio.ONE, b, Ratio.of(-1)));
    }

    @Override
    public Slope product(Slope a, Slope b) {
        return new Slope(a.value().times(b.value()), combined(a, b.value(), b, a.value()));
    }

    @Override
    public Slope quotient(Slope a, Slope b) {
        Ratio one = b.value().reciprocal();
        Ratio quotient = a.value().times(one);
        return new Slope(quotient, combined(a, one, b, quotient.times(one).unaryMinus()));
    }

    @Override
    public Slope rounded(Slope a, Rounding rounding) {
        throw new UnsupportedOperationException(rounding + " has steps: no sensitivity is defined there");
    }

    @Override
    public boolean holds(Slope a, Comparison comparison, Slope b) {
        return comparison.holds(a.value(), b.value());
    }

    @Override
    public void note(Supplier<Phrase> phrase) {
        // Nobody reads it.
    }
}
