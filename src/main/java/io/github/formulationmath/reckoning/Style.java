package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import java.util.Collection;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How a {@link Working} is told, whatever the format: how much of it, in which units, with how many digits where an exact
 * number is long, in which words.
 *
 * <pre>{@code
 * working.document(Style.everything()).print(Format.TEXT)
 * }</pre>
 *
 * <p>Each number is exact: a decimal, or a fraction such as 400/3. One that is not short is followed by ≈ and a decimal of the
 * chosen number of significant digits. Numbers do not depend on the locale of the machine: they follow that of the wording, or
 * the one asked for.
 *
 * <p>Immutable and thread-safe.
 */
public final class Style {

    /** How much of a working is printed. */
    enum Depth {
        /** What was asked and the answer. */
        ANSWER,
        /** Also the given values, each computed step and the assumptions. */
        STEPS,
        /** Also where the given values come from, each comparison, and what each rounding changed. */
        EVERYTHING
    }

    private static final int MOST_DIGITS = 100;
    private static final Style PLAIN = new Style(
            Depth.STEPS, UnitChoice.canonical(), NumberText.DIGITS, null, Wording.english(), Filling.NONE, Digits.BOTH);

    private final Depth depth;
    private final UnitChoice units;
    private final int significantDigits;
    private final @Nullable Locale locale;
    private final Wording wording;
    private final Filling filling;
    private final Digits digits;

    private Style(
            Depth depth,
            UnitChoice units,
            int significantDigits,
            @Nullable Locale locale,
            Wording wording,
            Filling filling,
            Digits digits) {
        this.digits = digits;
        this.depth = depth;
        this.units = units;
        this.significantDigits = significantDigits;
        this.locale = locale;
        this.wording = wording;
        this.filling = filling;
    }

    /**
     * What is asked, the given values, each computed step, the assumptions and the answer.
     *
     * @return the style, with canonical units, 6 significant digits and English words
     */
    public static Style steps() {
        return PLAIN;
    }

    /**
     * What is asked and the answer alone.
     *
     * @return the style, with canonical units, 6 significant digits and English words
     */
    public static Style answer() {
        return PLAIN.with(Depth.ANSWER);
    }

    /**
     * The steps, and where the given values come from, each comparison, and what each rounding changed.
     *
     * @return the style, with canonical units, 6 significant digits and English words
     */
    public static Style everything() {
        return PLAIN.with(Depth.EVERYTHING);
    }

    Style with(Depth newDepth) {
        return new Style(newDepth, units, significantDigits, locale, wording, filling, digits);
    }

    /**
     * The same style with another unit for all numbers of a kind. They are converted exactly: with {@code Style.steps().in(Kind.MASS,
     * "oz", Ratio.parse("28.349523125"))} 56.69904625 g is printed as 2 oz and 100 g as 160000000/45359237 oz ≈ 3.52740 oz. Squares
     * of masses and money per mass follow the unit of mass unless they are chosen themselves.
     *
     * @param kind the kind
     * @param unit the unit as printed; for money the name of the currency
     * @param size how much of the canonical unit one of it is, above 0
     * @return the style
     * @throws IllegalArgumentException if the unit is blank, holds spaces or digits or is longer than 24 characters, or if
     *     the size is 0 or negative
     */
    public Style in(Kind kind, String unit, Ratio size) {
        return new Style(
                depth,
                units.with(
                        Objects.requireNonNull(kind, "kind"),
                        Objects.requireNonNull(unit, "unit"),
                        Objects.requireNonNull(size, "size")),
                significantDigits,
                locale,
                wording,
                filling,
                digits);
    }

    /**
     * The same style with the unit of a quantity for all numbers of a kind: {@code Style.steps().in(Kind.MASS, Amount.mass("1 oz"))}.
     *
     * @param kind the kind
     * @param unit a quantity in the unit; how many of it does not matter
     * @return the style
     */
    public Style in(Kind kind, InUnit unit) {
        Objects.requireNonNull(unit, "unit");
        return in(kind, unit.symbol(), unit.unitSize());
    }

    /**
     * The same style with the digits and the decimal sign of a locale.
     *
     * @param newLocale the locale
     * @return the style
     */
    public Style with(Locale newLocale) {
        return new Style(
                depth,
                units,
                significantDigits,
                Objects.requireNonNull(newLocale, "newLocale"),
                wording,
                filling,
                digits);
    }

    /**
     * The same style in other words.
     *
     * @param newWording the words
     * @return the style
     */
    public Style with(Wording newWording) {
        return new Style(
                depth,
                units,
                significantDigits,
                locale,
                Objects.requireNonNull(newWording, "newWording"),
                filling,
                digits);
    }

