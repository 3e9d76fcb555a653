package io.github.formulationmath.pot;

import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** How the mass of one line in the pot came about. */
sealed interface PotMass {

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

    /** Not put in. */
    record Nothing() implements PotMass {

        @Override
        public <V> V grams(Reckoning<V> r) {
            return r.literal(0);
        }
    }

    /** What a display showed: of the line alone, or of everything so far. */
    record Shown(Symbol symbol, Subject subject, Amount<Mass> read, Source source) implements PotMass {

        static Shown of(Symbol symbol, Subject subject, Amount<Mass> shown) {
            return new Shown(symbol, subject, shown, Source.written(shown.toString()));
        }

        static Shown of(Reading reading) {
            return of(READING, reading.line(), reading.shown().orElseThrow());
        }

        @Override
        public <V> V grams(Reckoning<V> r) {
            return r.given(symbol, subject, read, source);
        }
    }

    /** Tared once: the reading minus the one before it. */
    record Difference(@Nullable Shown before, Shown shown) implements PotMass {

        @Override
        public <V> V grams(Reckoning<V> r) {
            return before == null ? shown.grams(r) : r.difference(shown.grams(r), before.grams(r));
        }
    }

    /** Lines that came to one difference, by the sum of their shares, which all of them need. */
    record Together(List<FormulaLine> lines, Ratio sum) implements Explained {

        static Together of(List<FormulaLine> lines) {
            return new Together(lines, sum(lines, Reckoning.plain()));
        }

        @Override
        public Origin origin() {
            return Origin.of(together -> Phrase.of("question.shares-together"), sum, this, Together::sum);
        }

        private <V> V sum(Reckoning<V> r) {
            return sum(lines, r);
        }

        private static <V> V sum(List<FormulaLine> lines, Reckoning<V> r) {
            List<V> shares = new ArrayList<>(lines.size());
            lines.forEach(each -> shares.add(r.known(each)));
            return r.sum(shares);
        }
    }

    /** Several lines came to one difference, the reading of the last; it is shared out as the formula has them. */
    record PartOfDifference(Difference whole, Together together, FormulaLine line, FormulaLine last)
            implements PotMass {

        @Override
        public <V> V grams(Reckoning<V> r) {
            r.note(() -> Phrase.of("note.assumed-shared", line.name()));
            return r.quotient(r.product(whole.grams(r), r.known(line)), r.known(together));
        }

        @Override
        public Optional<FormulaLine> sharedWith() {
            return Optional.of(last);
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

    /** What a reading stands for: corrected for what stays behind in a boat, and for the air. */
    record Estimated(PotMass read, Subject subject, Balance balance, WeighingMethod method) implements PotMass {

        @Override
        public <V> V grams(Reckoning<V> r) {
            return SureMass.estimate(r, subject, read, balance, method);
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

    /** What became of what was there; a guess stays one. */
    sealed interface Later extends PotMass {

        MadeLine before();

        @Override
        default boolean isAssumed() {
            return before().isAssumed();
        }
    }

    /** What was there and something more. */
    record Plus(MadeLine before, PotMass added) implements Later {

        @Override
        public <V> V grams(Reckoning<V> r) {
            return r.sum(r.known(before), added.grams(r));
        }
    }

    /** What was there. */
    record Same(MadeLine before) implements Later {

        @Override
        public <V> V grams(Reckoning<V> r) {
            return r.known(before);
        }
    }

    /** What was there without the water that went off. */
    record Less(MadeLine before, Evaporation loss) implements Later {

        @Override
        public <V> V grams(Reckoning<V> r) {
            return r.difference(r.known(before), r.known(loss));
        }
    }
}
