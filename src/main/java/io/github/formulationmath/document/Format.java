package io.github.formulationmath.document;

import java.util.List;
import java.util.function.Supplier;

/** The formats in which a {@link Document} can be printed. */
public enum Format {
    /**
     * Plain text of at most 80 columns; only tables of numbers are as wide as they must be. A word or number longer than a
     * line of arithmetic is broken with a backslash.
     */
    TEXT(() -> TextWriter.writer()),

    /** Markdown as CommonMark describes it, with the tables of GitHub; arithmetic in fenced blocks. */
    MARKDOWN(() -> MarkdownWriter.writer()),

    /** HTML with MathML that needs nothing but itself, with a style for printing. */
    HTML(() -> HtmlWriter.writer()),

    /** LaTeX with amsmath, longtable and array. Letters other than Latin and Greek need LuaLaTeX or XeLaTeX. */
    LATEX(() -> LatexWriter.writer()),

    /**
     * The facts and tables alone, as RFC 4180 prescribes, one after the other with an empty line between; {@link
     * Document#leftOut} tells what it has no place for. A text that a spreadsheet would take for a formula, since it begins
     * with one of {@code = + - @}, a tab or a line end, has an apostrophe before it, as OWASP advises against CSV injection
     * (CWE-1236); so has what follows a semicolon, a tab or a line end inside a text, and a text that begins with such an
     * apostrophe itself. {@link io.github.formulationmath.csv.CsvWriter#unguarded} gives the text back. Numbers, with or
     * without a unit, stay as they are.
     */
    CSV(() -> SheetWriter.writer());

    /** Behind a lambda each, so that to print one format is not to load the writers of the others. */
    private final transient Supplier<Writer> writer;

    Format(Supplier<Writer> writer) {
        this.writer = writer;
    }

    String whole(String title, List<Document> documents) {
        return writer.get().whole(title, documents);
    }

    String part(Document document, int level) {
        return writer.get().part(document, level);
    }

    boolean hasPlaceFor(Block block) {
        return writer.get().hasPlaceFor(block);
    }
}
