package io.github.formulationmath.falsefine;

/**
 * Whoever is asked whether something is fine: the library, or a judge with a defect.
 *
 * @param <C> what is judged
 */
@FunctionalInterface
interface Judge<C> {

    /**
     * Whether it passes as fine. A question that is refused with an {@link IllegalArgumentException} is not called fine.
     *
     * @param asked what is judged
     * @return true if nothing is said against it
     */
    boolean callsFine(C asked);
}
