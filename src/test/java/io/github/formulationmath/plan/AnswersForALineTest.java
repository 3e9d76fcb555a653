package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Line;
import io.github.formulationmath.formula.Lines;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A formula, its batch, its plan and what is expected of it answer for a line in one way. */
final class AnswersForALineTest {

    private static final Formula FORMULA = Formulas.glycerinTwice("cream");
    private static final Formula OTHER = Formulas.oilAndWax("other");
    private static final Batch BATCH = Batch.of(FORMULA, BatchSize.ofMass("100 g"));
    private static final WeighingPlan PLAN = WeighingPlan.of(BATCH, Balance.of("0.1 g", "2 kg"));
    private static final List<Lines<?>> ALL =
            List.of(FORMULA, BATCH, PLAN, ExpectedProduct.of(PLAN, WeighingMethod.TARE_EACH));

    @Test
    void a_line_is_found_by_name_by_phase_and_by_the_line_of_the_formula() {
        for (Lines<?> lines : ALL) {
            assertThat(lines.formula()).isEqualTo(FORMULA);
            assertThat(lines.line(" PANTHENOL").line())
                    .isEqualTo(FORMULA.lines().get(3));
            assertThat(lines.line("COOL", "glycerin").index()).isEqualTo(2);
            for (FormulaLine line : FORMULA.lines()) {
                assertThat((Object) lines.line(line)).isSameAs(lines.lines().get(line.index()));
            }
        }
    }

    @Test
    void every_line_has_the_place_the_number_and_the_name_of_its_line_in_the_formula() {
        for (Lines<?> lines : ALL) {
            for (int i = 0; i < FORMULA.lines().size(); i++) {
                Line line = lines.lines().get(i);
                assertThat(line.index()).isEqualTo(i);
                assertThat(line.line().position()).isEqualTo(i + 1);
                assertThat(line.subscript()).isEqualTo(Integer.toString(i + 1));
                assertThat(line.name()).isEqualTo(FORMULA.lines().get(i).name());
            }
        }
    }

    @Test
    void a_name_that_stands_twice_or_nowhere_and_a_line_of_another_formula_are_refused_alike() {
        for (Lines<?> lines : ALL) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> lines.line("Glycerin"))
                    .withMessage(
                            "Glycerin stands in several phases (water, cool): say which with line(phase, ingredient)");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> lines.line("Wax"))
                    .withMessageContaining("\"cream\" has no line for Wax");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> lines.line("water", "Panthenol"))
                    .withMessageContaining("phase \"water\" has no line for Panthenol, which stands in phase cool");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> lines.line(OTHER.line("Wax")))
                    .withMessage("2. Wax 20 % is not a line of \"cream\": take the line from this formula");
            assertThatNullPointerException()
                    .isThrownBy(() -> lines.line((FormulaLine) null))
                    .withMessage("line");
        }
    }
}
