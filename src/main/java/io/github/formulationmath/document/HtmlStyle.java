package io.github.formulationmath.document;

import io.github.formulationmath.document.Document.Column;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How pages look on a screen and on paper. Where a table is worked with by hand, what is read at arm's length is large, and
 * what is looked up goes below the name of its row on paper, so that A5 holds the rest.
 *
 * @param longest how many characters the columns of the tables to work with need, by their names
 */
record HtmlStyle(Map<String, Integer> longest) {

    private static final String STYLE = """
            body { font: 1rem/1.5 sans-serif; margin: 0 auto; max-width: 60rem; padding: 1rem; overflow-wrap: anywhere; }
            dl { display: grid; gap: 0.2rem 1rem; grid-template-columns: fit-content(50%) 1fr; }
            dl div { display: contents; }
            dt { font-weight: bold; }
            dd { margin: 0; }
            table { border-collapse: collapse; width: 100%; }
            th, td { border-bottom: 1px solid; font-weight: normal; padding: 0.25rem 0.75rem 0.25rem 0; }
            th, td { text-align: start; vertical-align: top; }
            thead th { font-weight: bold; }
            .scroll { overflow-x: auto; }
            .number { font-variant-numeric: tabular-nums; text-align: end; white-space: nowrap; }
            .caution { border: 0.15rem solid; font-weight: bold; padding: 0.4rem 0.8rem; }
            ol { padding-left: 2rem; }
            li { margin: 0.75rem 0; break-inside: avoid; }
            ul { list-style: none; padding-left: 2rem; }
            li p { margin: 0.25rem 0; }
            .line { padding-left: 2rem; text-indent: -1rem; }
            .next { padding-left: 3rem; }
            ul.row li { display: inline-block; margin-right: 2rem; }
            .filled { font-weight: bold; }
            .write div { align-items: end; border-bottom: 1px solid; display: flex; height: 8mm; margin: 0; }
            .boxes li::before { border: 1px solid; content: ""; display: inline-block; }
            .boxes li::before { height: 0.8em; margin: 0 0.4em; width: 0.8em; }
            .fields { display: grid; gap: 0 1rem; grid-template-columns: repeat(auto-fill, minmax(9rem, 1fr)); }
            .fields div { align-items: end; border-bottom: 1px solid; display: flex; font-size: 0.85em; height: 2.2em; }
            .fields div:last-child { grid-column: 1 / -1; }
            .work { table-layout: fixed; }
            .work th, .work td { overflow-wrap: break-word; vertical-align: middle; }
            .work th, .work td { padding: 0.25rem 0.4rem 0.25rem 0; }
            .work td.room + td, .work .room { padding-left: 0.3rem; }
            .work thead th { font-size: 0.8em; vertical-align: bottom; }
            .work thead .number { white-space: normal; }
            .work td.number, .work td.reading { overflow-wrap: normal; }
            .work td.reading { font-size: 1.4em; font-weight: bold; line-height: 1.15; }
            .work td.detail { font-size: 0.75em; }
            .work td.room { border: 1px solid; }
            col.reading { --size: 1.45; }
            col.detail { --size: 0.8; }
            col.room { width: 13%; }
            .box { border: 0.12em solid; display: inline-block; font-size: 1rem; height: 0.95em; width: 0.95em; }
            .box { overflow: hidden; text-indent: 2em; vertical-align: middle; white-space: nowrap; }
            math { font-size: 1.1rem; overflow-wrap: normal; white-space: nowrap; }
            article + article { break-before: page; }
            @page { margin: 12mm 9mm 9mm; }
            @page { @top-left { font: 8pt sans-serif; } }
            @page { @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; } }
            @media print {
              body { font-size: 10pt; line-height: 1.2; max-width: none; padding: 0; }
              h1 { font-size: 1.4em; margin: 0 0 0.4em; }
              h2 { break-after: avoid; font-size: 1.15em; margin: 0.5em 0 0.2em; }
              p { margin: 0.3em 0; }
              th, td { padding: 0.1rem 0.75rem 0.1rem 0; }
              tr, .caution { break-inside: avoid; }
              ol, ul { margin: 0.2em 0; }
              li { margin: 0.2rem 0; }
              li p, li li { margin: 0.05rem 0; }
              .task { break-inside: avoid; line-height: 1.1; }
              .scroll { overflow: visible; }
              dl { gap: 0 0.8rem; }
              .bench dl { display: flex; flex-wrap: wrap; margin: 0.3em 0; }
              .bench dl div { display: block; }
              .bench dt, .bench dd { display: inline; margin-right: 0.4em; }
              .fields { gap: 0 4mm; grid-template-columns: repeat(auto-fill, minmax(32mm, 1fr)); }
              .fields div { height: 7mm; }
              .fields div:last-child { height: 8mm; }
              .work td, .work th { padding-bottom: 0.3mm; padding-top: 0.3mm; }
              .work td { height: 7mm; }
              .work .tick, .work tbody th { padding-right: 0.2rem; }
              .box { font-size: 12pt; }
              .task h2, .task p, .task li { margin-bottom: 0; margin-top: 0; }
              .task ul { margin: 0.3em 0 0.4em; padding: 0; }
            }
            @media print, (max-width: 60rem) {
              .work .detail, col.detail { display: none; }
              .work [data-more]::after { content: attr(data-more); display: block; font-size: 0.75em; line-height: 1.1; }
              .work [data-more]::after { font-weight: normal; }
            }
            @media print and (max-width: 150mm) {
              body { font-size: 8.5pt; }
              h1 { font-size: 1.25em; }
              .work td.reading { font-size: 1.35em; }
              col.reading { --size: 1.35; }
              col.room { width: 11.5%; }
              .work th, .work td { line-height: 1.05; padding-right: 0.2rem; }
              .work td.room + td, .work .room { padding-left: 0.2rem; }
              .work td { height: 5.8mm; }
              .fields div { height: 6mm; }
              h2 { margin: 0.3em 0 0.1em; }
              .fields div:last-child { height: 7mm; }
              .caution { font-size: 0.95em; margin: 0.2em 0 0; padding: 0.15rem 0.4rem; }
            }
            """;

