package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.util.List;
import org.junit.jupiter.api.Test;

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

    @Test
    void another_balance_leaves_the_rest_of_the_bench_as_it_is() {
        Balance coarse = Balance.of("1 g", "5 kg");
        assertThat(benches())
                .extracting(bench -> bench.on(coarse))
                .allSatisfy(moved -> assertThat(moved.balance()).isEqualTo(coarse));
        for (Bench bench : benches()) {
            assertThat(bench.on(coarse).on(bench.balance())).isEqualTo(bench);
        }
    }
}
