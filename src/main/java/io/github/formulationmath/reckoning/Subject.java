package io.github.formulationmath.reckoning;

import java.util.Objects;

/**
 * What an indexed symbol is about: the line of a formula behind the 3 of {@code m_3}.
 *
 * <p>Existing objects implement this, so that naming a number costs nothing until somebody reads the name.
 */
public interface Subject {

    /**
     * The index as it stands below the symbol.
     *
     * @return a short text, usually a line number; empty for no index
     */
    String subscript();

    /**
     * The subject in words, to be put into the meaning of the symbol.
     *
     * @return the name of the thing
     */
    String name();

    /**
     * The subject of what there is only one of, so that no index tells it from others.
     *
     * @return a subject without subscript and name
     */
    static Subject none() {
        return NamedSubject.NONE;
    }

    /**
     * A subject made on the spot.
     *
     * @param subscript the index below the symbol
     * @param name the thing in words
     * @return the subject
     */
    static Subject of(String subscript, String name) {
        return new NamedSubject(Objects.requireNonNull(subscript, "subscript"), Objects.requireNonNull(name, "name"));
    }
}
