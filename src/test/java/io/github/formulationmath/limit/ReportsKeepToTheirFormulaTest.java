package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.support.Checkers;
import io.github.formulationmath.support.Formulas;
import org.junit.jupiter.api.Test;

/** What was found of a formula is asked by lines of that formula. */
class ReportsKeepToTheirFormulaTest {

    @Test
    void a_verdict_tells_the_room_of_lines_of_its_own_formula_only() {
        Formula own = Formulas.perfumedWater("F", "0.5 %");
        Verdict verdict =
                Checkers.LEAVE_ON.check(own).verdictsFor("Phenoxyethanol").get(0);
        FormulaLine line = own.line("Phenoxyethanol");
        assertThat(verdict.limitingShareOf(line)).isPresent();
        FormulaLine other = Formula.inPercent("G")
                .quantitySufficient("Aqua")
                .line("Linalool", "0.5 %")
                .line("Phenoxyethanol", "0.9 %")
                .build()
                .line("Phenoxyethanol");
        assertThat(other.position()).isEqualTo(line.position());
        assertThatThrownBy(() -> verdict.limitingShareOf(other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("take it from formula()");
    }
}
