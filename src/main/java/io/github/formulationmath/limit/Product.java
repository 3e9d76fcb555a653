package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceName;
import java.io.Serializable;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a product is, as far as limits ask: whether it stays on, for which part of the body, of which kind and form, and
 * who uses it.
 *
 * <p>What is not stated is not known: limits that ask for it are then reported as ones that may apply. What is stated is
 * complete: a product for the hair is for the hair only. Some words say more than themselves: hands, face and body are
 * skin; lips, mouth, eyes and {@code intimate} are mucous membranes; a pump spray is a spray, and what is sprayed is
 * inhaled; {@code nappy_cream} is for children under three.
 *
 * <p>What can be stated is in {@link LimitTable#words()}. A word that a table does not know settles nothing: limits that
 * ask for such a word may apply, and the report names it. The word {@code other} says: none of those the table names.
 *
 * <p>Unless told otherwise the user is the general public of an age that is not known, and a substance serves every
 * purpose a limit asks for, which is the stricter reading.
 *
 * <p>Example: {@code Product.leaveOn().on("face").ofKind("face_cream").inForm("cream")}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param use {@code leave_on} or {@code rinse_off}
 * @param areas parts of the body; empty if not stated
 * @param kinds kinds of product; empty if not stated
 * @param forms forms of the product; empty if not stated
 * @param users who uses it: {@code professional}, or else the general public; and how young the youngest is, such as
 *     {@code under_3} or {@code from_3}; what is not stated is not known
 * @param purposes the one purpose of substances, by their names in capital letters
 */
public record Product(
        String use,
        Set<String> areas,
        Set<String> kinds,
        Set<String> forms,
        Set<String> users,
        Map<String, String> purposes)
        implements Serializable {

    /**
     * Checks, and brings the words and names into one form.
     *
     * @param use {@code leave_on} or {@code rinse_off}
     * @param areas parts of the body
     * @param kinds kinds of product
     * @param forms forms of the product
     * @param users who uses it
     * @param purposes purposes by the names of substances
     * @throws IllegalArgumentException if a word is blank, the use is another word, or a word for the
     *     users is not one of those that {@link ProductWords#users()} lists
     */
    public Product {
        Scope.requireOneOf("use", use, Scope.LEAVE_ON, Scope.RINSE_OFF);
        areas = terms("bodyAreas", areas);
        kinds = terms("productKinds", kinds);
        forms = terms("productForms", forms);
        users = UserWords.requireKnown(terms("users", users));
        Map<String, String> normal = new HashMap<>();
        for (Map.Entry<String, String> one : purposes.entrySet()) {
            normal.put(
                    SubstanceName.normalise(Objects.requireNonNull(one.getKey(), "inciName")),
                    term("purpose", one.getValue()));
        }
        purposes = Map.copyOf(normal);
    }

    private static Set<String> terms(String name, Set<String> words) {
        Set<String> terms = new HashSet<>();
        for (String word : words) {
            terms.add(term(name, word));
        }
        return Set.copyOf(terms);
    }

    private static String term(String name, String word) {
        if (Objects.requireNonNull(word, name).isBlank()) {
            throw blank(name);
        }
        return ProductWords.term(word);
    }

    private static IllegalArgumentException blank(String name) {
        return new IllegalArgumentException(name + " is blank: name at least one, or leave it unstated");
    }

    /**
     * A product that stays on.
     *
     * @return the product, nothing else stated
     */
    public static Product leaveOn() {
        return new Product(Scope.LEAVE_ON, Set.of(), Set.of(), Set.of(), Set.of(), Map.of());
    }

    /**
     * A product that is rinsed off.
     *
     * @return the product, nothing else stated
     */
    public static Product rinseOff() {
        return new Product(Scope.RINSE_OFF, Set.of(), Set.of(), Set.of(), Set.of(), Map.of());
    }

    /**
     * The same product for parts of the body.
     *
     * @param bodyAreas all of them, for example {@code face}, {@code hands}, {@code hair}
     * @return the product
     */
    public Product on(String... bodyAreas) {
        return new Product(use, stated("bodyAreas", bodyAreas), kinds, forms, users, purposes);
    }

    /**
     * The same product of a kind.
     *
     * @param productKinds all that it is, for example {@code shampoo}, {@code soap}, {@code face_cream}
     * @return the product
     */
    public Product ofKind(String... productKinds) {
        return new Product(use, areas, stated("productKinds", productKinds), forms, users, purposes);
    }

    /**
     * The same product in a form.
     *
     * @param productForms for example {@code pump_spray}, {@code loose_powder}, {@code cream}
     * @return the product
     */
    public Product inForm(String... productForms) {
        return new Product(use, areas, kinds, stated("productForms", productForms), users, purposes);
    }

    /**
     * The same product for professional use.
     *
     * @return the product
     */
    public Product forProfessionals() {
        Set<String> more = new LinkedHashSet<>(users);
        more.remove(Scope.GENERAL);
        more.add(Scope.PROFESSIONAL);
        return new Product(use, areas, kinds, forms, more, purposes);
    }

    /**
     * The same product for users in words: {@code general} or {@code professional}, and how young the youngest is for whom
     * it is meant, for example {@code under_3}, {@code from_3} or {@code adults}.
     *
     * @param words all that is to be said; the words are in {@link ProductWords#users()}
     * @return the product
     * @throws IllegalArgumentException if there is no word, or one is another
     */
    public Product forUsers(String... words) {
        return new Product(use, areas, kinds, forms, stated("users", words), purposes);
    }

    /**
     * The same product, in which a substance serves one purpose only. Which purposes a table asks for is in
     * {@link LimitTable#words()}; {@link LimitChecker#of} refuses another.
     *
     * @param inciName the substance
     * @param purpose for example {@code preservative} or {@code other_than_preservative}
     * @return the product
     * @throws IllegalArgumentException if the purpose is blank
     */
    public Product using(String inciName, String purpose) {
        Map<String, String> more = new HashMap<>(purposes);
        more.put(SubstanceName.normalise(Objects.requireNonNull(inciName, "inciName")), term("purpose", purpose));
        return new Product(use, areas, kinds, forms, users, more);
    }

    boolean isProfessional() {
        return users.contains(Scope.PROFESSIONAL);
    }

    /**
     * The areas that the product states, read with the words of a table. A kind that nobody knows may be for any area, and in any
     * form, and an area that nobody knows may make it one of another kind: then what is said is not all.
     */
    StatedWords statedAreas(ProductWords words) {
        Set<String> all = ProductWords.withAreasFrom(kinds, areas);
        StatedWords stated = StatedWords.of(all, words.areas(), ProductWords.Vocabulary.AREAS);
        return stated.asOpen(!areKnown(kinds, words.kinds(), ProductWords.Vocabulary.KINDS));
    }

    StatedWords statedKinds(ProductWords words) {
        Set<String> all = ProductWords.withKindsFrom(ProductWords.withAreasFrom(kinds, areas), kinds);
        StatedWords stated = StatedWords.of(all, words.kinds(), ProductWords.Vocabulary.KINDS);
        return (kinds.isEmpty() ? stated.asPart() : stated)
                .asOpen(!areKnown(areas, words.areas(), ProductWords.Vocabulary.AREAS));
    }

    StatedWords statedForms(ProductWords words) {
        Set<String> all = ProductWords.withFormsFrom(kinds, forms);
        StatedWords stated = StatedWords.of(all, words.forms(), ProductWords.Vocabulary.FORMS);
        return stated.asOpen(!areKnown(kinds, words.kinds(), ProductWords.Vocabulary.KINDS));
    }

    private static boolean areKnown(Set<String> written, Set<String> ofTable, ProductWords.Vocabulary general) {
        for (String word : written) {
            if (!ofTable.contains(word) && !general.has(word)) {
                return false;
            }
        }
        return true;
    }

    private static Set<String> stated(String name, String... words) {
        if (Objects.requireNonNull(words, name).length == 0) {
            throw blank(name);
        }
        return new LinkedHashSet<>(Arrays.asList(words));
    }

    /** The purpose stated under any of its names; none if different ones are, which is the stricter reading. */
    Optional<String> purposeOf(Substance substance) {
        if (purposes.isEmpty()) {
            return Optional.empty();
        }
        List<String> stated = substance.keys().stream()
                .map(purposes::get)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        return stated.size() == 1 ? Optional.of(stated.get(0)) : Optional.empty();
    }

    /** The words that a table does not know, each with those of the table that may be meant. */
    SortedMap<String, List<String>> unknownWords(ProductWords words) {
        SortedMap<String, List<String>> unknown = new TreeMap<>();
        for (StatedWords side : List.of(statedAreas(words), statedKinds(words), statedForms(words))) {
            side.unknownWhereAsked().forEach(word -> unknown.put(word, ProductWords.close(word, side.vocabulary())));
        }
        return unknown;
    }

    @Override
    public String toString() {
        return use + ", area " + text(areas) + ", kind " + text(kinds) + ", form " + text(forms) + ", user "
                + text(users) + (purposes.isEmpty() ? "" : ", purposes " + new TreeMap<>(purposes));
    }

    private static String text(Set<String> words) {
        return words.isEmpty()
                ? "not stated"
                : String.join(" ", words.stream().sorted().toList());
    }
}
