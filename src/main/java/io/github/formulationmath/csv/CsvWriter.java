package io.github.formulationmath.csv;

import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Writes comma-separated values as RFC 4180 prescribes, and guards texts so that none is a formula for a spreadsheet.
 *
 * <p>Source of the guard: OWASP, CSV Injection (CWE-1236). A text may also be cut at its semicolons, where a spreadsheet takes
 * them for the separator, and at its line ends: what follows is guarded like a beginning. A guarded text that is guarded again
 * gets one more apostrophe, so that {@link #unguarded} is exact.
 */
public final class CsvWriter {

    /** What a spreadsheet begins a formula with, in narrow and in full-width form. */
    private static final String FORMULA = "[=+\\-@\\uff1d\\uff0b\\uff0d\\uff20]";

    /** What a spreadsheet skips; without the characters at which it may cut, so that no text is walked twice. */
    private static final String BLANK = "[\\p{Z}\\p{Cf}\\p{Cc}&&[^\\t\\r\\n]]";

    private static final String START = "(?:^|(?<=[;\\t\\r\\n]))";
    private static final String AT_FORMULA = "(?='*+" + BLANK + "*+" + FORMULA + ")";
    private static final String AT_LINE_END = "(?='*+[\\t\\r\\n])";
    private static final Pattern GUARD = Pattern.compile("^" + AT_LINE_END + "|" + START + AT_FORMULA);
    private static final Pattern GUARDED = Pattern.compile("^'" + AT_LINE_END + "|" + START + "'" + AT_FORMULA);

    private static final Pattern PLAIN = Pattern.compile("[^,\"\r\n]*+");

    private CsvWriter() {}

    /**
     * A line of fields, each in quotes if it needs them. Nothing is guarded.
     *
     * @param fields the texts of the fields
     * @return the line with CR LF at its end
     */
    public static String row(List<String> fields) {
        return Objects.requireNonNull(fields, "fields").stream()
                .map(CsvWriter::quoted)
                .collect(Collectors.joining(",", "", "\r\n"));
    }

    /**
     * A text with an apostrophe wherever a spreadsheet could begin to read a formula.
     *
     * @param text any text
     * @return the text guarded; the same text if it needs no guard
     */
    public static String guarded(String text) {
        return GUARD.matcher(Objects.requireNonNull(text, "text")).replaceAll("'");
    }

    /**
     * The text before it was guarded: the exact inverse of {@link #guarded}.
     *
     * @param text a text that was guarded
     * @return the text
     */
    public static String unguarded(String text) {
        return GUARDED.matcher(Objects.requireNonNull(text, "text")).replaceAll("");
    }

    private static String quoted(String text) {
        return PLAIN.matcher(text).matches() ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
