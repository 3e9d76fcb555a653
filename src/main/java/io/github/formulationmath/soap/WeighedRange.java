package io.github.formulationmath.soap;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.weighing.MadeMasses;
import java.util.Map;
import javax.measure.quantity.Mass;

/** The range of what was weighed, under the whole error model of its balances. */
record WeighedRange(MadeMasses masses) implements MassRange {

    @Override
    public Ratio sum(Map<Integer, Ratio> weights, boolean largest) {
        Interval<Amount<Mass>> sum = masses.sum(weights);
        return (largest ? sum.greatest() : sum.least()).canonical();
    }

    @Override
    public Ratio quotient(Map<Integer, Ratio> upper, Map<Integer, Ratio> lower, boolean largest) {
        Interval<Ratio> quotient = masses.quotient(upper, lower);
        return largest ? quotient.greatest() : quotient.least();
    }
}
