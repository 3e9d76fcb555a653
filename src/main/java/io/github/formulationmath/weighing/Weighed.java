package io.github.formulationmath.weighing;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Subject;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;

/**
 * What was weighed, or is going to be: masses together with the formula whose lines they are. A check or a label takes
 * this and never a formula beside masses, so that the masses of one formula cannot stand in for those of another.
 *
 * <p>A plan with its method, an assignment to balances and what readings put into a pot are weighed; take one of those.
 * Whoever implements it: there is one addition for each line, in the order of the formula, and the {@link
 * Addition#subject()} of each is that {@code FormulaLine} itself, as {@link
 * Addition#of(Subject, Amount, Amount, Balance)} makes it. Whatever else comes in is refused by those who take it.
 *
 * <p>Example: {@code checker.check(ExpectedProduct.of(plan, WeighingMethod.TARE_EACH))}.
 */
public interface Weighed {

    /**
     * The formula that the masses are of.
     *
     * @return the formula
     */
    Formula formula();

    /**
     * One mass for each line of the formula.
     *
     * @return the masses in the order of the formula
     */
    MadeMasses masses();

    /**
     * Where the share of something is sure to lie that the lines contain in different strengths, if that is known better than the
     * {@link #masses() masses one by one} tell: of what was weighed in part as a portion of something that was mixed before, as a trial
     * of a series is from its base, the lines that come with the portion are off together. A check of limits asks here.
     *
     * @param strengths the mass fraction in the lines that contain it, by the index of the line, at least 0
     * @return the least and the greatest share of the whole, in percent; both can happen. Empty if the masses say all that is known
     */
    default Optional<Interval<Amount<Dimensionless>>> sureShare(Map<Integer, Ratio> strengths) {
        Objects.requireNonNull(strengths, "strengths");
        return Optional.empty();
    }
}
