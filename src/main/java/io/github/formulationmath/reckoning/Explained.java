package io.github.formulationmath.reckoning;

/**
 * A value that can show how it came about. Nothing is recorded or kept for it until it is asked for.
 *
 * <p>Amounts and shares are such values: {@code plan.line("Glycerin").reading().working()} tells why the display must
 * read what it must.
 */
public interface Explained {

    /**
     * Where the number comes from; other relations build on it through {@link Reckoning#known}.
     *
     * @return question, number and relation
     */
    Origin origin();

    /**
     * How the number came about.
     *
     * @return the working, recorded anew by the relation that made the number
     * @throws IllegalStateException if the relation leads to another number
     */
    default Working working() {
        return origin().working();
    }
}
