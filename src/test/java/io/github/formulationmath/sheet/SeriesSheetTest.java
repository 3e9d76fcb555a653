package io.github.formulationmath.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.series.SeriesPlan;
import io.github.formulationmath.series.TrialSeries;
import io.github.formulationmath.support.Trials;
import org.junit.jupiter.api.Test;

/** The sheet of a series. */
final class SeriesSheetTest {

    @Test
    void the_sheet_has_the_base_first_and_one_caution() {
        SeriesPlan plan =
                TrialSeries.of(Trials.FIVE, Trials.COARSE, "20 g", "5 %").best().orElseThrow();
        String sheet = SeriesSheet.of(plan).print(Format.TEXT);
        assertThat(sheet.indexOf("First the base")).isPositive().isLessThan(sheet.indexOf("Trial: Plain"));
        assertThat(sheet).contains("Trial: More scent", "Stir until it is even", "guaranteed share");
        assertThat(sheet.split("Wear gloves", -1)).hasSize(2);
        String scratch = SeriesSheet.of(Trials.way(
                        TrialSeries.of(Trials.FIVE, Trials.COARSE, "20 g", "5 %"), SeriesPlan.Way.FROM_SCRATCH))
                .print(Format.TEXT);
        assertThat(scratch).doesNotContain("First the base").contains("each by itself");
    }
}
