package io.github.formulationmath.emulsion;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A value on the scale of hydrophile-lipophile balance, from 0 to 40: up to 20 by Griffin, beyond that by Davies only.
 *
 * <p>It belongs to a grade and never to an INCI name: one glyceryl stearate is sold with 3.5, its self-emulsifying grade with 8.
 *
 * <p>{@code equals} means the same exact number. Immutable and thread-safe.
 */
public final class Hlb implements Comparable<Hlb>, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Ratio GREATEST = Ratio.of(40);
    private static final Ratio GRIFFIN = Ratio.of(20);

    private final Ratio value;

    private Hlb(Ratio value) {
        this.value = value;
    }

    static Hlb of(Ratio value) {
        if (value.signum() < 0 || value.compareTo(GREATEST) > 0) {
            throw new IllegalArgumentException(
                    "HLB is " + Excerpt.of(value) + ": it lies from 0 to 40, and up to 20 by Griffin's relations");
        }
        return new Hlb(value);
    }

    /**
     * Reads a value.
     *
     * @param text such as {@code "15.0"}
     * @return the value
     * @throws NumberTextException if the text is no number
     * @throws IllegalArgumentException if it lies outside 0 to 40
     */
    public static Hlb parse(String text) {
        return of(Ratio.parse(Objects.requireNonNull(text, "text")));
    }

    /**
     * Griffin's relation for esters of polyols: {@code 20 · (1 − S/A)} (J. Soc. Cosmet. Chem. 5 (1954) 249-256).
     *
     * @param saponification S of the ester over A of its acid, below 1
     * @return the value
     */
    static Hlb ofEster(Ratio saponification) {
        return of(GRIFFIN.times(Ratio.ONE.minus(saponification)));
    }

    /**
     * Griffin's relation where only oxyethylene makes the part that likes water: a fifth of its per cent by mass.
     *
     * @param oxyethylene the share of oxyethylene in the emulsifier
     * @return the value, at most 20
     */
    public static Hlb ofOxyethylene(MassFraction oxyethylene) {
        return of(oxyethylene.percent().dividedBy(5));
    }

    /**
     * A value with what it may be off by. One printed digit is not its uncertainty; half a unit is a cautious figure (common practice,
     * no published source).
     *
     * @param value such as {@code "15.0"}
     * @param off such as {@code "0.5"}
     * @return the range, cut off at 0 and 40
     * @throws IllegalArgumentException if the value lies outside 0 to 40, or the figure is negative
     */
    public static Interval<Hlb> within(String value, String off) {
        Hlb middle = parse(value);
        Ratio half = Ratio.parse(off);
        if (half.signum() < 0) {
            throw new IllegalArgumentException("off is " + Excerpt.of(half) + ": it must be at least 0");
        }
        return Interval.of(
                of(middle.value.minus(half).max(Ratio.ZERO)),
                of(middle.value.plus(half).min(GREATEST)));
    }

    Ratio value() {
        return value;
    }

    @Override
    public int compareTo(Hlb other) {
        return value.compareTo(Objects.requireNonNull(other, "other").value);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Hlb that && value.equals(that.value);
    }

    @Override
    public int hashCode() {
        return value.hashCode();
    }

    /** The exact number; {@link #parse} reads it again. */
    @Override
    public String toString() {
        return value.toString();
    }
}
