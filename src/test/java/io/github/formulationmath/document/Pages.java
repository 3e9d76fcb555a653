package io.github.formulationmath.document;

import static org.assertj.core.api.Assertions.assertThat;

/** What the tests of blocks begin with. */
final class Pages {

    private Pages() {}

    /** A page of a title, for blocks to be added to. */
    static Document page() {
        return Document.titled("T", "en");
    }

    /** A symbol without an index. */
    static Expression m() {
        return Expression.symbol("m", "");
    }

    /** What stands below the beginning of a page. */
    static String below(String start, String page) {
        assertThat(page).startsWith(start);
        return page.substring(start.length());
    }
}
