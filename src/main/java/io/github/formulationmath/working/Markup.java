package io.github.formulationmath.working;

/** The formats a working is printed in. */
enum Markup {
    TEXT,
    MARKDOWN,
    LATEX_DOCUMENT,
    LATEX_FRAGMENT,
    HTML_PAGE,
    HTML_FRAGMENT;

    /** An empty page whose first heading is of a level. */
    Page page(Words words, int level) {
        return switch (this) {
            case TEXT -> new TextPage();
            case MARKDOWN -> new MarkdownPage(level);
            case LATEX_DOCUMENT -> new LatexPage(true, level);
            case LATEX_FRAGMENT -> new LatexPage(false, level);
            case HTML_PAGE -> new HtmlPage(words, true, level);
            case HTML_FRAGMENT -> new HtmlPage(words, false, level);
        };
    }
}
