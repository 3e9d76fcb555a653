package io.github.formulationmath.support;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;

/** Benches that are soon overloaded or overfilled. */
public final class RandomBenches {

    private RandomBenches() {}

    /** Balance, vessel and room of a few hundred divisions, in halves and thirds of a gram too. */
    public static Bench next(RandomFormulas random) {
        Ratio capacity = Ratio.of(60 + random.below(2_000), 1 + random.below(3));
        Bench bench = Bench.of(Balance.of(Amount.mass("1 g"), Amount.grams(capacity.max(Ratio.of(40)))))
                .with(Vessel.of(
                                "jar",
                                Amount.grams(Ratio.of(random.below(60), 2).min(Ratio.of(20))))
                        .holding((20 + random.below(400)) + " mL"));
        bench = random.below(2) == 0 ? bench : bench.withProductDensity("0.9" + random.below(9) + " g/mL");
        return bench.closing(
                random.below(3) == 0
                        ? Closure.CLOSED
                        : random.below(2) == 0 ? Closure.INDEPENDENT : Closure.WITHIN_TOLERANCE);
    }
}
