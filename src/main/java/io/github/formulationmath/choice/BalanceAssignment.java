package io.github.formulationmath.choice;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.Weighed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which line of a batch is weighed on which balance: each where its guaranteed relative error is smallest, among the
 * stations that carry and hold it and on which it is within its tolerance. A fine balance of small capacity takes the small
 * lines from a boat, a coarse one under the vessel the large ones.
 *
 * <p>A batch is made in one pot. Of the vessels in which it could be made, the one is taken that leaves fewest lines
 * unassigned, of those the one with the smallest guaranteed relative error of the worst line, of those the first given; it
 * may stand on several balances, one after the other. A balance under the pot carries the pot, every line before, wherever it
 * was weighed, and the line itself, by the exact masses or as the displays read, whichever is more; one under a boat carries
 * boat and line.
 *
 * <p>A boat holds the line up to its working volume by the density of the ingredient, a pot what is in it then by the
 * densities of all lines so far; where a density is not known, the volume is not considered, and {@link #notConsidered()}
 * says so. A line below the minimum load of a balance is not weighed there.
 *
 * <p>Immutable and thread-safe.
 */
public final class BalanceAssignment implements Weighed {

    private final Batch batch;
    private final List<AssignedLine> lines;
    private final List<BatchLine> unassigned;
    private final List<Phrase> notConsidered;

    private BalanceAssignment(
            Batch batch, List<AssignedLine> lines, List<BatchLine> unassigned, List<Phrase> notConsidered) {
        this.batch = batch;
        this.lines = List.copyOf(lines);
        this.unassigned = List.copyOf(unassigned);
        this.notConsidered = List.copyOf(notConsidered);
    }

    /**
     * Assigns every line.
     *
     * @param batch the batch
     * @param stations the balances with what stands on them, at least one; several vessels are alternatives, of which one is
     *     taken
     * @param tolerances how far each line may be off, by its guaranteed relative error
     * @return the assignment
     * @throws IllegalArgumentException if there is no station
     */
    public static BalanceAssignment of(Batch batch, List<WeighingStation> stations, Tolerances tolerances) {
        Objects.requireNonNull(batch, "batch");
        Objects.requireNonNull(tolerances, "tolerances");
        List<WeighingStation> copy = List.copyOf(Objects.requireNonNull(stations, "stations"));
        if (copy.isEmpty()) {
            throw new IllegalArgumentException("stations is empty: at least one is needed");
        }
        List<Vessel> pots = copy.stream()
                .filter(station -> !station.method().usesBoat())
                .map(WeighingStation::vessel)
                .distinct()
                .toList();
        if (pots.isEmpty()) {
            return inPot(batch, copy, null, tolerances);
        }
        return pots.stream()
                .map(pot -> inPot(batch, copy, pot, tolerances))
                .min(Comparator.<BalanceAssignment>comparingInt(each -> each.unassigned.size())
                        .thenComparing(BalanceAssignment::worst))
                .orElseThrow();
    }

    /** The assignment to the stations of one pot and the boats; everything in another vessel is out of the question. */
    private static BalanceAssignment inPot(
            Batch batch, List<WeighingStation> stations, @Nullable Vessel pot, Tolerances tolerances) {
        List<AssignedLine> lines = new ArrayList<>();
        List<BatchLine> unassigned = new ArrayList<>();
        Set<Phrase> notConsidered = new LinkedHashSet<>();
        PotContent content = PotContent.EMPTY;
        for (BatchLine line : batch.lines()) {
            StationTrial trial = new StationTrial(line, content, pot, tolerances);
            List<AssignedLine.Candidate> candidates =
                    stations.stream().map(trial::at).toList();
            stations.forEach(station -> notConsidered.addAll(trial.notConsidered(station)));
            Optional<AssignedLine> assigned =
                    best(candidates).map(chosen -> new AssignedLine(line, candidates, chosen));
            assigned.ifPresentOrElse(lines::add, () -> unassigned.add(line));
            Ratio reading = assigned.map(each -> each.addition().reading().canonical())
                    .orElse(line.mass().canonical());
            content = content.plus(line, reading);
        }
        return new BalanceAssignment(batch, lines, unassigned, List.copyOf(notConsidered));
    }

    private static Optional<AssignedLine.Candidate> best(List<AssignedLine.Candidate> candidates) {
        return candidates.stream()
                .filter(AssignedLine.Candidate::isUsable)
                .min(Comparator.comparing(AssignedLine.Candidate::relativeError));
    }

    private Ratio worst() {
        return lines.stream().map(line -> line.relativeError().canonical()).reduce(Ratio.ZERO, Ratio::max);
    }

    /**
     * What could have forbidden a station but was not considered, because a density is missing.
     *
     * @return an unmodifiable list, empty if everything given was considered
     */
    public List<Phrase> notConsidered() {
        return notConsidered;
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
     * The lines that some balance can weigh within their tolerance, in the order of the formula.
     *
     * @return an unmodifiable list
     */
    public List<AssignedLine> lines() {
        return lines;
    }

    /**
     * The lines that no balance can weigh: too much for each or for its vessel, below its minimum load, or nowhere within
     * their tolerance.
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
            throw new IllegalStateException(
                    "no balance can weigh " + Excerpt.of(unassigned) + ": the batch cannot be made");
        }
        return MadeMasses.of(lines.stream().map(AssignedLine::addition).toList());
    }

    @Override
    public String toString() {
        return batch + ": " + lines + (unassigned.isEmpty() ? "" : ", not " + unassigned);
    }
}
