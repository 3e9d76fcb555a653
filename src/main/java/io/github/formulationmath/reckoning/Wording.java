package io.github.formulationmath.reckoning;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.number.LocalDigits;
import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.number.Sentence;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
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
 * <p>English, German and French come with the library. Another language is a properties file in UTF-8 that is laid over one of
 * them by {@link #read(Reader)} or {@link #withTexts}: what it does not say is said as before. Placeholders are {@code {0}},
 * {@code {1}} …; in the sentences of a {@link Refusal} the names of its fields, such as {@code {capacity}}.
 *
 * <p>Numbers that are put in have the decimal mark and the digits of the {@linkplain #locale locale}: that of the language, if
 * no other is chosen.
 *
 * <p>Example: {@code Wording.german().say("sheet.unnamed-balance", "0.1 g")} is {@code Schritte von 0,1 g}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Wording {

    private static final String ROOMS = "/io/github/formulationmath/";
    private static final String LANGUAGE = "language";
    private static final Wording ENGLISH = load("en", Map.of());

    /** Read when first asked for. */
    private static final class German {
        static final Wording WORDS = load("de", ENGLISH.texts);
    }

    /** Read when first asked for. */
    private static final class French {
        static final Wording WORDS = load("fr", ENGLISH.texts);
    }

    private final Map<String, String> texts;
    private final Locale locale;
    private final LocalDigits digits;

    private Wording(Map<String, String> texts, Locale locale) {
        this.texts = Map.copyOf(texts);
        this.locale = locale;
        this.digits = LocalDigits.of(locale);
    }

    /**
     * The English wording, with the decimal point.
     *
     * @return the wording
     */
    public static Wording english() {
        return ENGLISH;
    }

    /**
     * The German wording, with the decimal comma.
     *
     * @return the wording
     */
    public static Wording german() {
        return German.WORDS;
    }

    /**
     * The French wording, with the decimal comma.
     *
     * @return the wording
     */
    public static Wording french() {
        return French.WORDS;
    }

    /**
     * The wording for a reader: that of the language, with the decimal mark and the digits of the locale.
     *
     * @param locale the reader's, such as de, fr-CA or de-CH
     * @return the wording
     * @throws IllegalArgumentException if the library has no words in that language; the message names those it has
     */
    public static Wording of(Locale locale) {
        Wording wording = switch (Objects.requireNonNull(locale, "locale").getLanguage()) {
            case "en" -> ENGLISH;
            case "de" -> german();
            case "fr" -> french();
            default ->
                throw new IllegalArgumentException("locale is \"" + locale.toLanguageTag()
                        + "\": the library speaks en, de and fr; take one of them, or lay your own words over one with"
                        + " Wording.read");
        };
        return wording.with(locale);
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
        return ENGLISH.withTexts(reader);
    }

    /**
     * The same wording with some texts in place of its own. If {@code language} is among them, the numbers follow it.
     *
     * @param reader the properties file; it may hold as few keys as its author wants to say otherwise
     * @return the wording
     * @throws IOException if the reader fails
     * @throws IllegalArgumentException as {@link #read}
     */
    public Wording withTexts(Reader reader) throws IOException {
        Map<String, String> own = properties(Objects.requireNonNull(reader, "reader"));
        own.forEach(Wording::requireLikeEnglish);
        Map<String, String> all = new TreeMap<>(texts);
        all.putAll(own);
        return new Wording(all, own.containsKey(LANGUAGE) ? Locale.forLanguageTag(own.get(LANGUAGE)) : locale);
    }

    /**
     * The same words with the decimal mark and the digits of a locale.
     *
     * @param newLocale the locale, such as de-CH, where numbers have a decimal point
     * @return the wording
     */
    public Wording with(Locale newLocale) {
        return new Wording(texts, Objects.requireNonNull(newLocale, "newLocale"));
    }

    /**
     * The locale of the numbers.
     *
     * @return that of the language, if no other was chosen
     */
    public Locale locale() {
        return locale;
    }

    /**
     * A number for a person who reads these words.
     *
     * @param number a number as the library prints it, with or without a unit: {@code 12.5 g}
     * @return the text as {@link LocalDigits#text} gives it
     */
    public String number(String number) {
        return digits.text(number);
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

    private @Nullable String argument(Phrase phrase, String name) {
        int index = name.matches("[0-9]{1,3}") ? Integer.parseInt(name) : Integer.MAX_VALUE;
        return index < phrase.arguments().size() ? filled(phrase.arguments().get(index)) : null;
    }

    /** A name as it is, a number in the digits of these words. */
    private String filled(String argument) {
        return number(Document.clean(argument));
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
            case "reason" -> refusal.because().map(this::text).orElseGet(() -> filled(refusal, name));
            case "remedies" -> either(refusal.remedies());
            default -> filled(refusal, name);
        };
    }

    /** What somebody typed stays as it was typed. */
    private @Nullable String filled(Refusal refusal, String name) {
        String field = refusal.fields().get(name);
        if (field == null) {
            return null;
        }
        boolean typed =
                refusal.key().startsWith("refusal.text.") || refusal.key().startsWith("refusal.number-text");
        return typed ? Document.clean(field) : filled(field);
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

    /** The words of a language, over those of another where it has none. */
    private static Wording load(String language, Map<String, String> others) {
        try {
            Map<String, String> texts = new TreeMap<>(others);
            for (String room : rooms()) {
                texts.putAll(properties(new StringReader(text(ROOMS + room + "/words-" + language + ".properties"))));
            }
            return new Wording(texts, Locale.forLanguageTag(language));
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
