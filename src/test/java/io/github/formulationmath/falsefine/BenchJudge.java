package io.github.formulationmath.falsefine;

import static io.github.formulationmath.support.Made.massBounds;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.falsefine.BenchCase.Event;
import io.github.formulationmath.falsefine.BenchCase.Place;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BenchEntry;
import io.github.formulationmath.support.Made;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.weighing.WeighingStation;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Asks the library what surely lies in a pot that was filled from several balances. */
final class BenchJudge {

    private static final Vessel BOAT = Vessel.of("boat", "2 g");

    private BenchJudge() {}

    /** Whether something is called sure that is not, or a line is planned otherwise than its display shows it. */
    static boolean excludes(BenchCase asked) {
        WeighingPlan plan = plan(asked);
        if (asked.event() != Event.PLANNED) {
            return excludes(asked, pot(asked, plan));
        }
        for (int i = 0; i < asked.truth().length; i++) {
            Exact reading = Answers.grams(plan.lines().get(i).reading());
            if (reading.compareTo(Exact.of(asked.readings()[i], 1000)) != 0) {
                return true;
            }
        }
        return excludes(asked, ExpectedProduct.of(plan, WeighingMethod.TARE_EACH));
    }

    static boolean excludes(BenchCase asked, ExpectedProduct product) {
        return IntStream.range(0, asked.truth().length)
                .anyMatch(i -> Answers.isOutside(
                                asked.share(i),
                                Made.bounds(product.lines().get(i).bounds()))
                        || Answers.isOutside(asked.grams(i), massBounds(product.masses(), i)));
    }

    private static boolean excludes(BenchCase asked, MadeBatch pot) {
        for (MadeLine line : pot.lines()) {
            int i = line.index();
            if (Answers.isOutside(
                            asked.share(i),
                            line.shareBounds().least().fraction(),
                            line.shareBounds().greatest().fraction())
                    || Answers.isOutside(
                            asked.grams(i),
                            line.massBounds().least().canonical(),
                            line.massBounds().greatest().canonical())) {
                return true;
            }
        }
        return false;
    }

    static WeighingPlan plan(BenchCase asked) {
        List<WeighingStation> stations = Arrays.stream(asked.at())
                .mapToObj(place -> station(asked, place))
                .toList();
        return WeighingPlan.of(batch(asked), Bench.of(balance(asked, 0)), stations);
    }

    static Batch batch(BenchCase asked) {
        var builder = Formula.inParts("Recipe");
        for (int i = 0; i < asked.parts().length; i++) {
            builder.line("Line " + (i + 1), Long.toString(asked.parts()[i]));
        }
        return Batch.of(builder.build(), BatchSize.ofMass(BenchCase.text(asked.batch())));
    }

    private static WeighingStation station(BenchCase asked, int place) {
        Balance balance = balance(asked, place);
        return switch (asked.places().get(place).way()) {
            case POT -> WeighingStation.inVessel(balance, Vessel.none());
            case BOAT -> WeighingStation.fromBoat(balance, BOAT);
            case DIFFERENCE -> WeighingStation.byDifference(balance, BOAT);
        };
    }

    static Balance balance(BenchCase asked, int index) {
        Place place = asked.places().get(index);
        ErrorModel model = ErrorModel.readabilityOnly()
                .withResidue(Amount.mass(BenchCase.text(place.least())), Amount.mass(BenchCase.text(place.most())));
        if (place.linearity() > 0) {
            String half = BenchCase.text(place.linearity());
            model = place.ofIndication()
                    ? model.withLinearityOfIndication(half)
                    : model.withLinearityOfNetReading(half);
        }
        return Balance.of(BenchCase.text(place.step()), "1000 kg")
                .withErrors(model)
                .named("place " + index);
    }

    private static MadeBatch pot(BenchCase asked, WeighingPlan plan) {
        List<Reading> taken = new ArrayList<>();
        for (int i = 0; i < asked.readings().length; i++) {
            Reading reading = Reading.of(plan.formula().lines().get(i), BenchCase.text(asked.readings()[i]));
            boolean elsewhere = asked.event() == Event.ELSEWHERE && i == asked.line();
            taken.add(elsewhere ? reading.on(balance(asked, asked.other())) : reading);
        }
        Readings readings = Readings.of(plan, WeighingMethod.TARE_EACH, taken);
        LineAddition more =
                LineAddition.of(plan.formula().lines().get(asked.line()), Amount.mass(BenchCase.text(asked.added())));
        return switch (asked.event()) {
            case PLANNED, WRITTEN, ELSEWHERE -> MadeBatch.of(readings);
            case ADDED -> MadeBatch.of(readings).plus(List.of(more));
            case RECORDED ->
                BatchRecord.of(BatchCode.of("BENCH", LocalDate.of(2025, 5, 2), 1), readings, Tolerances.of("5 %"))
                        .with(BenchEntry.addition(more))
                        .made();
        };
    }
}
