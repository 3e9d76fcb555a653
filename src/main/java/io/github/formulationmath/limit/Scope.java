package io.github.formulationmath.limit;

import io.github.formulationmath.number.Excerpt;
import java.io.Serial;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

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
 */
public final class Scope implements Serializable {

    /** The word for everything. */
    static final String ANY = "any";

    /** How the purposes begin that leave one out. */
    static final String OTHER_THAN = "other_than_";

    static final String LEAVE_ON = "leave_on";
    static final String RINSE_OFF = "rinse_off";
    static final String GENERAL = "general";
    static final String PROFESSIONAL = "professional";

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Scope EVERYTHING = new Scope(ANY, ScopeTerms.ANY, ScopeTerms.ANY, ScopeTerms.ANY, ANY, ANY);

    private final String use;
    private final ScopeTerms areas;
    private final ScopeTerms products;
    private final ScopeTerms forms;
    private final String user;
    private final String purpose;

    private Scope(String use, ScopeTerms areas, ScopeTerms products, ScopeTerms forms, String user, String purpose) {
        this.use = use;
        this.areas = areas;
        this.products = products;
        this.forms = forms;
        this.user = user;
        this.purpose = purpose;
    }

    /**
     * All products.
     *
     * @return the scope without restriction
     */
    public static Scope any() {
        return EVERYTHING;
    }

    /**
     * Products that stay on.
     *
     * @return the scope
     */
    public static Scope leaveOn() {
        return EVERYTHING.use(LEAVE_ON);
    }

    /**
     * Products that are rinsed off.
     *
     * @return the scope
     */
    public static Scope rinseOff() {
        return EVERYTHING.use(RINSE_OFF);
    }

    Scope use(String word) {
        return new Scope(requireOneOf("use", word, LEAVE_ON, RINSE_OFF), areas, products, forms, user, purpose);
    }

    /**
     * The same scope for parts of the body.
     *
     * @param words for example {@code hair}, {@code face}, {@code not:oral}
     * @return the scope
     * @throws IllegalArgumentException if a word is blank
     */
    public Scope withAreas(String... words) {
        return with(ScopeTerms.of(Objects.requireNonNull(words, "words")), products, forms);
    }

    /**
     * The same scope for kinds of products.
     *
     * @param words for example {@code shampoo}, {@code not:mouthwash}
     * @return the scope
     * @throws IllegalArgumentException if a word is blank
     */
    public Scope withProducts(String... words) {
        return with(areas, ScopeTerms.of(Objects.requireNonNull(words, "words")), forms);
    }

    /**
     * The same scope for forms of products.
     *
     * @param words for example {@code spray}, {@code not:spray}
     * @return the scope
     * @throws IllegalArgumentException if a word is blank
     */
    public Scope withForms(String... words) {
        return with(areas, products, ScopeTerms.of(Objects.requireNonNull(words, "words")));
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
        String term = LimitNames.term(Objects.requireNonNull(word, "word"));
        if (term.isEmpty()) {
            throw new IllegalArgumentException("purpose is blank: name one, for example preservative");
        }
        return new Scope(use, areas, products, forms, user, term);
    }

    Scope with(ScopeTerms newAreas, ScopeTerms newProducts, ScopeTerms newForms) {
        return new Scope(use, newAreas, newProducts, newForms, user, purpose);
    }

    private static String requireOneOf(String name, String word, String one, String other) {
        if (!Objects.requireNonNull(word, name).equals(one) && !word.equals(other)) {
            throw new IllegalArgumentException(
                    name + " is \"" + Excerpt.of(word) + "\": it must be " + one + " or " + other);
        }
        return word;
    }

    /**
     * What the substance is used for when this limit applies.
     *
     * @return a word such as {@code preservative}, or {@code any}
     */
    public String purpose() {
        return purpose;
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
        Objects.requireNonNull(product, "product");
        return applicabilityTo(product.in(Objects.requireNonNull(words, "words")));
    }

    Applicability applicabilityTo(StatedProduct product) {
        return isForOthers(product)
                ? Applicability.OUT_OF_SCOPE
                : areas.applicabilityTo(product.areas())
                        .and(products.applicabilityTo(product.kinds()))
                        .and(forms.applicabilityTo(product.forms()));
    }

    /** Whether the product is outside the scope if the known words are all there is to say of it. */
    boolean excludes(StatedProduct product) {
        return isForOthers(product)
                || areas.excludes(product.areas())
                || products.excludes(product.kinds())
                || forms.excludes(product.forms());
    }

    private boolean isForOthers(StatedProduct product) {
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

    ScopeTerms areas() {
        return areas;
    }

    ScopeTerms products() {
        return products;
    }

    ScopeTerms forms() {
        return forms;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Scope that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    private List<Object> parts() {
        return List.of(use, areas, products, forms, user, purpose);
    }

    @Override
    public String toString() {
        String text = "use " + use + ", area " + areas + ", product " + products + ", form " + forms + ", user " + user
                + ", purpose " + purpose;
        return Objects.equals(this, EVERYTHING) ? ANY : text;
    }
}
