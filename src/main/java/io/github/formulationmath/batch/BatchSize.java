package io.github.formulationmath.batch;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * What fixes the size of a batch. Each way leads to one exact batch mass M:
 *
 * <table>
 * <caption>The ways to size a batch</caption>
 * <tr><th>given</th><th>batch mass</th><th>factory</th></tr>
 * <tr><td>the mass itself</td><td>M</td><td>{@link #ofMass}</td></tr>
 * <tr><td>n packs of fill mass f, overage o</td><td>n · f · (1 + o)</td><td>{@link #ofPacks}</td></tr>
 * <tr><td>mass m of one ingredient, shares w of its lines</td><td>m / Σw</td><td>{@link #ofStock}</td></tr>
 * <tr><td>volume V at density ρ</td><td>V · ρ</td><td>{@link #ofVolume(Amount, Density)}</td></tr>
 * <tr><td>volume V, densities of all ingredients</td><td>V / Σ(w_i/ρ_i)</td><td>{@link #ofVolume(Amount)}</td></tr>
 * </table>
 *
 * <p>A size is given: what its amounts came from, if they are results, is not kept. What a balance still carries under a vessel is a mass: {@code ofMass(balance.capacityUnder(vessel))}.
 *
 * <p>Immutable and thread-safe.
 */
public sealed interface BatchSize extends Serializable {

    /**
     * The mass that was given, in whose unit the batch is told.
     *
     * @return the mass; empty if a volume fixes the size
     */
    default Optional<Amount<Mass>> statedMass() {
        return Optional.empty();
    }

    /**
     * A batch of a stated mass M.
     *
     * @param mass the mass as given, above 0
     */
    record OfMass(Amount<Mass> mass) implements BatchSize {

        /**
         * Refuses what fixes no size.
         *
         * @param mass the mass
         * @throws IllegalArgumentException if the mass is not above 0
         */
        public OfMass {
            mass = Amount.requirePositive("mass", mass).withoutWorking();
        }

        @Override
        public Optional<Amount<Mass>> statedMass() {
            return Optional.of(mass);
        }

        @Override
        public String toString() {
            return mass.toString();
        }
    }

    /**
     * A batch that fills packs: {@code M = n · f · (1 + o)}.
     *
     * @param packs how many packs are filled, above 0
     * @param fillMass what goes into each pack as given, above 0
     * @param overage what is made beyond the contents of the packs, as a share of those contents
     */
    record OfPacks(int packs, Amount<Mass> fillMass, MassFraction overage) implements BatchSize {

        /**
         * Refuses what fixes no size.
         *
         * @param packs how many packs are filled
         * @param fillMass what goes into each
         * @param overage what is made beyond that
         * @throws IllegalArgumentException if packs or fill mass is not above 0
         */
        public OfPacks {
            Objects.requireNonNull(fillMass, "fillMass");
            Objects.requireNonNull(overage, "overage");
            if (packs <= 0) {
                throw new IllegalArgumentException("packs is " + packs + ": at least one pack must be filled");
            }
            fillMass = Amount.requirePositive("fillMass", fillMass).withoutWorking();
            overage = overage.withoutWorking();
        }

        @Override
        public Optional<Amount<Mass>> statedMass() {
            return Optional.of(fillMass);
        }

        @Override
        public String toString() {
            return packs + " packs of " + fillMass + " and " + overage + " overage";
        }
    }

    /**
     * A batch that uses up one ingredient: {@code M = m / Σw} over all lines of the ingredient.
     *
     * @param line a line whose ingredient is in stock; the other lines of the ingredient need it as well
     * @param stock how much of it there is as given, above 0
     */
    record OfStock(FormulaLine line, Amount<Mass> stock) implements BatchSize {

        /**
         * Refuses what fixes no size.
         *
         * @param line a line whose ingredient is in stock
         * @param stock how much of it there is
         * @throws IllegalArgumentException if the stock is not above 0
         */
        public OfStock {
            Objects.requireNonNull(line, "line");
            stock = Amount.requirePositive("stock", stock).withoutWorking();
        }

        @Override
        public Optional<Amount<Mass>> statedMass() {
            return Optional.of(stock);
        }

        @Override
        public String toString() {
            return "all of " + stock + " " + line.name();
        }
    }

    /**
     * A batch that fills a volume: {@code M = V · ρ}, or {@code V / Σ(w_i/ρ_i)} when the density of the product is not known.
     *
     * @param volume the volume to fill as given, above 0
     * @param productDensity the density of the product; null if those of the ingredients are taken
     */
    record OfVolume(Amount<Volume> volume, @Nullable Density productDensity) implements BatchSize {

        /**
         * Refuses what fixes no size.
         *
         * @param volume the volume to fill
         * @param productDensity the density of the product, or null
         * @throws IllegalArgumentException if the volume is not above 0
         */
        public OfVolume {
            volume = Amount.requirePositive("volume", volume).withoutWorking();
        }

        /**
         * The density of the product, if it was given.
         *
         * @return the density; empty if those of the ingredients are taken
         */
        public Optional<Density> density() {
            return Optional.ofNullable(productDensity);
        }

        @Override
        public String toString() {
            return productDensity == null
                    ? volume + " by the densities of its ingredients"
                    : volume + " at " + productDensity;
        }
    }

    /**
     * A batch of a stated mass.
     *
     * @param mass the mass, above 0
     * @return the size
     * @throws IllegalArgumentException if the mass is not above 0
     */
    static BatchSize ofMass(Amount<Mass> mass) {
        return new OfMass(mass);
    }

    /**
     * A batch of a stated mass, as text.
     *
     * @param mass the mass, for example {@code "200 g"}
     * @return the size
     * @throws IllegalArgumentException if the text is no mass, or the mass not above 0
     */
    static BatchSize ofMass(String mass) {
        try {
            return ofMass(Amount.mass(Objects.requireNonNull(mass, "mass")));
        } catch (NumberTextException e) {
            if (AmountFormat.volumeIn(mass).isEmpty()) {
                throw e;
            }
            throw new IllegalArgumentException(
                    "mass is " + Excerpt.of(mass) + ", a volume: give the size as one, with the density of the product,"
                            + " BatchSize.ofVolume(\"" + mass.strip() + "\", \"0.97 g/mL\")");
        }
    }

    /**
     * A batch that fills a number of packs and some more.
     *
     * @param packs how many packs, above 0
     * @param fillMass what goes into each, above 0
     * @param overage what is made beyond that, as a fraction of the packs' contents; may be 0
     * @return the size
     * @throws IllegalArgumentException if packs or fill mass is not above 0
     */
    static BatchSize ofPacks(int packs, Amount<Mass> fillMass, MassFraction overage) {
        return new OfPacks(packs, fillMass, overage);
    }

    /**
     * A batch that fills a number of packs with nothing over, as text.
     *
     * @param packs how many packs, above 0
     * @param fillMass what goes into each, above 0, for example {@code "50 g"}
     * @return the size
     * @throws IllegalArgumentException if the text is no mass, or packs or fill mass is not above 0
     */
    static BatchSize ofPacks(int packs, String fillMass) {
        return ofPacks(packs, Amount.mass(Objects.requireNonNull(fillMass, "fillMass")), MassFraction.ZERO);
    }

    /**
     * A batch that fills a number of packs and some more, as text.
     *
     * @param packs how many packs, above 0
     * @param fillMass what goes into each, above 0, for example {@code "50 g"}
     * @param overage what is made beyond that, as a fraction of the packs' contents, for example {@code "5 %"}
     * @return the size
     * @throws IllegalArgumentException if a text is no mass or no share, or packs or fill mass is not above 0
     */
    static BatchSize ofPacks(int packs, String fillMass, String overage) {
        Amount<Mass> fill = Amount.mass(Objects.requireNonNull(fillMass, "fillMass"));
        return ofPacks(packs, fill, MassFraction.parse(Objects.requireNonNull(overage, "overage")));
    }

    /**
     * A batch that uses up what there is of one ingredient, in all lines it stands on, in whatever phases. Its exact masses
     * add up to the stock; what a display must read for them may be up to half a step more for each line.
     *
     * @param line a line of the formula whose ingredient is in stock
     * @param stock how much of it there is for all its lines together, above 0
     * @return the size
     * @throws IllegalArgumentException if the stock is not above 0
     */
    static BatchSize ofStock(FormulaLine line, Amount<Mass> stock) {
        return new OfStock(line, stock);
    }

    /**
     * A batch that fills a volume at a known density of the product.
     *
     * @param volume the volume, for example the working volume of a vessel, above 0
     * @param density the density of the finished product
     * @return the size
     * @throws IllegalArgumentException if the volume is not above 0
     */
    static BatchSize ofVolume(Amount<Volume> volume, Density density) {
        return new OfVolume(volume, Objects.requireNonNull(density, "density"));
    }

    /**
     * A batch that fills a volume at a known density of the product, as text.
     *
     * @param volume the volume, above 0, for example {@code "500 mL"}
     * @param density the density of the finished product, for example {@code "0.95 g/mL"}
     * @return the size
     * @throws IllegalArgumentException if a text is no volume or no density, or the volume not above 0
     */
    static BatchSize ofVolume(String volume, String density) {
        Objects.requireNonNull(volume, "volume");
        Objects.requireNonNull(density, "density");
        return ofVolume(Amount.volume(volume), Density.parse(density));
    }

    /**
     * A batch that fills a volume, taken from the densities of its ingredients as if their volumes added up. Real mixtures
     * shrink or hold air, so the result is an estimate of the mass that fits, and the working says so.
     *
     * @param volume the volume, above 0
     * @return the size; every ingredient of the formula must have a density
     * @throws IllegalArgumentException if the volume is not above 0
     */
    static BatchSize ofVolume(Amount<Volume> volume) {
        return new OfVolume(volume, null);
    }
}
