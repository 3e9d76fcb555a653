package io.github.formulationmath.printed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * In a workshop where everything is typed in ounces and pounds nobody reads a gram: not on a page, in a working, a record, a
 * label, an answer at the prompt or a refusal; and no ounce where everything is typed in grams.
 */
class UnitsOfTheBenchTest {

    /** A number in grams, litres and the like; what is said per gram or litre; the word. */
    private static final Pattern METRIC = Pattern.compile(
            "[0-9\\]][\\s\u00A0\u202F]*(?:k|m|µ)?g(?![\\p{L}\\p{N}/_])(?!(?:\u00A0| )?KOH)|[0-9\\]][\\s\u00A0\u202F]*(?:m|c|d)?L(?![\\p{L}'’])"
                    + "|[0-9\\]][\\s\u00A0\u202F]*(?:EUR)?/(?:k|m)?g(?![\\p{L}])|\\bgram(?:s|mes?)?\\b|\\bGramm\\b");

    private static final Pattern IMPERIAL = Pattern.compile(
            "[0-9\\]][\\s\u00A0\u202F]*(?:oz|lb|lbs)(?![\\p{L}])|/(?:oz|lb)(?![\\p{L}])|\\bounces?\\b|\\bpounds?\\b"
                    + "|\\bUnzen?\\b|\\bonces\\b");

    private static final int CASES = 3 * Integer.getInteger("formulationmath.cases", 1);

    @Test
    void where_everything_is_typed_in_ounces_nobody_reads_a_gram() {
        Map<String, String> found = new TreeMap<>();
        for (long seed = 0; seed < CASES; seed++) {
            found.putAll(found(seed % 2 == 0 ? Workshop.OUNCES : Workshop.POUNDS, seed, METRIC));
        }
        assertThat(found.values().stream().map(each -> "\n" + each)).isEmpty();
    }

    @Test
    void where_everything_is_typed_in_grams_nobody_reads_an_ounce() {
        Map<String, String> found = new TreeMap<>();
        for (long seed = 0; seed < CASES; seed++) {
            found.putAll(found(seed % 2 == 0 ? Workshop.GRAMS : Workshop.KILOGRAMS, seed, IMPERIAL));
        }
        assertThat(found.values().stream().map(each -> "\n" + each)).isEmpty();
    }

    private static Map<String, String> found(Workshop.Units units, long seed, Pattern forbidden) {
        Map<String, String> found = new LinkedHashMap<>();
        for (Map.Entry<String, Callable<?>> asked :
                Workshop.answers(units, seed).entrySet()) {
            Everything.of(asked.getKey(), answer(asked.getValue()), 2, (way, text) -> {
                Matcher matcher = forbidden.matcher(plain(text));
                if (matcher.find()) {
                    found.putIfAbsent(
                            last(way), way + " in " + units.batch() + ": " + excerpt(plain(text), matcher.start()));
                }
            });
        }
        return found;
    }

    /** The last methods of a way, so that one cause is told once. */
    static String last(String way) {
        String[] parts = way.split("[.]");
        return parts.length < 2 ? way : parts[parts.length - 2] + "." + parts[parts.length - 1].replaceAll(" .*", "");
    }

    static Object answer(Callable<?> asked) {
        try {
            return asked.call();
        } catch (Exception e) {
            return e;
        }
    }

    /** What a reader sees of a page: no tags, no commands. */
    private static String plain(String text) {
        return text.contains("<html") || text.contains("\\begin{document}")
                ? text.replaceAll("(?s)<style.*?</style>|<head>.*?</head>", "")
                        .replaceAll("<[^>]*>", "")
                        .replaceAll("\\\\(?:text|mathrm)\\{([^}]*)}", "$1")
                        .replace("\\,", " ")
                        .replace("~", " ")
                : text;
    }

    static String excerpt(String text, int at) {
        return text.substring(Math.max(0, at - 90), Math.min(text.length(), at + 60))
                .replaceAll("\\s+", " ");
    }
}
