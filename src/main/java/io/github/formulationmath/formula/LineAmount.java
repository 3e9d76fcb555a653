package io.github.formulationmath.formula;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * The amount of a line as it is written in the formula, before anything is resolved. It is given: what it came from, if it is
 * the result of something, is not kept.
 */
public sealed interface LineAmount extends Serializable {

    /**
     * A mass fraction of the whole formula.
     *
     * @param fraction the fraction, above 0
     */
    record Share(MassFraction fraction) implements LineAmount {

        /**
         * Refuses null.
         *
         * @param fraction the fraction
         */
        public Share {
            fraction = Objects.requireNonNull(fraction, "share").withoutWorking();
        }

        @Override
        public String toString() {
            return fraction.toString();
        }
    }

    /**
     * A number of parts by mass; what one part is follows from the total.
     *
     * @param parts the number, above 0
     */
    record Parts(Ratio parts) implements LineAmount {

        /**
         * Refuses null.
         *
         * @param parts the number
         */
        public Parts {
            Objects.requireNonNull(parts, "parts");
        }

        @Override
        public String toString() {
            return parts + " parts";
        }
    }

    /**
     * A mass.
     *
     * @param mass the mass, above 0
     */
    record Weight(Amount<Mass> mass) implements LineAmount {

        /**
         * Refuses null.
         *
         * @param mass the mass
         */
        public Weight {
            mass = Objects.requireNonNull(mass, "mass").withoutWorking();
        }

        @Override
        public String toString() {
            return mass.toString();
        }
    }

    /** As much as suffices: what is left when all other lines have theirs. */
    record QuantitySufficient() implements LineAmount {

        @Override
        public String toString() {
            return "q.s.";
        }
    }
}
