package io.github.formulationmath.sheet;

import io.github.formulationmath.working.DisplayText;

/** Writes a page block by block, line by line. */
abstract sealed class PageWriter permits TextPage, MarkdownPage, HtmlPage {

    private final StringBuilder out = new StringBuilder();

    abstract void facts(Page.Facts facts);

    abstract void table(Page.Table table);

    abstract void remark(String text);

    abstract void caution(String text);

    final void block(Page.Block block) {
        if (block instanceof Page.Facts facts) {
            facts(facts);
        } else if (block instanceof Page.Table table) {
            table(table);
        } else if (block instanceof Page.Remark remark) {
            remark(remark.text());
        } else if (block instanceof Page.Caution caution) {
            caution(caution.text());
        }
    }

    final void line(String text) {
        out.append(text).append('\n');
    }

    final String text() {
        return out.toString();
    }

    /** Line breaks, control characters and marks of direction in a name would break columns and tables. */
    static String oneLine(String text) {
        return DisplayText.clean(text);
    }
}
