package io.github.formulationmath.sheet;

/** The formats in which a sheet can be printed. */
public enum SheetFormat {
    /** Plain text for a terminal or a notebook, in fixed columns. */
    TEXT,
    /** Markdown with tables. */
    MARKDOWN,
    /** A whole HTML page that needs nothing else, with a style for printing. */
    HTML,
    /** The tables alone, as RFC 4180 prescribes, for a spreadsheet. */
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
