package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A criterion that looks at what is weighed, whatever is in it: it is right as well for a line weighed as a dilution. That of
 * a cap is not, for a dilution holds less of the substance than its line.
 */
interface OfWeighings extends Criterion {

    /** One that holds if it holds for every line by itself. */
    interface EachLine extends OfWeighings {

        /**
         * The sizes at which it holds for all lines, or for one of them.
         *
         * @param formula the formula
         * @param bench where the lines are weighed
         * @param lines the lines, all of them or one
         * @param own how the one line is weighed, in place of what the criterion says of all
         * @return the sizes
         */
        Sizes on(Formula formula, Bench bench, List<FormulaLine> lines, Optional<WeighingMethod> own);

        @Override
        default Sizes on(Formula formula, Bench bench) {
            Objects.requireNonNull(bench, "bench");
            return on(Objects.requireNonNull(formula, "formula"), bench, formula.lines(), Optional.empty());
        }

        @Override
        default Optional<Sizes> forLine(FormulaLine line, Formula formula, Bench bench, WeighingMethod method) {
            Objects.requireNonNull(line, "line");
            Objects.requireNonNull(formula, "formula");
            Objects.requireNonNull(bench, "bench");
            Objects.requireNonNull(method, "method");
            return Optional.of(on(formula, bench, List.of(line), Optional.of(method)));
        }
    }
}
