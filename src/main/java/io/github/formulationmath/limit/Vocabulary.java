package io.github.formulationmath.limit;

import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.csv.CsvTable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is known of the words that describe a product, whatever a table asks: what each is besides, and what it may be. They
 * stand in {@code product-words.csv}.
 */
final class Vocabulary {

    private static final CsvFormat FORMAT =
            CsvFormat.of(List.of("side", "word", "also", "may_be", "area")).withCommentHead();

    private static final Map<String, Vocabulary> SIDES = read();

    /** Parts of the body. */
    static final Vocabulary AREAS = side("area");

    /** Kinds of product. */
    static final Vocabulary KINDS = side("kind");

    /** Forms of product. */
    static final Vocabulary FORMS = side("form");

    private final Map<String, Word> words = new TreeMap<>();

    /**
     * What a word says.
     *
     * @param also everything that it is, itself included, through all steps
     * @param mayBe everything that it may be besides, through all steps
     * @param areas the parts of the body that it is for
     */
    private record Word(Set<String> also, Set<String> mayBe, Set<String> areas) {}

    private Vocabulary(List<CsvRow> rows) {
        Map<String, CsvRow> byWord = rows.stream().collect(Collectors.toMap(row -> row.required("word"), row -> row));
        for (String word : byWord.keySet()) {
            Set<String> also = all(Set.of(word), byWord, "also");
            Set<String> mayBe = all(listed(also, byWord, "may_be"), byWord, "also");
            words.put(word, new Word(also, mayBe, listed(also, byWord, "area")));
        }
    }

    private static Vocabulary side(String name) {
        return Objects.requireNonNull(SIDES.get(name), name);
    }

    private static Map<String, Vocabulary> read() {
        String file = "product-words.csv";
        try (InputStream in =
                Objects.requireNonNull(Vocabulary.class.getResourceAsStream(file), file + " is missing from the jar")) {
            CsvTable table = FORMAT.read(file, in);
            return table.rows().stream()
                    .collect(Collectors.groupingBy(
                            row -> row.required("side"),
                            Collectors.collectingAndThen(Collectors.toList(), Vocabulary::new)));
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read", e);
        }
    }

    /** The words that a column of these rows lists. */
    private static Set<String> listed(Set<String> words, Map<String, CsvRow> rows, String column) {
        return words.stream()
                .map(rows::get)
                .filter(Objects::nonNull)
                .flatMap(row -> Stream.of(row.text(column).split(";", -1)))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The words with all that a column lists, through all steps. */
    private static Set<String> all(Set<String> words, Map<String, CsvRow> rows, String column) {
        Set<String> found = new LinkedHashSet<>(words);
        Deque<String> left = new ArrayDeque<>(words);
        while (!left.isEmpty()) {
            listed(Set.of(left.remove()), rows, column).stream().filter(found::add).forEach(left::add);
        }
        return Set.copyOf(found);
    }

    Set<String> words() {
        return words.keySet();
    }

    boolean has(String word) {
        return words.containsKey(word);
    }

    /** A word with everything else that it is. */
    Set<String> also(String word) {
        Word known = words.get(word);
        return known == null ? Set.of(word) : known.also;
    }

    /** What a word may be as well, although it does not say so: what stands there is never settled by that word. */
    Set<String> mayBe(String word) {
        Word known = words.get(word);
        return known == null ? Set.of() : known.mayBe;
    }

    /** The parts of the body that something called so is for; none if it does not say. */
    Set<String> areas(String word) {
        Word known = words.get(word);
        return known == null ? Set.of() : known.areas;
    }
}
