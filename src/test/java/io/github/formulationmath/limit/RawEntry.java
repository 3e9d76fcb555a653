package io.github.formulationmath.limit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** One record of a raw annex export. Fields are taken by position: the header has one name too many after the tenth. */
record RawEntry(
        String annex,
        String refNo,
        String name,
        String casNumbers,
        String productType,
        String concentration,
        String conditions,
        String wording,
        String act,
        String updated,
        String everything) {

    private static final Map<String, List<RawEntry>> READ = new ConcurrentHashMap<>();

    static List<RawEntry> annex(String annex) {
        return READ.computeIfAbsent(annex, RawEntry::read);
    }

    private static List<RawEntry> read(String annex) {
        Path file = Path.of("shared/limits/raw/annex" + annex + ".csv");
        try (CSVParser parser = CSVFormat.RFC4180.parse(Files.newBufferedReader(file))) {
            return parser.stream().skip(1).map(row -> of(annex, row)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RawEntry of(String annex, CSVRecord row) {
        return new RawEntry(
                annex,
                row.get(0),
                PrintedText.normalised(row.get(1)),
                row.get(3),
                row.get(5),
                row.get(6),
                row.get(7),
                row.get(8),
                PrintedText.normalised(row.get(9)),
                isoDate(row.get(15)),
                String.join("\n", row.toList()));
    }

    private static String isoDate(String dayMonthYear) {
        String[] parts = dayMonthYear.split("/", -1);
        return parts[2] + "-" + parts[1] + "-" + parts[0];
    }

    /** Annex, reference number and name: reference numbers alone are not unique in the export. */
    String key() {
        return annex + " " + refNo + " " + name;
    }

    boolean isLive() {
        return !name.equals("Moved or deleted");
    }

    @Override
    public String toString() {
        return "Annex " + annex + " entry " + refNo;
    }
}
