package io.github.formulationmath.soap;

import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.number.Excerpt;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Grades of solid alkali as pharmacopoeias state them: the total alkali, reckoned as the hydroxide, and the carbonate in it. A
 * drum is of such a grade only if its label or its certificate says so.
 *
 * <p>Where a pharmacopoeia sets no upper limit, the greatest assay is 100 %: no total alkali is above the pure hydroxide's.
 *
 * <p>Immutable and thread-safe.
 *
 * @param entries the rows, in the order of the table
 */
public record AlkaliGradeTable(List<Entry> entries) {

    private static final CsvFormat FORMAT = CsvFormat.of(List.of(
                    "alkali",
                    "assay_least",
                    "assay_greatest",
                    "carbonate_least",
                    "carbonate_greatest",
                    "locator",
                    "read_at",
                    "read_on",
                    "source",
                    "tag"))
            .withCommentHead();

    /**
     * What one pharmacopoeia says of one alkali.
     *
     * @param grade the range of hydroxide that follows
     * @param provenance where it stands and where it was read
     */
    public record Entry(AlkaliGrade grade, Provenance provenance) {

        /**
         * Checks nothing but presence.
         *
         * @param grade the range of hydroxide
         * @param provenance where it stands and where it was read
         */
        public Entry {
            Objects.requireNonNull(grade, "grade");
            Objects.requireNonNull(provenance, "provenance");
        }
    }

    /**
     * Copies the list, so that nothing changes it.
     *
     * @param entries the rows
     */
    public AlkaliGradeTable {
        entries = List.copyOf(entries);
    }

    /**
     * The table that comes with the library.
     *
     * @return the rows that were read in public sources
     */
    public static AlkaliGradeTable bundled() {
        return of(FORMAT.shipped(AlkaliGradeTable.class, "/io/github/formulationmath/chemistry/alkali-grades.csv"));
    }

    /**
     * Reads a table of one's own.
     *
     * @param file a CSV file in UTF-8 with the columns of {@code shared/chemistry/alkali-grades.csv}
     * @return the table
     * @throws IOException if the file cannot be read
     * @throws CsvException if a row is not as it should be; it names file, line and column
     */
    public static AlkaliGradeTable read(Path file) throws IOException {
        return of(FORMAT.read(file));
    }

    /**
     * Reads a table of one's own.
     *
     * @param name what the text is called in complaints
     * @param text the text; it is not closed
     * @return the table
     * @throws IOException if the text cannot be read
     * @throws CsvException if a row is not as it should be; it names line and column
     */
    public static AlkaliGradeTable read(String name, Reader text) throws IOException {
        return of(FORMAT.read(name, text));
    }

    private static AlkaliGradeTable of(CsvFormat.Table table) {
        return new AlkaliGradeTable(
                table.rows().stream().map(AlkaliGradeTable::entry).toList());
    }

    private static Entry entry(CsvRow row) {
        Provenance provenance = Provenance.of(row);
        Alkali alkali = row.choice("alkali", List.of(Alkali.values()), AlkaliGradeTable::word);
        String most = row.text("assay_greatest").isEmpty() ? "100" : row.decimal("assay_greatest");
        String least = row.decimal("assay_least");
        row.decimal("carbonate_least");
        AlkaliGrade.Assayed assayed = row.read(
                "assay_greatest",
                text -> AlkaliGrade.assay(alkali, least + " %", most + " %", AlkaliGrade.Stated.TOTAL_ALKALI));
        row.decimal("carbonate_greatest");
        AlkaliGrade grade = row.read(
                "carbonate_greatest",
                carbonate -> assayed.carbonate(
                        row.text("carbonate_least") + " %",
                        carbonate + " %",
                        Evidence.CONFORMS_TO_STANDARD,
                        provenance.source()));
        return new Entry(grade, provenance);
    }

    private static String word(Alkali alkali) {
        return alkali.inciName().toLowerCase(Locale.ROOT);
    }

    /**
     * The grade of one pharmacopoeia, for a drum that is stated to conform to it: asking for it is that statement.
     *
     * @param alkali the hydroxide
     * @param work the pharmacopoeia, or a part of its name, letter case forgiven
     * @return the grade with its source
     * @throws IllegalArgumentException if no row or several rows fit
     */
    public AlkaliGrade grade(Alkali alkali, String work) {
        Objects.requireNonNull(alkali, "alkali");
        String wanted = Objects.requireNonNull(work, "work").strip().toLowerCase(Locale.ROOT);
        List<Entry> ofAlkali = entries.stream()
                .filter(entry -> entry.grade().alkali() == alkali)
                .toList();
        List<Entry> found = ofAlkali.stream()
                .filter(entry ->
                        entry.provenance().work().toLowerCase(Locale.ROOT).contains(wanted))
                .toList();
        if (found.size() != 1) {
            throw new IllegalArgumentException("work is \"" + Excerpt.of(work) + "\", which fits " + found.size()
                    + " rows of " + alkali.inciName() + ": choose one of "
                    + ofAlkali.stream().map(entry -> entry.provenance().work()).collect(Collectors.joining("; "))
                    + ", or state the label of your drum with AlkaliGrade.assay(…)");
        }
        return found.get(0).grade();
    }
}
