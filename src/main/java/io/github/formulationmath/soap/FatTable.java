package io.github.formulationmath.soap;

import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Saponification values of fats and waxes as sources state them, each row with its source. Sources differ, and they are shown
 * side by side and never merged: whoever asks for one fat says of which source.
 *
 * <p>The table that comes with the library is small, for only what was read is in it; {@code docs/soap-data.md} of the
 * project tells what is missing. A table of one's own has the same columns and is read the same way.
 *
 * <p>Example: {@code FatTable.bundled().entry("Carnauba wax", "USP 35").range().least()} is 78 mg KOH/g.
 *
 * <p>Immutable and thread-safe.
 *
 * @param remarks the lines at the head of the table
 * @param entries the rows, in the order of the table
 */
public record FatTable(List<String> remarks, List<FatEntry> entries) {

    private static final List<Fat.Nature> NATURES =
            List.of(Fat.Nature.TRIGLYCERIDES, Fat.Nature.FATTY_ACIDS, Fat.Nature.WAX);

    private static final CsvFormat FORMAT = CsvFormat.of(List.of(
                    "inci",
                    "name",
                    "nature",
                    "basis",
                    "least",
                    "greatest",
                    "unit",
                    "as_printed",
                    "iodine_least",
                    "iodine_greatest",
                    "unsaponifiable_least",
                    "unsaponifiable_greatest",
                    "acid_least",
                    "acid_greatest",
                    "locator",
                    "read_at",
                    "read_on",
                    "source",
                    "tag"))
            .withCommentHead();

    /** Read when it is first asked for. */
    private static final class Bundled {
        private static final FatTable TABLE =
                of(FORMAT.shipped(FatTable.class, "/io/github/formulationmath/chemistry/saponification-values.csv"));
    }

    /**
     * Copies the lists, so that nothing changes them.
     *
     * @param remarks the lines at the head of the table
     * @param entries the rows
     */
    public FatTable {
        Objects.requireNonNull(remarks, "remarks");
        Objects.requireNonNull(entries, "entries");
        remarks = List.copyOf(remarks);
        entries = List.copyOf(entries);
    }

    /**
     * The table that comes with the library.
     *
     * @return the rows that were read in public sources
     */
    public static FatTable bundled() {
        return Bundled.TABLE;
    }

    /**
     * The first line of a table of one's own, below remarks that begin with {@code #}.
     *
     * @return the names of the columns with commas between them
     */
    public static String header() {
        return FORMAT.toString();
    }

    /**
     * Reads a table of one's own.
     *
     * @param file a CSV file in UTF-8 with the columns of {@code shared/chemistry/saponification-values.csv}
     * @return the table
     * @throws IOException if the file cannot be read
     * @throws CsvException if a row is not as it should be, or no fat has such a value; it names file, line and column
     */
    public static FatTable read(Path file) throws IOException {
        return of(FORMAT.read(file));
    }

    /**
     * Reads a table of one's own.
     *
     * @param name what the text is called in complaints
     * @param text the text; it is not closed
     * @return the table
     * @throws IOException if the text cannot be read
     * @throws CsvException if a row is not as it should be, or no fat has such a value; it names line and column
     */
    public static FatTable read(String name, Reader text) throws IOException {
        return of(FORMAT.read(name, text));
    }

    private static FatTable of(CsvFormat.Table table) {
        Set<String> seen = new HashSet<>();
        for (CsvRow row : table.rows()) {
            String key = SubstanceName.normalise(row.text("inci")) + "\n" + SubstanceName.normalise(row.text("name"))
                    + "\n" + folded(row.text("source"));
            if (!seen.add(key)) {
                throw row.wrong(
                        "source", "says two things of " + Excerpt.of(row.text("name")) + ": tell them apart by name");
            }
        }
        return new FatTable(
                table.comments(), table.rows().stream().map(FatTable::entry).toList());
    }

