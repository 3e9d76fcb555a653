package io.github.formulationmath.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.series.SeriesPlan;
import io.github.formulationmath.series.TrialSeries;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The sheet of a series. */
final class SeriesSheetTest {

    private static final Bench COARSE = Bench.of(Balance.of("0.1 g", "500 g"));

    private static Formula version(String name, String glycerin, String perfume) {
        return Formula.inPercent(name)
                .phase("water")
                .quantitySufficient("Aqua")
                .line("Glycerin", glycerin)
                .phase("oil")
                .line("Avena Sativa Kernel Oil", "12 %")
                .line("Glyceryl Stearate SE", "5 %")
                .phase("cool-down")
                .line("Phenoxyethanol", "0.9 %")
                .line("Parfum", perfume)
                .build();
    }

    private static final List<Formula> FIVE = List.of(
            version("Plain", "3 %", "0.2 %"),
            version("Richer", "5 %", "0.2 %"),
            version("Rich", "8 %", "0.2 %"),
            version("Scent", "3 %", "0.4 %"),
            version("More scent", "3 %", "0.6 %"));

    private static SeriesPlan way(TrialSeries series, SeriesPlan.Way way) {
        return series.ways().stream()
                .filter(plan -> plan.way() == way)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_sheet_has_the_base_first_and_one_caution() {
        SeriesPlan plan = TrialSeries.of(FIVE, COARSE, "20 g", "5 %").best().orElseThrow();
        String sheet = SeriesSheet.of(plan).print(Format.TEXT);
        assertThat(sheet.indexOf("First the base")).isPositive().isLessThan(sheet.indexOf("Trial: Plain"));
        assertThat(sheet).contains("Trial: More scent", "Stir until it is even", "guaranteed share");
        assertThat(sheet.split("Wear gloves", -1)).hasSize(2);
        String scratch = SeriesSheet.of(way(TrialSeries.of(FIVE, COARSE, "20 g", "5 %"), SeriesPlan.Way.FROM_SCRATCH))
                .print(Format.TEXT);
        assertThat(scratch).doesNotContain("First the base").contains("each by itself");
    }
}
