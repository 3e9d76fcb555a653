package io.github.formulationmath.limit;

import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import java.io.Serial;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One substance that a limit counts, and how: with which molecular formula, for how many units of the reference, and
 * together with which others.
 *
 * <p>Example: {@code GroupMember.of(Substance.of("Sodium Benzoate").withCas("532-32-1")).withFormula(c7h5nao2, Ratio.ONE)
 * .countedAs("BENZOIC ACID")}.
 *
 * <p>Immutable and thread-safe.
 */
public final class GroupMember implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Substance substance;
    private final String form;
    private final @Nullable MolecularFormula formula;
    private final Ratio referenceUnits;
    private final String countsAs;
    private final boolean counted;
    private final boolean allowed;

    private GroupMember(
            Substance substance,
            String form,
            @Nullable MolecularFormula formula,
            Ratio referenceUnits,
            String countsAs,
            boolean counted,
            boolean allowed) {
        this.substance = substance;
        this.form = form;
        this.formula = formula;
        this.referenceUnits = referenceUnits;
        this.countsAs = countsAs;
        this.counted = counted;
        this.allowed = allowed;
    }

    /**
     * A substance that counts for itself.
     *
     * @param substance the substance
     * @return the member, without a molecular formula
     */
    public static GroupMember of(Substance substance) {
        Objects.requireNonNull(substance, "substance");
        return new GroupMember(substance, "", null, Ratio.ONE, substance.name(), true, true);
    }

    /**
     * The same member with its composition, so that it can be converted into a reference substance.
     *
     * @param newFormula the molecular formula, water of crystallisation included
     * @param units how many formula units of the reference one formula unit stands for, above 0
     * @return the member
     * @throws IllegalArgumentException if the units are not above 0
     */
    public GroupMember withFormula(MolecularFormula newFormula, Ratio units) {
        if (Objects.requireNonNull(units, "units").signum() <= 0) {
            throw new IllegalArgumentException("units is " + Excerpt.of(units) + ": it must be above 0");
        }
        return new GroupMember(
                substance, form, Objects.requireNonNull(newFormula, "newFormula"), units, countsAs, counted, allowed);
    }

    /**
     * The same member in one of several compositions.
     *
     * @param newForm for example {@code anhydrous} or {@code monohydrate}
     * @return the member
     */
    public GroupMember inForm(String newForm) {
        return new GroupMember(
                substance,
                Objects.requireNonNull(newForm, "newForm"),
                formula,
                referenceUnits,
                countsAs,
                counted,
                allowed);
    }

    /**
     * The same member, counted together with others of the same name where a limit is for each substance alone.
     *
     * @param name the common name
     * @return the member
     */
    public GroupMember countedAs(String name) {
        return new GroupMember(
                substance, form, formula, referenceUnits, Objects.requireNonNull(name, "name"), counted, allowed);
    }

    /**
     * The same member, named in the entry but not counted.
     *
     * @return the member
     */
    public GroupMember mentionedOnly() {
        return new GroupMember(substance, form, formula, referenceUnits, countsAs, false, true);
    }

    /**
     * The same member, named in the entry to say that it is not allowed where the limit applies.
     *
     * @return the member, not counted
     */
    public GroupMember asNotAllowed() {
        return new GroupMember(substance, form, formula, referenceUnits, countsAs, false, false);
    }

    /**
     * The substance.
     *
     * @return the substance
     */
    public Substance substance() {
        return substance;
    }

    /**
     * Which of several compositions this is.
     *
     * @return for example {@code anhydrous}; empty if there is only one
     */
    public String form() {
        return form;
    }

    /**
     * The composition.
     *
     * @return the molecular formula, if one is known
     */
    public Optional<MolecularFormula> formula() {
        return Optional.ofNullable(formula);
    }

    /**
     * How many formula units of the reference one formula unit stands for.
     *
     * @return the units, above 0
     */
    public Ratio referenceUnits() {
        return referenceUnits;
    }

    /**
     * The name under which this member is counted where a limit is for each substance alone.
     *
     * @return the name
     */
    public String countsAs() {
        return countsAs;
    }

    /**
     * Whether the member is counted.
     *
     * @return false if the entry only names it
     */
    public boolean isCounted() {
        return counted;
    }

    /**
     * Whether the entry allows the member at all.
     *
     * @return false if the entry names it to say that it is not allowed
     */
    public boolean isAllowed() {
        return allowed;
    }

    private List<Object> parts() {
        return List.of(substance, form, formula(), referenceUnits, countsAs, counted, allowed);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GroupMember that && parts().equals(that.parts());
    }

    @Override
    public int hashCode() {
        return parts().hashCode();
    }

    @Override
    public String toString() {
        return form.isEmpty() ? substance.toString() : substance + ", " + form;
    }
}
