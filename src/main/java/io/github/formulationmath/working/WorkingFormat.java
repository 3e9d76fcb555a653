package io.github.formulationmath.working;

import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

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

    private final Markup markup;
    private final Depth depth;
    private final UnitChoice units;
    private final int significantDigits;
    private final @Nullable Locale locale;
    private final Wording wording;

    private WorkingFormat(
            Markup markup,
            Depth depth,
            UnitChoice units,
            int significantDigits,
            @Nullable Locale locale,
            Wording wording) {
        this.markup = markup;
        this.depth = depth;
        this.units = units;
        this.significantDigits = significantDigits;
        this.locale = locale;
        this.wording = wording;
    }

    private static WorkingFormat of(Markup markup) {
        return new WorkingFormat(markup, Depth.STEPS, UnitChoice.canonical(), 6, null, Wording.english());
    }

    /**
     * Plain text of at most 80 columns.
     *
     * @return the format, with steps, canonical units and 6 significant digits
     */
    public static WorkingFormat text() {
        return of(Markup.TEXT);
    }

    /**
     * The same format to another depth.
     *
     * @param newDepth how much to print
     * @return the format
     */
    public WorkingFormat with(Depth newDepth) {
        return new WorkingFormat(
                markup, Objects.requireNonNull(newDepth, "newDepth"), units, significantDigits, locale, wording);
    }

    /**
     * The same format with other units.
     *
     * @param newUnits the units
     * @return the format
     */
    public WorkingFormat with(UnitChoice newUnits) {
        return new WorkingFormat(
                markup, depth, Objects.requireNonNull(newUnits, "newUnits"), significantDigits, locale, wording);
    }

    /**
     * The same format in other words.
     *
     * @param newWording the words
     * @return the format
     */
    public WorkingFormat with(Wording newWording) {
        return new WorkingFormat(
                markup, depth, units, significantDigits, locale, Objects.requireNonNull(newWording, "newWording"));
    }

    /**
     * The same format with the digits and the decimal sign of a locale.
     *
     * @param newLocale the locale
     * @return the format
     */
    public WorkingFormat with(Locale newLocale) {
        return new WorkingFormat(
                markup, depth, units, significantDigits, Objects.requireNonNull(newLocale, "newLocale"), wording);
    }

    /**
     * The same format with another number of digits after ≈.
     *
     * @param digits significant digits, from 1 to 100
     * @return the format
     * @throws IllegalArgumentException if digits lies outside that range
     */
    public WorkingFormat withSignificantDigits(int digits) {
        if (digits < 1 || digits > MOST_DIGITS) {
            throw new IllegalArgumentException("digits is " + digits + ": it must lie between 1 and " + MOST_DIGITS);
        }
        return new WorkingFormat(markup, depth, units, digits, locale, wording);
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
        Words words = new Words(wording);
        Numerals numerals = new Numerals(units, significantDigits, locale, step -> false);
        return new Rendering(markup.page(words), depth, words, numerals).write(working);
    }
}
