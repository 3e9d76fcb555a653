package io.github.formulationmath.limit;

import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.formula.NameBook;
import io.github.formulationmath.number.Excerpt;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The words by which a table tells products apart, and the purposes it asks for: what {@link Product#on},
 * {@link Product#ofKind}, {@link Product#inForm}, {@link Product#forUsers} and {@link Product#using} can say that settles
 * anything.
 *
 * <p>A word that is not among them settles nothing: limits that ask for such a word are reported as ones that may apply.
 * The word {@code other} is always among them; it says that the product is none of the things the table names.
 *
 * <p>Example: {@code LimitTable.eu2024February().words().forms()} holds {@code spray} and {@code loose_powder}, and
 * {@code cream}, which is neither.
 *
 * <p>The sets are sorted and unmodifiable.
 *
 * @param areas parts of the body
 * @param kinds kinds of product
 * @param forms forms of product
 * @param purposes what a substance may be used for; empty if the table does not ask
 * @param users who may use a product; the same in every table
 */
public record ProductWords(
        Set<String> areas, Set<String> kinds, Set<String> forms, Set<String> purposes, Set<String> users) {

    /** None of the things a table names. */
    static final String OTHER = "other";

    private static final String SPRAY = "spray";
    private static final String POWDER = "powder";
    private static final String PRESSED = "pressed_powder";

    /** What may come to the lungs. */
    private static final Set<String> AIRBORNE = Set.of(SPRAY, POWDER, "inhaled");

    private static final Set<String> SPRAY_PARTS = Set.of(SPRAY, "aerosol", "mist");

    private static final int MOST_CLOSE = 5;

    /**
     * Sorts and copies.
     *
     * @param areas parts of the body
     * @param kinds kinds of product
     * @param forms forms of product
     * @param purposes purposes of a substance
     * @param users who may use a product
     */
    public ProductWords {
        areas = sorted(Objects.requireNonNull(areas, "areas"));
        kinds = sorted(Objects.requireNonNull(kinds, "kinds"));
        forms = sorted(Objects.requireNonNull(forms, "forms"));
        purposes = sorted(Objects.requireNonNull(purposes, "purposes"));
        users = sorted(Objects.requireNonNull(users, "users"));
    }

    /** A word as it is compared: letter case, spaces and hyphens make no difference. */
    static String term(String word) {
        return isTerm(word) ? word : word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "_");
    }

    /** Whether a word is written as it is compared: small letters, digits and single low lines. */
    private static boolean isTerm(String word) {
        for (int i = 0; i < word.length(); i++) {
            char c = word.charAt(i);
            boolean plain = c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
            boolean gap = c == '_' && (i == 0 || word.charAt(i - 1) != '_');
            if (!plain && !gap) {
                return false;
            }
        }
        return true;
    }

    static ProductWords of(List<UsageLimit> limits) {
        return new ProductWords(
                side(areas(limits), Vocabulary.AREAS),
                side(kinds(limits), Vocabulary.KINDS),
                side(forms(limits), Vocabulary.FORMS),
                purposes(limits),
                UserWords.all());
    }

    private static Set<String> areas(List<UsageLimit> limits) {
        Set<String> words = new HashSet<>();
        for (UsageLimit limit : limits) {
            words.addAll(limit.scope().areas());
        }
        return words;
    }

    private static Set<String> kinds(List<UsageLimit> limits) {
        Set<String> words = new HashSet<>();
        for (UsageLimit limit : limits) {
            words.addAll(limit.scope().products());
        }
        return words;
    }

    private static Set<String> forms(List<UsageLimit> limits) {
        Set<String> words = new HashSet<>();
        for (UsageLimit limit : limits) {
            words.addAll(limit.scope().forms());
        }
        return words;
    }

    /** The words of the table; and all others that are known, if the table has one of them. */
    private static Set<String> side(Set<String> scopes, Vocabulary vocabulary) {
        Set<String> words = new TreeSet<>();
        for (String word : scopes) {
            words.add(word.substring(Scope.prefix(word).length()));
        }
        if (!Collections.disjoint(words, vocabulary.words())) {
            words.addAll(vocabulary.words());
        }
        words.add(OTHER);
        return words;
    }

    private static Set<String> purposes(List<UsageLimit> limits) {
        Set<String> words = new TreeSet<>();
        for (UsageLimit limit : limits) {
            if (!limit.scope().purpose().equals(Scope.ANY)) {
                words.add(limit.scope().purpose());
                words.add(limit.scope().otherPurpose());
            }
        }
        return words;
    }

    private static Set<String> sorted(Set<String> words) {
        return Collections.unmodifiableSet(new LinkedHashSet<>(new TreeSet<>(words)));
    }

    /**
     * Everything that a word says beside itself: {@code lip_balm} is for the lips, and what is on the lips is on mucous
     * membranes.
     *
     * @param word an area, a kind or a form
     * @return the other words, sorted; empty if it says nothing more
     */
    public Set<String> impliedBy(String word) {
        String term = term(Objects.requireNonNull(word, "word"));
        Set<String> all = new TreeSet<>(Vocabulary.AREAS.also(term));
        all.addAll(Vocabulary.FORMS.also(term));
        all.addAll(Vocabulary.KINDS.also(term));
        withAreasFrom(Set.of(term), Set.of()).forEach(area -> all.addAll(Vocabulary.AREAS.also(area)));
        withFormsFrom(Set.of(term), Set.of()).forEach(form -> all.addAll(Vocabulary.FORMS.also(form)));
        all.remove(term);
        return sorted(all);
    }

    /** What is stated of the area, and what the kinds of product are for. */
    static Set<String> withAreasFrom(Set<String> kinds, Set<String> areas) {
        Set<String> all = new LinkedHashSet<>(areas);
        for (String kind : kinds) {
            all.addAll(Vocabulary.KINDS.areas(kind));
        }
        return all;
    }

    /** What is stated of the form, and that a kind of product called a spray or a powder is one. */
    static Set<String> withFormsFrom(Set<String> kinds, Set<String> forms) {
        Set<String> parts = new HashSet<>();
        for (String kind : kinds) {
            for (String one : Vocabulary.KINDS.also(kind)) {
                parts.addAll(List.of(one.split("_", -1)));
            }
        }
        boolean airborne = false;
        for (String form : forms) {
            airborne |= !Collections.disjoint(Vocabulary.FORMS.also(form), AIRBORNE);
        }
        if (!airborne && !Collections.disjoint(parts, SPRAY_PARTS)) {
            return with(forms, SPRAY);
        }
        return forms.isEmpty() && parts.contains(POWDER) ? with(forms, POWDER) : forms;
    }

    /** What is stated of the kind, and that a product for the nappy area or the face is one. */
    static Set<String> withKindsFrom(Set<String> areas, Set<String> kinds) {
        Set<String> all = new LinkedHashSet<>(kinds);
        for (String area : areas) {
            Set<String> meant = Vocabulary.AREAS.also(area);
            if (meant.contains("nappy_area")) {
                all.add("nappy_product");
            }
            if (meant.contains("face")) {
                all.add("face_product");
            }
        }
        return all;
    }

    private static Set<String> with(Set<String> words, String word) {
        Set<String> more = new LinkedHashSet<>(words);
        more.add(word);
        return more;
    }

    /** Whether a word says nothing but that the product is no spray and no powder. */
    static boolean isPlain(String word) {
        Set<String> all = Vocabulary.FORMS.also(word);
        return Vocabulary.FORMS.has(word)
                && (all.contains(PRESSED)
                        || Vocabulary.FORMS.mayBe(word).isEmpty() && Collections.disjoint(all, AIRBORNE));
    }

    /** Whether a form is surely none of the terms, although no table may name it. */
    static boolean isSurelyNot(String word, String term) {
        return word.equals(OTHER) || isPlain(word) && !Collections.disjoint(Vocabulary.FORMS.also(term), AIRBORNE);
    }

    /** Known words that may be meant by one that is not: spelt alike, of the same letters, or with a part in common. */
    static List<String> close(String word, Collection<String> known) {
        List<String> alike = NameBook.of(known).alike(word, MOST_CLOSE);
        List<String> parts = List.of(word.split("_", -1));
        return alike.isEmpty()
                ? known.stream()
                        .filter(other -> letters(other).equals(letters(word))
                                || Stream.of(other.split("_", -1)).anyMatch(parts::contains))
                        .sorted()
                        .limit(MOST_CLOSE)
                        .toList()
                : alike;
    }

    private static List<Integer> letters(String word) {
        return word.chars().sorted().boxed().toList();
    }

    /**
     * What is known of the words that describe a product, whatever a table asks: what each is besides, and what it may be. They
     * stand in {@code product-words.csv}.
     */
    static final class Vocabulary {

        private static final CsvFormat FORMAT =
                CsvFormat.of(List.of("side", "word", "also", "may_be", "area")).withCommentHead();

        private static final Map<String, Vocabulary> SIDES = read();

        /** Parts of the body. */
        static final Vocabulary AREAS = side("area");

        /** Kinds of product. */
        static final Vocabulary KINDS = side("kind");

        /** Forms of product. */
        static final Vocabulary FORMS = side("form");

        /** Purposes of a substance. */
        static final Vocabulary PURPOSES = side("purpose");

        /** How the sides are called in a rule of one's own. */
        private static final Map<String, String> FACTS =
                Map.of("area", "area", "kind", "product", "form", "form", "purpose", "purpose");

        private final String side;
        private final Map<String, CsvRow> rows = new TreeMap<>();
        private final Map<String, Word> words = new ConcurrentHashMap<>();

        /**
         * What a word says.
         *
         * @param also everything that it is, itself included, through all steps
         * @param mayBe everything that it may be besides, through all steps
         * @param areas the parts of the body that it is for
         */
        private record Word(Set<String> also, Set<String> mayBe, Set<String> areas) {}

        private Vocabulary(String side) {
            this.side = side;
        }

        private void add(CsvRow row) {
            if (rows.put(row.required("word"), row) != null) {
                throw row.wrong("word", "stands there a second time: write each word once");
            }
        }

        /** Worked out when first asked for: a product has few of the words. */
        private @Nullable Word word(String word) {
            Word known = words.get(word);
            if (known == null && rows.containsKey(word)) {
                Set<String> also = all(Set.of(word), "also");
                Set<String> mayBe = all(listed(also, "may_be"), "also");
                known = new Word(also, mayBe, listed(also, "area"));
                words.put(word, known);
            }
            return known;
        }

        private static Vocabulary side(String name) {
            return Objects.requireNonNull(SIDES.get(name), name);
        }

        private static Map<String, Vocabulary> read() {
            Map<String, Vocabulary> sides = new LinkedHashMap<>();
            for (CsvRow row :
                    FORMAT.shipped(Vocabulary.class, "product-words.csv").rows()) {
                String side = row.required("side");
                Vocabulary own = sides.get(side);
                if (own == null) {
                    own = new Vocabulary(side);
                    sides.put(side, own);
                }
                own.add(row);
            }
            return sides;
        }

        /** The words that a column of these words' rows lists. */
        private Set<String> listed(Set<String> some, String column) {
            Set<String> listed = new HashSet<>();
            for (String word : some) {
                CsvRow row = rows.get(word);
                if (row != null && !row.text(column).isEmpty()) {
                    listed.addAll(row.list(column));
                }
            }
            return Set.copyOf(listed);
        }

        /** The words with all that a column lists, through all steps. */
        private Set<String> all(Set<String> some, String column) {
            Set<String> found = new LinkedHashSet<>(some);
            Deque<String> left = new ArrayDeque<>(some);
            while (!left.isEmpty()) {
                for (String word : listed(Set.of(left.remove()), column)) {
                    if (found.add(word)) {
                        left.add(word);
                    }
                }
            }
            return Set.copyOf(found);
        }

        Set<String> words() {
            return rows.keySet();
        }

        /**
         * Words of a scope of which none is the slip of a pen for a known one, or known for something else. A word that is
         * like none is a word of the table's own.
         */
        Set<String> requireMeant(Set<String> scope) {
            for (String word : scope) {
                String begins = Scope.prefix(word).isEmpty() && word.startsWith(Scope.OTHER_THAN)
                        ? Scope.OTHER_THAN
                        : Scope.prefix(word);
                requireMeant(begins, word.substring(begins.length()));
            }
            return scope;
        }

        private void requireMeant(String begins, String word) {
            if (rows.containsKey(word) || word.equals(OTHER)) {
                return;
            }
            for (Map.Entry<String, Vocabulary> other : SIDES.entrySet()) {
                // A form may well be the name of a kind: a balm.
                boolean usual = this == KINDS && other.getValue() == FORMS;
                if (!usual && other.getValue().has(word)) {
                    String fact = FACTS.get(other.getKey()) + "=" + begins + word;
                    throw new IllegalArgumentException(said(begins + word)
                            + ": that is a word for another side, write it there, as " + fact + " in a file of rules");
                }
            }
            List<String> meant = NameBook.of(with(rows.keySet(), OTHER)).suggest(word, MOST_CLOSE);
            if (!meant.isEmpty()) {
                throw new IllegalArgumentException(said(begins + word) + ", which is no known word and close to "
                        + meant.stream().map(begins::concat).collect(Collectors.joining(", "))
                        + ": write that, or else a word of your own that is not so close to a known one");
            }
        }

        private String said(String word) {
            return FACTS.get(side) + " is \"" + Excerpt.of(word) + '"';
        }

        boolean has(String word) {
            return rows.containsKey(word);
        }

        /** A word with everything else that it is. */
        Set<String> also(String word) {
            Word known = word(word);
            return known == null ? Set.of(word) : known.also;
        }

        /** What a word may be as well, although it does not say so: what stands there is never settled by that word. */
        Set<String> mayBe(String word) {
            Word known = word(word);
            return known == null ? Set.of() : known.mayBe;
        }

        /** The parts of the body that something called so is for; none if it does not say. */
        Set<String> areas(String word) {
            Word known = word(word);
            return known == null ? Set.of() : known.areas;
        }
    }
}
