package io.github.formulationmath.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.csv.CsvWriter;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.weighing.Balance;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The strict reader reads each table that the sheets write, guarded names among it; an empty line parts them. */
class SheetReadBackTest {

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+a", "-2+3", "@SUM(A1)", "'=1", "=HYPERLINK(\"x\",\"y\")", "a, \"b\""})
    void a_sheet_is_read_back_to_the_letter(String name) throws IOException {
        Formula formula = Formula.inPercent("Lotion")
                .quantitySufficient("Aqua")
                .line(name, "3 %")
                .build();
        WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("500 g")), Balance.of("0.1 g", "2 kg"));
        CsvFormat format = CsvFormat.of(
                List.of("done", "no.", "ingredient", "display reads", "tared once", "share", "exact mass", "rounding"));
        List<CsvRow> rows = format.read(
                        "sheet",
                        new StringReader(BatchSheet.of(plan).print(Format.CSV).split("\r\n\r\n")[1] + "\r\n"))
                .rows();
        assertThat(rows).hasSize(2);
        String cell = rows.get(1).text("ingredient");
        assertThat(CsvWriter.unguarded(cell)).isEqualTo(name);
        boolean guarded = !name.startsWith("a");
        // By hand: an apostrophe at the beginning.
        assertThat(guarded ? cell.substring(1) : cell).isEqualTo(name);
        assertThat(cell.startsWith("'")).isEqualTo(guarded);
    }
}
