package io.github.formulationmath.number;

import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A sentence of a {@link Refusal}: a key for those who have words of their own, the English for those who have not, and the
 * texts that are put into either by name.
 *
 * <pre>{@code
 * Sentence.of("refusal.text.too-long", "longer than {most} characters", "most", "60");   // longer than 60 characters
 * }</pre>
 *
 * @param key the key
 * @param english the English, with {@code {name}} for each field
 * @param fields what is put in, by name
 */
public record Sentence(String key, String english, Map<String, String> fields) implements Refusal, Serializable {

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-z0-9-]{1,20})}");

    /**
     * Checks and copies.
     *
     * @param key the key
     * @param english the English
     * @param fields what is put in
     */
    public Sentence {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(english, "english");
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(Objects.requireNonNull(fields, "fields")));
    }

    /**
     * A sentence.
     *
     * @param key the key
     * @param english the English, with {@code {name}} for each field
     * @param namesAndValues the name of a field and what is put in, then the next
     * @return the sentence
     * @throws IllegalArgumentException if a name stands without a value
     */
    public static Sentence of(String key, String english, String... namesAndValues) {
        if (Objects.requireNonNull(namesAndValues, "namesAndValues").length % 2 != 0) {
            throw new IllegalArgumentException("namesAndValues has " + namesAndValues.length
                    + " texts: each name needs a value behind it, so their number must be even");
        }
        Map<String, String> fields = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            fields.put(namesAndValues[i], namesAndValues[i + 1]);
        }
        return new Sentence(key, english, fields);
    }

    @Override
    public Sentence said() {
        return this;
    }

    /** In English. */
    @Override
    public String getMessage() {
        return filled(english, fields::get);
    }

    /**
     * Puts texts into a pattern, each once: a text that looks like a placeholder stays a text.
     *
     * @param pattern a text with {@code {name}} or {@code {0}} where something is put in
     * @param texts the text for a name; null leaves the placeholder as it stands
     * @return the whole text
     */
    public static String filled(String pattern, Function<String, @Nullable String> texts) {
        Objects.requireNonNull(texts, "texts");
        return PLACEHOLDER.matcher(Objects.requireNonNull(pattern, "pattern")).replaceAll(found -> {
            String text = texts.apply(found.group(1));
            return Matcher.quoteReplacement(text == null ? found.group() : text);
        });
    }

    /**
     * The names of what is put into a pattern.
     *
     * @param pattern a text with {@code {name}} or {@code {0}} where something is put in
     * @return the names without their braces, in order
     */
    public static Set<String> placeholders(String pattern) {
        return PLACEHOLDER
                .matcher(Objects.requireNonNull(pattern, "pattern"))
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Override
    public String toString() {
        return getMessage();
    }
}
