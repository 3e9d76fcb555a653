package io.github.formulationmath.plan;

import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.util.List;

/** Two benches are equal if balance, vessel, closure, its tolerances and density are. */
class BenchContractTest implements ValueContract<Bench> {

    private static List<Bench> benches() {
        Bench plain = Bench.of(Balance.of("0.1 g", "2 kg"));
        return List.of(
                plain,
                Bench.of(Balance.of("1 g", "2 kg")),
                plain.with(Vessel.of("beaker", "214 g")),
                plain.closing(Closure.CLOSED),
                plain.closingWithin(Tolerances.of("5 %")),
                plain.closingWithin(Tolerances.of("4 %")),
                plain.withProductDensity(Density.ofGramsPerMillilitre("0.96")));
    }

    @Override
    public List<Bench> different() {
        return benches();
    }

    @Override
    public List<Bench> same() {
        return benches();
    }
}
