package io.github.formulationmath.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What is to be said to a reader, in no format yet: a title and, in order, headings, paragraphs, cautions, facts, tables and
 * arithmetic. All are final words; nothing is looked up later.
 *
 * <p>Example:
 *
 * <pre>{@code
 * Document.titled("Oat lotion", "en")
 *     .fact("Batch", "400 g")
 *     .heading("Phase A")
 *     .table(List.of(Column.name("ingredient"), Column.number("mass")), List.of(List.of("Glycerin", "12 g")))
 *     .print(Format.MARKDOWN)
 * }</pre>
 *
 * <p>Texts are data: whatever a format would read as its own mark is printed as it stands, and no name can break a line or
 * turn the direction of writing. Printing is linear in the size of the document.
 *
 * <p>Immutable and thread-safe; each method returns a longer document.
 */
public final class Document {

    private static final Set<String> RIGHT_TO_LEFT =
            Set.of("ar", "arc", "ckb", "dv", "fa", "he", "iw", "ji", "ps", "sd", "ug", "ur", "yi");

    private static final int DEEPEST_TITLE = 5;

    private final String title;
    private final String language;

    /** What comes before the last block; so that a longer document copies nothing. */
    private final @Nullable Document before;

    private final @Nullable Block last;

    private Document(String title, String language, @Nullable Document before, @Nullable Block last) {
        this.title = title;
        this.language = language;
        this.before = before;
        this.last = last;
    }

    /**
     * A document of a title alone.
     *
     * @param title the title
     * @param language the language of its words as BCP 47 has it, for example {@code en}; it tells the direction too
     * @return the document
     */
    public static Document titled(String title, String language) {
        return new Document(
                clean(Objects.requireNonNull(title, "title")),
                Objects.requireNonNull(language, "language"),
                null,
                null);
    }

    /**
     * A text as documents print it: line ends and other controls become spaces, controls of the writing direction become the
     * replacement character U+FFFD, and a text with letters written from right to left stands between the isolating marks
     * U+2068 and U+2069, so that it cannot turn round what stands beside it. To clean it again changes nothing.
     *
     * @param text any text
     * @return one line
     */
    public static String clean(String text) {
        return Clean.text(Objects.requireNonNull(text, "text"));
    }

    /**
     * Begins a section.
     *
     * @param text its heading
     * @return the longer document
     */
    public Document heading(String text) {
        return with(new Block.Heading(text));
    }

    /**
     * A paragraph.
     *
     * @param text the paragraph
     * @return the longer document
     */
    public Document paragraph(String text) {
        return with(new Block.Paragraph(text));
    }

    /**
     * A warning, which every format makes stand out.
     *
     * @param text the warning
     * @return the longer document
     */
    public Document caution(String text) {
        return with(new Block.Caution(text));
    }

    /**
     * A name and what stands beside it; those that follow one another stand in one list.
     *
     * @param name the name
     * @param value what stands beside it
     * @return the longer document
     */
    public Document fact(String name, String value) {
        Block.Fact fact = new Block.Fact(name, value);
        return last instanceof Block.Facts facts
                ? new Document(title, language, before, facts.with(fact))
                : with(new Block.Facts(List.of(fact)));
    }

    /**
     * A table. In plain text one without numbers is a list of at most 80 columns.
     *
     * @param columns the columns, at least one
     * @param rows the rows, each with as many cells as there are columns
     * @return the longer document
     * @throws IllegalArgumentException if there is no column, or a row has another number of cells
     */
    public Document table(List<Column> columns, List<List<String>> rows) {
        return with(new Block.Table(
                Objects.requireNonNull(columns, "columns"),
                Objects.requireNonNull(rows, "rows").stream()
                        .map(cells -> new Block.Row(null, cells))
                        .toList()));
    }

