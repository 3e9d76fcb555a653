package io.github.formulationmath.plan;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Lines;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingStation;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * A batch as it is weighed on a bench: for every line what the display must read, and how the rounded lines add up.
 *
 * <p>Example: {@code WeighingPlan.of(batch, Bench.of(Balance.of("0.1 g", "2 kg"))).line("Glycerin").reading()}.
 *
 * <p>Immutable and thread-safe.
 */
public final class WeighingPlan implements Lines<PlannedLine>, Serializable {

    @Serial
    private static final long serialVersionUID = 2L;

    private static final Symbol TOTAL = Symbol.of("R", "readings-total", Kind.MASS);
    private static final Symbol DIFFERENCE = Symbol.of("D", "total-difference", Kind.MASS);

    private final Batch batch;
    private final Bench bench;
    private final Divisions rule;
    private final List<PlannedLine> lines;

    private WeighingPlan(Batch batch, Bench bench, List<WeighingStation> stations) {
        this.batch = batch;
        this.bench = bench;
        this.rule = new Divisions(batch, bench, stations);
        List<Ratio> divisions = rule.all(Reckoning.plain());
        List<PlannedLine> all = new ArrayList<>(divisions.size());
        List<BatchLine> targets = batch.lines();
        for (int i = 0; i < divisions.size(); i++) {
            boolean goesOn = i > 0 && isOnBench(i) && isOnBench(i - 1);
            int since = goesOn ? all.get(i - 1).since() : i;
            Ratio before = goesOn ? all.get(i - 1).divisionsSince() : Ratio.ZERO;
            all.add(new PlannedLine(this, targets.get(i), divisions.get(i), since, before));
        }
        this.lines = List.copyOf(all);
    }

    /**
     * Plans the weighing of a batch.
     *
     * @param batch the batch
     * @param bench where and how it is weighed
     * @return the plan
     * @throws OverloadException if vessel and batch are more than the balance carries, as exact masses or as the
     *     readings add up; it says by how much and which batch would fit
     * @throws OverfillException if vessel volume and product density are known and the batch does not fit
     * @throws IllegalArgumentException if the q.s. line is to take the rest and there is none, or nothing is left for it
     */
    public static WeighingPlan of(Batch batch, Bench bench) {
        return of(batch, bench, List.of());
    }

    /**
     * Plans the weighing of a batch on several balances: each line at its place, under the vessel of the bench or in a boat.
     * A total that is closed is closed from the coarsest step to the finest (see {@link Closure#CLOSED}); no line moves by a
     * whole division of its own display for it, and what is left is the {@link #difference()}.
     *
     * @param batch the batch
     * @param bench the vessel in which it is made, the balance that this stands on, and how the total is closed
     * @param stations one place for each line, in the order of the formula; none, if all are on the balance of the bench
     * @return the plan
     * @throws OverloadException if a balance would carry more than it can
     * @throws OverfillException if the batch does not fit its vessel, or a line its boat, by the densities that are known
     * @throws IllegalArgumentException if there is not one place for each line, a place is another vessel than that of the
     *     bench, two balances that differ have the same name, or as for one balance
     */
    public static WeighingPlan of(Batch batch, Bench bench, List<WeighingStation> stations) {
        Objects.requireNonNull(batch, "batch");
        Objects.requireNonNull(bench, "bench");
        List<WeighingStation> copy = List.copyOf(Objects.requireNonNull(stations, "stations"));
        boolean allOnBench =
                copy.size() == batch.lines().size() && copy.stream().allMatch(bench.station()::equals);
        List<WeighingStation> places = allOnBench ? List.of() : copy;
        if (!places.isEmpty()) {
            requirePlaces(batch, bench, places);
        }
        WeighingPlan plan = new WeighingPlan(batch, bench, places);
        plan.requireHeld();
        return plan;
    }

    private static void requirePlaces(Batch batch, Bench bench, List<WeighingStation> places) {
        if (places.size() != batch.lines().size()) {
            throw new IllegalArgumentException("stations has " + places.size() + " places, and \""
                    + Excerpt.of(batch.formula().name()) + "\" "
                    + batch.lines().size() + " lines: give one for each, in the order of the formula");
        }
        List<Balance> balances = new ArrayList<>();
        balances.add(bench.balance());
        for (WeighingStation place : places) {
            balances.add(place.balance());
            if (!place.isBoat() && !place.vessel().equals(bench.vessel())) {
                throw new IllegalArgumentException(
                        "stations has " + Excerpt.of(place) + ", another vessel than that of the"
                                + " bench, " + Excerpt.of(bench.vessel())
                                + ": a batch is made in one vessel; pour from a boat, or give the bench that vessel");
            }
        }
        MadeMasses.requireNames(balances);
    }

