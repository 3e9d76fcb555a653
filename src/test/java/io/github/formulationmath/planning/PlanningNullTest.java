package io.github.formulationmath.planning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitKind;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.limit.SubstanceGroup;
import io.github.formulationmath.limit.UsageLimit;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchSize;
import io.github.formulationmath.support.NullTester;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.CoverageFactor;
import io.github.formulationmath.weighing.ProgressListener;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.working.Phrase;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Null is refused by every question about batch sizes. */
class PlanningNullTest {

    private static final Formula BALM =
            Formula.inPercent("balm").line("Oil", "80 %").line("Wax", "20 %").build();

    @Test
    void null_is_refused_with_the_name_of_the_argument() throws IllegalAccessException {
        Balance balance = Balance.of("0.1 g", "2 kg");
        Batch batch = Batch.of(BALM, BatchSize.ofMass("100 g"));
        Tolerances tolerances = Tolerances.of("5 %");
        BatchConstraints constraints = BatchConstraints.of(Criterion.oneDivision());
        Bench bench = Bench.of(balance);
        Map<Class<?>, Object> samples = new HashMap<>(Map.of(
                Formula.class, BALM,
                FormulaLine.class, BALM.line("Wax"),
                Balance.class, balance,
                Batch.class, batch,
                Tolerances.class, tolerances,
                BatchConstraints.class, constraints,
                Bench.class, bench,
                Vessel.class, Vessel.none(),
                SearchEffort.class, SearchEffort.standard(),
                WeighingMethod.class, WeighingMethod.TARE_EACH));
        samples.put(Criterion.class, Criterion.oneDivision());
        samples.put(Criterion[].class, new Criterion[0]);
        samples.put(CoverageFactor.class, CoverageFactor.of(2));
        samples.put(Verdict.class, verdict());
        samples.put(Substance.class, Substance.of("Wax"));
        samples.put(MassFraction.class, MassFraction.parse("25 %"));
        samples.put(Amount.class, Amount.mass("1 g"));
        samples.put(String.class, "1 g");
        samples.put(Bounds.class, Bounds.atLeast(Ratio.ONE));
        samples.put(ProgressListener.class, (ProgressListener) (done, most) -> {});
        samples.put(List.class, List.of(BALM.line("Wax")));
        samples.put(Map.class, Map.of());
        samples.put(Optional.class, Optional.empty());
        samples.put(Phrase.class, Phrase.of("criterion.one-division"));
        samples.put(Sizes.LineBound.class, new LeastLine.Bound(new OneDivision(), balance));
        samples.put(Sizes.class, Criterion.oneDivision().on(BALM, bench));
        samples.put(Closure.class, Closure.CLOSED);
        samples.put(Density.class, Density.parse("1 g/mL"));
        NullTester tester = new NullTester(samples);
        int tries = 0;
        Map<Class<?>, Object> types = new HashMap<>();
        types.put(Criterion.class, Criterion.oneDivision());
        types.put(Tolerances.class, tolerances);
        types.put(BatchConstraints.class, constraints);
        types.put(SearchEffort.class, SearchEffort.standard());
        types.put(MinimumBatch.class, MinimumBatch.of(BALM, balance, Criterion.oneDivision()));
        types.put(Sizes.class, Criterion.roundingWithin(tolerances).on(BALM, Bench.of(balance)));
        types.put(BatchWindow.Feasible.class, BatchWindow.of(BALM, bench, constraints));
        types.put(BatchWindow.class, BatchWindow.of(BALM, bench, constraints));
        types.put(CoarsestStep.class, CoarsestStep.of(batch, bench.balance(), Criterion.oneDivision()));
        types.put(Bench.class, bench);
        types.put(WeighingStation.class, WeighingStation.inVessel(balance, Vessel.none()));
        for (Map.Entry<Class<?>, Object> type : types.entrySet()) {
            tries += tester.test(type.getKey(), type.getValue());
        }
        assertThat(tries).isGreaterThan(50);
    }

    private static Verdict verdict() {
        LimitTable table = LimitTable.of(
                "own",
                List.of(UsageLimit.of("W", SubstanceGroup.of("Wax"), LimitKind.MAXIMUM, MassFraction.parse("30 %"))));
        return LimitChecker.of(table, Product.leaveOn(), DecisionRule.worstCase())
                .check(BALM)
                .binding()
                .orElseThrow();
    }
}