    /**
     * The same style with another number of digits after ≈.
     *
     * @param many significant digits, from 1 to 100
     * @return the style
     * @throws IllegalArgumentException if the number lies outside that range
     */
    public Style withSignificantDigits(int many) {
        if (many < 1 || many > MOST_DIGITS) {
            throw new IllegalArgumentException("digits is " + many + ": it must lie between 1 and " + MOST_DIGITS);
        }
        return new Style(depth, units, many, locale, wording, filling, digits);
    }

    /**
     * The same style with decimals alone: where the exact number is a fraction or long, the shorter decimal stands in its place
     * everywhere, and the line has ≈ for its sign. A comparison that the shorter decimals would not bear out keeps its exact
     * numbers. What is computed stays exact.
     *
     * @return the style, for readers who do not work with fractions
     */
    public Style inDecimals() {
        return new Style(depth, units, significantDigits, locale, wording, filling, Digits.DECIMALS);
    }

    /**
     * The same style with exact numbers alone, fractions as fractions, and no decimal beside them.
     *
     * @return the style
     */
    public Style inFractions() {
        return new Style(depth, units, significantDigits, locale, wording, filling, Digits.EXACT);
    }

    /**
     * The same style with a line to write on in place of the values of some steps, wherever they stand.
     *
     * @param steps the steps
     * @return the style
     */
    public Style leavingBlank(Collection<Step> steps) {
        return new Style(
                depth,
                units,
                significantDigits,
                locale,
                wording,
                new Filling(Set.copyOf(Objects.requireNonNull(steps, "steps")), false),
                digits);
    }

    /**
     * The same style with the values of some steps in bold type, where the format has it.
     *
     * @param steps the steps
     * @return the style
     */
    public Style emphasizing(Collection<Step> steps) {
        return new Style(
                depth,
                units,
                significantDigits,
                locale,
                wording,
                new Filling(Set.copyOf(Objects.requireNonNull(steps, "steps")), true),
                digits);
    }

    /**
     * Whether the answer alone is told.
     *
     * @return true for {@link #answer()}
     */
    public boolean isAnswerOnly() {
        return depth == Depth.ANSWER;
    }

    /**
     * The words.
     *
     * @return the wording
     */
    public Wording wording() {
        return wording;
    }

    /**
     * A value in the unit of a step, short: a decimal; where the exact value is none or is long, a shorter one after ≈.
     *
     * @param value the value in the canonical unit
     * @param like the step
     * @return the text, with the digits of the locale
     */
    public String text(Ratio value, Step like) {
        return new Numerals(this).text(Objects.requireNonNull(value, "value"), Objects.requireNonNull(like, "like"));
    }

    /**
     * A bare number, exactly.
     *
     * @param value the number
     * @return the text, with the digits of the locale
     */
    public String text(Ratio value) {
        return new Numerals(this).text(Objects.requireNonNull(value, "value"));
    }

    Depth depth() {
        return depth;
    }

    /** The same style; where no unit is chosen, another choice. */
    Style orIn(UnitChoice others) {
        return new Style(depth, units.orElse(others), significantDigits, locale, wording, filling, digits);
    }

    UnitChoice units() {
        return units;
    }

    int significantDigits() {
        return significantDigits;
    }

    /** The locale that was asked for, or that of the words. */
    Locale locale() {
        return locale == null ? wording.locale() : locale;
    }

    Digits digits() {
        return digits;
    }

    Filling filling() {
        return filling;
    }

    /** How much is told, with how many digits: {@code STEPS, 6 digits}. */
    @Override
    public String toString() {
        return depth + ", " + significantDigits + " digits"
                + (digits == Digits.BOTH ? "" : digits == Digits.DECIMALS ? ", decimals" : ", fractions")
                + (locale == null ? "" : ", " + locale);
    }

    /** What stands for a number that is no short decimal. */
    enum Digits {
        BOTH,
        DECIMALS,
        EXACT
    }

    /** What a printed working does with some of its values: it leaves them blank or, in a key, makes them stand out. */
    record Filling(Set<Step> steps, boolean filledIn) {

        static final Filling NONE = new Filling(Set.of(), false);

        boolean isBlank(Term term) {
            return !filledIn && isAsked(term);
        }

        boolean isFilledIn(Term term) {
            return filledIn && isAsked(term);
        }

        private boolean isAsked(Term term) {
            return term instanceof Step step && steps.contains(step);
        }
    }
}
