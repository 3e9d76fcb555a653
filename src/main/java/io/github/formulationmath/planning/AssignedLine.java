package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.scaling.BatchLine;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.io.Serializable;
import java.util.List;
import javax.measure.quantity.Mass;

/**
 * One line at the station that gives it the smallest guaranteed relative error, and how it would fare at the others.
 *
 * <p>Immutable and thread-safe.
 */
public final class AssignedLine implements Explained {

    private static final Symbol RELATIVE = Symbol.of("ε", "guaranteed-relative-error", Kind.SHARE);

    private final BatchLine line;
    private final List<Candidate> candidates;
    private final Candidate chosen;
    private final Ratio relativeError;

    /**
     * How a line would fare at one station.
     *
     * @param station the station
     * @param verdict what speaks for or against it, in words
     * @param relativeError the guaranteed relative error there
     * @param isUsable whether the line can be weighed there within its tolerance: in the pot that was taken or in a boat that
     *     holds it, carried by the balance, and not below its minimum load
     */
    public record Candidate(WeighingStation station, Phrase verdict, Ratio relativeError, boolean isUsable) {}

    AssignedLine(BatchLine line, List<Candidate> candidates, Candidate chosen) {
        this.line = line;
        this.candidates = List.copyOf(candidates);
        this.chosen = chosen;
        this.relativeError = derive(Reckoning.plain());
    }

    /**
     * The line.
     *
     * @return the line with its exact mass
     */
    public BatchLine line() {
        return line;
    }

    /**
     * Where it is weighed.
     *
     * @return the station with the smallest guaranteed relative error; of equal ones, the first given
     */
    public WeighingStation station() {
        return chosen.station();
    }

    /**
     * All stations, with what speaks for or against each.
     *
     * @return one entry per station, in their order
     */
    public List<Candidate> candidates() {
        return candidates;
    }

    /**
     * The line as it is weighed at its station.
     *
     * @return target, reading, balance and method
     */
    public Addition addition() {
        return addition(line, chosen.station());
    }

    static Addition addition(BatchLine line, WeighingStation station) {
        return Addition.of(line.line(), grams(line), grams(new Reading(line, station)), station.balance())
                .by(station.method());
    }

    private static Amount<Mass> grams(Explained mass) {
        return Amount.grams(mass.result()).withWorking(mass.origin());
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.guaranteed-relative-error", line.name());
    }

    /** The largest possible error against the exact mass, as a share of it. */
    @Override
    public Ratio result() {
        return relativeError;
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        return relativeError(r, line, chosen.station());
    }

    static <V> V relativeError(Reckoning<V> r, BatchLine line, WeighingStation station) {
        V error = r.known(AdditionError.of(addition(line, station)));
        return r.named(RELATIVE, line, r.quotient(error, r.known(line)));
    }

    /** What the display of a station reads for a line. */
    private record Reading(BatchLine line, WeighingStation station) implements Explained, Serializable {

        private static final Symbol READING = Symbol.of("r", "reading", Kind.MASS);

        @Override
        public Phrase question() {
            return Phrase.of("question.reading", line.name());
        }

        @Override
        public Ratio result() {
            return derive(Reckoning.plain());
        }

        @Override
        public <V> V derive(Reckoning<V> r) {
            // The same figure as in the error: d of this balance, named as the errors name it.
            String name = station.balance().name();
            V d = r.given(
                    BatchSymbols.READABILITY,
                    Subject.of(name, name),
                    station.balance().readability().canonical(),
                    Source.user());
            V divisions = r.rounded(r.quotient(r.known(line), d), Rounding.toDecimalPlaces(0));
            return r.named(READING, line, r.product(divisions, d));
        }
    }

    @Override
    public String toString() {
        return line.name() + " at " + station();
    }
}
