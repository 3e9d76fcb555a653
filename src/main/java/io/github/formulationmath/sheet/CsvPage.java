package io.github.formulationmath.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The tables of a page as RFC 4180 prescribes (common format for comma-separated values), one after the other, and such that
 * no text is a formula for a spreadsheet.
 *
 * <p>Source of the guard: OWASP, CSV Injection (CWE-1236). A text may also be cut at its semicolons, where a spreadsheet takes
 * them for the separator, and at its line ends: what follows is guarded like a beginning. A guarded text that is guarded again
 * gets one more apostrophe, so that {@link #unguarded} is exact.
 */
final class CsvPage {

    /** What a spreadsheet begins a formula with, in narrow and in full-width form. */
    private static final String FORMULA = "[=+\\-@\\uff1d\\uff0b\\uff0d\\uff20]";

    /** What a spreadsheet skips; without the characters at which it may cut, so that no text is walked twice. */
    private static final String BLANK = "[\\p{Z}\\p{Cf}\\p{Cc}&&[^\\t\\r\\n]]";

    private static final String START = "(?:^|(?<=[;\\t\\r\\n]))";
    private static final String AT_FORMULA = "(?='*+" + BLANK + "*+" + FORMULA + ")";
    private static final String AT_LINE_END = "(?='*+[\\t\\r\\n])";
    private static final Pattern GUARD = Pattern.compile("^" + AT_LINE_END + "|" + START + AT_FORMULA);
    private static final Pattern GUARDED = Pattern.compile("^'" + AT_LINE_END + "|" + START + "'" + AT_FORMULA);

    /** As our own numbers are printed; the unit has no digit and no bracket. */
    private static final Pattern NUMBER =
            Pattern.compile("[+\\-]?(?:≈ )?[0-9]++(?:[.,/][0-9]++)?(?: [\\p{L}%‰°³µ/ ]*+)?(?: \\?)?");

    private static final Pattern PLAIN = Pattern.compile("[^,\"\r\n]*+");

    private CsvPage() {}

    static String write(Page page) {
        StringBuilder out = new StringBuilder();
        for (Page.Table table : page.tables()) {
            out.append(out.isEmpty() ? "" : "\r\n");
            row(out, table.columns().stream().map(CsvPage::guarded).toList());
            for (List<String> cells : table.rows()) {
                row(out, safe(cells, table.numeric()));
            }
        }
        return out.toString();
    }

    private static List<String> safe(List<String> cells, List<Boolean> numeric) {
        List<String> safe = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i);
            safe.add(numeric.get(i) && NUMBER.matcher(cell).matches() ? cell : guarded(cell));
        }
        return safe;
    }

    /** An apostrophe wherever a spreadsheet could begin to read a formula. */
    static String guarded(String text) {
        return GUARD.matcher(text).replaceAll("'");
    }

    /** The text before it was guarded. */
    static String unguarded(String text) {
        return GUARDED.matcher(text).replaceAll("");
    }

    private static void row(StringBuilder out, List<String> cells) {
        for (int i = 0; i < cells.size(); i++) {
            out.append(i == 0 ? "" : ",").append(field(cells.get(i)));
        }
        out.append("\r\n");
    }

    private static String field(String text) {
        return PLAIN.matcher(text).matches() ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
