package io.github.formulationmath.choice;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * A line too small to weigh is made up as a dilution in another line of the formula, and a larger amount of that is
 * weighed (the aliquot method). Either a plan, or why there is none.
 *
 * <p>Asked for a tolerance, the dilution F is the smallest whole number at which what is <em>delivered</em> is within it,
 * the errors of all three weighings carried through: of the substance A and its diluent (F − 1)·A in the stock, and of the
 * aliquot Q = m·F. A is as much as the aliquot weighs, rounded up to the display. More substance in the stock, of which more
 * is left over, can only better its strength, not the aliquot.
 *
 * <p>Asked for a least mass W that the balance weighs well enough, F is the smallest whole number at which everything that
 * is weighed is at least W: A = max(W, m), rounded up to the display; what is delivered is then worked out, not chosen: three
 * weighings at a tolerance each deliver up to about three of it.
 *
 * <p>Either way the stock suffices, and the diluent in the aliquot, m·(F − 1), is taken out of the line it comes from.
 *
 * <p>Example: 12 mg, on a balance that weighs from 120 mg on: F = 10, 120 mg and 1080 mg make 1200 mg of stock, of which
 * 120 mg are taken; on a display of 1 mg up to 1.68 % of the 12 mg may be missing or too much.
 *
 * <p>Mixing a stock evenly is part of the work and not of this arithmetic. Source: aliquot method of pharmacy.
 */
public sealed interface Predilution permits PredilutionPlan, Predilution.None {

    /** The largest dilution that is tried for a tolerance. */
    int MOST_PARTS = 10_000;

    /**
     * For a tolerance of what is delivered.
     *
     * @param batch the batch
     * @param line the line to dilute
     * @param carrier the line that gives the diluent, usually the q.s. line
     * @param balance the balance on which all is weighed, tared before each addition
     * @param tolerances how far what is delivered may be off
     * @return the plan with the smallest dilution of at most {@value #MOST_PARTS} parts, or why there is none
     * @throws IllegalArgumentException if a line is none of the formula's, the two are the same, or the tolerance leaves no
     *     room for the errors of the balance
     */
    static Predilution of(Batch batch, FormulaLine line, FormulaLine carrier, Balance balance, Tolerances tolerances) {
        Objects.requireNonNull(balance, "balance");
        Objects.requireNonNull(tolerances, "tolerances");
        BatchLine target = batch.line(line);
        BatchLine giver = PredilutionPlan.carrierOf(batch, line, carrier);
        Criterion criterion = Criterion.errorBound(tolerances, WeighingMethod.TARE_EACH);
        if (criterion.on(batch.formula(), Bench.of(balance)).obstacle().isPresent()) {
            throw new IllegalArgumentException("tolerances are " + Excerpt.of(tolerances)
                    + ", which leave no room for the error of an addition on " + Excerpt.of(balance) + ": widen them");
        }
        Ratio undiluted = PredilutionPlan.undilutedError(target, balance);
        if (undiluted.compareTo(tolerances.fraction(line)) <= 0) {
            return new None(Phrase.of(
                    "predilution.within-undiluted",
                    line.name(),
                    target.mass().toString(),
                    MassFraction.of(undiluted).toString()));
        }
        for (int parts = 2; parts <= MOST_PARTS; parts++) {
            PredilutionPlan plan = PredilutionPlan.delivering(target, giver, balance, tolerances, Ratio.of(parts));
            if (plan.relative(Reckoning.plain()).compareTo(tolerances.fraction(line)) <= 0) {
                return plan.orTooLittleCarrier();
            }
        }
        return new None(Phrase.of(
                "predilution.too-many-parts", line.name(), target.mass().toString(), Integer.toString(MOST_PARTS)));
    }

    /**
     * For a least mass that the balance weighs well enough, such as a minimum weighable quantity.
     *
     * @param batch the batch
     * @param line the line to dilute
     * @param carrier the line that gives the diluent, usually the q.s. line
     * @param balance the balance on which all is weighed, tared before each addition
     * @param leastWeighed W, above 0
     * @return the plan, or why there is none
     * @throws IllegalArgumentException if a line is none of the formula's, the two are the same, or W is not above 0
     */
    static Predilution of(
            Batch batch, FormulaLine line, FormulaLine carrier, Balance balance, Amount<Mass> leastWeighed) {
        BatchLine target = batch.line(line);
        BatchLine giver = PredilutionPlan.carrierOf(batch, line, carrier);
        Ratio least = Amount.requirePositive("leastWeighed", leastWeighed).canonical();
        Ratio factor = least.dividedBy(target.mass().canonical()).ceil();
        if (factor.compareTo(Ratio.ONE) <= 0) {
            return new None(Phrase.of(
                    "predilution.not-needed", line.name(), target.mass().toString(), leastWeighed.toString()));
        }
        return new PredilutionPlan(target, giver, Objects.requireNonNull(balance, "balance"), least, factor)
                .orTooLittleCarrier();
    }

    /**
     * Why a line is not pre-diluted: it is large enough as it is, or the line that should give the diluent is too small.
     *
     * @param reason the reason in words
     */
    record None(Phrase reason) implements Predilution {

        @Override
        public String toString() {
            return reason.toString();
        }
    }
}
