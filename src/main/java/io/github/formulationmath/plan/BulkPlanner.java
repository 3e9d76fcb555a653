package io.github.formulationmath.plan;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import java.io.Serial;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Display targets of very many batches, as bare whole numbers: the divisions that {@link WeighingPlan} finds with {@link
 * Closure#INDEPENDENT}, digit for digit, without its objects and workings.
 *
 * <p>Formulas are compiled once to whole numbers over a common denominator; a plan is then one pass over them. The results
 * are whole numbers held in doubles, which hold every whole number up to 2^53 exactly; that each is the right one is
 * proved where it is computed. Formulas or sizes whose numbers do not fit go through {@link Ratio} and give the same
 * results.
 *
 * <p>Example: {@code long total = planner.plan(0, balance.divisions(batchMass), divisions)} writes the divisions of each
 * line of the first formula into {@code divisions} and returns their sum.
 *
 * <p>Immutable and thread-safe.
 */
public final class BulkPlanner implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final CompiledFormula[] formulas;

    private BulkPlanner(CompiledFormula[] formulas) {
        this.formulas = formulas;
    }

    /**
     * Compiles formulas.
     *
     * @param formulas the formulas, in the order in which they will be asked for
     * @return the planner
     */
    public static BulkPlanner of(List<Formula> formulas) {
        List<CompiledFormula> compiled = Objects.requireNonNull(formulas, "formulas").stream()
                .map(CompiledFormula::of)
                .toList();
        // Side by side in memory, without what compiling left between them: a tenth of the time of a plan.
        return new BulkPlanner(compiled.stream().map(CompiledFormula::copy).toArray(CompiledFormula[]::new));
    }

    /**
     * How many formulas there are.
     *
     * @return the number of formulas
     */
    public int size() {
        return formulas.length;
    }

    /**
     * How many lines a formula has.
     *
     * @param index which formula, counted from 0
     * @return the number of its lines
     */
    public int lineCount(int index) {
        return formulas[index].size();
    }

    /**
     * Plans one batch.
     *
     * @param index which formula, counted from 0
     * @param batchDivisions the batch mass in divisions of the display, above 0, as {@link
     *     io.github.formulationmath.weighing.Balance#divisions} gives it
     * @param divisions takes the divisions of each line, half to even, from the first place on; it must have room for them
     * @return the sum of the divisions
     * @throws IllegalArgumentException if the batch is not above 0 or the array is too short
     * @throws ArithmeticException if a line takes more than 2^53 divisions
     */
    public long plan(int index, Ratio batchDivisions, double[] divisions) {
        Objects.requireNonNull(batchDivisions, "batchDivisions");
        Objects.requireNonNull(divisions, "divisions");
        CompiledFormula formula = formulas[index];
        if (batchDivisions.signum() <= 0) {
            throw new IllegalArgumentException("batchDivisions is " + batchDivisions + ": it must be above 0");
        }
        if (divisions.length < formula.size()) {
            throw new IllegalArgumentException("divisions has room for " + divisions.length + " lines, formula " + index
                    + " has " + formula.size());
        }
        return formula.plan(batchDivisions, divisions);
    }
}
