package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.io.Serial;
import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

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
 */
public final class Product implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String use;
    private final Set<String> areas;
    private final Set<String> kinds;
    private final Set<String> forms;
    private final String user;
    private final Map<String, String> purposes;

    private Product(
            String use,
            Set<String> areas,
            Set<String> kinds,
            Set<String> forms,
            String user,
            Map<String, String> purposes) {
        this.use = use;
        this.areas = areas;
        this.kinds = kinds;
        this.forms = forms;
        this.user = user;
        this.purposes = Map.copyOf(purposes);
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
        return new Product(use, require("bodyAreas", bodyAreas), kinds, forms, user, purposes);
    }

    /**
     * The same product of a kind.
     *
     * @param productKinds all that it is, for example {@code shampoo}, {@code soap}, {@code face_cream}
     * @return the product
     */
    public Product ofKind(String... productKinds) {
        return new Product(use, areas, require("productKinds", productKinds), forms, user, purposes);
    }

    /**
     * The same product in a form.
     *
     * @param productForms for example {@code pump_spray}, {@code loose_powder}, {@code cream}
     * @return the product
     */
    public Product inForm(String... productForms) {
        return new Product(use, areas, kinds, require("productForms", productForms), user, purposes);
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
        Map<String, String> more = new LinkedHashMap<>(purposes);
        more.put(
                LimitNames.normalise(Objects.requireNonNull(inciName, "inciName")),
                require("purpose", purpose).iterator().next());
        return new Product(use, areas, kinds, forms, user, more);
    }

    private static Set<String> require(String name, String... words) {
        Objects.requireNonNull(words, name);
        Stream.of(words).forEach(word -> Objects.requireNonNull(word, name));
        if (words.length == 0 || Stream.of(words).anyMatch(String::isBlank)) {
            throw new IllegalArgumentException(name + " is blank: name at least one, or leave it unstated");
        }
        return Stream.of(words).map(LimitNames::term).collect(Collectors.toUnmodifiableSet());
    }

    /** What is stated, read with the words of a table. */
    StatedProduct in(ProductWords words) {
        return new StatedProduct(
                use,
                user,
                StatedWords.of(areas, words.areas()),
                StatedWords.of(kinds, words.kinds()),
                StatedWords.of(forms, words.forms()));
    }

    boolean statesPurposes() {
        return !purposes.isEmpty();
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

    Map<String, String> purposes() {
        return purposes;
    }

    /** The words that a table does not know, each with those of the table that may be meant. */
    SortedMap<String, List<String>> unknownWords(ProductWords words) {
        SortedMap<String, List<String>> unknown = new TreeMap<>();
        for (StatedWords side : in(words).sides()) {
            side.unknownWhereAsked().forEach(word -> unknown.put(word, ProductWords.close(word, side.vocabulary())));
        }
        return unknown;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Product that
                && use.equals(that.use)
                && areas.equals(that.areas)
                && kinds.equals(that.kinds)
                && forms.equals(that.forms)
                && user.equals(that.user)
                && purposes.equals(that.purposes);
    }

    @Override
    public int hashCode() {
        return Objects.hash(use, areas, kinds, forms, user, purposes);
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