    /** Words in a table to work with break after so many characters. */
    private static final int TEXT_WIDTH = 10;

    /** Room to write on has space for a word of so many letters above it, on small paper too. */
    private static final int ROOM_WIDTH = 7;

    /** Title and page number on every page of paper. Each character stands as its code, so that none can end the style. */
    static String onPaper(String title) {
        StringBuilder codes = new StringBuilder();
        title.codePoints().forEach(c -> codes.append('\\').append(Integer.toHexString(0x1000000 | c), 1, 7));
        return STYLE + "@page { @top-left { content: \"" + codes + "\"; } }\n";
    }

    static HtmlStyle of(List<Block> blocks) {
        Map<String, Integer> longest = new HashMap<>();
        for (Block block : blocks) {
            if (block instanceof Block.Table table && table.isWorkedWith()) {
                for (int i = 0; i < table.columns().size(); i++) {
                    int at = i;
                    int cells = table.rows().stream()
                            .mapToInt(row -> Columns.width(row.cells().get(at)))
                            .max()
                            .orElse(0);
                    longest.merge(table.columns().get(i).name(), cells, Math::max);
                }
            }
        }
        return new HtmlStyle(longest);
    }

    /** Whether a table is worked with. */
    boolean isOfBench() {
        return !longest.isEmpty();
    }

    /** Wide enough for the cells, and for the longest word of the head, which is bold and smaller. */
    private static String width(int cells, int head) {
        return " style=\"width: calc(max(var(--size, 1) * " + cells + "ch, " + head + "ch * 0.95) + 0.7em)\"";
    }

    /** A digit is as wide as {@code ch}; signs, letters and blanks hardly more. Words at the head may break. */
    String widthOf(Column column) {
        int head = IntStream.of(Stream.of(column.name().split("[ \u00AD-]"))
                        .mapToInt(Columns::width)
                        .toArray())
                .max()
                .orElse(0);
        int cells = longest.getOrDefault(column.name(), 0);
        return switch (column.use()) {
            case NAME -> "";
            case ROOM -> head <= ROOM_WIDTH ? "" : width(1, head);
            case TICK -> width(2, head);
            case TEXT -> width(Math.max(Math.min(cells, TEXT_WIDTH), head), head);
            case NUMBER, READING, DETAIL -> width(Math.max(cells, 1), head);
        };
    }
}
