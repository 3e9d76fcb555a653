package io.github.formulationmath.reckoning;

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
