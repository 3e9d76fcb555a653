package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.planning.WeighingPlan;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchSize;
import io.github.formulationmath.sheet.BatchSheet;
import io.github.formulationmath.sheet.SheetFormat;
import io.github.formulationmath.weighing.Balance;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The strict reader of tables reads what the sheets write, guarded names among it. */
class SheetReadBackTest {

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+a", "-2+3", "@SUM(A1)", "'=1", "=HYPERLINK(\"x\",\"y\")", "a, \"b\""})
    void a_sheet_is_read_back_to_the_letter(String name) throws IOException {
        Formula formula = Formula.inPercent("Lotion")
                .quantitySufficient("Aqua")
                .line(name, "3 %")
                .build();
        WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("500 g")), Balance.of("0.1 g", "2 kg"));
        CsvReader reader = new CsvReader(new StringReader(BatchSheet.of(plan).print(SheetFormat.CSV)));
        List<List<CsvField>> rows = new ArrayList<>();
        while (reader.hasNext()) {
            rows.add(reader.next());
        }
        assertThat(rows).hasSize(3).allMatch(row -> row.size() == 8);
        String cell = rows.get(2).get(2).text();
        boolean guarded = !name.startsWith("a");
        // By hand: an apostrophe at the beginning, and one behind the line end.
        assertThat(guarded ? cell.substring(1).replace("\n'", "\n") : cell).isEqualTo(name);
        assertThat(cell.startsWith("'")).isEqualTo(guarded);
    }
}
