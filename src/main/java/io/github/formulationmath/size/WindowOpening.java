package io.github.formulationmath.size;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.BalanceUnit;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Phrase;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * Something that opens an empty {@link BatchWindow} by itself, with the figure it takes: it was applied, and a batch found,
 * before it is told.
 */
public sealed interface WindowOpening {

    /**
     * The opening in words.
     *
     * @return a phrase for the wording
     */
    Phrase phrase();

    /**
     * A balance of finer step, everything else as it is: linearity, minimum load and the other figures of the present one.
     *
     * <p>A still finer step is another question: under criteria that leave gaps it may fail.
     *
     * @param readability the coarsest step of the series 1, 2, 5 that opens the window; this step was tried
     */
    record FinerBalance(Amount<Mass> readability) implements WindowOpening {

        /**
         * Nothing may be missing.
         *
         * @param readability the coarsest step of the series 1, 2, 5 that opens the window; this step was tried
         */
        public FinerBalance {
            Objects.requireNonNull(readability, "readability");
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("opening.finer-balance", readability.toString());
        }

        /** The opening in words. */
        @Override
        public String toString() {
            return phrase().toString();
        }
    }

    /**
     * A balance that carries more.
     *
     * @param capacity the least capacity, vessel included
     */
    record HigherCapacity(Amount<Mass> capacity) implements WindowOpening {

        /**
         * Nothing may be missing.
         *
         * @param capacity the least capacity, vessel included
         */
        public HigherCapacity {
            Objects.requireNonNull(capacity, "capacity");
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("opening.higher-capacity", BalanceUnit.least(capacity, more -> true));
        }

        /** The opening in words. */
        @Override
        public String toString() {
            return phrase().toString();
        }
    }

    /**
     * A lighter vessel.
     *
     * @param mass the most it may weigh
     */
    record LighterVessel(Amount<Mass> mass) implements WindowOpening {

        /**
         * Nothing may be missing.
         *
         * @param mass the most it may weigh
         */
        public LighterVessel {
            Objects.requireNonNull(mass, "mass");
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("opening.lighter-vessel", BalanceUnit.greatest(mass, less -> true));
        }

        /** The opening in words. */
        @Override
        public String toString() {
            return phrase().toString();
        }
    }

    /**
     * A vessel that holds more.
     *
     * @param workingVolume the least working volume
     */
    record LargerVessel(Amount<Volume> workingVolume) implements WindowOpening {

        /**
         * Nothing may be missing.
         *
         * @param workingVolume the least working volume
         */
        public LargerVessel {
            Objects.requireNonNull(workingVolume, "workingVolume");
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("opening.larger-vessel", BalanceUnit.least(workingVolume, more -> true));
        }

        /** The opening in words. */
        @Override
        public String toString() {
            return phrase().toString();
        }
    }

    /**
     * More of an ingredient.
     *
     * @param ingredientName the ingredient
     * @param mass the least that must be there
     */
    record MoreStock(String ingredientName, Amount<Mass> mass) implements WindowOpening {

        /**
         * Nothing may be missing.
         *
         * @param ingredientName the ingredient
         * @param mass the least that must be there
         */
        public MoreStock {
            Objects.requireNonNull(ingredientName, "ingredientName");
            Objects.requireNonNull(mass, "mass");
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("opening.more-stock", ingredientName, BalanceUnit.least(mass, more -> true));
        }

        /** The opening in words. */
        @Override
        public String toString() {
            return phrase().toString();
        }
    }

    /**
     * Several at once, none of which is enough by itself.
     *
     * @param all what has to be done together, at least two
     */
    record Together(List<WindowOpening> all) implements WindowOpening {

        /**
         * Keeps its own copy of the list.
         *
         * @param all what has to be done together
         */
        public Together {
            all = List.copyOf(Objects.requireNonNull(all, "all"));
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("opening.together", joined(all.stream().map(WindowOpening::phrase)));
        }

        /** The opening in words. */
        @Override
        public String toString() {
            return phrase().toString();
        }
    }

    /**
     * A line that is diluted.
     *
     * @param line the line
     * @param factor the whole factor by which it is diluted
     */
    record Dilution(FormulaLine line, Ratio factor) {

        /**
         * Nothing may be missing.
         *
         * @param line the line
         * @param factor the whole factor by which it is diluted
         */
        public Dilution {
            Objects.requireNonNull(line, "line");
            Objects.requireNonNull(factor, "factor");
        }

        Phrase phrase() {
            return Phrase.of("opening.dilution", line.name(), factor.toString());
        }
    }

    /**
     * Lines weighed as dilutions in another line, all of them: with these very factors there is a batch whose weighings
     * meet the criteria, the aliquots in place of the lines and the carrier without its part in them. What is delivered
     * depends on the making of the stock too; {@code Predilution} plans it for a delivered tolerance.
     *
     * @param dilutions the lines that would be too small otherwise, each with its factor
     * @param carrier the line that gives the diluent: the q.s. line, or the largest; it has more than is needed
     */
    record PreDilute(List<Dilution> dilutions, FormulaLine carrier) implements WindowOpening {

        /**
         * Keeps its own copy of the list.
         *
         * @param dilutions the lines, each with its factor
         * @param carrier the line that gives the diluent
         */
        public PreDilute {
            dilutions = List.copyOf(Objects.requireNonNull(dilutions, "dilutions"));
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("opening.pre-dilute", joined(dilutions.stream().map(Dilution::phrase)), carrier.name());
        }

        /** The opening in words. */
        @Override
        public String toString() {
            return phrase().toString();
        }
    }

    private static String joined(Stream<Phrase> phrases) {
        return phrases.map(Phrase::toString).collect(Collectors.joining("; "));
    }
}
