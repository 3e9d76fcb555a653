package io.github.formulationmath.choice;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingStation;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.quantity.Dimensionless;
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

    /** No error is said to be less than it may be. */
    private static final Rounding UPWARDS = Rounding.toSignificantDigits(3).with(RoundingMode.CEILING);

    private final Batch batch;
    private final Asked asked;
    private final @Nullable Vessel pot;
    private final List<List<AssignedLine.Candidate>> candidates;
    private final List<AssignedLine> lines;
    private final List<BatchLine> unassigned;
    private final List<Phrase> notConsidered;

    /** What there is to choose from: lines that are fixed are weighed on their balance or not at all. */
    private record Asked(List<WeighingStation> stations, Tolerances tolerances, Map<FormulaLine, Balance> fixed) {

        List<WeighingStation> stationsFor(BatchLine line) {
            Balance only = fixed.get(line.line());
            return only == null
                    ? stations
                    : stations.stream()
                            .filter(station -> station.balance().equals(only))
                            .toList();
        }
    }

    private BalanceAssignment(Batch batch, Asked asked, @Nullable Vessel pot) {
        this.batch = batch;
        this.asked = asked;
        this.pot = pot;
        List<List<AssignedLine.Candidate>> all = new ArrayList<>();
        List<AssignedLine> weighed = new ArrayList<>();
        List<BatchLine> left = new ArrayList<>();
        Set<Phrase> blind = new LinkedHashSet<>();
        PotContent content = PotContent.EMPTY;
        for (BatchLine line : batch.lines()) {
            StationTrial trial = new StationTrial(line, content, pot, asked.tolerances());
            List<WeighingStation> stations = asked.stationsFor(line);
            List<AssignedLine.Candidate> tried =
                    stations.stream().map(trial::at).toList();
            stations.forEach(station -> blind.addAll(trial.notConsidered(station)));
            all.add(tried);
            Optional<AssignedLine> assigned = best(tried).map(chosen -> new AssignedLine(line, tried, chosen));
            assigned.ifPresentOrElse(weighed::add, () -> left.add(line));
            Ratio reading = assigned.map(each -> each.addition().reading().canonical())
                    .orElse(line.mass().canonical());
            content = content.plus(line, reading);
        }
        this.candidates = List.copyOf(all);
        this.lines = List.copyOf(weighed);
        this.unassigned = List.copyOf(left);
        this.notConsidered = List.copyOf(blind);
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
        return of(batch, new Asked(copy, tolerances, Map.of()));
    }

    /** The best of the pots; everything in another vessel is then out of the question. */
    private static BalanceAssignment of(Batch batch, Asked asked) {
        List<Vessel> pots = asked.stations().stream()
                .filter(station -> !station.isBoat())
                .map(WeighingStation::vessel)
                .distinct()
                .toList();
        if (pots.isEmpty()) {
            return new BalanceAssignment(batch, asked, null);
        }
        return pots.stream()
                .map(pot -> new BalanceAssignment(batch, asked, pot))
                .min(Comparator.<BalanceAssignment>comparingInt(each -> each.unassigned.size())
                        .thenComparing(BalanceAssignment::worst))
                .orElseThrow();
    }

    /**
     * The same assignment with a line fixed to a balance, whatever another would do better: the line is weighed there, or it
     * is not assigned.
     *
     * @param line the line
     * @param balance one of the balances of the stations
     * @return the assignment
     * @throws IllegalArgumentException if it is no line of the formula, or no station has this balance
     */
    public BalanceAssignment fixing(FormulaLine line, Balance balance) {
        FormulaLine own = batch.line(Objects.requireNonNull(line, "line")).line();
        Objects.requireNonNull(balance, "balance");
        if (asked.stations().stream().noneMatch(station -> station.balance().equals(balance))) {
            throw new IllegalArgumentException(
                    "balance is " + Excerpt.of(balance) + ", which stands at none of the stations "
                            + Excerpt.of(asked.stations()) + ": take one of those, or give it a station");
        }
        Map<FormulaLine, Balance> all = new HashMap<>(asked.fixed());
        all.put(own, balance);
        return of(batch, new Asked(asked.stations(), asked.tolerances(), Map.copyOf(all)));
    }

    /**
     * How a line would fare at each station it may be weighed at, also if it is assigned to none.
     *
     * @param line the line
     * @return one entry per station, in their order; only those of its balance, if the line is fixed to one
     * @throws IllegalArgumentException if it is no line of the formula
     */
    public List<AssignedLine.Candidate> candidates(FormulaLine line) {
        return candidates.get(formula().indexOf(Objects.requireNonNull(line, "line")));
    }

    /**
     * The bench of a plan: the vessel of the batch on the balance under which its last line there is weighed.
     *
     * @return the bench, each line rounded by itself
     * @throws IllegalStateException if every station is a boat
     */
    public Bench bench() {
        Vessel vessel = pot;
        if (vessel == null) {
            throw new IllegalStateException(
                    "every station is a boat: add the balance on which the vessel of the batch stands,"
                            + " WeighingStation.inVessel(balance, vessel)");
        }
        Balance balance = lines.stream()
                .map(AssignedLine::station)
                .filter(station -> !station.isBoat())
                .reduce((before, last) -> last)
                .or(() -> asked.stations().stream()
                        .filter(station -> !station.isBoat() && station.vessel().equals(vessel))
                        .findFirst())
                .map(WeighingStation::balance)
                .orElseThrow();
        return Bench.of(balance).with(vessel);
    }

    /**
     * The plan of this assignment, each line rounded by itself on its own display.
     *
     * @return the plan
     * @throws IllegalStateException if some line is not assigned, or every station is a boat
     * @throws IllegalArgumentException if two balances that differ have the same name
     */
    public WeighingPlan plan() {
        return plan(bench());
    }

    /**
     * The plan of this assignment, closed to a total.
     *
     * @param closure how
     * @return the plan
     * @throws IllegalStateException as {@link #plan()}
     * @throws IllegalArgumentException as {@link WeighingPlan#of(Batch, Bench, List)}
     */
    public WeighingPlan plan(Closure closure) {
        return plan(bench().closing(closure));
    }

    /**
     * The plan of this assignment on a bench that says more than {@link #bench()}: a closure, the density of the product.
     *
     * @param bench a bench with the vessel of the batch
     * @return the plan
     * @throws IllegalStateException if some line is not assigned
     * @throws IllegalArgumentException as {@link WeighingPlan#of(Batch, Bench, List)}
     */
    public WeighingPlan plan(Bench bench) {
        Objects.requireNonNull(bench, "bench");
        requireAssigned();
        return WeighingPlan.of(
                batch, bench, lines.stream().map(AssignedLine::station).toList());
    }

    private void requireAssigned() {
        if (!unassigned.isEmpty()) {
            throw new IllegalStateException("no balance can weigh " + Excerpt.of(unassigned)
                    + ": the batch cannot be made; make a larger one, allow more, or pre-dilute");
        }
    }

    private static String place(WeighingStation station) {
        String name = station.balance().name();
        return (name.isEmpty() ? "d = " + station.balance().readability() : name)
                + (station.isBoat() ? ", from " : ", in ")
                + station.vessel().name();
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
        requireAssigned();
        return MadeMasses.of(lines.stream().map(AssignedLine::addition).toList());
    }

    @Override
    public String toString() {
        List<String> said = new ArrayList<>(List.of(batch.toString()));
        for (BatchLine line : batch.lines()) {
            said.add(lines.stream()
                    .filter(each -> each.line().equals(line))
                    .findFirst()
                    .map(AssignedLine::toString)
                    .orElseGet(() -> line.name() + " " + line.mass().told() + " nowhere: "
                            + candidates(line.line()).stream()
                                    .map(each -> place(each.station()) + ": " + each.verdict())
                                    .collect(Collectors.joining("; "))));
        }
        return String.join("\n", said);
    }

    /**
     * One line at the station that gives it the smallest guaranteed relative error, and how it would fare at the others.
     *
     * <p>Immutable and thread-safe.
     */
    public static final class AssignedLine implements Explained {

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
                WeighingStation station, Phrase verdict, Amount<Dimensionless> relativeError, boolean isUsable) {

            /** Where it would be weighed, how far off at worst, and what speaks for it or against it. */
            @Override
            public String toString() {
                return station + ": " + verdict + ", " + NumberText.percent(relativeError.canonical());
            }
        }

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
            return new ServingPlan.AtStation(line, chosen.station()).addition();
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

        @Override
        public String toString() {
            return line.name() + ": " + addition().reading() + " on " + place(station()) + ", off by at most "
                    + NumberText.percent(UPWARDS.apply(relativeError().canonical()));
        }
    }
}
