package io.github.formulationmath.plan;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** What balances and vessels can hold, against a batch and the readings of its plan. */
record BenchLimits(WeighingPlan plan) {

    private Batch batch() {
        return plan.batch();
    }

    private Bench bench() {
        return plan.bench();
    }

    /** What the readings add up to, in grams. */
    private Ratio total() {
        return plan.grams(plan.lines().size());
    }

    /** Refuses what a balance does not carry or a vessel does not hold. */
    void require() {
        Ratio grams = batch().mass().canonical().max(total());
        if (plan.stations().isEmpty()) {
            requireCarried(grams);
        } else {
            requireCarriedAtStations();
        }
        if (bench().productDensity().isPresent()) {
            requireRoom(Amount.grams(grams), bench().productDensity().get());
        }
    }

    private void requireCarried(Ratio grams) {
        Amount<Mass> vessel = bench().vessel().mass();
        Ratio load = vessel.isZero() ? grams : grams.plus(vessel.canonical());
        if (load.compareTo(bench().balance().capacity().canonical()) > 0) {
            throw OverloadException.of(said(), bench(), excess(load, bench().balance()), largest());
        }
    }

    /** A boat carries its own line, the pot everything that is in it when the line is. */
    private void requireCarriedAtStations() {
        Ratio asked = Ratio.ZERO;
        Ratio read = Ratio.ZERO;
        for (PlannedLine line : plan.lines()) {
            WeighingStation station = line.station();
            Ratio own = line.target().mass().canonical();
            Ratio reading = line.reading().canonical();
            asked = asked.plus(own);
            read = read.plus(reading);
            Ratio content = station.isBoat() ? own.max(reading) : asked.max(read);
            Ratio load = content.plus(station.vessel().mass().canonical());
            if (load.compareTo(station.balance().capacity().canonical()) > 0) {
                String said = station.isBoat()
                        ? line.name() + ", " + BalanceUnit.amount(station.balance(), content) + ","
                        : said() + " once " + line.name() + " is in";
                Bench there = Bench.of(station.balance()).with(station.vessel());
                throw OverloadException.of(said, there, excess(load, station.balance()), station.room());
            }
            if (station.isBoat()) {
                requireRoomInBoat(line, content);
            }
        }
    }

    private static void requireRoomInBoat(PlannedLine line, Ratio content) {
        Vessel boat = line.station().vessel();
        Optional<Density> density = line.line().ingredient().density();
        if (density.isPresent() && boat.workingVolume().isPresent()) {
            Amount<Volume> room = boat.workingVolume().get();
            Amount<Volume> volume = density.get().volumeOf(Amount.grams(content));
            if (volume.compareTo(room) > 0) {
                String said = line.name() + ", " + BalanceUnit.amount(line.balance(), content) + ",";
                throw OverfillException.of(
                        said,
                        volume,
                        boat,
                        room,
                        density.get().massOf(room).inUnitOf(line.balance().readability()));
            }
        }
    }

    /** The boats whose volume could not be looked at. */
    List<Phrase> notConsidered() {
        return plan.stations().isEmpty()
                ? List.of()
                : plan.lines().stream()
                        .filter(line -> line.station().isBoat()
                                && line.station().vessel().workingVolume().isPresent()
                                && line.line().ingredient().density().isEmpty())
                        .map(line -> Phrase.of(
                                "unconsidered.boat-volume",
                                line.station().vessel().name(),
                                line.name()))
                        .toList();
    }

    private static Amount<Mass> excess(Ratio load, Balance balance) {
        return Amount.grams(load.minus(balance.capacity().canonical())).inUnitOf(balance.readability());
    }

    private void requireRoom(Amount<Mass> content, Density density) {
        bench().vessel().workingVolume().ifPresent(room -> {
            Amount<Volume> volume = density.volumeOf(content);
            if (volume.compareTo(room) > 0) {
                throw OverfillException.of(said(), volume, bench().vessel(), room, largest());
            }
        });
    }

    /** The batch as it was asked for, and what its readings come to if that is more. */
    private String said() {
        Amount<Mass> readings = BalanceUnit.amount(bench().balance(), total());
        String mass = batch().mass().told();
        return total().compareTo(batch().mass().canonical()) > 0
                ? "a batch of " + mass + ", whose rounded lines add up to " + readings + ","
                : "a batch of " + mass;
    }

    /** The largest batch of the formula whose plan the bench carries and holds. */
    private Amount<Mass> largest() {
        Amount<Mass> carried = bench().balance().capacityUnder(bench().vessel());
        Amount<Mass> room = bench().productDensity()
                .flatMap(density -> bench().vessel().workingVolume().map(density::massOf))
                .map(held -> held.inUnitOf(bench().balance().readability()))
                .filter(held -> held.compareTo(carried) < 0)
                .orElse(carried);
        PlannedLoad limit = PlannedLoad.of(batch().formula(), bench());
        Ratio grams = room.canonical();
        Ratio most = limit.most(Reckoning.plain(), grams);
        return most.equals(grams) ? room : BalanceUnit.amount(bench().balance(), most);
    }
}
