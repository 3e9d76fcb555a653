package io.github.formulationmath.document;

/** The columns that a line takes on a page, for tests of what other rooms print. */
public final class PageWidth {

    private PageWidth() {}

    /** Two for a letter of double width, none for a mark on the letter before it. */
    public static int of(String line) {
        return Columns.width(line);
    }
}
