package io.github.formulationmath.sheet;

import io.github.formulationmath.csv.CsvWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The tables of a page, one after the other, each text guarded by the {@link CsvWriter}; numbers stay as they are. */
final class CsvPage {

    /** As our own numbers are printed; the unit has no digit and no bracket. */
    private static final Pattern NUMBER =
            Pattern.compile("[+\\-]?(?:≈ )?[0-9]++(?:[.,/][0-9]++)?(?: [\\p{L}%‰°³µ/ ]*+)?(?: \\?)?");

    private CsvPage() {}

    static String write(Page page) {
        StringBuilder out = new StringBuilder();
        for (Page.Table table : page.tables()) {
            out.append(out.isEmpty() ? "" : "\r\n");
            out.append(CsvWriter.row(
                    table.columns().stream().map(CsvWriter::guarded).toList()));
            for (List<String> cells : table.rows()) {
                out.append(CsvWriter.row(safe(cells, table.numeric())));
            }
        }
        return out.toString();
    }

    private static List<String> safe(List<String> cells, List<Boolean> numeric) {
        List<String> safe = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i);
            safe.add(numeric.get(i) && NUMBER.matcher(cell).matches() ? cell : CsvWriter.guarded(cell));
        }
        return safe;
    }
}
