package io.github.formulationmath.formula;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
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

    private final Shares.Written written;
    private final Shares shares;
    private final Ratio fraction;

    FormulaLine(Shares.Written written, Shares shares, Ratio fraction) {
        this.written = written;
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
        return written.index();
    }

    /**
     * The number of the line, for people; {@link #index()} is its place in lists.
     *
     * @return the number of the line, counted from 1 through all phases
     */
    public int position() {
        return written.index() + 1;
    }

    /**
     * The phase the line belongs to.
     *
     * @return the name of the phase
     */
    public String phase() {
        return written.phase();
    }

    /**
     * What is weighed on this line.
     *
     * @return the ingredient
     */
    public Ingredient ingredient() {
        return written.ingredient();
    }

    /**
     * The amount as written.
     *
     * @return share, parts, mass, or q.s.
     */
    public LineAmount amount() {
        return written.amount();
    }

    /**
     * Whether this line takes what is left.
     *
     * @return true for the q.s. line
     */
    public boolean isQuantitySufficient() {
        return written.isQuantitySufficient();
    }

    /**
     * The resolved share.
     *
     * @return the mass fraction of the whole, above 0, exact, with its working
     */
    public MassFraction share() {
        return MassFraction.of(fraction).withWorking(FormulaLine::question, this, FormulaLine::shareIn);
    }

    /**
     * The resolved share as a bare number.
     *
     * @return the fraction of the whole, above 0 and at most 1
     */
    public Ratio fraction() {
        return fraction;
    }

    /** The share as it follows from the amounts as written. */
    @Override
    public Origin origin() {
        return Origin.of(FormulaLine::question, fraction, this, FormulaLine::shareIn);
    }

    private Phrase question() {
        return Phrase.of("question.share", name());
    }

    private <V> V shareIn(Reckoning<V> r) {
        return shares.share(r, r.known(shares), written);
    }

    @Override
    public String subscript() {
        return written.subscript();
    }

    @Override
    public String name() {
        return written.name();
    }

    /**
     * Whether a name is that of this line's material.
     *
     * @param ingredientName the name, in any spelling that {@link SubstanceName} forgives
     * @return true if it is the name of the ingredient
     */
    public boolean isNamed(String ingredientName) {
        return ingredient().normalName().equals(SubstanceName.normalise(ingredientName));
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
                || other instanceof FormulaLine that && written.equals(that.written) && fraction.equals(that.fraction);
    }

    @Override
    public int hashCode() {
        return Objects.hash(written, fraction);
    }

    @Override
    public String toString() {
        return written.toString();
    }
}
