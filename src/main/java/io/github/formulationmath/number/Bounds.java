package io.github.formulationmath.number;

import java.io.InvalidObjectException;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A closed interval of numbers, either end of which may be missing.
 *
 * <table>
 * <caption>What each factory holds</caption>
 * <tr><th>notation</th><th>numbers x with</th><th>factory</th></tr>
 * <tr><td>[a, b]</td><td>a ≤ x ≤ b</td><td>{@link #closed closed(a, b)}</td></tr>
 * <tr><td>[a, ∞)</td><td>a ≤ x</td><td>{@link #atLeast atLeast(a)}</td></tr>
 * <tr><td>(−∞, b]</td><td>x ≤ b</td><td>{@link #atMost atMost(b)}</td></tr>
 * <tr><td>[a, a]</td><td>x = a</td><td>{@link #point point(a)}</td></tr>
 * <tr><td>(−∞, ∞)</td><td>all</td><td>{@link #all all()}</td></tr>
 * </table>
 *
 * <p>Example: {@code closed(Ratio.of(1), Ratio.of(3)).intersection(atLeast(Ratio.of(2)))} is {@code [2, 3]}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Bounds implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final @Nullable Ratio lower;
    private final @Nullable Ratio upper;

    private Bounds(@Nullable Ratio lower, @Nullable Ratio upper) {
        this.lower = lower;
        this.upper = upper;
    }

    /**
     * The interval from one number to another, both included.
     *
     * @param lower the lower end
     * @param upper the upper end, not below the lower
     * @return the interval
     * @throws IllegalArgumentException if the ends are the wrong way round
     */
    public static Bounds closed(Ratio lower, Ratio upper) {
        if (Objects.requireNonNull(lower, "lower").compareTo(Objects.requireNonNull(upper, "upper")) > 0) {
            throw new IllegalArgumentException("lower end " + Excerpt.of(lower) + " lies above upper end "
                    + Excerpt.of(upper) + ": the two may have been exchanged");
        }
        return new Bounds(lower, upper);
    }

    /**
     * A number and all above it.
     *
     * @param lower the lower end
     * @return the interval
     */
    public static Bounds atLeast(Ratio lower) {
        return new Bounds(Objects.requireNonNull(lower, "lower"), null);
    }

    /**
     * A number and all below it.
     *
     * @param upper the upper end
     * @return the interval
     */
    public static Bounds atMost(Ratio upper) {
        return new Bounds(null, Objects.requireNonNull(upper, "upper"));
    }

    /**
     * All numbers.
     *
     * @return the interval without ends
     */
    public static Bounds all() {
        return new Bounds(null, null);
    }

    /**
     * One number alone.
     *
     * @param value the number
     * @return the interval from it to itself
     */
    public static Bounds point(Ratio value) {
        return closed(Objects.requireNonNull(value, "value"), value);
    }

    /**
     * The lower end, if there is one.
     *
     * @return the smallest number of the interval
     */
    public Optional<Ratio> lower() {
        return Optional.ofNullable(lower);
    }

    /**
     * The upper end, if there is one.
     *
     * @return the largest number of the interval
     */
    public Optional<Ratio> upper() {
        return Optional.ofNullable(upper);
    }

    /**
     * Whether a number lies in the interval, its ends included.
     *
     * @param value the number
     * @return true if it is neither below the lower nor above the upper end
     */
    public boolean contains(Ratio value) {
        Objects.requireNonNull(value, "value");
        return (lower == null || lower.compareTo(value) <= 0) && (upper == null || value.compareTo(upper) <= 0);
    }

    /**
     * Whether another interval lies wholly in this one.
     *
     * @param other the other interval
     * @return true if every number of the other is in this one
     */
    public boolean encloses(Bounds other) {
        return intersection(other).equals(Optional.of(other));
    }

    /**
     * The numbers that lie in both intervals.
     *
     * @param other the other interval
     * @return their common part; empty if there is none
     */
    public Optional<Bounds> intersection(Bounds other) {
        Objects.requireNonNull(other, "other");
        Ratio low = lower == null ? other.lower : other.lower == null ? lower : lower.max(other.lower);
        Ratio high = upper == null ? other.upper : other.upper == null ? upper : upper.min(other.upper);
        boolean none = low != null && high != null && low.compareTo(high) > 0;
        return none ? Optional.empty() : Optional.of(new Bounds(low, high));
    }

    /**
     * The same interval with both ends multiplied by a positive number.
     *
     * @param factor the factor, above 0
     * @return the stretched interval
     * @throws IllegalArgumentException if the factor is not above 0
     */
    public Bounds times(Ratio factor) {
        if (Objects.requireNonNull(factor, "factor").signum() <= 0) {
            throw new IllegalArgumentException("factor is " + Excerpt.of(factor) + ": it must be above 0");
        }
        return new Bounds(lower == null ? null : lower.times(factor), upper == null ? null : upper.times(factor));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Bounds that && Objects.equals(lower, that.lower) && Objects.equals(upper, that.upper);
    }

    @Override
    public int hashCode() {
        return Objects.hash(lower, upper);
    }

    /** The usual notation: {@code [1, 2.5]}, {@code [3, ∞)}. */
    @Override
    public String toString() {
        return (lower == null ? "(−∞" : "[" + lower) + ", " + (upper == null ? "∞)" : upper + "]");
    }

    @Serial
    private Object readResolve() throws InvalidObjectException {
        if (lower != null && upper != null && lower.compareTo(upper) > 0) {
            throw new InvalidObjectException("lower end " + Excerpt.of(lower) + " lies above upper end "
                    + Excerpt.of(upper) + ": the two may have been exchanged");
        }
        return this;
    }
}
