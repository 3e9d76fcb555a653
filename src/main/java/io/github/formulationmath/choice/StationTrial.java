package io.github.formulationmath.choice;

import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** How a line would fare at the stations, when so much is in the pot before it. */
record StationTrial(
        BatchLine line, PotContent before, @Nullable Vessel pot, Tolerances tolerances) {

    /** What speaks against a station, or for it. */
    BalanceAssignment.AssignedLine.Candidate at(WeighingStation station) {
        Amount<Dimensionless> error = new ServingPlan.AtStation(line, station).relativeError();
        Phrase against = against(station, error.canonical());
        if (against != null) {
            return new BalanceAssignment.AssignedLine.Candidate(station, against, error, false);
        }
        String most = Amount.grams(line.mass().canonical().times(error.canonical()))
                .inUnitOf(station.balance().readability())
                .told();
        return new BalanceAssignment.AssignedLine.Candidate(
                station, Phrase.of("station.carries", line.name(), most), error, true);
    }

    private @Nullable Phrase against(WeighingStation station, Ratio error) {
        boolean fromBoat = station.method().usesBoat();
        if (!fromBoat && !station.vessel().equals(pot)) {
            return Phrase.of("station.other-pot", station.vessel().name());
        }
        Balance balance = station.balance();
        Amount<Mass> load = Amount.grams(
                        onPan(station).plus(station.vessel().mass().canonical()))
                .inUnitOf(balance.readability());
        if (!balance.carries(load)) {
            return Phrase.of(
                    "station.overloaded", load.told(), balance.excess(load).told());
        }
        Ratio room = room(station);
        Ratio volume = volume(station);
        if (room != null && volume != null && volume.compareTo(room) > 0) {
            return Phrase.of("station.overfilled", millilitres(volume), millilitres(room));
        }
        if (line.mass().compareTo(station.balance().minimumLoad()) < 0) {
            String least = station.balance().minimumLoad().toString();
            return Phrase.of("station.below-minimum", line.name(), least);
        }
        MassFraction tolerance = tolerances.forLine(line.line());
        return error.compareTo(tolerance.fraction()) > 0
                ? Phrase.of("station.outside-tolerance", line.name(), tolerance.toString())
                : null;
    }

    private Ratio onPan(WeighingStation station) {
        return station.method().usesBoat()
                ? own(station)
                : before.grams().plus(line.mass().canonical()).max(before.read().plus(reading(station)));
    }

    /** What the line weighs at a station, and no less than what the display has to read. */
    private Ratio own(WeighingStation station) {
        return line.mass().canonical().max(reading(station));
    }

    private Ratio reading(WeighingStation station) {
        return new ServingPlan.AtStation(line, station).addition().reading().canonical();
    }

    private static @Nullable Ratio room(WeighingStation station) {
        return station.vessel()
                .workingVolume()
                .map(volume -> volume.canonical())
                .orElse(null);
    }

    /** What is in the boat or the pot, in millilitres, if that can be told. */
    private @Nullable Ratio volume(WeighingStation station) {
        Ratio own = PotContent.millilitresOf(line, own(station));
        if (own == null || station.method().usesBoat()) {
            return own;
        }
        return before.millilitres() == null ? null : before.millilitres().plus(own);
    }

    private static String millilitres(Ratio volume) {
        return Amount.millilitres(volume).toString();
    }

    /** The volume of a vessel without the density of what is in it. */
    List<Phrase> notConsidered(WeighingStation station) {
        boolean asked = station.method().usesBoat() || station.vessel().equals(pot);
        return asked && room(station) != null && volume(station) == null
                ? List.of(Phrase.of(
                        "unconsidered.station-volume", station.vessel().name(), line.name()))
                : List.of();
    }
}
