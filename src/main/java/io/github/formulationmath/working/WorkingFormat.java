package io.github.formulationmath.working;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * How a {@link Working} is printed: the format, how much of it, in which units, with how many digits where an exact number
 * is long, in which words.
 *
 * <pre>{@code
 * WorkingFormat.text().with(Depth.EVERYTHING).format(working)
 * }</pre>
 *
 * <p>A line of 2.5 % in a batch of 400 g, as plain text:
 *
 * <pre>
 * mass of Glycerin
 *   m_3 = w_3 · M
 *       = 2.5 % · 400 g
 *       = 10 g
 * </pre>
 *
 * <p>Each number is exact: a decimal, or a fraction such as 400/3, which is followed by ≈ and a decimal of the chosen number
 * of significant digits. Numbers do not depend on the locale of the machine; a locale is used only if asked for. Every name
 * put in is escaped for its format. Rendering is linear in the size of the working.
 *
 * <p>Immutable and thread-safe.
 */
public final class WorkingFormat {

    private static final int MOST_DIGITS = 100;
    private static final int DEEPEST_HEADING = 5;

    private final Markup markup;
    private final int headingLevel;
    private final Style style;

    private WorkingFormat(Markup markup, int headingLevel, Style style) {
        this.markup = markup;
        this.headingLevel = headingLevel;
        this.style = style;
    }

    private static WorkingFormat of(Markup markup, int headingLevel) {
        return new WorkingFormat(markup, headingLevel, Style.PLAIN);
    }

    private WorkingFormat with(Style newStyle) {
        return new WorkingFormat(markup, headingLevel, newStyle);
    }

    /**
     * Plain text of at most 80 columns. A word or number longer than a line is broken with a backslash.
     *
     * @return the format, with steps, canonical units and 6 significant digits
     */
    public static WorkingFormat text() {
        return of(Markup.TEXT, 1);
    }

    /**
     * Markdown as CommonMark describes it, with tables; arithmetic in fenced blocks.
     *
     * @return the format, with steps, canonical units and 6 significant digits
     */
    public static WorkingFormat markdown() {
        return of(Markup.MARKDOWN, 1);
    }

    /**
     * A LaTeX document with amsmath. Names in letters other than Latin and Greek need LuaLaTeX or XeLaTeX.
     *
     * @return the format, with steps, canonical units and 6 significant digits
     */
    public static WorkingFormat latexDocument() {
        return of(Markup.LATEX_DOCUMENT, 1);
    }

    /**
     * A piece of LaTeX for a document that loads amsmath, longtable and array.
     *
     * @return the format, with steps, canonical units and 6 significant digits
     */
    public static WorkingFormat latexFragment() {
        return of(Markup.LATEX_FRAGMENT, 1);
    }

    /**
     * A whole HTML page with MathML that needs nothing but itself.
     *
     * @return the format, with steps, canonical units and 6 significant digits
     */
    public static WorkingFormat htmlPage() {
        return of(Markup.HTML_PAGE, 1);
    }

    /**
     * An {@code article} element with MathML for a page that has a heading of its own.
     *
     * @return the format, with steps, canonical units and 6 significant digits
     */
    public static WorkingFormat htmlFragment() {
        return of(Markup.HTML_FRAGMENT, 2);
    }

    /**
     * The same format to another depth.
     *
     * @param depth how much to print
     * @return the format
     */
    public WorkingFormat with(Depth depth) {
        return with(style.with(Objects.requireNonNull(depth, "depth")));
    }

    /**
     * The same format with other units.
     *
     * @param units the units
     * @return the format
     */
    public WorkingFormat with(UnitChoice units) {
        return with(style.with(Objects.requireNonNull(units, "units")));
    }

    /**
     * The same format in other words.
     *
     * @param wording the words
     * @return the format
     */
    public WorkingFormat with(Wording wording) {
        return with(style.with(Objects.requireNonNull(wording, "wording")));
    }

    /**
     * The same format with the digits and the decimal sign of a locale.
     *
     * @param locale the locale
     * @return the format
     */
    public WorkingFormat with(Locale locale) {
        return with(style.with(Objects.requireNonNull(locale, "locale")));
    }

    /**
     * The same format with another number of digits after ≈.
     *
     * @param digits significant digits, from 1 to 100
     * @return the format
     * @throws IllegalArgumentException if digits lies outside that range
     */
    public WorkingFormat withSignificantDigits(int digits) {
        requireRange("digits", digits, MOST_DIGITS);
        return with(style.withSignificantDigits(digits));
    }

    /**
     * The same format with the question as a heading of another level, to go below a heading of the caller's. Plain text
     * has no levels.
     *
     * @param level 1 for a heading of a whole page, to 5
     * @return the format
     * @throws IllegalArgumentException if level lies outside that range
     */
    public WorkingFormat withHeadingLevel(int level) {
        requireRange("level", level, DEEPEST_HEADING);
        return new WorkingFormat(markup, level, style);
    }

    private static void requireRange(String name, int value, int most) {
        if (value < 1 || value > most) {
            throw new IllegalArgumentException(name + " is " + value + ": it must lie between 1 and " + most);
        }
    }

    /**
     * Prints a working.
     *
     * @param working the working
     * @return the text; lines end with {@code \n}
     * @throws IllegalArgumentException if the wording lacks a text that the working asks for; the message names the key
     */
    public String format(Working working) {
        Objects.requireNonNull(working, "working");
        return rendering(markup, Filling.NONE).write(working);
    }

    /** Prints a worksheet with some of its values left blank, or its key. */
    String format(Worksheet worksheet, boolean withKey) {
        return format(markup, worksheet, withKey);
    }

    /** Prints several worksheets, or their keys, one behind the other. */
    String format(List<Worksheet> worksheets, boolean withKey) {
        if (Objects.requireNonNull(worksheets, "worksheets").isEmpty()) {
            throw new IllegalArgumentException("worksheets is empty: give at least one");
        }
        List<String> parts = worksheets.stream()
                .map(worksheet -> format(markup.part(), worksheet, withKey))
                .toList();
        Words words = new Words(style.wording());
        return markup.joined(words, words.say(withKey ? "worksheet.keys" : "worksheet.sheets"), parts);
    }

    private String format(Markup in, Worksheet worksheet, boolean withKey) {
        if (style.depth() == Depth.ANSWER) {
            throw new IllegalArgumentException("depth is ANSWER: a worksheet needs the steps;"
                    + " print it with(Depth.STEPS) or with(Depth.EVERYTHING)");
        }
        return rendering(in, Filling.of(worksheet, withKey)).write(worksheet);
    }

    private Rendering rendering(Markup in, Filling filling) {
        Words words = new Words(style.wording());
        return new Rendering(in.page(words, headingLevel), style, words, filling);
    }
}
