package io.github.formulationmath.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.choice.DilutedBatch;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.weighing.Balance;
import org.junit.jupiter.api.Test;

/** A batch with stocks to be made up first, on its sheet. */
class DilutedSheetTest {

    private static final Formula CREAM = Formula.inPercent("Oat cream")
            .phase("water")
            .quantitySufficient("Aqua")
            .line("Glycerin", "5 %")
            .phase("oil")
            .line("Oil", "12 %")
            .line("Colour", "0.02 %")
            .build();

    private static final Balance BALANCE = Balance.of("0.1 g", "2 kg");

    private static DilutedBatch diluted(String mass, String tolerance) {
        return DilutedBatch.of(Batch.of(CREAM, BatchSize.ofMass(mass)))
                .diluting(CREAM.line("Colour"), CREAM.line("Aqua"), BALANCE, Tolerances.of(tolerance));
    }

    @Test
    void the_steps_stand_on_the_sheet_before_the_phases() {
        DilutedBatch diluted = diluted("100 g", "10 %");
        String sheet = BatchSheet.of(diluted, WeighingPlan.of(diluted.batch(), BALANCE))
                .print(Format.TEXT);
        assertThat(sheet.indexOf("First: Colour 1 in 12\n"))
                .isPositive()
                .isLessThan(sheet.indexOf("First: Colour 1 in 156"));
        assertThat(sheet.indexOf("First: Colour 1 in 156")).isLessThan(sheet.indexOf("Phase water"));
        assertThat(sheet).containsPattern("1  Colour +3\\.2 g").containsPattern("4  Colour 1 in 156 +3\\.1 g");
        assertThatThrownBy(() -> BatchSheet.of(diluted, WeighingPlan.of(diluted.asWritten(), BALANCE)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("plan diluted.batch()");
    }
}
