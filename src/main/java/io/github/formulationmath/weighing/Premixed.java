package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import java.util.Map;
import javax.measure.quantity.Dimensionless;

/**
 * What was weighed in part as a portion of something that was mixed before. The lines that come with the portion are off together, as one
 * mass was weighed for all of them, so that a share is surer than the {@link #masses() masses one by one} tell. A check of limits asks here.
 *
 * <p>Example: a trial of a series that is made from a base.
 */
public interface Premixed extends Weighed {

    /**
     * Where the share of something is sure to lie that the lines contain in different strengths.
     *
     * @param strengths the mass fraction in the lines that contain it, by the index of the line, at least 0
     * @return the least and the greatest share of the whole, in percent; both can happen
     */
    Interval<Amount<Dimensionless>> sureShare(Map<Integer, Ratio> strengths);
}
