package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.LineAmount;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import java.util.List;
import java.util.Optional;

/** A formula as it is weighed when some of its lines are taken as dilutions in another line of it. */
final class Diluted {

    private Diluted() {}

    /**
     * The aliquots in place of the lines, and the carrier without its part in them.
     *
     * @param factors by which each line is diluted, 1 for those weighed as they are, in the order of the lines
     */
    static Formula formula(Formula formula, List<Ratio> factors, FormulaLine carrier) {
        return Formula.inPercent(formula.name())
                .linesOf(
                        formula,
                        FormulaLine::ingredient,
                        line -> Optional.of(
                                line.isQuantitySufficient()
                                        ? line.amount()
                                        : new LineAmount.Share(
                                                MassFraction.of(share(formula, factors, line, carrier)))))
                .build();
    }

    private static Ratio share(Formula formula, List<Ratio> factors, FormulaLine line, FormulaLine carrier) {
        return line.equals(carrier)
                ? line.fraction().minus(diluent(formula, factors))
                : line.fraction().times(factors.get(line.index()));
    }

    /** What of the whole the dilutions take from the carrier. */
    static Ratio diluent(Formula formula, List<Ratio> factors) {
        Ratio sum = Ratio.ZERO;
        for (FormulaLine line : formula.lines()) {
            sum = sum.plus(line.fraction().times(factors.get(line.index()).minus(Ratio.ONE)));
        }
        return sum;
    }
}
