package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Where a number comes from: what was asked, whose number it is, and the relation that made it. Small, and made only
 * when somebody asks for the number; the relation runs again only when somebody asks for its working.
 *
 * <p>Two origins are equal if they are the same figure of the same object, so that a working which meets a number twice
 * derives it once. Immutable.
 */
public final class Origin {

    private final Function<Object, Phrase> question;
    private final Ratio number;
    private final Object owner;
    private final Figure<Object> figure;

    private Origin(Function<Object, Phrase> question, Ratio number, Object owner, Figure<Object> figure) {
        this.question = question;
        this.number = number;
        this.owner = owner;
        this.figure = figure;
    }

    /**
     * The origin of a figure of some object.
     *
     * @param question what the number answers; asked for only if somebody wants to know
     * @param number the number as the plain run gave it, in the canonical unit of its {@link Kind}
     * @param owner whose number it is
     * @param figure the relation that made it
     * @param <T> whose number it is
     * @return the origin
     */
    @SuppressWarnings("unchecked") // Question and figure meet no other owner than this one.
    public static <T> Origin of(Function<? super T, Phrase> question, Ratio number, T owner, Figure<? super T> figure) {
        return new Origin(
                (Function<Object, Phrase>) Objects.requireNonNull(question, "question"),
                Objects.requireNonNull(number, "number"),
                Objects.requireNonNull(owner, "owner"),
                (Figure<Object>) Objects.requireNonNull(figure, "figure"));
    }

    /**
     * The origin of a number that nothing explains but that it was given.
     *
     * @param symbol what it is called
     * @param subject what it is about
     * @param number the number in the canonical unit of the symbol's kind
     * @param source where it comes from
     * @return the origin
     */
    public static Origin given(Symbol symbol, Subject subject, Ratio number, Source source) {
        Given given = new Given(
                Objects.requireNonNull(symbol, "symbol"),
                Objects.requireNonNull(subject, "subject"),
                number,
                Objects.requireNonNull(source, "source"));
        return of(Given::question, number, given, Given::in);
    }

    /** What was given; equal things are one. */
    private record Given(Symbol symbol, Subject subject, Ratio number, Source source) {

        Phrase question() {
            return Phrase.of("question.given-value");
        }

        <V> V in(Reckoning<V> r) {
            return r.given(symbol, subject, number, source);
        }
    }

    /**
     * What the number answers.
     *
     * @return the question in words
     */
    public Phrase question() {
        return question.apply(owner);
    }

    /**
     * The number.
     *
     * @return the exact number in the canonical unit of its {@link Kind}
     */
    public Ratio number() {
        return number;
    }

    /**
     * Derives the number from what was given, in any reckoning.
     *
     * @param reckoning the arithmetic to use
     * @param <V> what a value is
     * @return the value, the same number as {@link #number()}
     */
    public <V> V derive(Reckoning<V> reckoning) {
        return figure.in(owner, reckoning);
    }

    /**
     * How the number came about.
     *
     * @return the working, recorded anew
     * @throws IllegalStateException if the relation leads to another number
     */
    public Working working() {
        return Working.of(question(), number, this::derive);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Origin that && owner == that.owner && figure == that.figure;
    }

    @Override
    public int hashCode() {
        return 31 * System.identityHashCode(owner) + System.identityHashCode(figure);
    }

    /** The question and the number. */
    @Override
    public String toString() {
        return question() + " " + number;
    }

    /**
     * One number of its owner, as a relation in any {@link Reckoning}. A method reference fits: {@code BatchLine::massIn}.
     *
     * @param <T> whose number it is
     */
    @FunctionalInterface
    public interface Figure<T> {

        /**
         * Derives the number from what the owner was given.
         *
         * @param owner whose number it is
         * @param reckoning the arithmetic to use
         * @param <V> what a value is
         * @return the value
         */
        <V> V in(T owner, Reckoning<V> reckoning);
    }
}
