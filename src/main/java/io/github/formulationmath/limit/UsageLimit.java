package io.github.formulationmath.limit;

import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serializable;
import java.util.Objects;

/**
 * How much of a substance, or of a group of substances, a product may hold, must hold to work, or may hold without saying
 * so.
 *
 * <p>A limit states what is counted ({@link SubstanceGroup}), on which basis ({@link LimitBasis}), how several substances
 * count together ({@link SumRule}), of which whole (the product, or one phase), and for which products ({@link Scope}).
 * Whatever is not a number goes along as text ({@link EntryText}).
 *
 * <p>Example: {@code UsageLimit.of("HOUSE-1", SubstanceGroup.of("Tocopherol"), LimitKind.MAXIMUM,
 * MassFraction.ofPercent("0.5")).inPhase("oil phase")} allows 0.5 % of the oil phase.
 *
 * <p>Immutable and thread-safe.
 *
 * @param id the key, unique in a table
 * @param group what is counted
 * @param kind what the share is
 * @param share the limit as a mass fraction, digits as written kept
 * @param basis what is weighed
 * @param sumRule how several substances count together
 * @param scope which products it is for
 * @param whole of what it is a share: {@code product}, or the name of a phase
 * @param outside what the entry says of products outside its scope
 * @param entry the entry it belongs to; limits of one entry have the same
 * @param declaredAs the name under which the substance is declared in the ingredient list; empty if nothing is to be
 *     declared
 * @param citation where it stands
 * @param text what it says in words
 */
