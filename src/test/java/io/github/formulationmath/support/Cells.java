package io.github.formulationmath.support;

import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Cells and rows that were printed, read by somebody else's code or counted by hand. */
public final class Cells {

    /** OWASP, CSV Injection: a cell must not begin with one of these; Excel and its like also skip blanks before them. */
    public static final Pattern FORMULA = Pattern.compile("(?s)[\\s\\p{Z}\\p{C}]*[=+\\-@＝＋－＠].*|[\\t\\r\\n].*");

    private Cells() {}

    public static List<CSVRecord> read(String csv) throws IOException {
        try (CSVParser parser = CSVParser.parse(csv, CSVFormat.RFC4180)) {
            return parser.getRecords();
        }
    }

    /** A letter of Chinese, Japanese or Korean takes two columns, a combining mark none. */
    public static int columnsByHand(String row) {
        return row.codePoints()
                .map(c -> switch (Character.UnicodeScript.of(c)) {
                    case HAN, HIRAGANA, HANGUL -> 2;
                    default ->
                        Character.getType(c) == Character.NON_SPACING_MARK || Character.getType(c) == Character.FORMAT
                                ? 0
                                : 1;
                })
                .sum();
    }
}
