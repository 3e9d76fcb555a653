package io.github.formulationmath.limit;

import io.github.formulationmath.number.Excerpt;
import java.io.Serializable;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The products a limit is meant for: whether they stay on or are rinsed off, the parts of the body, the kinds of product,
 * their form, who uses them, and what the substance is used for.
 *
 * <p>Words are written as in a table: {@code hair}, {@code face_cream}, {@code not:oral}. Letter case, spaces and hyphens
 * make no difference. Several words that are meant: one of them is enough. Words with {@code not:} are left out.
 *
 * <p>Example: {@code Scope.leaveOn().withAreas("not:oral", "not:lips").withForms("not:spray")}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param use {@code leave_on}, {@code rinse_off} or {@code any}
 * @param areas parts of the body; none for all
 * @param products kinds of products; none for all
 * @param forms forms of products; none for all
 * @param user {@code general}, {@code professional} or {@code any}
 * @param purpose what the substance is used for when this limit applies, such as {@code preservative}, or {@code any}
 */
public record Scope(String use, Set<String> areas, Set<String> products, Set<String> forms, String user, String purpose)
        implements Serializable {

    /** The word for everything. */
    static final String ANY = "any";

    /** How the purposes begin that leave one out. */
    static final String OTHER_THAN = "other_than_";

    /** How the words begin that are left out. */
    static final String NOT = "not:";

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
     * @param user {@code general}, {@code professional} or {@code any}
     * @param purpose what the substance is used for, or {@code any}
     * @throws IllegalArgumentException if a word is blank, or the use or the user is another word
     */
    public Scope {
        if (!Objects.requireNonNull(use, "use").equals(ANY)) {
            requireOneOf("use", use, LEAVE_ON, RINSE_OFF);
        }
        areas = terms(areas);
        products = terms(products);
        forms = terms(forms);
        if (!Objects.requireNonNull(user, "user").equals(ANY)) {
            requireOneOf("user", user, GENERAL, PROFESSIONAL);
        }
        purpose = ProductWords.term(Objects.requireNonNull(purpose, "purpose"));
        if (purpose.isEmpty()) {
            throw new IllegalArgumentException("purpose is blank: name one, for example preservative");
        }
    }

    private static Set<String> terms(Set<String> words) {
        return Objects.requireNonNull(words, "words").stream().map(Scope::term).collect(Collectors.toUnmodifiableSet());
    }

    private static String term(String word) {
        String left = Objects.requireNonNull(word, "words").startsWith(NOT) ? NOT : "";
        String term = ProductWords.term(word.substring(left.length()));
        if (term.isEmpty() || term.equals(ANY)) {
            throw new IllegalArgumentException("a word of the list is \"" + Excerpt.of(word)
                    + "\": write any alone, or words such as hair;face or not:oral");
        }
        return left + term;
    }

    private static Set<String> set(String... words) {
        Objects.requireNonNull(words, "words");
        Stream.of(words).forEach(word -> Objects.requireNonNull(word, "words"));
        return new HashSet<>(List.of(words));
    }

    /** Reads {@code any}, {@code hair;face} or {@code not:oral;not:lips}. */
    static Set<String> parse(String list) {
        return list.equals(ANY) ? Set.of() : terms(set(list.split(";", -1)));
    }

    /**
     * All products.
     *
     * @return the scope without restriction
     */
    public static Scope any() {
        return new Scope(ANY, Set.of(), Set.of(), Set.of(), ANY, ANY);
    }

    /**
     * Products that stay on.
     *
     * @return the scope
     */
    public static Scope leaveOn() {
        return new Scope(LEAVE_ON, Set.of(), Set.of(), Set.of(), ANY, ANY);
    }

    /**
     * Products that are rinsed off.
     *
     * @return the scope
     */
    public static Scope rinseOff() {
        return new Scope(RINSE_OFF, Set.of(), Set.of(), Set.of(), ANY, ANY);
    }

    /**
     * The same scope for parts of the body.
     *
     * @param words for example {@code hair}, {@code face}, {@code not:oral}
     * @return the scope
     * @throws IllegalArgumentException if a word is blank
     */
    public Scope withAreas(String... words) {
        return new Scope(use, set(words), products, forms, user, purpose);
    }

    /**
     * The same scope for kinds of products.
     *
     * @param words for example {@code shampoo}, {@code not:mouthwash}
     * @return the scope
     * @throws IllegalArgumentException if a word is blank
     */
    public Scope withProducts(String... words) {
        return new Scope(use, areas, set(words), forms, user, purpose);
    }

    /**
     * The same scope for forms of products.
     *
     * @param words for example {@code spray}, {@code not:spray}
     * @return the scope
     * @throws IllegalArgumentException if a word is blank
     */
    public Scope withForms(String... words) {
        return new Scope(use, areas, products, set(words), user, purpose);
    }

    /**
     * The same scope for one sort of user.
     *
     * @param word {@code general} or {@code professional}
     * @return the scope
     * @throws IllegalArgumentException if it is another word
     */
    public Scope withUser(String word) {
        return new Scope(use, areas, products, forms, requireOneOf("user", word, GENERAL, PROFESSIONAL), purpose);
    }

    /**
     * The same scope for one purpose of the substance.
     *
     * @param word for example {@code preservative}, {@code uv_filter}, {@code other_than_preservative}
     * @return the scope
     * @throws IllegalArgumentException if the word is blank
     */
    public Scope withPurpose(String word) {
        return new Scope(use, areas, products, forms, user, Objects.requireNonNull(word, "word"));
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
        return isForOthers(Objects.requireNonNull(product, "product"))
                ? Applicability.OUT_OF_SCOPE
                : StatedWords.of(product.areas(), words.areas())
                        .applicabilityOf(areas)
                        .and(StatedWords.of(product.kinds(), words.kinds()).applicabilityOf(products))
                        .and(StatedWords.of(product.forms(), words.forms()).applicabilityOf(forms));
    }

    /** Whether the product is outside the scope if the known words are all there is to say of it. */
    boolean excludes(Product product, ProductWords words) {
        return isForOthers(product)
                || StatedWords.of(product.areas(), words.areas()).areOutside(areas)
                || StatedWords.of(product.kinds(), words.kinds()).areOutside(products)
                || StatedWords.of(product.forms(), words.forms()).areOutside(forms);
    }

    private boolean isForOthers(Product product) {
        boolean otherUse = !use.equals(ANY) && !use.equals(product.use());
        boolean otherUser = !user.equals(ANY) && !user.equals(product.user());
        return otherUse || otherUser;
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
                + ", user " + user + ", purpose " + purpose;
        return equals(any()) ? ANY : text;
    }

    /** What is meant before what is left out. */
    private static String text(Set<String> words) {
        return words.isEmpty()
                ? ANY
                : words.stream()
                        .sorted(Comparator.comparing((String word) -> word.startsWith(NOT))
                                .thenComparing(word -> word))
                        .collect(Collectors.joining(";"));
    }
}
