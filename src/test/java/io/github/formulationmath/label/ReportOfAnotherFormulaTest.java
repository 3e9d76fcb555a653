package io.github.formulationmath.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.support.Checkers;
import io.github.formulationmath.support.Formulas;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What was found of one formula says nothing of another, be it of the same name. */
class ReportOfAnotherFormulaTest {

    @Test
    void a_label_declares_what_was_found_of_its_own_formula_only() {
        Formula own = Formulas.perfumedWater("F", "0.5 %");
        Label label =
                Label.of(LabelRule.eu()).declaring(Checkers.LEAVE_ON.check(own)).withColorants("CI 77891");
        assertThat(label.list(own).text()).containsIgnoringCase("LINALOOL");
        for (Formula other : List.of(Formulas.perfumedWater("F", "0.6 %"), Formulas.perfumedWater("G", "0.5 %"))) {
            assertThatThrownBy(() -> label.list(other))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("check this formula and declare that report");
            assertThatThrownBy(() -> label.declaring(Checkers.LEAVE_ON.check(other)))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatCode(() -> Label.of(LabelRule.eu())
                            .declaring(Checkers.LEAVE_ON.check(other))
                            .list(other))
                    .doesNotThrowAnyException();
        }
        assertThatCode(() -> label.declaring(Checkers.LEAVE_ON.check(own)).list(own))
                .doesNotThrowAnyException();
    }

    /** An oil that is declared by a word of its own stays on the label when its constituents are told. */
    @Test
    void a_material_that_must_be_declared_is_on_the_label_with_its_parts_told() {
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line(
                        Ingredient.blend("Lavandula Angustifolia Oil")
                                .part("Linalool", "30 %")
                                .rest("Linalyl Acetate"),
                        "1 %")
                .build();
        LimitReport report = Checkers.LEAVE_ON.check(formula);
        String list = Label.of(LabelRule.eu()).declaring(report).list(formula).text();
        for (Verdict due : report.declarations()) {
            assertThat(list).containsIgnoringCase(due.limit().declaredAs());
        }
        assertThat(report.declarations()).hasSizeGreaterThan(2);
    }
}
