package io.github.formulationmath.sheet;

import static io.github.formulationmath.support.DilutedCream.BALANCE;
import static io.github.formulationmath.support.DilutedCream.diluted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.choice.DilutedBatch;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.plan.WeighingPlan;
import org.junit.jupiter.api.Test;

/** A batch with stocks to be made up first, on its sheet. */
class DilutedSheetTest {

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
