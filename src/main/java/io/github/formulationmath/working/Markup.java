package io.github.formulationmath.working;

import java.util.List;

/** The formats a working is printed in. */
enum Markup {
    TEXT,
    MARKDOWN,
    LATEX_DOCUMENT,
    LATEX_FRAGMENT,
    HTML_PAGE,
    HTML_FRAGMENT;

    /** What stands for this format as a part of a larger text. */
    Markup part() {
        return switch (this) {
            case LATEX_DOCUMENT -> LATEX_FRAGMENT;
            case HTML_PAGE -> HTML_FRAGMENT;
            default -> this;
        };
    }

    /** Parts one behind the other, as a whole in this format. */
    String joined(Words words, String title, List<String> parts) {
        return switch (this) {
            case TEXT, MARKDOWN, HTML_FRAGMENT -> String.join("\n", parts);
            case LATEX_FRAGMENT -> String.join("\\newpage\n", parts);
            case LATEX_DOCUMENT -> LatexPage.whole(String.join("\\newpage\n", parts));
            case HTML_PAGE -> HtmlPage.whole(words.say("language"), title, String.join("", parts));
        };
    }

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
