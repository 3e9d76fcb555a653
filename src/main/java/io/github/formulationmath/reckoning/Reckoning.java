package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Operation.Arithmetic;
import io.github.formulationmath.reckoning.Operation.StatisticalFunction;
import java.util.List;
import java.util.function.Supplier;

/**
 * The arithmetic a relation is written in. One relation, two ways to run it: {@link #plain()} computes bare numbers, a
 * {@link Working} records while computing. Both go through the same {@link Operation}s.
 *
 * <p>Values are exact numbers in the canonical unit of their {@link Kind}. Operations give unnamed values; {@link
 * #named(Symbol, Object) named} turns one into a step that is printed on a line of its own, with whatever unnamed
 * operations led to it written out in its formula.
 *
 * <pre>{@code
 * static <V> V lineMass(Reckoning<V> r, V share, V batchMass) {
 *     return r.named(LINE_MASS, r.product(share, batchMass));      // m = w · M
 * }
 * }</pre>
 *
 * @param <V> what a value is: {@link Ratio} when plain, {@link Term} when recording
 */
public interface Reckoning<V> {

    /**
     * The reckoning that records nothing.
     *
     * @return bare exact arithmetic
     */
    static Reckoning<Ratio> plain() {
        return PlainReckoning.INSTANCE;
    }

    /**
     * The number behind a value, to decide which way a relation goes.
     *
     * @param value the value
     * @return the exact number in the canonical unit of its kind
     */
    Ratio number(V value);

    /**
     * A number that belongs to the relation itself, like the 2 of d/2.
     *
     * @param value the number
     * @return the value
     */
    V literal(Ratio value);

    /**
     * A whole number that belongs to the relation itself.
     *
     * @param value the number
     * @return the value
     */
    V literal(long value);

    /**
     * A number that comes from outside.
     *
     * @param symbol what it is called
     * @param subject what it is about
     * @param value the number in the canonical unit of the symbol's kind
     * @param source where it comes from
     * @return the value
     */
    V given(Symbol symbol, Subject subject, Ratio value, Source source);

    /**
     * A quantity that comes from outside; a working that is told no other unit for its kind is told in this one.
     *
     * @param symbol what it is called
     * @param subject what it is about
     * @param amount the quantity
     * @param source where it comes from
     * @return the value
     */
    default V given(Symbol symbol, Subject subject, InUnit amount, Source source) {
        return given(symbol, subject, amount.canonical(), source);
    }

    /**
     * A quantity that comes from outside and needs no index.
     *
     * @param symbol what it is called
     * @param amount the quantity
     * @param source where it comes from
     * @return the value
     */
    default V given(Symbol symbol, InUnit amount, Source source) {
        return given(symbol, Subject.none(), amount, source);
    }

    /**
     * The step of a display: whatever else was given, the masses of the working are told in its unit.
     *
     * @param symbol what it is called
     * @param subject what it is about
     * @param step the step
     * @param source where it comes from
     * @return the value
     */
    default V displayStep(Symbol symbol, Subject subject, InUnit step, Source source) {
        return given(symbol, subject, step, source);
    }

    /**
     * A number that comes from outside, its source made only if somebody records it.
     *
     * @param symbol what it is called
     * @param subject what it is about
     * @param value the number in the canonical unit of the symbol's kind
     * @param source makes where it comes from
     * @return the value
     */
    default V given(Symbol symbol, Subject subject, Ratio value, Supplier<Source> source) {
        return given(symbol, subject, value, source.get());
    }

    /**
     * A quantity that comes from outside, its source made only if somebody records it; a working that is told no other unit for its kind is
     * told in this one.
     *
     * @param symbol what it is called
     * @param subject what it is about
     * @param amount the quantity
     * @param source makes where it comes from
     * @return the value
     */
    default V given(Symbol symbol, Subject subject, InUnit amount, Supplier<Source> source) {
        return given(symbol, subject, amount.canonical(), source);
    }

