package io.github.formulationmath.serial;

import io.github.formulationmath.chemistry.AtomicMasses;
import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.examples.BatchSheetExample;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.BulkPlanner;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassConcentration;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.VolumeFraction;
import io.github.formulationmath.weighing.WeighingMethod;
import java.io.Serializable;
import java.math.BigInteger;
import java.util.List;
import java.util.Locale;

/** A value of every chapter; the larger ones hold many of the smaller types. */
final class SerialValues {

    private SerialValues() {}

    static List<Serializable> all() {
        WeighingPlan plan = BatchSheetExample.plan();
        return List.of(
                Ratio.of(-5, 21),
                Ratio.of(BigInteger.TEN.pow(40), BigInteger.valueOf(7)),
                Rounding.toSignificantDigits(3),
                Bounds.closed(Ratio.ONE, Ratio.of(2)),
                Amount.mass("1 3/4 oz"),
                Amount.temperature("70 °C"),
                MassFraction.parse("2.50 %"),
                MassConcentration.parse("0.9 % w/v"),
                VolumeFraction.parse("70 % v/v"),
                Density.parse("0.92 g/mL"),
                AmountFormat.forLocale(Locale.GERMANY),
                AtomicMasses.iupac2007(),
                MolarMass.of(MolecularFormula.parse("CuSO4·5H2O")),
                plan.batch().formula(),
                plan.batch(),
                plan,
                Tolerances.of("5 %").withLine("Glycerin", "1 %"),
                BulkPlanner.of(List.of(plan.batch().formula())),
                LimitTable.eu2024February(),
                Product.leaveOn().on("face"),
                DecisionRule.guardBand(),
                readings(plan));
    }

    private static Readings readings(WeighingPlan plan) {
        return Readings.of(
                plan,
                WeighingMethod.TARE_EACH,
                plan.lines().stream()
                        .map(line -> Reading.of(line.target().line(), line.reading()))
                        .toList());
    }
}
