package io.github.formulationmath.sheet;

import java.util.List;
import java.util.stream.Collectors;

/** A page as Markdown with pipe tables. */
final class MarkdownPage extends PageWriter {

    private MarkdownPage() {}

    static String write(Page page) {
        MarkdownPage markdown = new MarkdownPage();
        markdown.line("# " + escape(page.title()));
        for (Page.Block block : page.blocks()) {
            markdown.line("");
            markdown.block(block);
        }
        return markdown.text();
    }

    @Override
    void facts(Page.Facts facts) {
        facts.facts().forEach(f -> line("- **" + escape(f.name()) + ":** " + escape(f.value())));
    }

    @Override
    void remark(String text) {
        line(escape(text));
    }

    @Override
    void caution(String text) {
        line("> **!** " + escape(text));
    }

    @Override
    void table(Page.Table table) {
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

    /** Whatever Markdown or HTML would read as a mark is taken literally. */
    private static String escape(String text) {
        return oneLine(text).replaceAll("([\\\\`*_{}\\[\\]<>#|~$&])", "\\\\$1");
    }
}
