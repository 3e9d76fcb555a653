package io.github.formulationmath.working;

import io.github.formulationmath.number.Ratio;

/**
 * A result that can show its working. Nothing is computed or kept for it until it is asked for.
 *
 * <p>A type implements {@link #derive} with the very relation that made its number; {@link #working()} runs that
 * relation again with a recorder and holds the outcome against {@link #result()}.
 */
public interface Explained extends Explainable {

    /**
     * What the result answers.
     *
     * @return the question in words
     */
    Phrase question();

    /**
     * The result as a bare number.
     *
     * @return the exact number in the canonical unit of its {@link Kind}
     */
    Ratio result();

    /**
     * Derives the result from what was given, in any reckoning. Other relations build on it through {@link
     * Reckoning#known}.
     *
     * @param <V> what a value is
     * @param reckoning the arithmetic to use
     * @return the value, the same number as {@link #result()}
     */
    <V> V derive(Reckoning<V> reckoning);

    @Override
    default Origin origin() {
        return Origin.of(Explained::question, result(), this, Explained::derive);
    }
}
