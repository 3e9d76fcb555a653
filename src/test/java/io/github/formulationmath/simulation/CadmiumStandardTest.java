package io.github.formulationmath.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.reference.ReferenceTable;
import io.github.formulationmath.simulation.InputQuantity.Law;
import java.math.RoundingMode;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A published example: a standard of cadmium. */
class CadmiumStandardTest {

    /**
     * Eurachem/CITAC QUAM, example A1: c = 1000 m P / V. The printed 0.9 mg/L comes from rounding u(V) to 0.07 on the way;
     * unrounded it is 0.8352, which rounded up to one digit is 0.9 again.
     */
    @Test
    void cadmium_standard() throws InterruptedException {
        MonteCarlo.Result<?> result = cadmium(true, true, true, true, true);
        assertThat(Plain.number(result.estimate())).isCloseTo(1002.7, within(0.05));
        assertThat(Plain.number(result.standardUncertainty())).isCloseTo(0.8351992, within(0.003));
        assertThat(result.standardUncertainty()
                        .rounded(Rounding.toSignificantDigits(1).with(RoundingMode.UP)))
                .hasToString("0.9 mg/L");
    }

    /** Each input drawn alone gives its contribution. */
    @Tag("long")
    @Test
    void cadmium_budget() throws InterruptedException {
        for (ReferenceTable.Row row :
                ReferenceTable.read("shared/reference/quam-a1-budget.csv").rows()) {
            String input = row.text("input");
            MonteCarlo.Result<?> result = cadmium(
                    input.equals("P"),
                    input.equals("m"),
                    input.equals("V flask"),
                    input.equals("V repeatability"),
                    input.equals("V temperature"));
            double expected = row.decimal("contribution_mg_l").doubleValue();
            assertThat(Plain.number(result.standardUncertainty())).isCloseTo(expected, within(0.005 * expected));
        }
    }

    private static MonteCarlo.Result<?> cadmium(
            boolean purity, boolean mass, boolean flask, boolean fill, boolean warmth) throws InterruptedException {
        List<InputQuantity<?>> inputs = List.of(
                input(Law.RECTANGULAR, "0.9999", purity ? "0.0001" : "0", FormulationUnits.ONE),
                input(Law.NORMAL, "100.28", mass ? "0.05" : "0", FormulationUnits.MILLIGRAM),
                input(Law.TRIANGULAR, "100", flask ? "0.1" : "0", FormulationUnits.MILLILITRE),
                input(Law.NORMAL, "0", fill ? "0.02" : "0", FormulationUnits.MILLILITRE),
                input(Law.RECTANGULAR, "0", warmth ? "0.084" : "0", FormulationUnits.MILLILITRE));
        Amount<?> unit = AmountFormat.standard().parse("1 mg/L");
        return MonteCarlo.of(inputs, x -> 1000 * x[1] * x[0] / (x[2] + x[3] + x[4]), unit)
                .withSignificantDigits(3)
                .withMostTrials(500_000)
                .run();
    }

    private static <Q extends Quantity<Q>> InputQuantity<Q> input(Law law, String middle, String scale, Unit<Q> unit) {
        return new InputQuantity<>(law, Amount.of(middle, unit), Amount.of(scale, unit));
    }
}
