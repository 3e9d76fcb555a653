package io.github.formulationmath.simulation;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.Interval;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javax.measure.quantity.Dimensionless;

/** Quantities of the unit one, as the examples of the standards have them. */
final class Plain {

    private Plain() {}

    static Amount<Dimensionless> one(double number) {
        return Amount.of(Ratio.from(number), FormulationUnits.ONE);
    }

    static Interval<Amount<Dimensionless>> between(double low, double high) {
        return Interval.of(one(low), one(high));
    }

    static Interval<Amount<Dimensionless>> around(double estimate, double expanded) {
        return between(estimate - expanded, estimate + expanded);
    }

    static InputQuantity<Dimensionless> rectangular(double lower, double upper) {
        return InputQuantity.rectangular(one(lower), one(upper));
    }

    static InputQuantity<Dimensionless> triangular(double lower, double upper) {
        return InputQuantity.triangular(one(lower), one(upper));
    }

    static InputQuantity<Dimensionless> normal(double mean, double standardDeviation) {
        return InputQuantity.normal(one(mean), one(standardDeviation));
    }

    static MonteCarlo<Dimensionless> simulation(
            List<InputQuantity<Dimensionless>> inputs, ToDoubleFunction<double[]> model) {
        return MonteCarlo.of(inputs, model, one(1));
    }

    static double number(Amount<?> amount) {
        return amount.exactValue().doubleValue();
    }

    static double low(Interval<? extends Amount<?>> interval) {
        return number(interval.least());
    }
}
