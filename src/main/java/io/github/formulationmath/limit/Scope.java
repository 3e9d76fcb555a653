package io.github.formulationmath.limit;

import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.number.Excerpt;
import java.io.Serializable;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The products a limit is meant for: whether they stay on or are rinsed off, the parts of the body, the kinds of product,
 * their form, who uses them, and what the substance is used for.
 *
 * <p>Words are written as in a table: {@code hair}, {@code face_cream}, {@code not:oral}. Letter case, spaces and hyphens
 * make no difference. Several words that are meant: one of them is enough. Words with {@code not:} are left out. Words with
 * {@code perhaps_not:} may be left out by something that was not seen, such as a footnote: there the limit may apply.
 *
 * <p>What the words are is in {@link LimitTable#words()}. A table may have words of its own for areas, kinds, forms and
 * purposes; one that is a slip of the pen for a known word, {@code fcae}, or is known for something else, an area among the
 * kinds, is refused with what may be meant. The words for users are a closed list.
 *
 * <p>Example: {@code Scope.leaveOn().withAreas("not:oral", "not:lips").withForms("not:spray")}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param use {@code leave_on}, {@code rinse_off} or {@code any}
 * @param areas parts of the body; none for all
 * @param products kinds of products; none for all
 * @param forms forms of products; none for all
 * @param users {@code general} or {@code professional}, and ages left out, such as {@code not:under_3}; none for all
 * @param purpose what the substance is used for when this limit applies, such as {@code preservative}, or {@code any}
 */
public record Scope(
        String use, Set<String> areas, Set<String> products, Set<String> forms, Set<String> users, String purpose)
        implements Serializable {

    /** The word for everything. */
    static final String ANY = "any";

    /** How the purposes begin that leave one out. */
    static final String OTHER_THAN = "other_than_";

    /** How the words begin that are left out. */
    static final String NOT = "not:";

    /** How the words begin that may be left out, by something that was not seen. */
    static final String PERHAPS_NOT = "perhaps_not:";

    static final String LEAVE_ON = "leave_on";
    static final String RINSE_OFF = "rinse_off";
    static final String GENERAL = "general";
    static final String PROFESSIONAL = "professional";

    /**
     * Checks, and brings the words into one form.
     *
     * @param use {@code leave_on}, {@code rinse_off} or {@code any}
     * @param areas parts of the body
     * @param products kinds of products
     * @param forms forms of products
     * @param users {@code general} or {@code professional}, and ages left out, such as {@code not:under_3}; none for all
     * @param purpose what the substance is used for, or {@code any}
     * @throws IllegalArgumentException if a word is blank, is the slip of a pen for a known one, or belongs to another side;
     *     or the use or a word for users is another
     */
    public Scope {
        if (!Objects.requireNonNull(use, "use").equals(ANY)) {
            requireOneOf("use", use, LEAVE_ON, RINSE_OFF);
        }
        areas = ProductWords.Vocabulary.AREAS.requireMeant(terms(areas));
        products = ProductWords.Vocabulary.KINDS.requireMeant(terms(products));
        forms = ProductWords.Vocabulary.FORMS.requireMeant(terms(forms));
        users = UserWords.requireScope(terms(users));
        purpose = ProductWords.term(Objects.requireNonNull(purpose, "purpose"));
        if (purpose.isEmpty()) {
            throw new IllegalArgumentException("purpose is blank: name one, for example preservative");
        }
        if (!purpose.equals(ANY)) {
            ProductWords.Vocabulary.PURPOSES.requireMeant(Set.of(purpose));
        }
    }

    private static Set<String> terms(Collection<String> words) {
        Set<String> terms = new HashSet<>();
        for (String word : Objects.requireNonNull(words, "words")) {
            terms.add(term(word));
        }
        return Set.copyOf(terms);
    }

    private static String term(String word) {
        String left = prefix(Objects.requireNonNull(word, "words"));
        String term = ProductWords.term(word.substring(left.length()));
        if (term.isEmpty() || term.equals(ANY)) {
            throw new IllegalArgumentException("a word of the list is \"" + Excerpt.of(word)
                    + "\": write any alone, or words such as hair;face or not:oral");
        }
        return left + term;
    }

    /** What a word begins with: {@code not:}, {@code perhaps_not:} or nothing. */
    static String prefix(String word) {
        return word.startsWith(NOT) ? NOT : word.startsWith(PERHAPS_NOT) ? PERHAPS_NOT : "";
    }

    private static Set<String> set(String... words) {
        Set<String> all = new HashSet<>();
        for (String word : Objects.requireNonNull(words, "words")) {
            all.add(Objects.requireNonNull(word, "words"));
        }
        return all;
    }

    /** Reads {@code any}, {@code hair;face} or {@code not:oral;not:lips}. */
    static Set<String> parse(String list) {
        return list.equals(ANY) ? Set.of() : terms(CsvRow.listed(list, ';'));
    }

    /**
     * All products.
     *
     * @return the scope without restriction
     */
    public static Scope any() {
        return new Scope(ANY, Set.of(), Set.of(), Set.of(), Set.of(), ANY);
    }

    /**
     * Products that stay on.
     *
     * @return the scope
     */
    public static Scope leaveOn() {
        return new Scope(LEAVE_ON, Set.of(), Set.of(), Set.of(), Set.of(), ANY);
    }

    /**
     * Products that are rinsed off.
     *
     * @return the scope
     */
    public static Scope rinseOff() {
        return new Scope(RINSE_OFF, Set.of(), Set.of(), Set.of(), Set.of(), ANY);
    }

    /**
     * The same scope for parts of the body.
     *
     * @param words for example {@code hair}, {@code face}, {@code not:oral}
     * @return the scope
     * @throws IllegalArgumentException if a word is blank, is the slip of a pen for a known one, or belongs to another side
     */
    public Scope withAreas(String... words) {
        return new Scope(use, set(words), products, forms, users, purpose);
    }

    /**
     * The same scope for kinds of products.
     *
     * @param words for example {@code shampoo}, {@code not:mouthwash}
     * @return the scope
     * @throws IllegalArgumentException if a word is blank, is the slip of a pen for a known one, or belongs to another side
     */
    public Scope withProducts(String... words) {
        return new Scope(use, areas, set(words), forms, users, purpose);
    }

    /**
     * The same scope for forms of products.
     *
     * @param words for example {@code spray}, {@code not:spray}
     * @return the scope
     * @throws IllegalArgumentException if a word is blank, is the slip of a pen for a known one, or belongs to another side
     */
    public Scope withForms(String... words) {
        return new Scope(use, areas, products, set(words), users, purpose);
    }

    /**
     * The same scope for some users.
     *
     * @param words {@code general} or {@code professional}, and ages left out, for example {@code not:under_3}
     * @return the scope
     * @throws IllegalArgumentException if one is another word
     */
    public Scope withUsers(String... words) {
        return new Scope(use, areas, products, forms, set(words), purpose);
    }

    /**
     * The same scope for one purpose of the substance.
     *
     * @param word for example {@code preservative}, {@code uv_filter}, {@code other_than_preservative}
     * @return the scope
     * @throws IllegalArgumentException if the word is blank, or is the slip of a pen for a known one
     */
    public Scope withPurpose(String word) {
        return new Scope(use, areas, products, forms, users, Objects.requireNonNull(word, "word"));
    }

    static String requireOneOf(String name, String word, String one, String other) {
        if (!Objects.requireNonNull(word, name).equals(one) && !word.equals(other)) {
            throw new IllegalArgumentException(
                    name + " is \"" + Excerpt.of(word) + "\": it must be " + one + " or " + other);
        }
        return word;
    }

    /**
     * Whether the scope covers a product, whatever the substance is used for. A word of the product that is not among the
     * words of the table settles nothing.
     *
     * @param product the product
     * @param words the words of the table, from {@link LimitTable#words()}
     * @return whether it does, or may
     */
    public Applicability applicabilityTo(Product product, ProductWords words) {
        Objects.requireNonNull(words, "words");
        return isForOtherUse(Objects.requireNonNull(product, "product"))
                ? Applicability.OUT_OF_SCOPE
                : UserWords.applicability(users, product)
                        .and(product.statedAreas(words).applicabilityOf(areas))
                        .and(product.statedKinds(words).applicabilityOf(products))
                        .and(product.statedForms(words).applicabilityOf(forms));
    }

    /** Whether the product is outside the scope if the known words are all there is to say of it. */
    boolean excludes(Product product, ProductWords words) {
        return isForOtherUse(product)
                || UserWords.applicability(users, product) == Applicability.OUT_OF_SCOPE
                || product.statedAreas(words).areOutside(areas)
                || product.statedKinds(words).areOutside(products)
                || product.statedForms(words).areOutside(forms);
    }

    private boolean isForOtherUse(Product product) {
        return !use.equals(ANY) && !use.equals(product.use());
    }

    /**
     * Whether the scope covers, or may cover, a substance used for this. What serves another purpose than one may serve
     * any of the rest.
     */
    boolean coversPurpose(String stated) {
        if (purpose.equals(ANY) || purpose.equals(stated)) {
            return true;
        }
        boolean otherThan = purpose.startsWith(OTHER_THAN);
        boolean statedOtherThan = stated.startsWith(OTHER_THAN);
        return otherThan && statedOtherThan
                || otherThan && !purpose.equals(OTHER_THAN + stated)
                || statedOtherThan && !stated.equals(OTHER_THAN + purpose);
    }

    /** The purpose that the scope leaves out: {@code preservative} for {@code other_than_preservative}, and back. */
    String otherPurpose() {
        return purpose.startsWith(OTHER_THAN) ? purpose.substring(OTHER_THAN.length()) : OTHER_THAN + purpose;
    }

    @Override
    public String toString() {
        String text = "use " + use + ", area " + text(areas) + ", product " + text(products) + ", form " + text(forms)
                + ", user " + text(users) + ", purpose " + purpose;
        return equals(any()) ? ANY : text;
    }

    /** What is meant before what is left out. */
    private static String text(Set<String> words) {
        return words.isEmpty()
                ? ANY
                : words.stream()
                        .sorted(Comparator.comparing(
                                        (String word) -> !prefix(word).isEmpty())
                                .thenComparing(word -> word))
                        .collect(Collectors.joining(";"));
    }
}
