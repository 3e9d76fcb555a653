package io.github.formulationmath.sheet;

/** The formats in which a sheet can be printed. */
public enum SheetFormat {
    /** Plain text for a terminal or a notebook, in fixed columns. */
    TEXT,
    /** Markdown with tables. */
    MARKDOWN,
    /** A whole HTML page that needs nothing else, with a style for printing. */
    HTML,
    /**
     * The tables alone, as RFC 4180 prescribes, for a spreadsheet. A text that a spreadsheet would take for a formula, since
     * it begins with one of {@code = + - @}, a tab or a line end, has an apostrophe before it, as OWASP advises against CSV
     * injection (CWE-1236); so has what follows a semicolon, a tab or a line end inside a text, and a text that begins with
     * such an apostrophe itself. {@link io.github.formulationmath.csv.CsvWriter#unguarded} gives the text back. Numbers, with
     * or without a unit, stay as they are.
     */
    CSV;

    String write(Page page) {
        return switch (this) {
            case TEXT -> TextPage.write(page);
            case MARKDOWN -> MarkdownPage.write(page);
            case HTML -> HtmlPage.write(page);
            case CSV -> CsvPage.write(page);
        };
    }
}
