package io.github.formulationmath.reckoning;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Something said in words: a key into the {@link Wording} and the texts to put in. Numbers are passed as exact text.
 *
 * @param key the key
 * @param arguments what stands for {0}, {1}, … in the wording
 */
public record Phrase(String key, List<String> arguments) implements Serializable {

    /**
     * Checks and copies.
     *
     * @param key the key
     * @param arguments what stands for {0}, {1}, …
     */
    public Phrase {
        Objects.requireNonNull(key, "key");
        arguments = List.copyOf(Objects.requireNonNull(arguments, "arguments"));
    }

    /**
     * A phrase.
     *
     * @param key the key into the wording
     * @param arguments what stands for {0}, {1}, …
     * @return the phrase
     */
    public static Phrase of(String key, String... arguments) {
        return new Phrase(key, List.of(Objects.requireNonNull(arguments, "arguments")));
    }

    /**
     * The phrase in English, for reading at a prompt or in a log; for another language ask {@link Wording#text(Phrase)}.
     *
     * @return the English text, or key and arguments if the English wording has no such key
     */
    @Override
    public String toString() {
        return Wording.english().has(key) ? Wording.english().text(this) : key + arguments;
    }
}
