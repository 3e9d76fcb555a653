package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchLine;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * Which line of a batch is weighed on which balance: each where its guaranteed relative error is smallest, among the
 * balances that carry it. A fine balance of small capacity takes the small lines from a boat, a coarse one under the vessel
 * the large ones.
 *
 * <p>A balance under the vessel carries the vessel, every line before and the line itself; one under a boat carries boat
 * and line. A line below the minimum load of a balance is not weighed there.
 *
 * <p>Immutable and thread-safe.
 */
public final class BalanceAssignment implements Weighed {

    private final Batch batch;
    private final List<AssignedLine> lines;
    private final List<BatchLine> unassigned;

    private BalanceAssignment(Batch batch, List<AssignedLine> lines, List<BatchLine> unassigned) {
        this.batch = batch;
        this.lines = List.copyOf(lines);
        this.unassigned = List.copyOf(unassigned);
    }

    /**
     * Assigns every line.
     *
     * @param batch the batch
     * @param stations the balances with what stands on them, at least one
     * @return the assignment
     * @throws IllegalArgumentException if there is no station
     */
    public static BalanceAssignment of(Batch batch, List<WeighingStation> stations) {
        Objects.requireNonNull(batch, "batch");
        List<WeighingStation> copy = Arguments.atLeastOne("stations", stations);
        List<AssignedLine> lines = new ArrayList<>();
        List<BatchLine> unassigned = new ArrayList<>();
        Ratio content = Ratio.ZERO;
        for (BatchLine line : batch.lines()) {
            content = content.plus(line.result());
            Amount<Mass> inVessel = Amount.grams(content);
            List<AssignedLine.Candidate> candidates = copy.stream()
                    .map(station -> candidate(line, station, inVessel))
                    .toList();
            best(candidates)
                    .ifPresentOrElse(
                            chosen -> lines.add(new AssignedLine(line, candidates, chosen)),
                            () -> unassigned.add(line));
        }
        return new BalanceAssignment(batch, lines, unassigned);
    }

    private static Optional<AssignedLine.Candidate> best(List<AssignedLine.Candidate> candidates) {
        return candidates.stream()
                .filter(AssignedLine.Candidate::isUsable)
                .min(Comparator.comparing(AssignedLine.Candidate::relativeError));
    }

    private static AssignedLine.Candidate candidate(BatchLine line, WeighingStation station, Amount<Mass> inVessel) {
        Ratio error = AssignedLine.relativeError(Reckoning.plain(), line, station);
        Amount<Mass> onPan = station.method().usesBoat() ? line.mass() : inVessel;
        Amount<Mass> load = onPan.plus(station.vessel().mass());
        if (load.compareTo(station.balance().capacity()) > 0) {
            Amount<Mass> over = load.minus(station.balance().capacity());
            return new AssignedLine.Candidate(
                    station, Phrase.of("station.overloaded", load.toString(), over.toString()), error, false);
        }
        if (line.mass().compareTo(station.balance().minimumLoad()) < 0) {
            String least = station.balance().minimumLoad().toString();
            return new AssignedLine.Candidate(
                    station, Phrase.of("station.below-minimum", line.name(), least), error, false);
        }
        Amount<Mass> most = Amount.grams(error.times(line.mass().in(FormulationUnits.GRAM)));
        return new AssignedLine.Candidate(
                station, Phrase.of("station.carries", line.name(), most.toString()), error, true);
    }

    /**
     * The batch.
     *
     * @return the batch
     */
    public Batch batch() {
        return batch;
    }

    /**
     * The lines that some balance can weigh, in the order of the formula.
     *
     * @return an unmodifiable list
     */
    public List<AssignedLine> lines() {
        return lines;
    }

    /**
     * The lines that no balance can weigh: too much for each, or below its minimum load.
     *
     * @return an unmodifiable list, empty if the batch can be made
     */
    public List<BatchLine> unassigned() {
        return unassigned;
    }

    /**
     * The formula of the batch.
     *
     * @return the formula
     */
    @Override
    public Formula formula() {
        return batch.formula();
    }

    /**
     * What will have been made, if every line is weighed where it is assigned.
     *
     * @return the masses with their guaranteed bounds and uncertainties
     * @throws IllegalStateException if some line is not assigned
     * @throws IllegalArgumentException if two balances that differ have the same name
     */
    @Override
    public MadeMasses masses() {
        if (!unassigned.isEmpty()) {
            throw new IllegalStateException("no balance can weigh " + unassigned + ": the batch cannot be made");
        }
        return MadeMasses.of(lines.stream().map(AssignedLine::addition).toList());
    }

    @Override
    public String toString() {
        return batch + ": " + lines + (unassigned.isEmpty() ? "" : ", not " + unassigned);
    }
}
