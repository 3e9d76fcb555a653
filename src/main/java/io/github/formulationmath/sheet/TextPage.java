package io.github.formulationmath.sheet;

import io.github.formulationmath.working.DisplayText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A page as plain text: columns as wide as they must be, sentences wrapped at {@value #WIDTH} characters. */
final class TextPage extends PageWriter {

    private static final int WIDTH = 80;

    /** Tables with the same columns are set to the same widths, so that the eye runs down the page. */
    private final Map<List<String>, int[]> widths = new HashMap<>();

    private TextPage() {}

    static String write(Page page) {
        TextPage text = new TextPage();
        text.line(oneLine(page.title()));
        text.line("=".repeat(Math.min(WIDTH, width(oneLine(page.title())))));
        page.tables().forEach(text::widen);
        for (Page.Block block : page.blocks()) {
            text.line("");
            text.block(block);
        }
        return text.text();
    }

    @Override
    void facts(Page.Facts facts) {
        int widest = facts.facts().stream()
                .mapToInt(f -> width(oneLine(f.name())))
                .max()
                .orElse(0);
        facts.facts().forEach(f -> line(padRight(oneLine(f.name()), widest) + "  " + oneLine(f.value())));
    }

    @Override
    void table(Page.Table table) {
        if (!table.heading().isEmpty()) {
            line(oneLine(table.heading()));
        }
        int[] columns = Objects.requireNonNull(widths.get(table.columns()));
        row(table.columns(), table.numeric(), columns);
        List<String> rules = new ArrayList<>();
        for (int width : columns) {
            rules.add("-".repeat(width));
        }
        row(rules, table.numeric(), columns);
        table.rows().forEach(cells -> row(cells, table.numeric(), columns));
    }

    @Override
    void remark(String text) {
        wrapped("", oneLine(text));
    }

    @Override
    void caution(String text) {
        wrapped("! ", oneLine(text));
    }

    private void widen(Page.Table table) {
        int[] columns = widths.computeIfAbsent(table.columns(), names -> new int[names.size()]);
        for (int i = 0; i < columns.length; i++) {
            columns[i] = Math.max(columns[i], width(oneLine(table.columns().get(i))));
            for (List<String> cells : table.rows()) {
                columns[i] = Math.max(columns[i], width(oneLine(cells.get(i))));
            }
        }
    }

    private void row(List<String> cells, List<Boolean> numeric, int[] columns) {
        StringBuilder row = new StringBuilder();
        for (int i = 0; i < columns.length; i++) {
            String cell = oneLine(cells.get(i));
            row.append(i == 0 ? "" : "  ")
                    .append(numeric.get(i) ? padLeft(cell, columns[i]) : padRight(cell, columns[i]));
        }
        line(row.toString().stripTrailing());
    }

    private void wrapped(String mark, String text) {
        StringBuilder line = new StringBuilder(mark);
        int column = mark.length();
        for (String word : text.split(" ")) {
            int needed = width(word);
            if (column > mark.length() && column + needed >= WIDTH) {
                line(line.toString().stripTrailing());
                line = new StringBuilder(" ".repeat(mark.length()));
                column = mark.length();
            }
            line.append(word).append(' ');
            column += needed + 1;
        }
        line(line.toString().stripTrailing());
    }

    private static int width(String text) {
        return DisplayText.columns(text);
    }

    private static String padRight(String text, int width) {
        return text + " ".repeat(width - width(text));
    }

    private static String padLeft(String text, int width) {
        return " ".repeat(width - width(text)) + text;
    }
}
