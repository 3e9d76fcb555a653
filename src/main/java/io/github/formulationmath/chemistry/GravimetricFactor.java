package io.github.formulationmath.chemistry;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What one gram of a substance counts as, when a figure is stated as another substance: {@code F = z · M_ref / M}, with z
 * the formula units of the reference that one formula unit of the substance stands for.
 *
 * <p>The factor makes "0.5 % as acid" comparable with a salt, an ester or a hydrate. It is the gravimetric factor of
 * analytical chemistry.
 *
 * <p>Example: sodium benzoate as benzoic acid: 122.1213 / 144.1032 = 0.84746, so that 0.5 % of the acid is 0.59 % of
 * the salt. Calcium benzoate, {@code Ca(C7H5O2)2}, stands for two of the acid.
 *
 * <p>Immutable and thread-safe.
 */
public final class GravimetricFactor implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol UNITS = Symbol.of("z", "reference-units", Kind.NUMBER);
    private static final Symbol FACTOR = Symbol.of("F", "gravimetric-factor", Kind.NUMBER);

    private final MolarMass substance;
    private final MolarMass reference;
    private final Ratio units;
    private final Ratio factor;

    private GravimetricFactor(MolarMass substance, MolarMass reference, Ratio units) {
        this.substance = substance;
        this.reference = reference;
        this.units = units;
        this.factor = factorIn(Reckoning.plain());
    }

    /**
     * The factor of a substance that stands for one unit of the reference.
     *
     * @param substance the molecular formula of the substance
     * @param reference the molecular formula of the reference substance
     * @return the factor
     * @throws IllegalArgumentException if an element has no atomic mass
     */
    public static GravimetricFactor of(MolecularFormula substance, MolecularFormula reference) {
        return of(MolarMass.of(substance), MolarMass.of(reference), Ratio.ONE);
    }

    /**
     * The factor of a substance.
     *
     * @param substance the molar mass of the substance
     * @param reference the molar mass of the reference substance
     * @param units how many formula units of the reference one formula unit of the substance stands for, above 0
     * @return the factor
     * @throws IllegalArgumentException if the units are not above 0
     */
    public static GravimetricFactor of(MolarMass substance, MolarMass reference, Ratio units) {
        Objects.requireNonNull(substance, "substance");
        Objects.requireNonNull(reference, "reference");
        if (Objects.requireNonNull(units, "units").signum() <= 0) {
            throw new IllegalArgumentException("units is " + Excerpt.of(units) + ": it must be above 0");
        }
        return new GravimetricFactor(substance, reference, units);
    }

    /**
     * The factor as a bare number.
     *
     * @return grams of the reference per gram of the substance, exact for the atomic masses used
     */
    public Ratio factor() {
        return factor;
    }

    /**
     * Where the factor lies, both molar masses as far off as the uncertainties of the atomic masses allow: {@code z ·
     * M_ref,least / M_greatest} to {@code z · M_ref,greatest / M_least}. What the two have in common is taken as far off in
     * opposite ways, so that the factor surely lies between; of a substance that is the reference it is exactly z.
     *
     * @return grams of the reference per gram of the substance
     */
    public Bounds bounds() {
        if (substance.equals(reference)) {
            return Bounds.closed(units, units);
        }
        Bounds above = reference.bounds();
        Bounds below = substance.bounds();
        return Bounds.closed(
                units.times(above.lower().orElseThrow()).dividedBy(below.upper().orElseThrow()),
                units.times(above.upper().orElseThrow()).dividedBy(below.lower().orElseThrow()));
    }

    /**
     * A share of the substance, stated as the reference.
     *
     * @param share the share of the substance
     * @return {@code share · F}, exact
     */
    public Ratio toReference(Ratio share) {
        return Objects.requireNonNull(share, "share").times(factor);
    }

    /**
     * A share stated as the reference, as the share of the substance that it allows.
     *
     * @param shareAsReference the share as the reference substance
     * @return {@code share / F}, exact; the inverse of {@link #toReference}
     */
    public Ratio fromReference(Ratio shareAsReference) {
        return Objects.requireNonNull(shareAsReference, "shareAsReference").dividedBy(factor);
    }

    /**
     * The molar mass of the substance.
     *
     * @return the molar mass
     */
    public MolarMass substance() {
        return substance;
    }

    /**
     * The molar mass of the reference substance.
     *
     * @return the molar mass
     */
    public MolarMass reference() {
        return reference;
    }

    /**
     * How many formula units of the reference one formula unit of the substance stands for.
     *
     * @return the units, above 0
     */
    public Ratio units() {
        return units;
    }

    /** The factor F. */
    @Override
    public Origin origin() {
        return Origin.of(GravimetricFactor::question, factor, this, GravimetricFactor::factorIn);
    }

    private Phrase question() {
        return Phrase.of(
                "question.gravimetric-factor",
                substance.formula().toString(),
                reference.formula().toString());
    }

    private <V> V factorIn(Reckoning<V> r) {
        V one = r.known(reference);
        V all = units.equals(Ratio.ONE)
                ? one
                : r.product(r.given(UNITS, substance.formula(), units, Source.user()), one);
        return r.named(FACTOR, substance.formula(), r.quotient(all, r.known(substance)));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof GravimetricFactor that
                && substance.equals(that.substance)
                && reference.equals(that.reference)
                && units.equals(that.units);
    }

    @Override
    public int hashCode() {
        return Objects.hash(substance, reference, units);
    }

    @Override
    public String toString() {
        return "1 g of " + substance.formula() + " counts as " + factor + " g of " + reference.formula();
    }
}