    private static FatEntry entry(CsvRow row) {
        Provenance provenance = Provenance.of(row);
        String unit = " " + row.required("unit");
        AlkaliNumber least = number(row, "least", text -> AlkaliNumber.parse(text + unit));
        Fat.Nature nature = row.choice("nature", NATURES, FatTable::word);
        FatEntry.Basis basis = row.choice("basis", List.of(FatEntry.Basis.values()), FatEntry.Basis::word);
        Optional<Interval<IodineValue>> iodine = range(row, "iodine", text -> IodineValue.parse(text + " g I2/100 g"));
        Optional<Interval<MassFraction>> unsaponifiable =
                range(row, "unsaponifiable", text -> MassFraction.parse(text + " %"));
        Optional<Interval<AlkaliNumber>> acid = range(row, "acid", text -> AlkaliNumber.parse(text + " mg KOH/g"));
        // The gates of plausibility speak of the whole row, and are said of its greatest value.
        return number(
                row,
                "greatest",
                greatest -> new FatEntry(
                        row.required("inci"),
                        row.required("name"),
                        nature,
                        basis,
                        Interval.of(least, AlkaliNumber.parse(greatest + unit)),
                        row.required("as_printed"),
                        iodine,
                        unsaponifiable,
                        acid,
                        provenance));
    }

    private static <T> T number(CsvRow row, String column, Function<String, T> factory) {
        row.decimal(column);
        return row.read(column, factory);
    }

    private static <T extends Comparable<? super T>> Optional<Interval<T>> range(
            CsvRow row, String figure, Function<String, T> factory) {
        String least = figure + "_least";
        String greatest = figure + "_greatest";
        if (row.text(least).isEmpty() && row.text(greatest).isEmpty()) {
            return Optional.empty();
        }
        T low = number(row, least, factory);
        return Optional.of(number(row, greatest, text -> Interval.of(low, factory.apply(text))));
    }

    static String word(Fat.Nature nature) {
        return nature.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * What every source says of a fat, side by side. A common name finds its kinds too: "olive oil" finds "Olive oil, refined".
     *
     * @param fat its INCI name or common name in any spelling that is one name, see {@link SubstanceName#normalise}
     * @return the entries in the order of the table, at least one
     * @throws IllegalArgumentException if the table has no such fat
     */
    public List<FatEntry> of(String fat) {
        String wanted = SubstanceName.normalise(Objects.requireNonNull(fat, "fat"));
        List<FatEntry> found =
                entries.stream().filter(entry -> isCalled(entry, wanted)).toList();
        if (found.isEmpty()) {
            throw new IllegalArgumentException(
                    "fat is \"" + Excerpt.of(fat) + "\", which the table does not have; it has " + names(FatEntry::name)
                            + "; read a table of your own with FatTable.read(…)");
        }
        return found;
    }

    /**
     * What one source says of a fat.
     *
     * @param fat its INCI name or common name in any spelling that is one name
     * @param work the standard or book, or a part of its name, letter case forgiven
     * @return the entry
     * @throws IllegalArgumentException if the table has no such fat, or the source says nothing or several things of it
     */
    public FatEntry entry(String fat, String work) {
        String wanted = folded(Objects.requireNonNull(work, "work"));
        List<FatEntry> all = of(fat);
        List<FatEntry> found = all.stream()
                .filter(entry -> folded(entry.provenance().work()).contains(wanted))
                .toList();
        if (found.size() != 1) {
            throw new IllegalArgumentException("work is \"" + Excerpt.of(work) + "\", which fits "
                    + (found.isEmpty() ? "no entry" : found.size() + " entries") + " of " + Excerpt.of(fat)
                    + ": choose one of "
                    + all.stream()
                            .map(entry ->
                                    entry.name() + " in " + entry.provenance().work())
                            .collect(Collectors.joining("; ")));
        }
        return found.get(0);
    }

    /** By its INCI name, its common name, or that without what tells it from others of the same INCI name. */
    private static boolean isCalled(FatEntry entry, String wanted) {
        String name = SubstanceName.normalise(entry.name());
        return SubstanceName.normalise(entry.inci()).equals(wanted)
                || name.equals(wanted)
                || name.startsWith(wanted + ",");
    }

    private String names(Function<FatEntry, String> name) {
        return Excerpt.ofAll(entries.stream().map(name).distinct().sorted().toList());
    }

    private static String folded(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
