package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.support.NullTester;
import io.github.formulationmath.working.Subject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** Null is refused at the door, by the name of the argument. */
class WeighingNullsTest {

    private static final Balance BALANCE = Balance.of("0.1 g", "2 kg");
    private static final Addition ADDITION = Addition.of("Aqua", Amount.mass("10 g"), Amount.mass("10 g"), BALANCE);

    private static Map<Class<?>, Object> samples() {
        Map<Class<?>, Object> samples = new HashMap<>();
        samples.put(String.class, "1 g");
        samples.put(Ratio.class, Ratio.of(1, 10));
        samples.put(Amount.class, Amount.mass("1 g"));
        samples.put(ErrorModel.class, BALANCE.errors());
        samples.put(Vessel.class, Vessel.none());
        samples.put(Bounds.class, Bounds.point(Ratio.ZERO));
        samples.put(Law.class, Law.TRIANGULAR);
        samples.put(Balance.class, BALANCE);
        samples.put(Addition.class, ADDITION);
        samples.put(WeighingMethod.class, WeighingMethod.CUMULATIVE);
        samples.put(Amount.class, ADDITION.target());
        samples.put(Subject.class, Subject.of("1", "Aqua"));
        samples.put(
                FormulaLine.class,
                Formula.inPercent("F").line("Aqua", "100 %").build().line("Aqua"));
        samples.put(CoverageFactor.class, CoverageFactor.of(2));
        samples.put(Density.class, Density.ofGramsPerMillilitre("1"));
        samples.put(List.class, List.of());
        samples.put(Map.class, Map.of());
        samples.put(ErrorSource.class, ErrorSource.TARE);
        samples.put(MeasurementModel.class, (MeasurementModel) x -> x[0]);
        samples.put(ProgressListener.class, (ProgressListener) (done, most) -> {});
        samples.put(ExecutorService.class, ForkJoinPool.commonPool());
        samples.put(CoverageInterval.class, new CoverageInterval(0, 1));
        samples.put(int.class, 1);
        samples.put(long.class, 1L);
        samples.put(double.class, 0.5);
        samples.put(boolean.class, true);
        return samples;
    }

    @Test
    void everyPublicDoorRefusesNull() throws InterruptedException {
        MadeMasses made = MadeMasses.of(List.of(ADDITION));
        NullTester tester = new NullTester(samples());
        AtomicInteger tries = new AtomicInteger();
        SoftAssertions softly = new SoftAssertions();
        for (Object instance : List.of(
                BALANCE,
                BALANCE.errors(),
                ADDITION,
                AdditionError.of(ADDITION),
                made,
                made.madeShare(0),
                made.madeShare(0).budget(),
                made.madeShare(0).simulation(),
                made.madeShare(0).simulation().withSignificantDigits(1).run(),
                CoverageFactor.of(2),
                InputQuantity.normal(0, 1),
                AirBuoyancy.of(Density.ofGramsPerMillilitre("1")),
                WaterDensity.at(Amount.temperature("20 °C")))) {
            softly.check(() -> tries.addAndGet(tester.test(instance.getClass(), instance)));
        }
        // Not the whole enum: the words of its valueOf are the JDK's.
        Amount<javax.measure.quantity.Mass> gram = Amount.mass("1 g");
        assertThatNullPointerException()
                .isThrownBy(() -> AccuracyClass.III.permissibleError(null, gram))
                .withMessage("load");
        assertThatNullPointerException()
                .isThrownBy(() -> AccuracyClass.III.allows(gram, null))
                .withMessage("interval");
        softly.check(() -> tries.addAndGet(tester.test(MinimumWeight.class, null)));
        softly.assertAll();
        assertThat(tries.get()).isGreaterThan(50);
    }
}
