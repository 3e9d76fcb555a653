package io.github.formulationmath.soap;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.weighing.MadeMasses;
import java.util.Collections;
import java.util.Map;
import javax.measure.quantity.Mass;

/** The range of what was weighed, under the whole error model of its balances. */
record WeighedRange(MadeMasses masses) implements MassRange {

    @Override
    public Amount<Mass> unit() {
        return masses.total();
    }

    @Override
    public Ratio sum(Map<Integer, Ratio> weights, boolean largest) {
        return (largest ? masses.greatestSum(weights) : masses.leastSum(weights)).canonical();
    }

    @Override
    public Ratio quotient(Map<Integer, Ratio> upper, Map<Integer, Ratio> lower, boolean largest) {
        if (!masses.shareErrors() && Collections.disjoint(upper.keySet(), lower.keySet())) {
            Ratio top = sum(upper, largest);
            // The divisor at the end that makes the quotient larger, or smaller.
            return top.dividedBy(sum(lower, top.signum() < 0 == largest));
        }
        Interval<Ratio> quotient = masses.quotient(upper, lower);
        return largest ? quotient.greatest() : quotient.least();
    }
}
