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
