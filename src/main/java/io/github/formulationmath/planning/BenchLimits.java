package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.weighing.Vessel;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** What a bench can hold. */
final class BenchLimits {

    private BenchLimits() {}

    /** Refuses what the balance does not carry or the vessel does not hold. */
    static void require(Ratio grams, Bench bench) {
        Amount<Mass> vessel = bench.vessel().mass();
        Ratio load = vessel.isZero() ? grams : grams.plus(vessel.in(FormulationUnits.GRAM));
        if (load.compareTo(bench.balance().gramsCapacity()) > 0) {
            throw new OverloadException(
                    Amount.grams(grams), bench, bench.balance().capacityUnder(bench.vessel()));
        }
        bench.productDensity().ifPresent(density -> requireRoom(Amount.grams(grams), bench.vessel(), density));
    }

    private static void requireRoom(Amount<Mass> content, Vessel vessel, Density density) {
        vessel.workingVolume().ifPresent(room -> {
            Amount<Volume> volume = density.volumeOf(content);
            if (volume.compareTo(room) > 0) {
                throw new OverfillException(volume, vessel, room, density.massOf(room));
            }
        });
    }
}
