package io.github.formulationmath.plan;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.reckoning.Reckoning;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * What a bench can hold, against a batch and the readings of its plan.
 *
 * @param batch the batch
 * @param total what the readings add up to, in grams
 * @param bench the bench
 */
record BenchLimits(Batch batch, Ratio total, Bench bench) {

    /** Refuses what the balance does not carry or the vessel does not hold. */
    void require() {
        Amount<Mass> vessel = bench.vessel().mass();
        Ratio grams = batch.mass().canonical().max(total);
        Ratio load = vessel.isZero() ? grams : grams.plus(vessel.canonical());
        if (load.compareTo(bench.balance().capacity().canonical()) > 0) {
            Amount<Mass> excess = Amount.grams(
                            load.minus(bench.balance().capacity().canonical()))
                    .inUnitOf(bench.balance().readability());
            throw OverloadException.of(said(), bench, excess, largest());
        }
        if (bench.productDensity().isPresent()) {
            requireRoom(Amount.grams(grams), bench.productDensity().get());
        }
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
        Amount<Mass> readings = BalanceUnit.amount(bench.balance(), total);
        String mass = NumberText.of(batch.mass().exactValue(), batch.mass().symbol());
        return total.compareTo(batch.mass().canonical()) > 0
                ? "a batch of " + mass + ", whose rounded lines add up to " + readings + ","
                : "a batch of " + mass;
    }

    /** The largest batch of the formula whose plan the bench carries and holds. */
    private Amount<Mass> largest() {
        Amount<Mass> carried = bench.balance().capacityUnder(bench.vessel());
        Amount<Mass> room = bench.productDensity()
                .flatMap(density -> bench.vessel().workingVolume().map(density::massOf))
                .filter(held -> held.compareTo(carried) < 0)
                .orElse(carried);
        PlannedLoad limit = PlannedLoad.of(batch.formula(), bench);
        Ratio grams = room.canonical();
        Ratio most = limit.most(Reckoning.plain(), grams);
        return most.equals(grams) ? room : BalanceUnit.amount(bench.balance(), most);
    }
}
