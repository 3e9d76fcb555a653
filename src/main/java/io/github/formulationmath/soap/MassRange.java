package io.github.formulationmath.soap;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.util.Map;
import javax.measure.quantity.Mass;

/** Everything that the weighed masses may be, as far as weighted sums of them tell. Lines are counted from 0. */
interface MassRange {

    /** An amount in the unit of the displays. */
    Amount<Mass> unit();

    /** The largest or the least Σ weight · mass, the masses in grams. */
    Ratio sum(Map<Integer, Ratio> weights, boolean largest);

    /** The largest or the least quotient of two such sums, the lower one above 0 throughout. */
    Ratio quotient(Map<Integer, Ratio> upper, Map<Integer, Ratio> lower, boolean largest);
}
