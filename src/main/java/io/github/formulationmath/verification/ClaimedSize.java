package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.scaling.BatchSize;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** What the calculator was asked to make, as it was asked. */
public sealed interface ClaimedSize extends Serializable {

    /**
     * A total mass.
     *
     * @param mass the mass of the batch, such as {@code "850 g"}
     * @return the size
     * @throws IllegalArgumentException if the text is no mass
     */
    static ClaimedSize ofMass(String mass) {
        return new OfMass(Amount.mass(Objects.requireNonNull(mass, "mass")));
    }

    /**
     * Packs to fill, with nothing over.
     *
     * @param packs how many
     * @param fillMass what goes into one, such as {@code "50 g"}
     * @return the size
     * @throws IllegalArgumentException if a text is no mass
     */
    static ClaimedSize ofPacks(int packs, String fillMass) {
        return new OfPacks(packs, Amount.mass(Objects.requireNonNull(fillMass, "fillMass")), MassFraction.ZERO);
    }

    /**
     * Packs to fill, and something over.
     *
     * @param packs how many
     * @param fillMass what goes into one, such as {@code "50 g"}
     * @param overage what is made beyond the fills, as a share of them, such as {@code "5 %"}
     * @return the size
     * @throws IllegalArgumentException if a text is no mass or no share
     */
    static ClaimedSize ofPacks(int packs, String fillMass, String overage) {
        return new OfPacks(
                packs,
                Amount.mass(Objects.requireNonNull(fillMass, "fillMass")),
                MassFraction.parse(Objects.requireNonNull(overage, "overage")));
    }

    /**
     * A volume of product.
     *
     * @param volume the volume, such as {@code "500 mL"}
     * @param density the density of the product, such as {@code "0.95 g/mL"}
     * @return the size
     * @throws IllegalArgumentException if a text is no volume or no density
     */
    static ClaimedSize ofVolume(String volume, String density) {
        return new OfVolume(
                Amount.volume(Objects.requireNonNull(volume, "volume")),
                Density.parse(Objects.requireNonNull(density, "density")));
    }

    /**
     * The size for our own calculation.
     *
     * @return the size
     */
    BatchSize toBatchSize();

    /**
     * A total mass.
     *
     * @param mass the mass, above 0
     */
    record OfMass(Amount<Mass> mass) implements ClaimedSize {

        /**
         * Checks.
         *
         * @param mass the mass
         */
        public OfMass {
            Objects.requireNonNull(mass, "mass");
        }

        @Override
        public BatchSize toBatchSize() {
            return BatchSize.ofMass(mass);
        }
    }

    /**
     * Packs to fill, and something over.
     *
     * @param packs how many
     * @param fillMass what goes into each
     * @param overage what is made in addition, as a share of the filled mass
     */
    record OfPacks(int packs, Amount<Mass> fillMass, MassFraction overage) implements ClaimedSize {

        /**
         * Checks.
         *
         * @param packs how many
         * @param fillMass what goes into each
         * @param overage what is made in addition
         */
        public OfPacks {
            Objects.requireNonNull(fillMass, "fillMass");
            Objects.requireNonNull(overage, "overage");
        }

        @Override
        public BatchSize toBatchSize() {
            return BatchSize.ofPacks(packs, fillMass, overage);
        }
    }

    /**
     * A volume of product.
     *
     * @param volume the volume, above 0
     * @param density the density of the product
     */
    record OfVolume(Amount<Volume> volume, Density density) implements ClaimedSize {

        /**
         * Checks.
         *
         * @param volume the volume
         * @param density the density
         */
        public OfVolume {
            Objects.requireNonNull(volume, "volume");
            Objects.requireNonNull(density, "density");
        }

        @Override
        public BatchSize toBatchSize() {
            return BatchSize.ofVolume(volume, density);
        }

        Ratio millilitres() {
            return volume.in(FormulationUnits.MILLILITRE);
        }
    }
}
