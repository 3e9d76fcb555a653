package io.github.formulationmath.limit;

import io.github.formulationmath.quantity.MassFraction;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

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
 */
public final class UsageLimit implements Serializable {

    /** The word for the whole product. */
    static final String PRODUCT = "product";

    @Serial
    private static final long serialVersionUID = 1L;

    private final LimitCore core;
    private final LimitDetail detail;

    UsageLimit(LimitCore core, LimitDetail detail) {
        this.core = core;
        this.detail = detail;
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
                LimitCore.of(id, group, kind, share),
                new LimitDetail(PRODUCT, OutsideScope.NONE, "", "", Citation.none(), EntryText.NONE));
    }

    /**
     * The same limit on another basis.
     *
     * @param basis what is weighed
     * @return the limit
     */
    public UsageLimit on(LimitBasis basis) {
        return new UsageLimit(core.with(basis), detail);
    }

    /**
     * The same limit with another rule for several substances.
     *
     * @param rule how they count together
     * @return the limit
     */
    public UsageLimit counting(SumRule rule) {
        return new UsageLimit(core.with(rule), detail);
    }

    /**
     * The same limit for some products.
     *
     * @param scope which products
     * @return the limit
     */
    public UsageLimit within(Scope scope) {
        return new UsageLimit(core.with(scope), detail);
    }

    /**
     * The same limit as a share of one phase instead of the whole product.
     *
     * @param phase the name of the phase
     * @return the limit
     * @throws IllegalArgumentException if the name is blank
     */
    public UsageLimit inPhase(String phase) {
        if (Objects.requireNonNull(phase, "phase").isBlank()) {
            throw new IllegalArgumentException("phase is blank: name the phase");
        }
        return new UsageLimit(core, detail.withWhole(phase));
    }

    /**
     * The same limit with its source.
     *
     * @param citation where it stands
     * @return the limit
     */
    public UsageLimit citing(Citation citation) {
        return new UsageLimit(core, detail.with(Objects.requireNonNull(citation, "citation")));
    }

    /**
     * The same limit with what it says in words.
     *
     * @param text the words
     * @return the limit
     */
    public UsageLimit saying(EntryText text) {
        return new UsageLimit(core, detail.with(Objects.requireNonNull(text, "text")));
    }

    /**
     * The key.
     *
     * @return the id, unique in a table
     */
    public String id() {
        return core.id();
    }

    /**
     * What is counted.
     *
     * @return the group
     */
    public SubstanceGroup group() {
        return core.group();
    }

    /**
     * What the share is.
     *
     * @return the kind
     */
    public LimitKind kind() {
        return core.kind();
    }

    /**
     * The share.
     *
     * @return the limit as a mass fraction, digits as written kept
     */
    public MassFraction share() {
        return core.share();
    }

    /**
     * What is weighed.
     *
     * @return the basis
     */
    public LimitBasis basis() {
        return core.basis();
    }

    /**
     * How several substances count together.
     *
     * @return the rule
     */
    public SumRule sumRule() {
        return core.sumRule();
    }

    /**
     * Which products it is for.
     *
     * @return the scope
     */
    public Scope scope() {
        return core.scope();
    }

    /**
     * Of what it is a share.
     *
     * @return {@code product}, or the name of a phase
     */
    public String whole() {
        return detail.whole();
    }

    /**
     * Whether it is a share of the whole product.
     *
     * @return false if it is a share of a phase
     */
    public boolean isOfProduct() {
        return detail.whole().equals(PRODUCT);
    }

    /**
     * What the entry says of products outside its scope.
     *
     * @return the rule
     */
    public OutsideScope outsideScope() {
        return detail.outsideScope();
    }

    /**
     * The name under which the substance is declared in the ingredient list.
     *
     * @return the name; empty if nothing is to be declared
     */
    public String declaredAs() {
        return detail.declaredAs();
    }

    /**
     * Where it stands.
     *
     * @return the citation
     */
    public Citation citation() {
        return detail.citation();
    }

    /**
     * What it says in words.
     *
     * @return the texts
     */
    public EntryText text() {
        return detail.text();
    }

    /** What is left of the limit for products in which its entry does not allow the substance: nothing, of the product. */
    UsageLimit allowingNothing() {
        return new UsageLimit(core.allowingNothing(), detail.withWhole(PRODUCT));
    }

    /** Limits of one entry share this key. */
    String entry() {
        return detail.entry().isEmpty() ? id() : detail.entry();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof UsageLimit that && core.equals(that.core) && detail.equals(that.detail);
    }

    @Override
    public int hashCode() {
        return core.hashCode();
    }

    @Override
    public String toString() {
        return id() + ": " + group() + " " + kind().code() + " " + share().percent() + " % " + basis() + " of "
                + whole();
    }
}
