package io.github.formulationmath.choice;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.BalanceUnit;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Entry.Comparison;
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
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * How a demand is met with a set of equipment: the least size that passes, the pot and the balance under it, and where each line
 * is weighed. A line stays on the balance under the pot wherever it passes there; another goes, from a boat, to the first balance
 * on which it passes. It shows that the set serves the demand; {@link BalanceAssignment} weighs a batch of the size where each line
 * has its least guaranteed error.
 *
 * <p>Immutable and thread-safe.
 */
public final class ServingPlan implements Weighed, Explained {

    private static final Symbol WANTED = Symbol.of("L", "least-size-wanted", Kind.MASS);
    private static final Symbol SIZE = Symbol.of("B", "serving-size", Kind.MASS);
    private static final Symbol VESSEL = Symbol.of("V", "pot-mass", Kind.MASS);
    private static final Symbol CAPACITY = Symbol.of("C", "main-capacity", Kind.MASS);

    private final Demand demand;
    private final Ratio grams;
    private final Optional<Amount<Mass>> pushed;
    private final Batch batch;
    private final WeighingStation pot;
    private final List<AtStation> lines;
    private final String told;

    /**
     * A line and where it is weighed.
     *
     * @param line the line with its exact mass
     * @param station the balance with the pot or a boat on it
     */
    public record AtStation(BatchLine line, WeighingStation station) {

        private static final Symbol READING = Symbol.of("r", "reading", Kind.MASS);
        private static final Symbol RELATIVE = Symbol.of("ε", "guaranteed-relative-error", Kind.SHARE);

        /**
         * Refuses null.
         *
         * @param line the line with its exact mass
         * @param station the balance with the pot or a boat on it
         */
        public AtStation {
            Objects.requireNonNull(line, "line");
            Objects.requireNonNull(station, "station");
        }

        /**
         * The line as it is weighed there.
         *
         * @return target, reading, balance and method
         */
        public Addition addition() {
            return Addition.of(line.line(), line.mass().withWorking(line.origin()), reading(), station.balance())
                    .by(station.method());
        }

        private Amount<Mass> reading() {
            return Amount.grams(reading(Reckoning.plain()))
                    .withWorking(asked -> Phrase.of("question.reading", asked.line.name()), this, AtStation::reading)
                    .inUnitOf(station.balance().readability());
        }

        /** What the display reads. */
        private <V> V reading(Reckoning<V> r) {
            // The same figure as in the error: d of this balance, named as the errors name it.
            String name = station.balance().name();
            V d = r.given(
                    Divisions.READABILITY,
                    Subject.of(name, name),
                    station.balance().readability(),
                    Source.user());
            V divisions = r.rounded(r.quotient(r.known(line), d), Rounding.toDecimalPlaces(0));
            return r.named(READING, line, r.product(divisions, d));
        }

        /** The largest possible error against the exact mass, as a share of it, in percent. */
        Amount<Dimensionless> relativeError() {
            return Amount.percent(relativeError(Reckoning.plain()).times(100))
                    .withWorking(
                            asked -> Phrase.of("question.guaranteed-relative-error", asked.line.name()),
                            this,
                            AtStation::relativeError);
        }

        private <V> V relativeError(Reckoning<V> r) {
            V error = r.known(AdditionError.of(addition()));
            return r.named(RELATIVE, line, r.quotient(error, r.known(line)));
        }

        @Override
        public String toString() {
            return line.name() + " on " + station;
        }
    }

    private ServingPlan(Fitting fit, Fitting.Served served, Batch batch, WeighingStation pot, List<AtStation> lines) {
        this.demand = fit.demand();
        this.grams = served.grams();
        this.pushed = served.pushed();
        this.batch = batch;
        this.pot = pot;
        this.lines = List.copyOf(lines);
        this.told = BalanceUnit.least(
                Amount.grams(grams).inUnitOf(pot.balance().readability()),
                size -> fit.servesAlike(served, size.canonical()));
    }

    static ServingPlan of(Fitting fit, Fitting.Served served, EquipmentList list) {
        Amount<Mass> size = Amount.grams(served.grams())
                .inUnitOf(balance(list, served.main()).readability());
        Batch batch = Batch.of(fit.demand().formula(), BatchSize.ofMass(size));
        WeighingStation pot =
                WeighingStation.inVessel(balance(list, served.main()), vessel(list, Optional.ofNullable(served.pot())));
        List<AtStation> lines = new ArrayList<>();
        for (int i = 0; i < served.places().size(); i++) {
            FormulaLine line = fit.lines().get(i);
            lines.add(new AtStation(batch.line(line), station(served.places().get(i), pot, list)));
        }
        return new ServingPlan(fit, served, batch, pot, lines);
    }

