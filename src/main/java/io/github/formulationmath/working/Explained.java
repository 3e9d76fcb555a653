package io.github.formulationmath.working;

/** A result that can show its working. Nothing is computed or kept for it until it is asked for. */
public interface Explained {

    /**
     * How the result came about.
     *
     * @return the working, recorded anew by the relation that made the result
     */
    Working working();
}