    /**
     * A table whose first column holds formulas.
     *
     * @param columns the columns, the first for the formulas
     * @param values the formulas, one for each row
     * @param rows the words behind each of them
     * @return the longer document
     * @throws IllegalArgumentException if there are more or fewer rows than formulas, or a row has another number of cells
     */
    public Document values(List<Column> columns, List<Expression> values, List<List<String>> rows) {
        Objects.requireNonNull(columns, "columns");
        if (Objects.requireNonNull(values, "values").size()
                != Objects.requireNonNull(rows, "rows").size()) {
            throw new IllegalArgumentException(
                    "values has " + values.size() + " formulas for " + rows.size() + " rows: give one for each");
        }
        List<Block.Row> cells = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            cells.add(Block.Row.of(values.get(i), rows.get(i)));
        }
        return with(new Block.Table(columns, cells));
    }

    /**
     * One step of several: what it is about, its lines of arithmetic, and what qualifies them.
     *
     * @param text what the lines are about
     * @param lines the lines, each a relation
     * @param remark what qualifies them; empty for nothing
     * @return the longer document
     */
    public Document step(String text, List<Expression> lines, String remark) {
        return with(new Block.Equations(text, lines, remark, true));
    }

    /**
     * Lines of arithmetic that stand by themselves.
     *
     * @param text what they are about; empty for nothing
     * @param lines the lines, each a relation
     * @return the longer document
     */
    public Document equations(String text, List<Expression> lines) {
        return with(new Block.Equations(text, lines, "", false));
    }

    /**
     * Words between the steps.
     *
     * @param lead what kind of words they are
     * @param text the words
     * @return the longer document
     */
    public Document note(String lead, String text) {
        return with(new Block.Note(Objects.requireNonNull(lead, "lead") + beforeColon(), text));
    }

    /**
     * Asks for the value of a symbol; {@link #choice} gives the answers to choose from.
     *
     * @param symbol the symbol
     * @param text what it stands for
     * @return the longer document
     */
    public Document question(Expression symbol, String text) {
        return with(new Block.Question(Objects.requireNonNull(symbol, "symbol"), text, List.of()));
    }

    /**
     * Asks in words alone, with a box to tick at each answer; {@link #choice} gives the answers to choose from.
     *
     * @param text what is asked; empty if that stands above
     * @return the longer document
     */
    public Document question(String text) {
        return with(new Block.Question(null, text, List.of()));
    }

    /**
     * Ruled lines to write on by hand, 8 mm apart on paper.
     *
     * @param labels for each line the words that it begins with; empty for none
     * @return the longer document
     */
    public Document writingLines(List<String> labels) {
        return with(new Block.Lines(labels));
    }

    /**
     * Blanks to fill in by hand, each with its name: who, when, which lot. In HTML the last one is a wide one, for notes.
     *
     * @param labels the names of the blanks
     * @return the longer document
     */
    public Document fields(List<String> labels) {
        return with(new Block.Fields(labels));
    }

    /**
     * An answer to the question before it.
     *
     * @param answer the answer
     * @param isRight whether it is to stand out as the right one
     * @param comment what is said of it; empty for nothing
     * @return the longer document
     * @throws IllegalStateException if there is no question before it
     */
    public Document choice(String answer, boolean isRight, String comment) {
        Block.Choice choice = new Block.Choice(answer, isRight, comment, beforeColon());
        if (last instanceof Block.Question question) {
            return new Document(title, language, before, question.with(choice));
        }
        throw new IllegalStateException("no question stands before the answer " + answer);
    }

    /** In French a space that does not break stands before a colon (Lexique des règles typographiques, Imprimerie nationale). */
    private String beforeColon() {
        return Locale.forLanguageTag(language).getLanguage().equals("fr") ? "\u00A0" : "";
    }

    /**
     * The blocks of another document behind those of this one; its title is left out.
     *
     * @param other the other document
     * @return the longer document
     */
    public Document followedBy(Document other) {
        Document all = this;
        for (Block block : Objects.requireNonNull(other, "other").blocks()) {
            all = all.with(block);
        }
        return all;
    }

    private Document with(Block block) {
        return new Document(title, language, this, block);
    }

    /**
     * The title.
     *
     * @return the title, cleaned
     */
    public String title() {
        return title;
    }

    /**
     * The language of the words.
     *
     * @return the language as BCP 47 has it
     */
    public String language() {
        return language;
    }

    /**
     * Whether the language is written from right to left.
     *
     * @return true for Arabic, Hebrew, Persian and their like
     */
    public boolean isRightToLeft() {
        return RIGHT_TO_LEFT.contains(
                Locale.forLanguageTag(language).getLanguage().toLowerCase(Locale.ROOT));
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        for (Document each = this; each != null && each.last != null; each = each.before) {
            blocks.add(each.last);
        }
        Collections.reverse(blocks);
        return blocks;
    }

    /**
     * Prints the document as a whole.
     *
     * @param format the format
     * @return the text; lines end with a line feed, in CSV with carriage return and line feed
     */
    public String print(Format format) {
        return Objects.requireNonNull(format, "format").whole(title, List.of(this));
    }

    /**
     * Prints the document as a part of a page of the caller's: HTML without the page around it, LaTeX without the preamble
     * (the document has to load amsmath, longtable and array).
     *
     * @param format the format
     * @param level the level of the title, 1 for that of a whole page, to 5; headings are one deeper. Plain text has no
     *     levels
     * @return the text
     * @throws IllegalArgumentException if the level lies outside that range
     */
    public String printPart(Format format, int level) {
        Objects.requireNonNull(format, "format");
        if (level < 1 || level > DEEPEST_TITLE) {
            throw new IllegalArgumentException("level is " + level + ": it must lie between 1 and " + DEEPEST_TITLE);
        }
        return format.part(this, level);
    }

    /**
     * Prints several documents in one text. In HTML and LaTeX each begins a page of its own.
     *
     * @param title the title of the whole, where the format has one
     * @param documents the documents, at least one; the first tells the language of the whole
     * @param format the format
     * @return the text
     * @throws IllegalArgumentException if there are none
     */
    public static String printAll(String title, List<Document> documents, Format format) {
        String cleaned = clean(title);
        Objects.requireNonNull(format, "format");
        if (Objects.requireNonNull(documents, "documents").isEmpty()) {
            throw new IllegalArgumentException("documents is empty: give at least one");
        }
        return format.whole(cleaned, documents);
    }

    /**
     * What a format has no place for.
     *
     * @param format the format
     * @return how many blocks of each kind it leaves out, in words for a log: {@code 1 Caution, 3 Heading}; empty if it
     *     prints everything
     */
    public String leftOut(Format format) {
        Objects.requireNonNull(format, "format");
        return blocks().stream()
                .filter(block -> !format.hasPlaceFor(block))
                .collect(Collectors.groupingBy(
                        block -> block.getClass().getSimpleName(), TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .map(kind -> kind.getValue() + " " + kind.getKey())
                .collect(Collectors.joining(", "));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Document that
                && title.equals(that.title)
                && language.equals(that.language)
                && blocks().equals(that.blocks());
    }

    @Override
    public int hashCode() {
        return Objects.hash(title, language, blocks());
    }

    /** The document as plain text, for reading at a prompt. */
    @Override
    public String toString() {
        return print(Format.TEXT);
    }

    /**
     * A column of a table.
     *
     * @param name the name at its head
     * @param use what stands in it
     */
    public record Column(String name, Use use) {

        /** What stands in a column, and how it is set on paper. */
        public enum Use {
            /** Words. */
            TEXT,
            /** What names the row. */
            NAME,
            /** Numbers, flush right, never broken. */
            NUMBER,
            /** Numbers that are read at arm's length; on a page they are large. */
            READING,
            /** Numbers to look up; where a page is narrow they go below the name of the row. */
            DETAIL,
            /** {@code [ ]}: a box to tick; on a page it is drawn. */
            TICK,
            /** Nothing: room to write on by hand. Only pages have it, other formats leave the column out. */
            ROOM
        }

        /**
         * Cleans the name.
         *
         * @param name the name at its head
         * @param use what stands in it
         */
        public Column {
            name = Clean.text(Objects.requireNonNull(name, "name"));
            Objects.requireNonNull(use, "use");
        }

        /**
         * Whether it holds numbers, which are set flush right.
         *
         * @return true for numbers of all kinds
         */
        public boolean isNumber() {
            return use == Use.NUMBER || use == Use.READING || use == Use.DETAIL;
        }

        /**
         * Whether what stands in it names the row.
         *
         * @return true for one column at most
         */
        public boolean namesRow() {
            return use == Use.NAME;
        }

        /**
         * A column of words.
         *
         * @param name its name
         * @return the column
         */
        public static Column text(String name) {
            return new Column(name, Use.TEXT);
        }

        /**
         * The column that names the rows.
         *
         * @param name its name
         * @return the column
         */
        public static Column name(String name) {
            return new Column(name, Use.NAME);
        }

        /**
         * A column of numbers.
         *
         * @param name its name
         * @return the column
         */
        public static Column number(String name) {
            return new Column(name, Use.NUMBER);
        }

        /**
         * A column of another use.
         *
         * @param name its name
         * @param use what stands in it
         * @return the column
         */
        public static Column of(String name, Use use) {
            return new Column(name, use);
        }
    }
}
