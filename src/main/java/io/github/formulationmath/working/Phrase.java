package io.github.formulationmath.working;

import java.util.List;
import java.util.Objects;

/**
 * Something said in words: a key into the {@link Wording} and the texts to put in. Numbers are passed as exact text.
 *
 * @param key the key
 * @param arguments what stands for {0}, {1}, … in the wording
 */
public record Phrase(String key, List<String> arguments) {

    /**
     * Checks and copies.
     *
     * @param key the key
     * @param arguments what stands for {0}, {1}, …
     */
    public Phrase {
        Objects.requireNonNull(key, "key");
        arguments = List.copyOf(arguments);
    }

    /**
     * A phrase.
     *
     * @param key the key into the wording
     * @param arguments what stands for {0}, {1}, …
     * @return the phrase
     */
    public static Phrase of(String key, String... arguments) {
        return new Phrase(key, List.of(arguments));
    }
}