    /**
     * A number that comes from outside and needs no index.
     *
     * @param symbol what it is called
     * @param value the number in the canonical unit of the symbol's kind
     * @param source where it comes from
     * @return the value
     */
    default V given(Symbol symbol, Ratio value, Source source) {
        return given(symbol, Subject.none(), value, source);
    }

    /**
     * The number of an earlier result. Plain reckoning takes it as it is; a recorder derives it again, so that a working
     * reaches back to what was given.
     *
     * @param earlier the earlier result
     * @return the value
     */
    V known(Explained earlier);

    /**
     * Gives a value a name: it becomes a step.
     *
     * @param symbol what it is called
     * @param subject what it is about
     * @param value the value
     * @return the named value, the same number
     */
    V named(Symbol symbol, Subject subject, V value);

    /**
     * Gives a value a name without an index.
     *
     * @param symbol what it is called
     * @param value the value
     * @return the named value, the same number
     */
    default V named(Symbol symbol, V value) {
        return named(symbol, Subject.none(), value);
    }

    /**
     * Applies an operation.
     *
     * @param operation the operation
     * @param inputs the values it works on
     * @return the result
     */
    V apply(Operation operation, List<V> inputs);

    /**
     * a + b + …
     *
     * @param terms the terms; none give 0
     * @return the sum
     */
    default V sum(List<V> terms) {
        return apply(Arithmetic.SUM, terms);
    }

    /**
     * a + b.
     *
     * @param a the first term
     * @param b the second term
     * @return the sum
     */
    V sum(V a, V b);

    /**
     * a − b.
     *
     * @param a what is taken from
     * @param b what is taken away
     * @return the difference
     */
    V difference(V a, V b);

    /**
     * a · b.
     *
     * @param a the first factor
     * @param b the second factor
     * @return the product
     */
    V product(V a, V b);

    /**
     * a / b.
     *
     * @param a the dividend
     * @param b the divisor, not 0
     * @return the quotient
     */
    V quotient(V a, V b);

    /**
     * |a|.
     *
     * @param a the value
     * @return its size
     */
    default V absolute(V a) {
        return apply(Arithmetic.ABSOLUTE, List.of(a));
    }

    /**
     * The smallest of several.
     *
     * @param values the values, at least one
     * @return the smallest
     */
    default V minimum(List<V> values) {
        return apply(Arithmetic.MINIMUM, values);
    }

    /**
     * The largest of several.
     *
     * @param values the values, at least one
     * @return the largest
     */
    default V maximum(List<V> values) {
        return apply(Arithmetic.MAXIMUM, values);
    }

    /**
     * √a, correctly rounded to {@value Operation.Root#DIGITS} significant digits.
     *
     * @param a the value, not negative
     * @return the root
     */
    default V root(V a) {
        return apply(Operation.Root.SQUARE_ROOT, List.of(a));
    }

    /**
     * 10^a, correctly rounded to {@value Operation.Root#DIGITS} significant digits; exact where a is whole.
     *
     * @param a the exponent, at most a million in size
     * @return the power
     */
    default V tenTo(V a) {
        return apply(Operation.Power.TEN_TO, List.of(a));
    }

    /**
     * A value of a statistical function.
     *
     * @param function the function
     * @param arguments the arguments
     * @return the value
     */
    default V function(StatisticalFunction function, List<V> arguments) {
        return apply(new Operation.Statistic(function), arguments);
    }

    /**
     * A value rounded as told.
     *
     * @param a the value
     * @param rounding the grid and the mode, in the canonical unit
     * @return the rounded value
     */
    V rounded(V a, Rounding rounding);

    /**
     * Compares two values and records the outcome.
     *
     * @param a the value on the left
     * @param comparison the relation
     * @param b the value on the right
     * @return whether the relation holds
     */
    boolean holds(V a, Comparison comparison, V b);

    /**
     * Records an assumption or a remark.
     *
     * @param phrase the words; asked for only if somebody records
     */
    void note(Supplier<Phrase> phrase);
}
