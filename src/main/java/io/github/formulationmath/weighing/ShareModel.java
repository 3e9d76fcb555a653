package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;

/** A share as a model of its independent errors: both its numerator and its denominator are affine in them. */
final class ShareModel implements MeasurementModel {

    private final List<InputQuantity> inputs = new ArrayList<>();
    private final double[] numerator;
    private final double[] denominator;
    private final double fixedNumerator;
    private final double fixedDenominator;

    ShareModel(Whole whole, Weights weights) {
        List<ErrorTerm> terms = whole.relations().errors().touching(Weights.TOTAL);
        this.numerator = new double[terms.size()];
        this.denominator = new double[terms.size()];
        for (int i = 0; i < numerator.length; i++) {
            ErrorTerm term = terms.get(i);
            // Centred at 0: the middles are in the estimates already.
            inputs.add(InputQuantity.from(term.law(), Ratio.ZERO, term.scale()));
            numerator[i] = weights.sensitivity(term).doubleValue();
            denominator[i] = Weights.TOTAL.sensitivity(term).doubleValue();
        }
        this.fixedNumerator = whole.estimated(weights).doubleValue();
        this.fixedDenominator = whole.total().result().doubleValue();
    }

    List<InputQuantity> inputs() {
        return inputs;
    }

    @Override
    public double valueAt(double[] errors) {
        double part = fixedNumerator;
        double total = fixedDenominator;
        for (int i = 0; i < errors.length; i++) {
            part += numerator[i] * errors[i];
            total += denominator[i] * errors[i];
        }
        return part / total;
    }
}
