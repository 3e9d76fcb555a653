package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceName;
import java.io.Serializable;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What a product is, as far as limits ask: whether it stays on, for which part of the body, of which kind and form, and
 * who uses it.
 *
 * <p>What is not stated is not known: limits that ask for it are then reported as ones that may apply. What is stated is
 * complete: a product for the hair is for the hair only. Hands, face and body are skin; a pump spray is a spray.
 *
 * <p>What can be stated is in {@link LimitTable#words()}. A word that a table does not know settles nothing: limits that
 * ask for such a word may apply, and the report names it. The word {@code other} says: none of those the table names.
 *
 * <p>Unless told otherwise the user is the general public, and a substance serves every purpose a limit asks for, which
 * is the stricter reading.
 *
 * <p>Example: {@code Product.leaveOn().on("face").ofKind("face_cream").inForm("cream")}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param use {@code leave_on} or {@code rinse_off}
 * @param areas parts of the body; empty if not stated
 * @param kinds kinds of product; empty if not stated
 * @param forms forms of the product; empty if not stated
 * @param user {@code general} or {@code professional}
 * @param purposes the one purpose of substances, by their names in capital letters
 */
public record Product(
        String use, Set<String> areas, Set<String> kinds, Set<String> forms, String user, Map<String, String> purposes)
        implements Serializable {

    /**
     * Checks, and brings the words and names into one form.
     *
     * @param use {@code leave_on} or {@code rinse_off}
     * @param areas parts of the body
     * @param kinds kinds of product
     * @param forms forms of the product
     * @param user {@code general} or {@code professional}
     * @param purposes purposes by the names of substances
     * @throws IllegalArgumentException if a word is blank, or the use or the user is another word
     */
    public Product {
        Scope.requireOneOf("use", use, Scope.LEAVE_ON, Scope.RINSE_OFF);
        areas = terms("bodyAreas", areas);
        kinds = terms("productKinds", kinds);
        forms = terms("productForms", forms);
        Scope.requireOneOf("user", user, Scope.GENERAL, Scope.PROFESSIONAL);
        Map<String, String> normal = new HashMap<>();
        purposes.forEach((name, purpose) -> normal.put(
                SubstanceName.normalise(Objects.requireNonNull(name, "inciName")), term("purpose", purpose)));
        purposes = Map.copyOf(normal);
    }

    private static Set<String> terms(String name, Set<String> words) {
        return words.stream().map(word -> term(name, word)).collect(Collectors.toUnmodifiableSet());
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
        return new Product(Scope.LEAVE_ON, Set.of(), Set.of(), Set.of(), Scope.GENERAL, Map.of());
    }

    /**
     * A product that is rinsed off.
     *
     * @return the product, nothing else stated
     */
    public static Product rinseOff() {
        return new Product(Scope.RINSE_OFF, Set.of(), Set.of(), Set.of(), Scope.GENERAL, Map.of());
    }

    /**
     * The same product for parts of the body.
     *
     * @param bodyAreas all of them, for example {@code face}, {@code hands}, {@code hair}
     * @return the product
     */
    public Product on(String... bodyAreas) {
        return new Product(use, stated("bodyAreas", bodyAreas), kinds, forms, user, purposes);
    }

    /**
     * The same product of a kind.
     *
     * @param productKinds all that it is, for example {@code shampoo}, {@code soap}, {@code face_cream}
     * @return the product
     */
    public Product ofKind(String... productKinds) {
        return new Product(use, areas, stated("productKinds", productKinds), forms, user, purposes);
    }

    /**
     * The same product in a form.
     *
     * @param productForms for example {@code pump_spray}, {@code loose_powder}, {@code cream}
     * @return the product
     */
    public Product inForm(String... productForms) {
        return new Product(use, areas, kinds, stated("productForms", productForms), user, purposes);
    }

    /**
     * The same product for professional use.
     *
     * @return the product
     */
    public Product forProfessionals() {
        return new Product(use, areas, kinds, forms, Scope.PROFESSIONAL, purposes);
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
        return new Product(use, areas, kinds, forms, user, more);
    }

    private static Set<String> stated(String name, String... words) {
        if (Objects.requireNonNull(words, name).length == 0) {
            throw blank(name);
        }
        return new LinkedHashSet<>(Arrays.asList(words));
    }

    /** The purpose stated under any of its names; none if different ones are, which is the stricter reading. */
    Optional<String> purposeOf(Substance substance) {
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
        for (StatedWords side : List.of(
                StatedWords.of(areas, words.areas()),
                StatedWords.of(kinds, words.kinds()),
                StatedWords.of(forms, words.forms()))) {
            side.unknownWhereAsked().forEach(word -> unknown.put(word, ProductWords.close(word, side.vocabulary())));
        }
        return unknown;
    }

    @Override
    public String toString() {
        return use + ", area " + text(areas) + ", kind " + text(kinds) + ", form " + text(forms) + ", user " + user
                + (purposes.isEmpty() ? "" : ", purposes " + new TreeMap<>(purposes));
    }

    private static String text(Set<String> words) {
        return words.isEmpty()
                ? "not stated"
                : String.join(" ", words.stream().sorted().toList());
    }
}
