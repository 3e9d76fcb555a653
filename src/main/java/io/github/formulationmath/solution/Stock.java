package io.github.formulationmath.solution;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassConcentration;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.quantity.VolumeFraction;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * Something with a strength by mass that can be poured: a stock solution, a pure substance, or water with the strength 0 %.
 *
 * <p>A strength by volume (v/v) becomes one by mass through densities, of ethanol through {@link EthanolWater}; one by mass in volume
 * (w/v) through the density of the stock. Volumes themselves are never blended, for they do not add.
 *
 * @param name what it is called
 * @param strength grams of the substance in a gram, as a range; one number is a range of no width
 * @param available how much there is; empty if there is enough
 * @param price what a gram costs, in the currency of the others; empty if it costs nothing
 */
public record Stock(
        String name, Interval<MassFraction> strength, Optional<Amount<Mass>> available, Optional<Money> price) {

    /**
     * Checks the figures.
     *
     * @param name what it is called
     * @param strength grams of the substance in a gram
     * @param available how much there is
     * @param price what a gram costs
     * @throws IllegalArgumentException if the name is blank, or an amount or a price is below 0
     */
    public Stock {
        if (Objects.requireNonNull(name, "name").isBlank()) {
            throw new IllegalArgumentException("name is blank: name the stock");
        }
        Objects.requireNonNull(strength, "strength");
        Objects.requireNonNull(available, "available").ifPresent(a -> Amount.requireNotNegative("available", a));
        Objects.requireNonNull(price, "price").ifPresent(p -> {
            if (p.number().signum() < 0) {
                throw new IllegalArgumentException(
                        "price of " + Excerpt.of(name) + " is " + p + ": it must be at least 0");
            }
        });
    }

    private static Stock of(String name, Interval<MassFraction> strength) {
        return new Stock(name, strength, Optional.empty(), Optional.empty());
    }

    private static Stock of(String name, MassFraction strength) {
        return of(name, Interval.of(strength, strength));
    }

    /**
     * A stock of a strength by mass.
     *
     * @param name what it is called
     * @param strength such as {@code "30 %"}, by mass
     * @return the stock, enough of it and for nothing
     */
    public static Stock of(String name, String strength) {
        return of(name, MassFraction.parse(strength));
    }

    /**
     * A stock whose strength by mass is known as a range, such as what a label allows or a certificate states.
     *
     * @param name what it is called
     * @param least the least strength, such as {@code "29 %"}, by mass
     * @param greatest the greatest strength, by mass
     * @return the stock, enough of it and for nothing
     * @throws IllegalArgumentException if the strengths are reversed
     */
    public static Stock between(String name, String least, String greatest) {
        return of(name, Interval.of(MassFraction.parse(least), MassFraction.parse(greatest)));
    }

    /**
     * A stock whose strength is stated as mass in volume.
     *
     * @param name what it is called
     * @param strength grams in a volume, such as {@code MassConcentration.ofPercent("10")}
     * @param density of the stock
     * @return the stock, enough of it and for nothing
     * @throws IllegalArgumentException if there would be more of the substance than of the stock
     */
    public static Stock of(String name, MassConcentration strength, Density density) {
        Objects.requireNonNull(density, "density");
        return of(name, Objects.requireNonNull(strength, "strength").toMassFraction(density));
    }

    /**
     * A stock whose strength is stated as volume in volume, of a substance that has a volume of its own.
     *
     * @param name what it is called
     * @param strength the volume of the substance by itself in that of the stock
     * @param ofSubstance the density of the substance by itself
     * @param ofStock the density of the stock as it is, which tells how far the two shrank
     * @return the stock, enough of it and for nothing
     * @throws IllegalArgumentException if there would be more of the substance than of the stock
     */
    public static Stock of(String name, VolumeFraction strength, Density ofSubstance, Density ofStock) {
        Objects.requireNonNull(ofSubstance, "ofSubstance");
        Objects.requireNonNull(ofStock, "ofStock");
        return of(name, Objects.requireNonNull(strength, "strength").toMassFraction(ofSubstance, ofStock));
    }

    /**
     * Alcohol, its strength stated by volume.
     *
     * @param name what it is called
     * @param strength such as {@code "96 % v/v"}
     * @param reference where "per cent by volume" is measured
     * @return the stock, its strength by mass enclosed to twelve decimals, enough of it and for nothing
     */
    public static Stock alcohol(String name, String strength, EthanolWater.Reference reference) {
        return of(name, EthanolWater.byMass(VolumeFraction.parse(strength), reference));
    }

    /**
     * Water, or whatever else holds nothing of the substance.
     *
     * @param name what it is called, such as Aqua
     * @return the diluent
     */
    public static Stock diluent(String name) {
        return of(name, MassFraction.ZERO);
    }

    /**
     * The same stock of which there is only so much.
     *
     * @param mass such as {@code "120 g"}
     * @return the stock with its limit
     */
    public Stock ofWhichThereIs(String mass) {
        return new Stock(name, strength, Optional.of(Amount.mass(mass)), price);
    }

    /**
     * The same stock with its price.
     *
     * @param cost such as {@code "12.50 EUR"}
     * @param per what that buys, such as {@code "1 kg"}, above 0
     * @return the stock with its price
     */
    public Stock costing(String cost, String per) {
        Amount<Mass> mass = Amount.requirePositive("per", Amount.mass(per));
        return new Stock(
                name, strength, available, Optional.of(Money.parse(cost).dividedBy(mass.canonical())));
    }

    /** The middle of its range. */
    Ratio middle() {
        return strength.least().fraction().plus(strength.greatest().fraction()).dividedBy(2);
    }

    /** Its range. */
    Bounds bounds() {
        return bounds(strength);
    }

    static Bounds bounds(Interval<MassFraction> strengths) {
        return Bounds.closed(strengths.least().fraction(), strengths.greatest().fraction());
    }

    static Interval<MassFraction> strengths(Bounds bounds) {
        return Interval.of(
                MassFraction.of(bounds.lower().orElseThrow()),
                MassFraction.of(bounds.upper().orElseThrow()));
    }
}
