package io.github.formulationmath.planning;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchLine;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * A line too small to weigh is made up as a dilution in another line of the formula, and a larger amount of that is
 * weighed (the aliquot method). Either a plan, or why there is none.
 *
 * <p>The dilution F is the smallest whole number at which everything that is weighed is at least the least mass W that the
 * balance weighs within tolerance: the substance and its diluent in the stock, and the aliquot m·F. The stock is made of A
 * = max(W, m), rounded up to the display, and (F − 1)·A of the diluent, so it suffices; the diluent in the aliquot, m·(F −
 * 1), is taken out of the line it comes from.
 *
 * <p>Example: 12 mg, on a balance that weighs from 120 mg on: F = 10, 120 mg and 1080 mg make 1200 mg of stock, of which
 * 120 mg are taken.
 *
 * <p>Mixing a stock evenly is part of the work and not of this arithmetic. Source: aliquot method of pharmacy.
 */
public sealed interface Predilution permits PredilutionPlan, NoPredilution {

    /**
     * For tolerances: W = E/τ with the worst error E of one addition. Each weighing then keeps τ; what is delivered depends
     * on three of them and may be off by up to about 3τ, which {@link PredilutionPlan#relativeError()} works out.
     *
     * @param batch the batch
     * @param line the line to dilute
     * @param carrier the line that gives the diluent, usually the q.s. line
     * @param balance the balance on which all is weighed, tared before each addition
     * @param tolerances how far each weighing may be off
     * @return the plan, or why there is none
     * @throws IllegalArgumentException if a line is none of the formula's, the two are the same, or the tolerance leaves no
     *     room for the errors of the balance
     */
    static Predilution of(Batch batch, FormulaLine line, FormulaLine carrier, Balance balance, Tolerances tolerances) {
        Objects.requireNonNull(balance, "balance");
        Objects.requireNonNull(tolerances, "tolerances");
        BatchLine target = PredilutionPlan.lineOf(batch, line);
        ErrorBound criterion = new ErrorBound(tolerances, WeighingMethod.TARE_EACH, Ratio.ZERO);
        if (criterion.obstacle(batch.formula(), balance).isPresent()) {
            throw new IllegalArgumentException("tolerances are " + tolerances
                    + ", which leave no room for the error of an addition on " + balance + ": widen them");
        }
        Ratio least = criterion
                .bound(Reckoning.plain(), batch.formula(), balance, line)
                .times(target.line().fraction());
        return of(batch, line, carrier, balance, Amount.grams(least));
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
        BatchLine target = PredilutionPlan.lineOf(batch, line);
        BatchLine giver = PredilutionPlan.lineOf(batch, carrier);
        if (target.equals(giver)) {
            throw new IllegalArgumentException("carrier is " + carrier.name() + ", the line to dilute: take another");
        }
        Ratio least = Arguments.positive("leastWeighed", leastWeighed).in(FormulationUnits.GRAM);
        Ratio factor = least.dividedBy(target.result()).ceil();
        if (factor.compareTo(Ratio.ONE) <= 0) {
            return new NoPredilution(Phrase.of(
                    "predilution.not-needed", line.name(), target.mass().toString(), leastWeighed.toString()));
        }
        Ratio diluent = target.result().times(factor.minus(Ratio.ONE));
        if (diluent.compareTo(giver.result()) > 0) {
            return new NoPredilution(Phrase.of(
                    "predilution.carrier-too-small",
                    carrier.name(),
                    giver.mass().toString(),
                    Amount.grams(diluent).toString()));
        }
        return new PredilutionPlan(target, giver, Objects.requireNonNull(balance, "balance"), least, factor);
    }
}
