package io.github.formulationmath.working;

import io.github.formulationmath.document.Document;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of one language: every text the library prints stands in one resource under a key, so that a translation is
 * one file.
 *
 * <p>The English wording comes with the library. Another language is a properties file in UTF-8 with the same keys, read
 * by {@link #read(Reader)}. Placeholders are {@code {0}}, {@code {1}} …
 *
 * <p>Immutable and thread-safe.
 */
public final class Wording {

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([0-9]{1,3})}");

    private static final Wording ENGLISH = load();

    private final Map<String, String> texts;

    private Wording(Map<String, String> texts) {
        this.texts = Map.copyOf(texts);
    }

    /**
     * The English wording.
     *
     * @return the wording that comes with the library
     */
    public static Wording english() {
        return ENGLISH;
    }

    /**
     * Reads another wording.
     *
     * @param reader the properties file
     * @return the wording
     * @throws IOException if the reader fails
     * @throws IllegalArgumentException if a key of the English wording is missing; the message names it
     */
    public static Wording read(Reader reader) throws IOException {
        Map<String, String> texts = properties(reader);
        ENGLISH.texts.keySet().stream()
                .filter(key -> !texts.containsKey(key))
                .sorted()
                .findFirst()
                .ifPresent(key -> {
                    throw new IllegalArgumentException("the wording has no text for the key " + key);
                });
        return new Wording(texts);
    }

    /**
     * The text under a key.
     *
     * @param key the key
     * @param arguments what stands for {0}, {1}, …
     * @return the text with the arguments put in, each {@linkplain Document#clean cleaned}
     * @throws IllegalArgumentException if the wording has no such key
     */
    public String say(String key, String... arguments) {
        return text(Phrase.of(key, arguments));
    }

    /**
     * A phrase in words.
     *
     * @param phrase the phrase
     * @return its text with the arguments put in, each {@linkplain Document#clean cleaned}: a name cannot leave its place
     * @throws IllegalArgumentException if the wording has no such key
     */
    public String text(Phrase phrase) {
        String pattern = texts.get(Objects.requireNonNull(phrase, "phrase").key());
        if (pattern == null) {
            throw new IllegalArgumentException("the wording has no text for the key " + phrase.key());
        }
        // In one pass: a name that looks like a placeholder stays a name.
        return PLACEHOLDER.matcher(pattern).replaceAll(found -> {
            int index = Integer.parseInt(found.group(1));
            boolean known = index < phrase.arguments().size();
            return Matcher.quoteReplacement(
                    known ? Document.clean(phrase.arguments().get(index)) : found.group());
        });
    }

    /**
     * Whether there is a text under a key.
     *
     * @param key the key
     * @return true if {@link #text} would find it
     */
    public boolean has(String key) {
        return texts.containsKey(key);
    }

    /**
     * The keys of all texts, as a translation must have them.
     *
     * @return an unmodifiable set
     */
    public Set<String> keys() {
        return texts.keySet();
    }

    private static Wording load() {
        try (InputStream in = Wording.class.getResourceAsStream("wording-en.properties")) {
            return new Wording(properties(new InputStreamReader(
                    Objects.requireNonNull(in, "wording-en.properties is missing from the jar"),
                    StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException("wording-en.properties cannot be read", e);
        }
    }

    private static Map<String, String> properties(Reader reader) throws IOException {
        Properties properties = new Properties();
        properties.load(reader);
        Map<String, String> texts = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> texts.put(key, properties.getProperty(key)));
        return texts;
    }
}
