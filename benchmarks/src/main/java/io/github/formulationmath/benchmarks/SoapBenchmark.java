package io.github.formulationmath.benchmarks;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliBalance;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.Evidence;
import io.github.formulationmath.soap.Fat;
import io.github.formulationmath.soap.HydroxideVerdict;
import io.github.formulationmath.soap.InertMatter;
import io.github.formulationmath.soap.LyeBuilder;
import io.github.formulationmath.soap.LyeCalculation;
import io.github.formulationmath.soap.LyeWater;
import io.github.formulationmath.soap.Reckoned;
import io.github.formulationmath.soap.SaponificationValue;
import io.github.formulationmath.soap.Soap;
import io.github.formulationmath.soap.Unsaponified;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.quantity.Dimensionless;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A lye reckoned, and judged on a balance with its guarantee: how the time grows with the number of fats. Each call takes the
 * next of 16 recipes of the same fats, so that nothing is constant.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SoapBenchmark {

    private static final Source DRAWN = Source.published("figures of this benchmark", "");
    private static final int RECIPES = 16;
    private static final AlkaliGrade FLAKES = AlkaliGrade.assay(
                    Alkali.SODIUM_HYDROXIDE, "97 %", "99 %", AlkaliGrade.Stated.TOTAL_ALKALI)
            .carbonate("0 %", "1 %", Evidence.MAXIMUM_ERROR, DRAWN);
    private static final Unsaponified FIVE = Unsaponified.alkaliShortfall("5 %");
    private static final LyeWater TWICE = LyeWater.perAlkali("2", LyeWater.Of.ALKALI_AS_WEIGHED);
    private static final Balance BALANCE = Balance.of("0.1 g", "1000 kg");

    /** How many fats. */
    @Param({"1", "8", "64", "512"})
    public int fats;

    private List<Fat> table = List.of();
    private List<List<String>> masses = List.of();
    private List<Soap> soaps = List.of();
    private List<ExpectedProduct> weighed = List.of();
    private int next;

    private static Fat fat(int i) {
        int least = 184 + i % 60;
        return Fat.triglycerides(
                "fat " + i,
                SaponificationValue.ofStandard(least + " mg KOH/g", least + 9 + " mg KOH/g", DRAWN),
                InertMatter.atMost("0.2 %"));
    }

    private static LyeCalculation calculation(List<Fat> fats, List<String> masses) {
        LyeBuilder builder = LyeCalculation.named("bar");
        for (int i = 0; i < fats.size(); i++) {
            builder.fat(fats.get(i), masses.get(i));
        }
        return builder.alkali(FLAKES)
                .leaving(FIVE, Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", TWICE)
                .build();
    }

    private static ExpectedProduct weighed(Formula formula) {
        Batch batch = Batch.of(formula, BatchSize.ofMass("1 kg"));
        return ExpectedProduct.of(WeighingPlan.of(batch, BALANCE), WeighingMethod.TARE_EACH);
    }

    /** Reads the fats once, as whoever has them in a table does, and draws the masses. */
    @Setup
    public void read() {
        table = IntStream.range(0, fats).mapToObj(SoapBenchmark::fat).toList();
        SplittableRandom random = new SplittableRandom(13);
        masses = Stream.generate(() -> grams(random)).limit(RECIPES).toList();
        soaps = masses.stream().map(grams -> calculation(table, grams).soap()).toList();
        weighed = soaps.stream().map(soap -> weighed(soap.formula())).toList();
    }

    private List<String> grams(SplittableRandom random) {
        return IntStream.range(0, fats)
                .mapToObj(i -> random.nextInt(50, 260) + " g")
                .toList();
    }

    private int nextRecipe() {
        next = next + 1 & RECIPES - 1;
        return next;
    }

    /** From fats and masses as text to the alkali and the water. */
    @Benchmark
    public LyeCalculation reckon() {
        return calculation(table, masses.get(nextRecipe()));
    }

    /** From what is planned on the balance to the judgement and the interval of unsaponified fat. */
    @Benchmark
    public Interval<Amount<Dimensionless>> guarantee() {
        int recipe = nextRecipe();
        AlkaliBalance balance = AlkaliBalance.of(soaps.get(recipe), weighed.get(recipe));
        if (balance.verdict() == HydroxideVerdict.HYDROXIDE_LEFT) {
            throw new IllegalStateException("5 % short leaves hydroxide");
        }
        return balance.shortfall();
    }

    /** All of it: from fats and masses as text over the formula, the batch and the plan to the guarantee. */
    @Benchmark
    public Interval<Amount<Dimensionless>> plan() {
        Soap made = calculation(table, masses.get(nextRecipe())).soap();
        AlkaliBalance balance = AlkaliBalance.of(made, weighed(made.formula()));
        if (balance.verdict() == HydroxideVerdict.HYDROXIDE_LEFT) {
            throw new IllegalStateException("5 % short leaves hydroxide");
        }
        return balance.shortfall();
    }
}
