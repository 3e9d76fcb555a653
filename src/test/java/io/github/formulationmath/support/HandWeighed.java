package io.github.formulationmath.support;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.function.UnaryOperator;
import javax.measure.quantity.Mass;

/** What a test says was weighed, right or wrong. */
public record HandWeighed(Formula formula, MadeMasses masses) implements Weighed {

    /** Every line at its exact mass, as the display would read it. */
    public static HandWeighed exactly(Formula formula, String batch, Balance balance, WeighingMethod method) {
        return of(formula, Amount.mass(batch), balance, method, UnaryOperator.identity());
    }

    /** Every line as a display reads it. */
    public static HandWeighed of(
            Formula formula,
            Amount<Mass> batch,
            Balance balance,
            WeighingMethod method,
            UnaryOperator<Amount<Mass>> display) {
        return new HandWeighed(
                formula,
                MadeMasses.of(formula.lines().stream()
                        .map(line -> addition(line, batch, balance, display).by(method))
                        .toList()));
    }

    private static Addition addition(
            FormulaLine line, Amount<Mass> batch, Balance balance, UnaryOperator<Amount<Mass>> display) {
        Amount<Mass> target = line.share().amountIn(batch);
        return Addition.of(line, target, display.apply(target), balance);
    }
}
