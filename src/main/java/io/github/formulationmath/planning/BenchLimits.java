package io.github.formulationmath.planning;

import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.weighing.Vessel;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** What a bench can hold. */
final class BenchLimits {

    private BenchLimits() {}

    static void require(Amount<Mass> content, Bench bench) {
        Amount<Mass> most = bench.balance().capacityUnder(bench.vessel());
        if (content.compareTo(most) > 0) {
            throw new OverloadException(content, bench, most);
        }
        bench.productDensity().ifPresent(density -> requireRoom(content, bench.vessel(), density));
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