    private static WeighingStation station(Fitting.Place place, WeighingStation pot, EquipmentList list) {
        Integer boat = place.boat();
        return boat == null
                ? pot
                : WeighingStation.fromBoat(
                        balance(list, place.balance()),
                        vessel(list, boat == list.size() ? Optional.empty() : Optional.of(boat)));
    }

    private static Balance balance(EquipmentList list, int index) {
        if (list.at(index) instanceof Equipment.OfBalance item) {
            Balance balance = item.balance();
            return balance.name().isEmpty() ? balance.named(item.name()) : balance;
        }
        throw new IllegalStateException(list.at(index) + " is no balance");
    }

    private static Vessel vessel(EquipmentList list, Optional<Integer> index) {
        return index.map(list::at).flatMap(EquipmentList::vessel).orElse(Vessel.none());
    }

    /**
     * What was asked for.
     *
     * @return formula, sizes and criterion
     */
    public Demand demand() {
        return demand;
    }

    /**
     * The least size of the range that passes.
     *
     * @return the exact mass in the unit of the balance under the pot, with what pushed it there
     */
    public Amount<Mass> size() {
        return Amount.grams(grams)
                .inUnitOf(pot.balance().readability())
                .withWorking(
                        plan -> Phrase.of(
                                "question.serving-size", plan.formula().name()),
                        this,
                        ServingPlan::size);
    }

    Ratio grams() {
        return grams;
    }

    /** The size as one in few digits that passes. */
    String told() {
        return told;
    }

    private <V> V size(Reckoning<V> r) {
        V wanted = r.given(WANTED, demand.sizes().least(), Source.user());
        boolean isWanted = grams.equals(demand.sizes().least().canonical());
        V size = pushed.isPresent() ? r.known(pushed.orElseThrow()) : isWanted ? wanted : r.literal(grams);
        V named = r.named(SIZE, size);
        r.note(() -> Phrase.of("note.no-smaller-size-serves"));
        r.holds(named, Comparison.AT_LEAST, wanted);
        V vessel = r.given(VESSEL, pot.vessel().mass(), Source.user());
        V capacity = r.given(CAPACITY, pot.balance().capacity(), Source.user());
        r.holds(r.sum(vessel, named), Comparison.AT_MOST, capacity);
        return named;
    }

    /** As {@link #size()}. */
    @Override
    public Origin origin() {
        return size().origin();
    }

    /**
     * The batch of that size.
     *
     * @return the batch
     */
    public Batch batch() {
        return batch;
    }

    /**
     * The balance with the pot on it, up to the end.
     *
     * @return the station
     */
    public WeighingStation pot() {
        return pot;
    }

    /**
     * Where each line with a share above 0 is weighed.
     *
     * @return an unmodifiable list in the order of the formula
     */
    public List<AtStation> lines() {
        return lines;
    }

    /**
     * The stations that are used, the pot's first.
     *
     * @return an unmodifiable list, for {@link BalanceAssignment#of}
     */
    public List<WeighingStation> stations() {
        List<WeighingStation> all = new ArrayList<>(List.of(pot));
        lines.stream()
                .map(AtStation::station)
                .filter(each -> !each.equals(pot))
                .distinct()
                .forEach(all::add);
        return List.copyOf(all);
    }

    @Override
    public Formula formula() {
        return demand.formula();
    }

    @Override
    public MadeMasses masses() {
        return MadeMasses.of(lines.stream().map(AtStation::addition).toList());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ServingPlan that
                && demand.equals(that.demand)
                && grams.equals(that.grams)
                && pot.equals(that.pot)
                && lines.equals(that.lines);
    }

    @Override
    public int hashCode() {
        return Objects.hash(demand, grams, pot, lines);
    }

    @Override
    public String toString() {
        Map<WeighingStation, List<String>> byStation = new LinkedHashMap<>();
        lines.forEach(line -> byStation
                .computeIfAbsent(line.station(), none -> new ArrayList<>())
                .add(line.line().name()));
        String where = byStation.entrySet().stream()
                .map(entry -> String.join(", ", entry.getValue()) + " on "
                        + entry.getKey().balance().name()
                        + (entry.getKey().method().usesBoat() ? " from a boat" : ""))
                .collect(Collectors.joining("; "));
        return formula().name() + ", " + told + ": " + where;
    }
}
