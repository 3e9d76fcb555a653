package io.github.formulationmath.emulsion;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Origin.Figure;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.soap.AlkaliNumber;
import java.io.Serial;
import java.io.Serializable;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A value on the scale of hydrophile-lipophile balance, from 0 to 40: up to 20 by Griffin, beyond that by Davies only.
 *
 * <p>It belongs to a grade and never to an INCI name: one glyceryl stearate is sold with 3.5, its self-emulsifying grade with 8.
 *
 * <p>{@code equals} means the same exact number. Immutable and thread-safe.
 */
public final class Hlb implements Explained, Comparable<Hlb>, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Ratio GREATEST = Ratio.of(40);
    private static final Ratio GRIFFIN = Ratio.of(20);

    private static final Ratio SEVEN = Ratio.of(7);
    private static final Ratio PER_LIPOPHILIC_GROUP = Ratio.parse("0.475");
    private static final Symbol GIVEN = Symbol.of("x", "given-value", Kind.NUMBER);
    private static final Subject NOBODY = Subject.of("", "");

    private final Ratio value;
    private final transient @Nullable Origin origin;

    private Hlb(Ratio value, @Nullable Origin origin) {
        this.value = value;
        this.origin = origin;
    }

    static Hlb of(Ratio value) {
        if (value.signum() < 0 || value.compareTo(GREATEST) > 0) {
            throw new IllegalArgumentException(
                    "HLB is " + Excerpt.of(value) + ": it lies from 0 to 40, and up to 20 by Griffin's relations");
        }
        return new Hlb(value, null);
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
     * <p>Example: glyceryl stearate with S = 161 and A = 198 mg KOH/g has 3.74.
     *
     * @param saponification the saponification value S of the ester
     * @param ofAcid the acid value A of the fatty acid in it
     * @return the value
     * @throws IllegalArgumentException if S is above A, which no ester has, or A is 0
     */
    public static Hlb ofEster(AlkaliNumber saponification, AlkaliNumber ofAcid) {
        Ratio share = Objects.requireNonNull(saponification, "saponification").relativeTo(ofAcid);
        if (share.compareTo(Ratio.ONE) > 0) {
            throw new IllegalArgumentException("saponification value is " + saponification + " and the acid value "
                    + ofAcid + ": an ester takes up less than its acid; were the two exchanged, or is one as NaOH?");
        }
        return of(GRIFFIN.times(Ratio.ONE.minus(share)));
    }

    /**
     * Griffin's relation where only oxyethylene makes the part that likes water: a fifth of its per cent by mass.
     *
     * @param oxyethylene the share of oxyethylene in the emulsifier
     * @return the value, at most 20
     */
    public static Hlb ofOxyethylene(MassFraction oxyethylene) {
        return ofOxyethyleneAndPolyol(oxyethylene, MassFraction.ZERO);
    }

    /**
     * Griffin's relation where a saponification value cannot be had, as of ethoxylated beeswax or wool fat: {@code (E + P)/5} of the per cent by
     * mass of oxyethylene and of polyhydric alcohol (same paper).
     *
     * @param oxyethylene the share of oxyethylene in the emulsifier
     * @param polyol the share of polyhydric alcohol in it
     * @return the value, at most 20
     * @throws IllegalArgumentException if the two make more than the emulsifier
     */
    public static Hlb ofOxyethyleneAndPolyol(MassFraction oxyethylene, MassFraction polyol) {
        Objects.requireNonNull(oxyethylene, "oxyethylene");
        Ratio both = oxyethylene
                .percent()
                .plus(Objects.requireNonNull(polyol, "polyol").percent());
        if (both.compareTo(Ratio.of(100)) > 0) {
            throw new IllegalArgumentException("oxyethylene is " + oxyethylene + " and polyol " + polyol
                    + ": together they make more than the emulsifier; give shares of the whole molecule");
        }
        return of(both.dividedBy(5));
    }

    /**
     * Davies' relation: {@code 7 + Σ group numbers − 0.475 · n} (1957), the only one for ionic emulsifiers. For ethoxylates it errs by far
     * (Guo et al. 2006), and no number for oxyethylene is here.
     *
     * <p>Example: sodium lauryl sulfate, one sulfate and twelve carbons, has 7 + 38.7 − 12 · 0.475 = 40.
     *
     * @param groups how many of each group that likes water
     * @param lipophilic n, how many of CH, CH₂, CH₃ and =CH− there are
     * @return the value
     * @throws IllegalArgumentException if there is no group, a count is below 0, or the value lies outside 0 to 40
     */
    public static Hlb byDavies(Map<DaviesGroup, Integer> groups, int lipophilic) {
        if (Objects.requireNonNull(groups, "groups").isEmpty()) {
            throw new IllegalArgumentException(
                    "groups is empty: what has no group that likes water is no emulsifier;" + " name at least one");
        }
        Ratio sum = SEVEN.minus(PER_LIPOPHILIC_GROUP.times(count("lipophilic", lipophilic)));
        for (Map.Entry<DaviesGroup, Integer> group :
                Objects.requireNonNull(groups, "groups").entrySet()) {
            sum = sum.plus(group.getKey().number().times(count(group.getKey().name(), group.getValue())));
        }
        return of(sum);
    }

    private static int count(String name, int count) {
        if (count < 0) {
            throw new IllegalArgumentException(name + " is " + count + ": count the groups, 0 or more");
        }
        return count;
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

    /** The middle of a range, as blends are reckoned. */
    static Hlb middle(Interval<Hlb> range) {
        return of(range.least().value.plus(range.greatest().value).dividedBy(2));
    }

    /** The same value, able to tell how it came about. */
    <T> Hlb withWorking(Function<? super T, Phrase> question, T owner, Figure<? super T> figure) {
        return new Hlb(value, Origin.of(question, value, owner, figure));
    }

    /** Where the value comes from; of one that was given, only that it was. */
    @Override
    public Origin origin() {
        return origin != null ? origin : Origin.given(GIVEN, NOBODY, value, Source.written(toString()));
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