    /**
     * Plans the weighing of a batch on a balance, without a vessel and each line rounded by itself.
     *
     * @param batch the batch
     * @param balance the balance
     * @return the plan
     * @throws OverloadException as {@link #of(Batch, Bench)}
     */
    public static WeighingPlan of(Batch batch, Balance balance) {
        return of(batch, Bench.of(balance));
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
     * The bench.
     *
     * @return where and how the batch is weighed
     */
    public Bench bench() {
        return bench;
    }

    @Override
    public Formula formula() {
        return batch.formula();
    }

    @Override
    public List<PlannedLine> lines() {
        return lines;
    }

    /**
     * What all readings add up to.
     *
     * @return the total in the unit of the balance
     */
    public Amount<Mass> total() {
        int all = lines.size();
        Amount<Mass> total = rule.stations().isEmpty()
                ? bench.balance().readability().times(divisions(all))
                : Amount.grams(grams(all)).inUnitOf(finest().readability());
        return total.withWorking(plan -> Phrase.of("question.readings-total"), this, WeighingPlan::total);
    }

    private <V> V total(Reckoning<V> r) {
        List<V> readings = new ArrayList<>(lines.size());
        for (PlannedLine line : lines) {
            readings.add(r.known(line.reading()));
        }
        return r.named(TOTAL, r.sum(readings));
    }

    /**
     * By how much the readings together differ from the batch.
     *
     * @return total minus batch mass in the unit of the balance, exact
     */
    public Amount<Mass> difference() {
        return total().minus(batch.mass())
                .withWorking(plan -> Phrase.of("question.total-difference"), this, WeighingPlan::difference);
    }

    private <V> V difference(Reckoning<V> r) {
        return r.named(DIFFERENCE, r.difference(r.known(total()), r.known(batch)));
    }

    /**
     * Whether the readings add up to the batch exactly.
     *
     * @return true if the difference is 0
     */
    public boolean closes() {
        return difference().isZero();
    }

    /**
     * What could have forbidden the batch but was not considered, because a figure is missing; see {@link
     * Bench#notConsidered()}.
     *
     * @return an unmodifiable list, empty if everything given was considered
     */
    public List<Phrase> notConsidered() {
        List<Phrase> all = new ArrayList<>(bench.notConsidered());
        for (PlannedLine line : stations().isEmpty() ? List.<PlannedLine>of() : lines) {
            Vessel boat = line.station().vessel();
            if (line.station().isBoat()
                    && boat.workingVolume().isPresent()
                    && line.line().ingredient().density().isEmpty()) {
                all.add(Phrase.of("unconsidered.boat-volume", boat.name(), line.name()));
            }
        }
        return List.copyOf(all);
    }

    /** What the readings add up to, in grams. */
    private Ratio read() {
        return grams(lines.size());
    }

    /** Refuses what a balance does not carry or a vessel does not hold. */
    private void requireHeld() {
        Ratio grams = batch.mass().canonical().max(read());
        if (stations().isEmpty()) {
            requireCarried(grams);
        } else {
            requireCarriedAtStations();
        }
        if (bench.productDensity().isPresent()) {
            requireRoom(Amount.grams(grams), bench.productDensity().get());
        }
    }

    private void requireCarried(Ratio grams) {
        Amount<Mass> vessel = bench.vessel().mass();
        Amount<Mass> load = Amount.grams(vessel.isZero() ? grams : grams.plus(vessel.canonical()));
        Balance balance = bench.balance();
        if (!balance.carries(load)) {
            throw OverloadException.of(said(), bench, asked(balance.excess(load)), largest());
        }
    }

    /** A boat carries its own line, the pot everything that is in it when the line is. */
    private void requireCarriedAtStations() {
        Ratio asked = Ratio.ZERO;
        Ratio read = Ratio.ZERO;
        for (PlannedLine line : lines) {
            WeighingStation station = line.station();
            Ratio own = line.target().mass().canonical();
            Ratio reading = line.reading().canonical();
            asked = asked.plus(own);
            read = read.plus(reading);
            Ratio content = station.isBoat() ? own.max(reading) : asked.max(read);
            Amount<Mass> load =
                    Amount.grams(content.plus(station.vessel().mass().canonical()));
            if (!station.balance().carries(load)) {
                throw overload(line, content, load);
            }
            if (station.isBoat()) {
                requireRoomInBoat(line, content);
            }
        }
    }

    private IllegalArgumentException overload(PlannedLine line, Ratio content, Amount<Mass> load) {
        WeighingStation station = line.station();
        Bench there = Bench.of(station.balance()).with(station.vessel());
        Amount<Mass> excess = station.balance().excess(load);
        return station.isBoat()
                ? OverloadException.of(said(line, content), there, excess, station.room())
                : OverloadException.of(
                        said() + " once " + line.name() + " is in,", there, asked(excess), asked(station.room()));
    }

    private static String said(PlannedLine line, Ratio content) {
        return line.name() + ", "
                + Amount.grams(content).inUnitOf(line.balance().readability()).told() + ",";
    }

    private static void requireRoomInBoat(PlannedLine line, Ratio content) {
        Vessel boat = line.station().vessel();
        Optional<Density> density = line.line().ingredient().density();
        if (density.isPresent() && boat.workingVolume().isPresent()) {
            Amount<Volume> room = boat.workingVolume().get();
            Amount<Volume> volume = density.get().volumeOf(Amount.grams(content));
            if (volume.compareTo(room) > 0) {
                Amount<Mass> most =
                        density.get().massOf(room).inUnitOf(line.balance().readability());
                throw OverfillException.of(said(line, content), volume, boat, room, most);
            }
        }
    }

    /** In the unit of the mass that the batch was asked for by, if one was. */
    private Amount<Mass> asked(Amount<Mass> mass) {
        return batch.size().statedMass().map(mass::inUnitOf).orElse(mass);
    }

    private void requireRoom(Amount<Mass> content, Density density) {
        bench.vessel().workingVolume().ifPresent(room -> {
            Amount<Volume> volume = density.volumeOf(content);
            if (volume.compareTo(room) > 0) {
                throw OverfillException.of(said(), volume, bench.vessel(), room, largest());
            }
        });
    }

    /** The batch as it was asked for, and what its readings come to if that is more. */
    private String said() {
        Amount<Mass> readings = Amount.grams(read()).inUnitOf(bench.balance().readability());
        String mass = batch.mass().told();
        return read().compareTo(batch.mass().canonical()) > 0
                ? "a batch of " + mass + ", whose rounded lines add up to " + readings.told() + ","
                : "a batch of " + mass;
    }

    /** The largest batch of the formula whose plan the bench carries and holds. */
    private Amount<Mass> largest() {
        Amount<Mass> carried = bench.balance().capacityUnder(bench.vessel());
        Amount<Mass> room = bench.productDensity()
                .flatMap(density -> bench.vessel().workingVolume().map(density::massOf))
                .filter(held -> held.compareTo(carried) < 0)
                .map(held -> held.inUnitOf(bench.balance().readability()))
                .orElse(carried);
        PlannedLoad limit = PlannedLoad.of(batch.formula(), bench);
        Ratio grams = room.canonical();
        Ratio most = limit.most(Reckoning.plain(), grams);
        return asked(
                most.equals(grams)
                        ? room
                        : Amount.grams(most).inUnitOf(bench.balance().readability()));
    }

    /**
     * The balance of the finest display that is used: it has the digits that a total needs.
     *
     * @return that of the bench, if no line is weighed more finely
     */
    public Balance finest() {
        return rule.stations().stream()
                .map(WeighingStation::balance)
                .min(Comparator.comparing(Balance::readability))
                .orElse(bench.balance());
    }

    /**
     * Where each line is weighed.
     *
     * @return an unmodifiable list in the order of the formula; empty if all are weighed on the balance of the bench
     */
    public List<WeighingStation> stations() {
        return rule.stations();
    }

    /** What the first lines read together in divisions, all on the balance of the bench. */
    private Ratio divisions(int count) {
        return count == 0 ? Ratio.ZERO : lines.get(count - 1).divisionsSince();
    }

    /** What the first lines read together, in grams. */
    Ratio grams(int count) {
        if (rule.stations().isEmpty()) {
            return divisions(count).times(bench.balance().readability().canonical());
        }
        Ratio sum = Ratio.ZERO;
        for (int i = 0; i < count; i++) {
            sum = sum.plus(
                    lines.get(i).divisions().times(balance(i).readability().canonical()));
        }
        return sum;
    }

    WeighingStation station(int line) {
        return rule.stations().isEmpty() ? bench.station() : rule.stations().get(line);
    }

    Balance balance(int line) {
        return rule.balance(line);
    }

    boolean isOnBench(int line) {
        return rule.stations().isEmpty() || rule.stations().get(line).equals(bench.station());
    }

    Divisions rule() {
        return rule;
    }

    /** Equal if batch, bench and the places of the lines are. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WeighingPlan that
                && batch.equals(that.batch)
                && bench.equals(that.bench)
                && stations().equals(that.stations());
    }

    @Override
    public int hashCode() {
        return Objects.hash(batch, bench, stations());
    }

    @Override
    public String toString() {
        return batch + " on " + bench + ": " + lines
                + notConsidered().stream().map(phrase -> "; " + phrase).collect(Collectors.joining());
    }
}
