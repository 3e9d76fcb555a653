package io.github.formulationmath.solution;

import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Source;
import java.io.IOException;
import java.io.Reader;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.measure.quantity.Temperature;

/**
 * Constants of acids as they were measured: one row for each step of an acid at a temperature, with its ionic strength, grade and
 * source. Nothing is interpolated, and nothing moved to another temperature: enthalpies move pK by hundredths only near 25 °C and
 * are listed for few acids.
 *
 * <p>The table has no uncertainties: what a pK may be off by is said by whoever uses it, and has no default.
 *
 * <p>Immutable and thread-safe.
 */
public final class AcidTable {

    private static final CsvFormat FORMAT = CsvFormat.of(List.of(
                    "acid",
                    "charge",
                    "step",
                    "pK",
                    "temperature_C",
                    "ionic_strength",
                    "grade",
                    "locator",
                    "source",
                    "tag"))
            .withCommentHead();

    private static final AcidTable SHIPPED = shippedTable();

    private final List<Row> rows;

    /** One step of one acid at one temperature. */
    private record Row(
            String acid,
            int charge,
            int step,
            String pk,
            Amount<Temperature> temperature,
            IonicStrength ionicStrength,
            String grade,
            Source source) {

        static Row of(CsvRow row) {
            row.required("tag");
            row.read("pK", Ph::parse);
            return new Row(
                    row.required("acid"),
                    row.read("charge", Integer::parseInt),
                    row.read("step", Integer::parseInt),
                    row.required("pK"),
                    row.read("temperature_C", text -> Amount.temperature(text + " °C")),
                    row.read("ionic_strength", IonicStrength::parse),
                    row.required("grade"),
                    Source.published(row.required("source"), row.text("locator")));
        }

        boolean isAt(Amount<Temperature> other) {
            return temperature.canonical().equals(other.canonical());
        }
    }

    private AcidTable(List<Row> rows) {
        this.rows = List.copyOf(rows);
    }

    /**
     * The table that comes with the library: a few acids and bases, each value read in a public-domain file or in a compilation that
     * cites the paper named beside it.
     *
     * @return the table
     */
    public static AcidTable shipped() {
        return SHIPPED;
    }

    /**
     * A table of one's own, in the columns of {@code acid-constants.csv}.
     *
     * @param file what the text is called in complaints
     * @param text the text; it is not closed
     * @return the table
     * @throws IOException if the text cannot be read
     * @throws io.github.formulationmath.csv.CsvException if it is not as it should be
     */
    public static AcidTable read(String file, Reader text) throws IOException {
        return new AcidTable(
                FORMAT.read(file, text).rows().stream().map(Row::of).toList());
    }

    private static AcidTable shippedTable() {
        return new AcidTable(
                FORMAT
                        .shipped(AcidTable.class, "/io/github/formulationmath/chemistry/acid-constants.csv")
                        .rows()
                        .stream()
                        .map(Row::of)
                        .toList());
    }

    /**
     * The acids in it; bases by their ammonium ions.
     *
     * @return the names in the order of the table
     */
    public List<String> acids() {
        return rows.stream().map(Row::acid).distinct().toList();
    }

    /**
     * The constants of an acid.
     *
     * @param acid the name as the table has it
     * @param temperature of the product; there must be a row for it
     * @param off what each pK may be off by, such as {@code "0.005"}: the table does not tell
     * @return the constants
     * @throws IllegalArgumentException if the table has no such acid, or none at that temperature
     */
    public AcidConstants constants(String acid, Amount<Temperature> temperature, String off) {
        Objects.requireNonNull(temperature, "temperature");
        List<Row> found = of(acid).stream().filter(row -> row.isAt(temperature)).toList();
        if (found.isEmpty()) {
            throw new IllegalArgumentException("there is no pK of " + Excerpt.of(acid) + " at " + temperature
                    + ", only at "
                    + of(acid).stream()
                            .map(row -> row.temperature.toString())
                            .distinct()
                            .collect(Collectors.joining(", "))
                    + ": measure or look up one at that temperature, for constants are not moved from one to another");
        }
        Row first = found.get(0);
        boolean whole = IntStream.range(0, found.size())
                .allMatch(i -> found.get(i).step == i + 1
                        && found.get(i).charge == first.charge
                        && found.get(i).ionicStrength.equals(first.ionicStrength)
                        && found.get(i).source.equals(first.source));
        if (!whole) {
            throw new IllegalArgumentException("the rows of " + Excerpt.of(acid) + " at " + temperature
                    + " are not steps 1, 2 … of one charge, ionic strength and source: mend the table");
        }
        return new AcidConstants(
                acid,
                found.stream()
                        .map(row -> AcidConstants.range(acid, row.pk, off))
                        .toList(),
                first.charge,
                temperature,
                first.ionicStrength,
                first.source);
    }

    /**
     * How the compilation judged the measurement: reliable, approximate, uncertain, or not graded.
     *
     * @param acid the name as the table has it
     * @param temperature of the row
     * @return the grade, as it stands in the table
     * @throws IllegalArgumentException if the table has no such acid, or none at that temperature
     */
    public String grade(String acid, Amount<Temperature> temperature) {
        constants(acid, temperature, "0");
        return of(acid).stream()
                .filter(row -> row.isAt(temperature))
                .findFirst()
                .orElseThrow()
                .grade;
    }

    private List<Row> of(String acid) {
        List<Row> found = rows.stream().filter(row -> row.acid.equals(acid)).toList();
        if (found.isEmpty()) {
            throw new IllegalArgumentException("acid is " + Excerpt.of(acid) + ": the table has "
                    + String.join(", ", acids()) + "; give the constants of another with their source");
        }
        return found;
    }

    @Override
    public String toString() {
        return "constants of " + String.join(", ", acids());
    }
}
