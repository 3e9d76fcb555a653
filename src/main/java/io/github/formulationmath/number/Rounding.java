package io.github.formulationmath.number;

import java.io.InvalidObjectException;
import java.io.Serial;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A way to lose digits, said in full: a grid and what happens between its lines.
 *
 * <p>{@code rounded = g · whole(x / g)}, where {@code g} is the grid step and {@code whole} the rounding mode. The step
 * is fixed ({@link #toMultipleOf}), a power of ten ({@link #toDecimalPlaces}), or follows the size of the number ({@link
 * #toSignificantDigits}). Ties go to the even multiple unless {@link #with(RoundingMode)} says otherwise.
 *
 * <p>Example: on a display of 0.2 g, 12.3 g lies half-way between 12.2 (61 steps) and 12.4 (62 steps) and is shown as
 * 12.4.
 *
 * <p>Immutable and thread-safe.
 */
public final class Rounding implements Serializable {

    /** Largest number of decimal places or significant digits. */
    public static final int MAX_DIGITS = 1000;

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Rounding NONE = new Rounding(Grid.NONE, Ratio.ONE, 0, RoundingMode.UNNECESSARY);

    private enum Grid {
        NONE,
        STEP,
        PLACES,
        SIGNIFICANT
    }

    private final Grid grid;
    private final Ratio step;
    private final int digits;
    private final RoundingMode mode;

    private Rounding(Grid grid, Ratio step, int digits, RoundingMode mode) {
        this.grid = grid;
        this.step = step;
        this.digits = digits;
        this.mode = mode;
    }

    /**
     * No rounding at all: a number comes back as it is.
     *
     * @return the rounding that changes nothing
     */
    public static Rounding none() {
        return NONE;
    }

    /**
     * To the nearest multiple of a step, ties to the even multiple.
     *
     * @param step the distance of the grid lines, above 0
     * @return the rounding
     * @throws IllegalArgumentException if the step is 0 or negative
     */
    public static Rounding toMultipleOf(Ratio step) {
        if (Objects.requireNonNull(step, "step").signum() <= 0) {
            throw new IllegalArgumentException("step is " + Excerpt.of(step) + ": it must be above 0");
        }
        return new Rounding(Grid.STEP, step, 0, RoundingMode.HALF_EVEN);
    }

    /**
     * To a number of decimal places, ties to the even last digit.
     *
     * @param places digits after the point, from 0 to {@value #MAX_DIGITS}
     * @return the rounding
     * @throws IllegalArgumentException if places lies outside that range
     */
    public static Rounding toDecimalPlaces(int places) {
        requireDigits("places", places, 0);
        return new Rounding(Grid.PLACES, powerOfTen(-places), places, RoundingMode.HALF_EVEN);
    }

    /**
     * To a number of significant digits, ties to the even last digit; 0 stays 0.
     *
     * @param digits significant digits, from 1 to {@value #MAX_DIGITS}
     * @return the rounding
     * @throws IllegalArgumentException if digits lies outside that range
     */
    public static Rounding toSignificantDigits(int digits) {
        requireDigits("digits", digits, 1);
        return new Rounding(Grid.SIGNIFICANT, Ratio.ONE, digits, RoundingMode.HALF_EVEN);
    }

    /**
     * The same grid with another rounding mode.
     *
     * @param newMode what happens between the lines of the grid
     * @return the rounding; {@link #none()} stays as it is
     */
    public Rounding with(RoundingMode newMode) {
        Objects.requireNonNull(newMode, "newMode");
        return grid == Grid.NONE ? this : new Rounding(grid, step, digits, newMode);
    }

    /**
     * The rounding mode.
     *
     * @return what happens between the lines of the grid
     */
    public RoundingMode mode() {
        return mode;
    }

    /**
     * Rounds a number.
     *
     * @param value the number
     * @return the nearest grid line under the mode
     * @throws ArithmeticException if the mode is {@link RoundingMode#UNNECESSARY}, a grid is set and the number lies
     *     between its lines; {@link #none()} never throws
     */
    public Ratio apply(Ratio value) {
        Objects.requireNonNull(value, "value");
        if (grid == Grid.NONE || value.isZero()) {
            return value;
        }
        Ratio g = stepFor(value);
        if (mode == RoundingMode.UNNECESSARY && !value.dividedBy(g).isInteger()) {
            throw new ArithmeticException(Excerpt.of(value) + " is no multiple of " + Excerpt.of(g)
                    + ", and the rounding mode refuses to round it");
        }
        return value.toMultipleOf(g, mode);
    }

    /**
     * The distance of the grid lines around a number.
     *
     * @param value the number; it matters for significant digits alone
     * @return the step, above 0; for {@link #none()} it is 0
     */
    public Ratio stepFor(Ratio value) {
        Objects.requireNonNull(value, "value");
        return switch (grid) {
            case NONE -> Ratio.ZERO;
            case STEP, PLACES -> step;
            case SIGNIFICANT -> powerOfTen(value.isZero() ? 0 : value.magnitude() + 1 - digits);
        };
    }

    /**
     * A number rounded and written as a plain decimal, with the zeros that the grid keeps: 12.5 to two places is {@code
     * 12.50}. A grid without finite decimals is written as a fraction.
     *
     * @param value the number
     * @return the text, readable by {@link Ratio#parse(String)}
     * @throws ArithmeticException as {@link #apply(Ratio)}
     */
    public String format(Ratio value) {
        Ratio shown = apply(value);
        Ratio g = stepFor(shown);
        int places = g.decimalPlaces();
        return grid == Grid.NONE || places < 0 || !shown.isDecimal()
                ? shown.toString()
                : shown.toBigDecimal()
                        .setScale(Math.max(places, 0), RoundingMode.UNNECESSARY)
                        .toPlainString();
    }

    /**
     * Whether a quotient that lies strictly between a floor and the next whole number goes up.
     *
     * @param half how the part above the floor compares with one half
     * @param floor the floor (its last bit decides ties to even)
     * @param negative whether the quotient is below 0
     */
    static boolean roundsUp(int half, long floor, boolean negative, RoundingMode mode) {
        return switch (mode) {
            case UP -> !negative;
            case DOWN -> negative;
            case CEILING -> true;
            case FLOOR -> false;
            case HALF_UP -> half > 0 || half == 0 && !negative;
            case HALF_DOWN -> half > 0 || half == 0 && negative;
            case HALF_EVEN -> half > 0 || half == 0 && (floor & 1) != 0;
            case UNNECESSARY ->
                throw new ArithmeticException(
                        "rounding is necessary: the number lies between " + floor + " and " + (floor + 1));
        };
    }

    private static void requireDigits(String name, int value, int least) {
        if (value < least || value > MAX_DIGITS) {
            throw new IllegalArgumentException(
                    name + " is " + value + ": it must lie between " + least + " and " + MAX_DIGITS);
        }
    }

    private static Ratio powerOfTen(int exponent) {
        return Ratio.ofDecimal(BigDecimal.valueOf(1, -exponent));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Rounding that
                && grid == that.grid
                && digits == that.digits
                && mode == that.mode
                && step.equals(that.step);
    }

    @Override
    public int hashCode() {
        return Objects.hash(grid, step, digits, mode);
    }

    /** In words: {@code to a multiple of 0.1, half even}. */
    @Override
    public String toString() {
        String how = ", " + mode.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return switch (grid) {
            case NONE -> "not rounded";
            case STEP -> "to a multiple of " + step + how;
            case PLACES -> "to " + digits + " decimal places" + how;
            case SIGNIFICANT -> "to " + digits + " significant digits" + how;
        };
    }

    @Serial
    private Object readResolve() throws InvalidObjectException {
        try {
            Rounding grown = switch (grid) {
                case NONE -> NONE;
                case STEP -> toMultipleOf(step);
                case PLACES -> toDecimalPlaces(digits);
                case SIGNIFICANT -> toSignificantDigits(digits);
            };
            return grown.with(mode);
        } catch (IllegalArgumentException | NullPointerException e) {
            throw (InvalidObjectException) new InvalidObjectException("no rounding: " + e.getMessage()).initCause(e);
        }
    }
}
