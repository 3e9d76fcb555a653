package io.github.formulationmath.limit;

import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.reckoning.Phrase;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What is weighed when a limit is held against a formula: the substance itself, the material as bought, or the substance
 * converted into another one.
 *
 * <table>
 * <caption>A material with 50 % sodium benzoate, at 1 % of a formula</caption>
 * <tr><th>basis</th><th>counts as</th></tr>
 * <tr><td>{@link #asSupplied()}</td><td>1 %</td></tr>
 * <tr><td>{@link #active()}</td><td>0.5 %</td></tr>
 * <tr><td>{@link #as as("benzoic acid", C7H6O2)}</td><td>0.5 % · 0.84746 = 0.4237 %</td></tr>
 * </table>
 *
 * <p>Immutable and thread-safe.
 */
public final class LimitBasis implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final LimitBasis ACTIVE = new LimitBasis("active", "", null);
    private static final LimitBasis AS_SUPPLIED = new LimitBasis("as_supplied", "", null);

    private final String code;
    private final String referenceName;
    private final @Nullable MolecularFormula reference;

    private LimitBasis(String code, String referenceName, @Nullable MolecularFormula reference) {
        this.code = code;
        this.referenceName = referenceName;
        this.reference = reference;
    }

    /**
     * The substance itself, whatever it is supplied in.
     *
     * @return the basis
     */
    public static LimitBasis active() {
        return ACTIVE;
    }

    /**
     * The material as bought, carrier and all.
     *
     * @return the basis
     */
    public static LimitBasis asSupplied() {
        return AS_SUPPLIED;
    }

    /**
     * The substance converted into another one through molar masses.
     *
     * @param name the reference substance, for example {@code benzoic acid}
     * @param formula its molecular formula
     * @return the basis
     * @throws IllegalArgumentException if the name is blank
     */
    public static LimitBasis as(String name, MolecularFormula formula) {
        return reference(name, Objects.requireNonNull(formula, "formula"));
    }

    /**
     * The substance converted into another one that has no single molar mass; the supplier must give the content.
     *
     * @param name the reference substance
     * @return the basis
     * @throws IllegalArgumentException if the name is blank
     */
    public static LimitBasis as(String name) {
        return reference(name, null);
    }

    private static LimitBasis reference(String name, @Nullable MolecularFormula formula) {
        if (Objects.requireNonNull(name, "name").isBlank()) {
            throw new IllegalArgumentException("name is blank: name the reference substance");
        }
        return new LimitBasis("as_reference", name, formula);
    }

    /**
     * The word for it in a table of limits.
     *
     * @return {@code active}, {@code as_supplied} or {@code as_reference}
     */
    public String code() {
        return code;
    }

    /**
     * The reference substance.
     *
     * @return its name; empty if the substance is not converted
     */
    public String referenceName() {
        return referenceName;
    }

    /**
     * The molecular formula of the reference substance.
     *
     * @return the formula, if there is one
     */
    public Optional<MolecularFormula> reference() {
        return Optional.ofNullable(reference);
    }

    /** The basis in words. */
    Phrase phrase() {
        return isReference()
                ? Phrase.of("limit.basis.reference", referenceName)
                : Phrase.of(isAsSupplied() ? "limit.basis.as-supplied" : "limit.basis.active");
    }

    boolean isReference() {
        return !referenceName.isEmpty();
    }

    boolean isAsSupplied() {
        return this.equals(AS_SUPPLIED);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LimitBasis that
                && code.equals(that.code)
                && referenceName.equals(that.referenceName)
                && Objects.equals(reference, that.reference);
    }

    @Override
    public int hashCode() {
        return Objects.hash(code, referenceName, reference);
    }

    @Override
    public String toString() {
        return isReference() ? "as " + referenceName : code.replace('_', ' ');
    }
}