public record UsageLimit(
        String id,
        SubstanceGroup group,
        LimitKind kind,
        MassFraction share,
        LimitBasis basis,
        SumRule sumRule,
        Scope scope,
        String whole,
        OutsideScope outside,
        String entry,
        String declaredAs,
        Citation citation,
        EntryText text)
        implements Serializable {

    /** The word for the whole product. */
    static final String PRODUCT = "product";

    /**
     * Checks; {@link #of} and the methods that follow it are the shorter way.
     *
     * @param id the key
     * @param group what is counted
     * @param kind what the share is
     * @param share the limit
     * @param basis what is weighed
     * @param sumRule how several substances count together
     * @param scope which products it is for
     * @param whole of what it is a share
     * @param outside what the entry says of other products
     * @param entry the entry it belongs to
     * @param declaredAs the name to be declared
     * @param citation where it stands
     * @param text what it says in words
     * @throws IllegalArgumentException if the id is blank or holds white space, or the whole is blank
     */
    public UsageLimit {
        if (Objects.requireNonNull(id, "id").isBlank() || hasSpace(id)) {
            throw new IllegalArgumentException("id is \"" + Excerpt.of(id) + "\": give a key without spaces");
        }
        Objects.requireNonNull(group, "group");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(share, "share");
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(sumRule, "sumRule");
        Objects.requireNonNull(scope, "scope");
        if (Objects.requireNonNull(whole, "phase").isBlank()) {
            throw new IllegalArgumentException("phase is blank: name the phase");
        }
        whole = whole.equals(PRODUCT) ? PRODUCT : whole; // the same object, which is quickly seen to be equal
        Objects.requireNonNull(outside, "outside");
        Objects.requireNonNull(entry, "entry");
        Objects.requireNonNull(declaredAs, "declaredAs");
        Objects.requireNonNull(citation, "citation");
        Objects.requireNonNull(text, "text");
    }

    /**
     * A limit for all products, on the substance itself, each substance of the group alone.
     *
     * @param id a key of its own
     * @param group what is counted
     * @param kind what the share is
     * @param share the share of the product
     * @return the limit
     * @throws IllegalArgumentException if the id is blank or holds white space
     */
    public static UsageLimit of(String id, SubstanceGroup group, LimitKind kind, MassFraction share) {
        return new UsageLimit(
                id,
                group,
                kind,
                share,
                LimitBasis.active(),
                SumRule.SINGLE,
                Scope.any(),
                PRODUCT,
                OutsideScope.NONE,
                id,
                "",
                Citation.none(),
                EntryText.NONE);
    }

    /**
     * A rule of one's own in four facts: the substance, how much of it at most, in which products, and who says so.
     *
     * @param inciName the substance
     * @param percent the highest share, for example {@code 0.9 %}
     * @param scope in which products
     * @param source where it stands, for example the data sheet of the supplier with its edition and day
     * @return the limit; its id is made of the name, see {@link #withId}
     * @throws IllegalArgumentException if the name or the source is blank, or the share is no percentage
     */
    public static UsageLimit atMost(String inciName, String percent, Scope scope, String source) {
        return own(inciName, LimitKind.MAXIMUM, MassFraction.parse(percent), scope, source);
    }

    /**
     * A rule of one's own in four facts: the substance, how much of it at least so that it works, in which products, and who
     * says so.
     *
     * @param inciName the substance
     * @param percent the lowest effective share, for example {@code 0.3 %}
     * @param scope in which products
     * @param source where it stands
     * @return the limit; its id is made of the name, see {@link #withId}
     * @throws IllegalArgumentException if the name or the source is blank, or the share is no percentage
     */
    public static UsageLimit atLeast(String inciName, String percent, Scope scope, String source) {
        return own(inciName, LimitKind.MINIMUM, MassFraction.parse(percent), scope, source);
    }

    static UsageLimit own(String inciName, LimitKind kind, MassFraction share, Scope scope, String source) {
        SubstanceGroup group = SubstanceGroup.of(inciName);
        String name = SubstanceName.normalise(inciName)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        String id = "OWN-" + (name.isEmpty() ? "" : name + "-") + SubstanceName.normalise(kind.code());
        return of(id, group, kind, share)
                .within(Objects.requireNonNull(scope, "scope"))
                .citing(Citation.of(source, "", null, null));
    }

    /**
     * The same limit under another key.
     *
     * @param newId a key of its own, without spaces
     * @return the limit; one that was an entry by itself still is
     * @throws IllegalArgumentException if the id is blank or holds white space
     */
    public UsageLimit withId(String newId) {
        String ownEntry = entry.equals(id) ? newId : entry;
        return new UsageLimit(
                newId, group, kind, share, basis, sumRule, scope, whole, outside, ownEntry, declaredAs, citation, text);
    }

    /**
     * The same limit with the name under which the substance is declared in the ingredient list.
     *
     * @param name the name
     * @return the limit
     */
    public UsageLimit toBeDeclaredAs(String name) {
        return inEntry(outside, entry, Objects.requireNonNull(name, "name"));
    }

    /**
     * The same limit of an entry that allows its substances only in the products that its limits are for.
     *
     * @return the limit; in other products the substance is {@link Conformity#PROHIBITED}
     */
    public UsageLimit allowedNowhereElse() {
        return inEntry(OutsideScope.NOT_ALLOWED, entry, declaredAs);
    }

    /**
     * The same limit on another basis.
     *
     * @param newBasis what is weighed
     * @return the limit
     */
    public UsageLimit on(LimitBasis newBasis) {
        return new UsageLimit(
                id, group, kind, share, newBasis, sumRule, scope, whole, outside, entry, declaredAs, citation, text);
    }

    /**
     * The same limit with another rule for several substances.
     *
     * @param rule how they count together
     * @return the limit
     */
    public UsageLimit counting(SumRule rule) {
        return new UsageLimit(
                id, group, kind, share, basis, rule, scope, whole, outside, entry, declaredAs, citation, text);
    }

    /**
     * The same limit for some products.
     *
     * @param newScope which products
     * @return the limit
     */
    public UsageLimit within(Scope newScope) {
        return new UsageLimit(
                id, group, kind, share, basis, sumRule, newScope, whole, outside, entry, declaredAs, citation, text);
    }

    /**
     * The same limit as a share of one phase instead of the whole product.
     *
     * @param phase the name of the phase
     * @return the limit
     * @throws IllegalArgumentException if the name is blank
     */
    public UsageLimit inPhase(String phase) {
        return new UsageLimit(
                id, group, kind, share, basis, sumRule, scope, phase, outside, entry, declaredAs, citation, text);
    }

    /**
     * The same limit with its source.
     *
     * @param source where it stands
     * @return the limit
     */
    public UsageLimit citing(Citation source) {
        return new UsageLimit(
                id, group, kind, share, basis, sumRule, scope, whole, outside, entry, declaredAs, source, text);
    }

    /**
     * The same limit with what it says in words.
     *
     * @param words the words
     * @return the limit
     */
    public UsageLimit saying(EntryText words) {
        return new UsageLimit(
                id, group, kind, share, basis, sumRule, scope, whole, outside, entry, declaredAs, citation, words);
    }

    private static boolean hasSpace(String id) {
        for (int i = 0; i < id.length(); i++) {
            if (Character.isWhitespace(id.charAt(i))) {
                return true;
            }
        }
        return false;
    }

    /** Annex and number of its entry, for example {@code VI 18}; of an entry of one's own, its first two words. */
    String place() {
        String[] words = entry.split(" ", 3);
        return words.length < 2 ? entry : words[0] + " " + words[1];
    }

    /** What is left of the limit for products in which its entry does not allow the substance: nothing, of the product. */
    UsageLimit allowingNothing() {
        UsageLimit none = of(id, group, LimitKind.MAXIMUM, MassFraction.ZERO)
                .within(scope)
                .citing(citation)
                .saying(text);
        return none.inEntry(outside, entry, declaredAs);
    }

    /** The same limit as one of an entry. */
    UsageLimit inEntry(OutsideScope others, String name, String declared) {
        return new UsageLimit(
                id, group, kind, share, basis, sumRule, scope, whole, others, name, declared, citation, text);
    }

    /**
     * Whether it is a share of the whole product.
     *
     * @return false if it is a share of a phase
     */
    public boolean isOfProduct() {
        return whole.equals(PRODUCT);
    }

    @Override
    public String toString() {
        return id + ": " + group + " " + kind.code() + " " + NumberText.percent(share.fraction()) + " " + basis + " of "
                + whole;
    }
}
