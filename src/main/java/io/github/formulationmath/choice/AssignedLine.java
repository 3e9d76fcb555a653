package io.github.formulationmath.choice;

import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.AdditionError;
import java.util.List;
import javax.measure.quantity.Dimensionless;
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

    /**
     * How a line would fare at one station.
     *
     * @param station the station
     * @param verdict what speaks for or against it, in words
     * @param relativeError the guaranteed relative error there, in percent
     * @param isUsable whether the line can be weighed there within its tolerance: in the pot that was taken or in a boat that
     *     holds it, carried by the balance, and not below its minimum load
     */
    public record Candidate(
            WeighingStation station, Phrase verdict, Amount<Dimensionless> relativeError, boolean isUsable) {}

    AssignedLine(BatchLine line, List<Candidate> candidates, Candidate chosen) {
        this.line = line;
        this.candidates = List.copyOf(candidates);
        this.chosen = chosen;
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

    /**
     * The largest possible error against the exact mass, as a share of it.
     *
     * @return the guaranteed relative error at the station, in percent
     */
    public Amount<Dimensionless> relativeError() {
        return chosen.relativeError();
    }

    /** As {@link #relativeError()}. */
    @Override
    public Origin origin() {
        return relativeError().origin();
    }

    static Addition addition(BatchLine line, WeighingStation station) {
        return new There(line, station).addition();
    }

    static Amount<Dimensionless> relativeError(BatchLine line, WeighingStation station) {
        There there = new There(line, station);
        return Amount.percent(there.relativeError(Reckoning.plain()).times(100))
                .withWorking(
                        asked -> Phrase.of("question.guaranteed-relative-error", asked.line.name()),
                        there,
                        There::relativeError);
    }

    /** A line at a station. */
    private record There(BatchLine line, WeighingStation station) {

        private static final Symbol READING = Symbol.of("r", "reading", Kind.MASS);

        Addition addition() {
            return Addition.of(line.line(), line.mass().withWorking(line.origin()), reading(), station.balance())
                    .by(station.method());
        }

        <V> V relativeError(Reckoning<V> r) {
            V error = r.known(AdditionError.of(addition()));
            return r.named(RELATIVE, line, r.quotient(error, r.known(line)));
        }

        private Amount<Mass> reading() {
            return Amount.grams(reading(Reckoning.plain()))
                    .withWorking(asked -> Phrase.of("question.reading", asked.line.name()), this, There::reading);
        }

        /** What the display reads. */
        private <V> V reading(Reckoning<V> r) {
            // The same figure as in the error: d of this balance, named as the errors name it.
            String name = station.balance().name();
            V d = r.given(
                    Divisions.READABILITY,
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
