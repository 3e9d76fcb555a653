package io.github.formulationmath.sheet;

import java.util.List;
import java.util.stream.Collectors;

/** A page as Markdown with pipe tables. */
final class MarkdownPage {

    private final StringBuilder out = new StringBuilder();

    private MarkdownPage() {}

    static String write(Page page) {
        MarkdownPage markdown = new MarkdownPage();
        markdown.line("# " + escape(page.title()));
        page.blocks().forEach(markdown::block);
        return markdown.out.toString();
    }

    private void block(Page.Block block) {
        line("");
        if (block instanceof Page.Facts facts) {
            facts.facts().forEach(f -> line("- **" + escape(f.name()) + ":** " + escape(f.value())));
        } else if (block instanceof Page.Table table) {
            table(table);
        } else if (block instanceof Page.Remark remark) {
            line(escape(remark.text()));
        } else if (block instanceof Page.Caution caution) {
            line("> **!** " + escape(caution.text()));
        }
    }

    private void table(Page.Table table) {
        if (!table.heading().isEmpty()) {
            line("## " + escape(table.heading()));
            line("");
        }
        row(table.columns());
        line(table.numeric().stream().map(n -> n ? "--:" : "---").collect(Collectors.joining("|", "|", "|")));
        table.rows().forEach(this::row);
    }

    private void row(List<String> cells) {
        line(cells.stream().map(MarkdownPage::escape).collect(Collectors.joining(" | ", "| ", " |")));
    }

    private void line(String text) {
        out.append(text).append('\n');
    }

    /** Whatever Markdown or HTML would read as a mark is taken literally. */
    private static String escape(String text) {
        return text.replaceAll("[\\p{Cntrl}]+", " ").replaceAll("([\\\\`*_{}\\[\\]<>#|~$&])", "\\\\$1");
    }
}
