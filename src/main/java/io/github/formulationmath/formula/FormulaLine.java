package io.github.formulationmath.formula;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One line of a formula: an ingredient, its amount as written, and the share of the whole that the amount comes to.
 *
 * <p>Immutable and thread-safe.
 */
public final class FormulaLine implements Line, Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final int position;
    private final String phase;
    private final Ingredient ingredient;
    private final LineAmount amount;
    private final Shares shares;
    private final Ratio fraction;

    FormulaLine(DraftLine draft, Shares shares, Ratio fraction) {
        this.position = draft.position();
        this.phase = draft.phase();
        this.ingredient = draft.ingredient();
        this.amount = draft.amount();
        this.shares = shares;
        this.fraction = fraction;
    }

    /** This line itself. */
    @Override
    public FormulaLine line() {
        return this;
    }

    @Override
    public int index() {
        return position - 1;
    }

    /**
     * The number of the line, for people; {@link #index()} is its place in lists.
     *
     * @return the number of the line, counted from 1 through all phases
     */
    public int position() {
        return position;
    }

    /**
     * The phase the line belongs to.
     *
     * @return the name of the phase
     */
    public String phase() {
        return phase;
    }

    /**
     * What is weighed on this line.
     *
     * @return the ingredient
     */
    public Ingredient ingredient() {
        return ingredient;
    }

    /**
     * The amount as written.
     *
     * @return share, parts, mass, or q.s.
     */
    public LineAmount amount() {
        return amount;
    }

    /**
     * Whether this line takes what is left.
     *
     * @return true for the q.s. line
     */
    public boolean isQuantitySufficient() {
        return amount instanceof LineAmount.QuantitySufficient;
    }

    /**
     * The resolved share.
     *
     * @return the mass fraction of the whole, above 0, exact
     */
    public MassFraction share() {
        return MassFraction.of(fraction);
    }

    /**
     * The resolved share as a bare number.
     *
     * @return the fraction of the whole, above 0 and at most 1
     */
    public Ratio fraction() {
        return fraction;
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.share", name());
    }

    @Override
    public Ratio result() {
        return fraction;
    }

    /** The share as it follows from the amounts as written. */
    @Override
    public <V> V derive(Reckoning<V> reckoning) {
        return shares.share(reckoning, reckoning.known(shares), index());
    }

    @Override
    public String subscript() {
        return Integer.toString(position);
    }

    @Override
    public String name() {
        return ingredient.name();
    }

    /**
     * Whether a name is that of this line's material.
     *
     * @param ingredientName the name, in any spelling that {@link SubstanceName} forgives
     * @return true if it is the name of the ingredient
     */
    public boolean isNamed(String ingredientName) {
        return ingredient.normalName().equals(SubstanceName.normalise(ingredientName));
    }

    /**
     * Whether the line is in a phase.
     *
     * @param phaseName the name of the phase, in any spelling that {@link SubstanceName} forgives
     * @return true if the line belongs to it
     */
    public boolean isInPhase(String phaseName) {
        return SubstanceName.areAlike(phase(), phaseName);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other == this
                || other instanceof FormulaLine that
                        && position == that.position
                        && phase.equals(that.phase)
                        && ingredient.equals(that.ingredient)
                        && amount.equals(that.amount)
                        && fraction.equals(that.fraction);
    }

    @Override
    public int hashCode() {
        return Objects.hash(position, phase, ingredient, amount, fraction);
    }

    @Override
    public String toString() {
        return position + ". " + ingredient + " " + amount;
    }
}
