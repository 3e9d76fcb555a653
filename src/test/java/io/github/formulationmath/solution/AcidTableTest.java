package io.github.formulationmath.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.quantity.Amount;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;

/** The shipped constants, and tables of one's own. */
class AcidTableTest {

    private static final Amount<Temperature> ROOM = Amount.temperature("25 °C");
    private static final String HEAD = "acid,charge,step,pK,temperature_C,ionic_strength,grade,locator,source,tag\n";

    private final AcidTable table = AcidTable.shipped();

    /** Every row can be asked for, names its source, and is marked as read. */
    @Test
    void every_row_is_whole() throws IOException {
        List<String> rows = Files.readAllLines(Path.of("shared/chemistry/acid-constants.csv")).stream()
                .filter(line -> !line.startsWith("#"))
                .skip(1)
                .toList();
        assertThat(rows).allMatch(row -> row.matches(".*,SEEN(-FILE|-CITED)?"));
        int steps = 0;
        for (String acid : table.acids()) {
            for (int celsius = 0; celsius <= 60; celsius++) {
                Amount<Temperature> temperature = Amount.temperature(celsius + " °C");
                if (rows.stream()
                        .anyMatch(row -> row.matches(acid + ",\\d,\\d,[^,]*,"
                                + temperature.canonical().minus(io.github.formulationmath.number.Ratio.parse("273.15"))
                                + ",.*"))) {
                    AcidConstants constants = table.constants(acid, temperature, "0.01");
                    assertThat(constants.source().citation()).isNotEmpty();
                    assertThat(table.grade(acid, temperature)).isNotBlank();
                    steps += constants.steps().size();
                }
            }
        }
        assertThat(steps).isEqualTo(rows.size());
    }

    /** The steps are differences of the cumulative constants that SRD 46 lists: 6.396, 11.157, 14.285. */
    @Test
    void citric_acid_stepwise() {
        assertThat(table.constants("citric acid", ROOM, "0").steps())
                .hasToString("[[3.128, 3.128], [4.761, 4.761], [6.396, 6.396]]");
        assertThat(table.constants("citric acid", ROOM, "0.01").steps().get(0)).hasToString("[3.118, 3.138]");
        assertThat(table.constants("ethanolammonium", ROOM, "0").charge()).isOne();
    }

    /** Benzoic acid was measured from 15 to 40 °C; what lies between is not guessed. */
    @Test
    void temperatures_are_those_measured() {
        assertThat(table.constants("benzoic acid", Amount.temperature("40 °C"), "0")
                        .steps())
                .hasToString("[[4.219, 4.219]]");
        assertThatThrownBy(() -> table.constants("benzoic acid", Amount.temperature("37 °C"), "0"))
                .hasMessageContaining("only at 15 °C, 20 °C, 25 °C, 30 °C, 35 °C, 40 °C")
                .hasMessageContaining("not moved");
        assertThatThrownBy(() -> table.constants("vinegar", ROOM, "0"))
                .hasMessageContaining("acetic acid")
                .hasMessageContaining("with their source");
        assertThatThrownBy(() -> table.constants("citric acid", ROOM, "-0.1")).hasMessageContaining("0 or more");
    }

    @Test
    void tables_of_ones_own_are_read_strictly() throws IOException {
        AcidTable own = AcidTable.read(
                "own.csv", new StringReader(HEAD + "sour,0,1,4.5,20,0.1 mol/L,approximate,page 3,Our bench,OWN\n"));
        AcidConstants sour = own.constants("sour", Amount.temperature("20 °C"), "0.05");
        assertThat(sour.ionicStrength()).isEqualTo(IonicStrength.parse("0.1 mol/L"));
        assertThatThrownBy(() -> AcidTable.read(
                        "own.csv", new StringReader(HEAD + "sour,0,1,4.5,20,0.1,approximate,,Our bench,OWN\n")))
                .isInstanceOf(CsvException.class)
                .hasMessageContaining("needs its unit");
        AcidTable gap = AcidTable.read(
                "own.csv", new StringReader(HEAD + "sour,0,2,4.5,20,0 mol/L,approximate,,Our bench,OWN\n"));
        assertThatThrownBy(() -> gap.constants("sour", Amount.temperature("20 °C"), "0"))
                .hasMessageContaining("mend the table");
    }
}
