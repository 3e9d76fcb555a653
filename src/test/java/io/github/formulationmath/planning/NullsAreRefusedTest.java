package io.github.formulationmath.planning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.examples.BatchSheetExample;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.LineAmount;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchSize;
import io.github.formulationmath.sheet.BatchSheet;
import io.github.formulationmath.sheet.SheetFormat;
import io.github.formulationmath.support.NullTester;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.working.Wording;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** From the formula to the sheet: null is refused at the door, by the name of the argument. */
class NullsAreRefusedTest {

    private static final WeighingPlan PLAN = BatchSheetExample.plan();
    private static final Formula FORMULA = PLAN.batch().formula();

    private static Map<Class<?>, Object> samples(String sample) {
        Map<Class<?>, Object> samples = new HashMap<>();
        samples.put(String.class, sample);
        samples.put(Ratio.class, Ratio.ONE);
        samples.put(Amount.class, Amount.mass("1 g"));
        samples.put(MassFraction.class, MassFraction.ofPercent("1"));
        samples.put(Density.class, Density.ofGramsPerMillilitre("1"));
        samples.put(Ingredient.class, Ingredient.of("Aqua"));
        samples.put(Substance.class, Substance.of("Aqua"));
        samples.put(FormulaLine.class, FORMULA.line("Glycerin"));
        samples.put(Formula.class, FORMULA);
        samples.put(Batch.class, PLAN.batch());
        samples.put(BatchSize.class, BatchSize.ofMass("100 g"));
        samples.put(Balance.class, PLAN.bench().balance());
        samples.put(Vessel.class, PLAN.bench().vessel());
        samples.put(Bench.class, PLAN.bench());
        samples.put(Closure.class, Closure.CLOSED);
        samples.put(Criterion.class, Criterion.oneDivision());
        samples.put(WeighingPlan.class, PLAN);
        samples.put(SheetFormat.class, SheetFormat.TEXT);
        samples.put(Wording.class, Wording.english());
        samples.put(String[].class, new String[] {"Glycerol"});
        samples.put(List.class, List.of(FORMULA));
        samples.put(double[].class, new double[9]);
        samples.put(ErrorModel.class, ErrorModel.readabilityOnly());
        samples.put(ExpectedProduct.class, ExpectedProduct.of(PLAN, WeighingMethod.TARE_EACH));
        samples.put(Tolerances.class, Tolerances.of("5 %"));
        samples.put(LineAmount.class, new LineAmount.QuantitySufficient());
        samples.put(int.class, 0);
        return samples;
    }

    private static int triesOf(NullTester tester, SoftAssertions softly, Object instance) {
        int[] tries = {0};
        softly.check(() -> tries[0] = tester.test(instance.getClass(), instance));
        return tries[0];
    }

    @Test
    void everyPublicDoorRefusesNull() throws IllegalAccessException {
        NullTester tester = new NullTester(samples("1 %"));
        Object[] instances = {
            FORMULA,
            FORMULA.line("Glycerin"),
            FORMULA.composition(),
            Substance.of("Aqua"),
            Ingredient.of("Aqua"),
            Ingredient.blend("blend"),
            Formula.inPercent("draft"),
            Formula.inParts("draft"),
            Formula.inMasses("draft"),
            PLAN.batch(),
            PLAN.batch().lines().get(0),
            PLAN.bench(),
            PLAN,
            PLAN.lines().get(0),
            BulkPlanner.of(List.of(FORMULA)),
            BatchSheet.of(PLAN)
        };
        int tries = new NullTester(samples("1 g")).test(BatchSize.class, null);
        SoftAssertions softly = new SoftAssertions();
        for (Object instance : instances) {
            tries += triesOf(tester, softly, instance);
        }
        tries += triesOf(new NullTester(samples("1 g")), softly, PLAN.bench().balance());
        tries += triesOf(new NullTester(samples("1 mL")), softly, PLAN.bench().vessel());
        softly.assertAll();
        assertThat(tries).isGreaterThan(70);
    }
}
