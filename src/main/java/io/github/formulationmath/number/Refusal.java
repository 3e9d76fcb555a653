package io.github.formulationmath.number;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Something that was refused, in parts that an application can say in its own words. Every exception class of the library is
 * one; the classes stay what Java and JSR 385 expect them to be, so it is asked of what was caught:
 *
 * <pre>{@literal
 * catch (RuntimeException e) {
 *     form.show(e instanceof Refusal refusal ? wording.text(refusal) : e.getMessage());
 * }
 * }</pre>
 *
 * <p>An {@link IllegalArgumentException} or {@link IllegalStateException} of the JDK that is no refusal speaks English only.
 */
public interface Refusal {

    /**
     * What is said, without the place.
     *
     * @return the sentence with its key and its fields
     */
    Sentence said();

    /**
     * The sentence in English, with the place, if there is one.
     *
     * @return the message of the exception
     */
    String getMessage();

    /**
     * Under which key a wording has the sentence.
     *
     * @return the key; it stays the same from version to version
     */
    default String key() {
        return said().key();
    }

    /**
     * The parts of the sentence by name, such as {@code capacity}: amounts with their units, long texts shortened.
     *
     * @return an unmodifiable map, in the order of the English sentence
     */
    default Map<String, String> fields() {
        return said().fields();
    }

    /**
     * Texts that would have been taken instead, as a form may offer them. A wording puts them in for {@code {remedies}}.
     *
     * @return an unmodifiable list, the likeliest first; empty if nothing can be proposed
     */
    default List<String> remedies() {
        return List.of();
    }

    /**
     * What this refusal passes on: the reader of a table passes on what the reader of a number refused. A wording puts its
     * sentence in for {@code {reason}}.
     *
     * @return the refusal inside this one, if there is one
     */
    default Optional<Refusal> because() {
        return Optional.empty();
    }

    /**
     * Where it stands.
     *
     * @return the place in a text of several lines; empty if there is none
     */
    default Optional<Place> place() {
        return Optional.empty();
    }

    /**
     * A place in a text.
     *
     * @param file the path of the file; for a text that comes from no file what it holds, or nothing
     * @param line the number of the line, from 1
     * @param column the number of the character in the line, from 1
     */
    record Place(String file, int line, int column) implements Serializable {

        /**
         * Nothing may be missing.
         *
         * @param file the path of the file; for a text that comes from no file what it holds, or nothing
         * @param line the number of the line, from 1
         * @param column the number of the character in the line, from 1
         */
        public Place {
            Objects.requireNonNull(file, "file");
        }

        /** The place in English. */
        @Override
        public String toString() {
            return (file.isEmpty() ? "" : file + ", ") + "line " + line + ", column " + column;
        }
    }
}
