package io.github.formulationmath.reckoning;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.number.Sentence;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The words of one language: every text the library prints stands under a key in the {@code words-en.properties} of the
 * room that says it, so that a translation is one file.
 *
 * <p>The English wording comes with the library. Another language is a properties file in UTF-8 that is laid over it by
 * {@link #read(Reader)}: what it does not say is said in English. Placeholders are {@code {0}}, {@code {1}} …; in the sentences
 * of a {@link Refusal} the names of its fields, such as {@code {capacity}}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Wording {

    private static final String ROOMS = "/io/github/formulationmath/";
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
     * Reads another wording: the English one with the texts that are read in place of its own.
     *
     * @param reader the properties file; it may hold as few keys as its author has translated
     * @return the wording
     * @throws IOException if the reader fails
     * @throws IllegalArgumentException if a key is not one of {@link #keys()}, or a text does not put in what the English one
     *     puts in; the message names the key, and the placeholders or what the key may have meant
     */
    public static Wording read(Reader reader) throws IOException {
        Map<String, String> texts = properties(reader);
        texts.forEach(Wording::requireLikeEnglish);
        Map<String, String> all = new TreeMap<>(ENGLISH.texts);
        all.putAll(texts);
        return new Wording(all);
    }

    private static void requireLikeEnglish(String key, String text) {
        String english = ENGLISH.texts.get(key);
        if (english == null) {
            throw new IllegalArgumentException("the key " + key
                    + " is not one of the wording: leave it out, or write one of " + "Wording.english().keys()");
        }
        Set<String> wanted = Sentence.placeholders(english);
        Set<String> found = Sentence.placeholders(text);
        if (!found.equals(wanted)) {
            throw new IllegalArgumentException("the text under the key " + key + " puts in " + inBraces(found)
                    + ": it must put in " + inBraces(wanted) + ", as the English \"" + english + "\" does");
        }
    }

    private static String inBraces(Set<String> names) {
        return names.isEmpty() ? "nothing" : names.stream().collect(Collectors.joining("}, {", "{", "}"));
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
        return Sentence.filled(pattern, name -> argument(phrase, name));
    }

    private static @Nullable String argument(Phrase phrase, String name) {
        int index = name.matches("[0-9]{1,3}") ? Integer.parseInt(name) : Integer.MAX_VALUE;
        return index < phrase.arguments().size()
                ? Document.clean(phrase.arguments().get(index))
                : null;
    }

    /**
     * A refusal in words, with its place, if it has one. What it passes on is put into these words, too.
     *
     * @param refusal what was refused
     * @return the sentence; in English if the wording has no such key
     */
    public String text(Refusal refusal) {
        String pattern = texts.get(Objects.requireNonNull(refusal, "refusal").key());
        if (pattern == null) {
            return refusal.getMessage();
        }
        String sentence = Sentence.filled(pattern, name -> field(refusal, name));
        return refusal.place().map(place -> at(place, sentence)).orElse(sentence);
    }

    private @Nullable String field(Refusal refusal, String name) {
        return switch (name) {
            case "reason" ->
                refusal.because()
                        .map(this::text)
                        .orElseGet(() -> clean(refusal.fields().get(name)));
            case "remedies" -> either(refusal.remedies());
            default -> clean(refusal.fields().get(name));
        };
    }

    private static @Nullable String clean(@Nullable String field) {
        return field == null ? null : Document.clean(field);
    }

    /** a, b or c. */
    private String either(List<String> choices) {
        int last = choices.size() - 1;
        return last < 1
                ? String.join("", choices)
                : text(Phrase.of("refusal.or", String.join(", ", choices.subList(0, last)), choices.get(last)));
    }

    private String at(Refusal.Place place, String sentence) {
        return text(Phrase.of(
                place.file().isEmpty() ? "refusal.at" : "refusal.at-file",
                String.valueOf(place.line()),
                String.valueOf(place.column()),
                sentence,
                place.file()));
    }

    /**
     * Whether there is a text under a key.
     *
     * @param key the key
     * @return true if {@link #text} would find it
     */
    public boolean has(String key) {
        return texts.containsKey(Objects.requireNonNull(key, "key"));
    }

    /**
     * The keys of all texts, of which a translation may have any.
     *
     * @return an unmodifiable set
     */
    public Set<String> keys() {
        return texts.keySet();
    }

    private static Wording load() {
        try {
            Map<String, String> texts = new TreeMap<>();
            for (String room : rooms()) {
                texts.putAll(properties(new StringReader(text(ROOMS + room + "/words-en.properties"))));
            }
            return new Wording(texts);
        } catch (IOException e) {
            throw new UncheckedIOException("the words of the library cannot be read", e);
        }
    }

    /** A jar cannot be asked which rooms it has; a test holds this list against the files. */
    private static List<String> rooms() throws IOException {
        return text(ROOMS + "reckoning/words.index").lines().toList();
    }

    private static String text(String resource) throws IOException {
        try (InputStream in = Wording.class.getResourceAsStream(resource)) {
            return new String(
                    Objects.requireNonNull(in, () -> resource + " is missing from the jar")
                            .readAllBytes(),
                    StandardCharsets.UTF_8);
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
