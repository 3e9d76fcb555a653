package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.io.Serializable;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One line of a comparison: its share in either version, and the difference.
 *
 * <p>Example: 3 % before and 3.5 % after is a difference of 0.5 % of the whole.
 *
 * <p>Immutable and thread-safe.
 */
public final class LineDifference implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol FIRST = Symbol.of("wfirst", "share-in-first", Kind.SHARE);
    private static final Symbol SECOND = Symbol.of("wsecond", "share-in-second", Kind.SHARE);
    private static final Symbol DIFFERENCE = Symbol.of("Δw", "share-difference", Kind.SHARE);

    /** What became of a line. */
    public enum Change {
        /** The share is the same, exactly. */
        SAME,
        /** The share is another. */
        CHANGED,
        /** The line stands in the second version only. */
        ADDED,
        /** The line stands in the first version only. */
        REMOVED
    }

    private final int number;
    private final String phase;
    private final String name;
    private final @Nullable Ratio first;
    private final @Nullable Ratio second;

    LineDifference(int number, String phase, String name, @Nullable Ratio first, @Nullable Ratio second) {
        this.number = number;
        this.phase = phase;
        this.name = name;
        this.first = first;
        this.second = second;
    }

    /**
     * The phase of the line.
     *
     * @return the name of the phase
     */
    public String phase() {
        return phase;
    }

    /**
     * The ingredient.
     *
     * @return its name
     */
    public String name() {
        return name;
    }

    /**
     * The share in the first version.
     *
     * @return the share; empty if the line does not stand there
     */
    public Optional<MassFraction> first() {
        return Optional.ofNullable(first).map(MassFraction::of);
    }

    /**
     * The share in the second version.
     *
     * @return the share; empty if the line does not stand there
     */
    public Optional<MassFraction> second() {
        return Optional.ofNullable(second).map(MassFraction::of);
    }

    /**
     * What became of the line.
     *
     * @return the change, decided exactly
     */
    public Change change() {
        if (first == null) {
            return Change.ADDED;
        }
        if (second == null) {
            return Change.REMOVED;
        }
        return first.equals(second) ? Change.SAME : Change.CHANGED;
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.share-difference", name);
    }

    /** Second minus first as a fraction of the whole; a missing line counts as 0. */
    @Override
    public Ratio result() {
        return derive(Reckoning.plain());
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        Subject subject = Subject.of(Integer.toString(number), name);
        V after = r.given(SECOND, subject, second == null ? Ratio.ZERO : second, Source.user());
        V before = r.given(FIRST, subject, first == null ? Ratio.ZERO : first, Source.user());
        return r.named(DIFFERENCE, subject, r.difference(after, before));
    }

    @Override
    public String toString() {
        return name + " " + change() + " " + first + " -> " + second;
    }
}
