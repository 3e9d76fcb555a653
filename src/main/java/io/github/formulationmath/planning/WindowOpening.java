package io.github.formulationmath.planning;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.working.Phrase;
import java.io.Serializable;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * Something that would open an empty {@link BatchWindow}, with the figure it takes. Where several ceilings are too low,
 * each must be raised.
 */
public sealed interface WindowOpening extends Serializable {

    /**
     * The opening in words.
     *
     * @return a phrase for the wording
     */
    Phrase phrase();

    /**
     * A balance of finer step, everything else as it is: linearity, minimum load and the other figures of the present one.
     *
     * @param readability the coarsest step of the series 1, 2, 5 that opens the window
     */
    record FinerBalance(Amount<Mass> readability) implements WindowOpening {
        @Override
        public Phrase phrase() {
            return Phrase.of("opening.finer-balance", readability.toString());
        }
    }

    /**
     * A balance that carries more.
     *
     * @param capacity the least capacity, vessel included
     */
    record HigherCapacity(Amount<Mass> capacity) implements WindowOpening {
        @Override
        public Phrase phrase() {
            return Phrase.of("opening.higher-capacity", capacity.toString());
        }
    }

    /**
     * A lighter vessel.
     *
     * @param mass the most it may weigh
     */
    record LighterVessel(Amount<Mass> mass) implements WindowOpening {
        @Override
        public Phrase phrase() {
            return Phrase.of("opening.lighter-vessel", mass.toString());
        }
    }

    /**
     * A vessel that holds more.
     *
     * @param workingVolume the least working volume
     */
    record LargerVessel(Amount<Volume> workingVolume) implements WindowOpening {
        @Override
        public Phrase phrase() {
            return Phrase.of("opening.larger-vessel", workingVolume.toString());
        }
    }

    /**
     * More of an ingredient.
     *
     * @param ingredientName the ingredient
     * @param mass the least that must be there
     */
    record MoreStock(String ingredientName, Amount<Mass> mass) implements WindowOpening {
        @Override
        public Phrase phrase() {
            return Phrase.of("opening.more-stock", ingredientName, mass.toString());
        }
    }

    /**
     * A line weighed as a dilution.
     *
     * @param line the line that binds
     * @param atLeast the least whole factor by which it must be diluted
     */
    record PreDilute(FormulaLine line, Ratio atLeast) implements WindowOpening {
        @Override
        public Phrase phrase() {
            return Phrase.of("opening.pre-dilute", line.name(), atLeast.toString());
        }
    }
}
