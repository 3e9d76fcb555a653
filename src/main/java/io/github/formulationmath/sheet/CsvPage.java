package io.github.formulationmath.sheet;

import java.util.List;
import java.util.stream.Collectors;

/** The tables of a page as RFC 4180 prescribes (common format for comma-separated values), one after the other. */
final class CsvPage {

    private CsvPage() {}

    static String write(Page page) {
        StringBuilder out = new StringBuilder();
        for (Page.Table table : page.tables()) {
            out.append(out.isEmpty() ? "" : "\r\n").append(row(table.columns()));
            table.rows().forEach(cells -> out.append(row(cells)));
        }
        return out.toString();
    }

    private static String row(List<String> cells) {
        return cells.stream().map(CsvPage::field).collect(Collectors.joining(",", "", "\r\n"));
    }

    private static String field(String text) {
        return text.matches("[^,\"\r\n]*") ? text : "\"" + text.replace("\"", "\"\"") + "\"";
    }
}
