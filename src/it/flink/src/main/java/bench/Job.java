package bench;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.plan.BulkPlanner;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.weighing.Balance;
import java.io.Serializable;
import java.util.List;

/** What is done with every formula, by the plain loop and by the engine alike: plan it, and check it against limits. */
final class Job implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final List<String> PRESERVATIVES =
            List.of("Sodium Benzoate", "Potassium Sorbate", "Phenoxyethanol", "Benzyl Alcohol", "Salicylic Acid");

    private final Balance balance = Balance.of("0.1 g", "5 kg");
    private final Product product = Product.leaveOn();
    private final LimitTable limits = LimitTable.eu2024February();
    private transient LimitChecker checker;

    /** The formula with a number, as text: what crosses from one task of the engine to the next. */
    static String write(long number) {
        long hundredthsOfOil = 500 + number % 1700;
        long thousandthsOfPreservative = 100 + number * 7 % 1400;
        return number + ";" + hundredthsOfOil + "e-2;" + thousandthsOfPreservative + "e-3;" + (50 + number % 451);
    }

    /** The result for a formula, in all its digits, as text. */
    String result(String written) {
        String[] parts = written.split(";");
        long number = Long.parseLong(parts[0]);
        Formula formula = Formula.inPercent("Formula " + number)
                .quantitySufficient("Aqua")
                .line("Glycerin", "4.25 %")
                .line("Helianthus Annuus Seed Oil", parts[1] + " %")
                .line(PRESERVATIVES.get((int) (number % PRESERVATIVES.size())), parts[2] + " %")
                .build();
        Amount<javax.measure.quantity.Mass> mass = Amount.mass(parts[3] + " g");
        StringBuilder result = new StringBuilder(parts[0]);
        plan(formula, mass, number % 1000 == 0, result);
        check(formula, result);
        return result.toString();
    }

    private void plan(
            Formula formula, Amount<javax.measure.quantity.Mass> mass, boolean inFull, StringBuilder result) {
        BulkPlanner planner = BulkPlanner.of(List.of(formula));
        double[] divisions = new double[planner.lineCount(0)];
        long total = planner.plan(0, balance.divisions(mass), divisions);
        for (double steps : divisions) {
            result.append(' ').append(Double.doubleToLongBits(steps));
        }
        result.append(" = ").append(total);
        if (inFull) {
            WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(mass)), balance);
            for (int i = 0; i < divisions.length; i++) {
                PlannedLine line = plan.lines().get(i);
                if (line.divisions().doubleValue() != divisions[i]) {
                    throw new IllegalStateException("the bulk planner differs: " + line);
                }
                result.append(' ').append(line.reading()).append(' ').append(line.roundingError());
            }
        }
    }

    private void check(Formula formula, StringBuilder result) {
        if (checker == null) {
            checker = LimitChecker.of(limits, product, DecisionRule.simpleAcceptance());
        }
        for (Verdict verdict : checker.check(formula).verdicts()) {
            result.append("; ").append(verdict.limit().id()).append(' ').append(verdict.share());
            result.append(' ').append(verdict.conformity()).append(' ').append(verdict.headroom());
        }
        for (FormulaLine line : formula.lines()) {
            result.append(' ').append(line.fraction());
        }
    }
}
