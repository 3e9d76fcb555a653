package io.github.formulationmath.number;

import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Numbers as people read them, in one way for every page and every prompt: exact where that is a decimal of at most {@value
 * #LONGEST} characters, else with {@value #DIGITS} significant digits behind the sign ≈.
 *
 * <p>Examples: 41/40 is {@code 1.025}; 2/3 is {@code ≈ 0.666667}; the share 2/3 is {@code ≈ 66.6667 %}; in a unit and with
 * its exact value before it, {@code 2/3 g ≈ 0.666667 g}. The number alone, without loss, is {@link Ratio#toString}.
 */
public final class NumberText {

    /** Significant digits of a number that is not printed exactly. */
    public static final int DIGITS = 6;

    private static final int LONGEST = 10;

    /** Significant digits that a least or greatest value is printed with: at least so many, and at most. */
    private static final int FEWEST = 4;

    private static final int MOST = 12;
    private static final Rounding FEW = Rounding.toSignificantDigits(DIGITS);

    private NumberText() {}

    /**
     * Whether a number is printed exactly.
     *
     * @param value the number
     * @return true for a decimal of at most 10 characters, a minus and the point among them
     */
    public static boolean isShort(Ratio value) {
        return Objects.requireNonNull(value, "value").isDecimal()
                && value.toString().length() <= LONGEST;
    }

    /**
     * A number.
     *
     * @param value the number
     * @return the exact decimal, or ≈ and one of 6 significant digits, half to even; with the sign − if it is below 0
     */
    public static String of(Ratio value) {
        return text(Objects.requireNonNull(value, "value"), "");
    }

    /**
     * A number with its unit.
     *
     * @param value the number in that unit
     * @param unit the unit as printed
     * @return {@code 1.025 g} or {@code ≈ 0.666667 g}
     */
    public static String of(Ratio value, String unit) {
        return inUnit(of(value), unit);
    }

    /**
     * A deviation with its sign and unit.
     *
     * @param value the number in that unit
     * @param unit the unit as printed
     * @return {@code +1.025 g}, {@code ≈ −0.666667 g} or {@code 0 g}
     */
    public static String signed(Ratio value, String unit) {
        return inUnit(text(Objects.requireNonNull(value, "value"), "+"), unit);
    }

    /**
     * A number with its unit, without loss.
     *
     * @param value the number in that unit
     * @param unit the unit as printed
     * @return {@code 1.025 g} or {@code 2/3 g ≈ 0.666667 g}
     */
    public static String exact(Ratio value, String unit) {
        return isShort(value) ? of(value, unit) : inUnit(value.toString(), unit) + " " + of(value, unit);
    }

    /** A pure number has no unit, and no space behind it. */
    private static String inUnit(String number, String unit) {
        return Objects.requireNonNull(unit, "unit").isEmpty() ? number : number + " " + unit;
    }

    /**
     * A least value as a number that passes itself: exact where that is short, else the next one above of 4 significant digits, or
     * of so many as it takes. Never below the value, and at most a thousandth above it.
     *
     * <p>Example: 125/42 oz is told as {@code 2.977 oz}; the nearest of 6 digits, 2.97619 oz, is too little.
     *
     * @param value the least number in that unit
     * @param unit the unit as printed
     * @param passes whether a number will do
     * @return the text; the exact number and the nearest of 6 digits, as {@link #exact}, if none of at most 12 digits passes
     */
    public static String least(Ratio value, String unit, Predicate<Ratio> passes) {
        return end(value, unit, RoundingMode.CEILING, passes);
    }

    /**
     * A greatest value as a number that passes itself: as {@link #least}, but never above the value.
     *
     * @param value the greatest number in that unit
     * @param unit the unit as printed
     * @param passes whether a number will do
     * @return the text
     */
    public static String greatest(Ratio value, String unit, Predicate<Ratio> passes) {
        return end(value, unit, RoundingMode.FLOOR, passes);
    }

    /**
     * A least share in percent that passes itself, as {@link #least}.
     *
     * @param share the least share as a plain fraction
     * @param passes whether a share, as a plain fraction, will do
     * @return the text
     */
    public static String leastPercent(Ratio share, Predicate<Ratio> passes) {
        Objects.requireNonNull(passes, "passes");
        return least(
                Objects.requireNonNull(share, "share").times(100), "%", shown -> passes.test(shown.dividedBy(100)));
    }

    /**
     * A greatest share in percent that passes itself, as {@link #greatest}.
     *
     * @param share the greatest share as a plain fraction
     * @param passes whether a share, as a plain fraction, will do
     * @return the text
     */
    public static String greatestPercent(Ratio share, Predicate<Ratio> passes) {
        Objects.requireNonNull(passes, "passes");
        return greatest(
                Objects.requireNonNull(share, "share").times(100), "%", shown -> passes.test(shown.dividedBy(100)));
    }

    private static String end(Ratio value, String unit, RoundingMode mode, Predicate<Ratio> passes) {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(passes, "passes");
        return isShort(value)
                ? of(value, unit)
                : printable(value, mode, passes)
                        .map(shown -> inUnit((shown.signum() < 0 ? "−" : "") + shown.abs(), unit))
                        .orElseGet(() -> exact(value, unit));
    }

    private static Optional<Ratio> printable(Ratio value, RoundingMode mode, Predicate<Ratio> passes) {
        for (int digits = FEWEST; digits <= MOST; digits++) {
            Ratio shown = Rounding.toSignificantDigits(digits).with(mode).apply(value);
            if (passes.test(shown)) {
                return Optional.of(shown);
            }
        }
        return Optional.empty();
    }

    /**
     * A share in percent with so many digits, 6 at least, that it lies on the same side of another as it truly does: 1.000000004 %
     * is not told as 1 % beside a limit of 1 %.
     *
     * @param share the share as a plain fraction
     * @param other what it is compared with
     * @return the share in percent, as {@link #percent(Ratio)}
     */
    public static String percentBeside(Ratio share, Ratio other) {
        Ratio shown = Objects.requireNonNull(share, "share").times(100);
        Ratio mark = Objects.requireNonNull(other, "other").times(100);
        int side = shown.compareTo(mark);
        if (isShort(shown) || FEW.apply(shown).compareTo(mark) == side) {
            return of(shown, "%");
        }
        for (int digits = DIGITS + 1; digits <= Rounding.MAX_DIGITS; digits++) {
            Rounding more = Rounding.toSignificantDigits(digits);
            if (more.apply(shown).compareTo(mark) == side) {
                return "≈ " + more.format(shown) + " %";
            }
        }
        return percentExactly(share);
    }

    private static String text(Ratio value, String plus) {
        String sign = value.signum() < 0 ? "−" : value.isZero() ? "" : plus;
        Ratio size = value.abs();
        return isShort(value) ? sign + size : "≈ " + sign + FEW.format(size);
    }

    /**
     * A share in percent.
     *
     * @param share the share as a plain fraction
     * @return {@code 4 %} or {@code ≈ 66.6667 %}
     */
    public static String percent(Ratio share) {
        return of(Objects.requireNonNull(share, "share").times(100), "%");
    }

    /**
     * A share in percent, without loss.
     *
     * @param share the share as a plain fraction
     * @return {@code 4 %} or {@code 200/3 % ≈ 66.6667 %}
     */
    public static String percentExactly(Ratio share) {
        return exact(Objects.requireNonNull(share, "share").times(100), "%");
    }

    /**
     * A share in percent with the digits that a rounding leaves.
     *
     * @param share the share as a plain fraction
     * @param digits how a number of percent is rounded
     * @return {@code 66.67 %}
     */
    public static String percent(Ratio share, Rounding digits) {
        return digits.format(Objects.requireNonNull(share, "share").times(100)) + " %";
    }

    /**
     * The shares between two ends in percent, rounded outwards.
     *
     * @param least the least share as a plain fraction
     * @param greatest the greatest
     * @param digits to which digits of a number of percent; its mode is not asked
     * @return {@code 1.23 – 1.25 %}
     */
    public static String percentFromTo(Ratio least, Ratio greatest, Rounding digits) {
        return digits.with(RoundingMode.FLOOR)
                        .format(Objects.requireNonNull(least, "least").times(100)) + " – "
                + percent(Objects.requireNonNull(greatest, "greatest"), digits.with(RoundingMode.CEILING));
    }

    /**
     * A share in percent and the interval it surely lies in.
     *
     * @param share the share as a plain fraction
     * @param bounds the interval of the share, with a lower end
     * @return {@code 1.008 % in [0.99, 1.03] %}, the ends rounded outwards; the share alone if that is all the interval
     *     holds; {@code 1.008 %, at least 0.99 %} if nothing bounds it above
     */
    public static String percent(Ratio share, Bounds bounds) {
        if (Objects.requireNonNull(bounds, "bounds").equals(Bounds.point(Objects.requireNonNull(share, "share")))) {
            return percent(share);
        }
        Ratio lower = end(bounds.lower().orElseThrow(), RoundingMode.FLOOR);
        return percent(share)
                + bounds.upper()
                        .map(upper -> " in [" + lower + ", " + end(upper, RoundingMode.CEILING) + "] %")
                        .orElse(", at least " + lower + " %");
    }

    private static Ratio end(Ratio share, RoundingMode outwards) {
        return FEW.with(outwards).apply(share.times(100));
    }
}
