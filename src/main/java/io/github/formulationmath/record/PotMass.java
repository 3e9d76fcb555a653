package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.scaling.BatchLine;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** How the mass of one line in the pot came about. */
sealed interface PotMass extends Serializable {

    /** What the display read. */
    Symbol READING = Symbol.of("b", "display-reading", Kind.MASS);

    /** The mass in grams. */
    <V> V grams(Reckoning<V> r);

    /** Whether the mass is a guess because nobody wrote it down. */
    default boolean isAssumed() {
        return false;
    }

    /** The line whose reading is of this one too, because this one was not written down. */
    default Optional<FormulaLine> sharedWith() {
        return Optional.empty();
    }

    static PotMass of(Reading reading) {
        return reading.kind() == Reading.Kind.LEFT_OUT ? new Nothing() : new Shown(reading);
    }

    private static <V> V read(Reckoning<V> r, Reading reading) {
        Ratio grams = reading.shown().orElseThrow().in(FormulationUnits.GRAM);
        return r.given(
                READING,
                reading.line(),
                grams,
                Source.written(reading.shown().get().toString()));
    }

    /** Not put in. */
    record Nothing() implements PotMass {
        @Override
        public <V> V grams(Reckoning<V> r) {
            return r.literal(0);
        }
    }

    /** Tared before it, the display shows the line alone. */
    record Shown(Reading reading) implements PotMass {
        @Override
        public <V> V grams(Reckoning<V> r) {
            return read(r, reading);
        }
    }

    /** Tared once: the reading minus the one before it. */
    record Difference(@Nullable Reading before, Reading reading) implements PotMass {
        @Override
        public <V> V grams(Reckoning<V> r) {
            return before == null ? read(r, reading) : r.difference(read(r, reading), read(r, before));
        }
    }

    /** Lines that came to one difference, by the sum of their shares, which all of them need. */
    record Together(List<FormulaLine> lines, Ratio result) implements Explained, Serializable {

        Together(List<FormulaLine> lines) {
            this(lines, sum(Reckoning.plain(), lines));
        }

        @Override
        public Phrase question() {
            return Phrase.of("question.shares-together");
        }

        @Override
        public <V> V derive(Reckoning<V> r) {
            return sum(r, lines);
        }

        private static <V> V sum(Reckoning<V> r, List<FormulaLine> lines) {
            List<V> shares = new ArrayList<>(lines.size());
            lines.forEach(each -> shares.add(r.known(each)));
            return r.sum(shares);
        }
    }

    /** Several lines came to one difference; it is shared out as the formula has them. */
    record PartOfDifference(Difference whole, Together together, FormulaLine line) implements PotMass {
        @Override
        public <V> V grams(Reckoning<V> r) {
            r.note(() -> Phrase.of("note.assumed-shared", line.name()));
            return r.quotient(r.product(whole.grams(r), r.known(line)), r.known(together));
        }

        @Override
        public Optional<FormulaLine> sharedWith() {
            return Optional.of(whole.reading().line());
        }

        @Override
        public boolean isAssumed() {
            return true;
        }
    }

    /** Nobody knows; taken as planned. */
    record Planned(BatchLine line) implements PotMass {
        @Override
        public <V> V grams(Reckoning<V> r) {
            r.note(() -> Phrase.of("note.assumed-planned", line.name()));
            return r.known(line);
        }

        @Override
        public boolean isAssumed() {
            return true;
        }
    }

    /** A number of grams and no more. */
    record Read(Ratio result) implements PotMass {
        @Override
        public <V> V grams(Reckoning<V> r) {
            return r.literal(result);
        }
    }

    /** What the display showed of a later addition. */
    record Added(Symbol symbol, FormulaLine line, Ratio read) implements PotMass {
        @Override
        public <V> V grams(Reckoning<V> r) {
            return r.given(symbol, line, read, Source.user());
        }
    }

    /** What the display showed of the whole pot when it was weighed again. */
    record Content(Amount<Mass> shown, Symbol symbol) implements PotMass {
        @Override
        public <V> V grams(Reckoning<V> r) {
            return r.given(symbol, shown.in(FormulationUnits.GRAM), Source.written(shown.toString()));
        }
    }

    /** What a reading stands for: corrected for what stays behind in a boat, and for the air. */
    record Estimated(PotMass read, FormulaLine line, Balance balance, WeighingMethod method) implements PotMass {
        @Override
        public <V> V grams(Reckoning<V> r) {
            return SureMass.estimate(r, line, read, balance, method);
        }

        @Override
        public boolean isAssumed() {
            return read.isAssumed();
        }

        @Override
        public Optional<FormulaLine> sharedWith() {
            return read.sharedWith();
        }
    }

    /** What was there and something more. */
    record Plus(MadeLine before, PotMass added) implements PotMass {
        @Override
        public <V> V grams(Reckoning<V> r) {
            return r.sum(r.known(before), added.grams(r));
        }

        @Override
        public boolean isAssumed() {
            return before.isAssumed();
        }
    }

    /** What was there. */
    record Same(MadeLine before) implements PotMass {
        @Override
        public <V> V grams(Reckoning<V> r) {
            return r.known(before);
        }

        @Override
        public boolean isAssumed() {
            return before.isAssumed();
        }
    }

    /** What was there without the water that went off. */
    record Less(MadeLine before, Evaporation loss) implements PotMass {
        @Override
        public <V> V grams(Reckoning<V> r) {
            return r.difference(r.known(before), r.known(loss));
        }

        @Override
        public boolean isAssumed() {
            return before.isAssumed();
        }
    }
}
