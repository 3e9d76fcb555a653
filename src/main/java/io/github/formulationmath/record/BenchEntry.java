package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import java.io.Serial;
import java.io.Serializable;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Something that happened at the bench after the first readings: an observation, an addition, or a second weighing of the
 * pot that shows what went off.
 *
 * <p>Example: {@code BenchEntry.observation("Thickened at 45 °C").at(instant)}.
 *
 * <p>Immutable and thread-safe.
 */
public final class BenchEntry implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    /** The kinds of entries. */
    public enum Kind {
        /** Something seen, smelled, measured. */
        OBSERVATION,
        /** Something added to the pot. */
        ADDITION,
        /** The pot weighed again; what is missing went off from one line. */
        WEIGHED_AGAIN
    }

    private final Kind kind;
    private final String text;
    private final @Nullable FormulaLine line;
    private final @Nullable Amount<Mass> mass;
    private final @Nullable Instant time;

    private BenchEntry(
            Kind kind, String text, @Nullable FormulaLine line, @Nullable Amount<Mass> mass, @Nullable Instant time) {
        this.kind = kind;
        this.text = text;
        this.line = line;
        this.mass = mass;
        this.time = time;
    }

    /**
     * An observation.
     *
     * @param text what was observed, at most 10000 characters
     * @return the entry
     * @throws IllegalArgumentException if the text is blank or too long
     */
    public static BenchEntry observation(String text) {
        return new BenchEntry(Kind.OBSERVATION, Texts.requireText("text", text), null, null, null);
    }

    /**
     * An addition to the pot.
     *
     * @param addition what was added, as the display read it
     * @return the entry
     */
    public static BenchEntry addition(LineAddition addition) {
        Objects.requireNonNull(addition, "addition");
        return new BenchEntry(Kind.ADDITION, "", addition.line(), addition.mass(), null);
    }

    /**
     * A second weighing of the pot.
     *
     * @param contentNow what is in the pot now, without the vessel
     * @param from the line that went off, usually the water
     * @return the entry
     */
    public static BenchEntry weighedAgain(Amount<Mass> contentNow, FormulaLine from) {
        return new BenchEntry(
                Kind.WEIGHED_AGAIN,
                "",
                Objects.requireNonNull(from, "from"),
                Objects.requireNonNull(contentNow, "contentNow"),
                null);
    }

    /**
     * The same entry with its time.
     *
     * @param when the time
     * @return the entry
     */
    public BenchEntry at(Instant when) {
        return new BenchEntry(kind, text, line, mass, Objects.requireNonNull(when, "when"));
    }

    /**
     * The kind.
     *
     * @return what sort of entry it is
     */
    public Kind kind() {
        return kind;
    }

    /**
     * What was observed.
     *
     * @return the text; empty unless this is an observation
     */
    public String text() {
        return text;
    }

    /**
     * The line that was added to, or went off.
     *
     * @return the line; empty for an observation
     */
    public Optional<FormulaLine> line() {
        return Optional.ofNullable(line);
    }

    /**
     * What was added, or what the pot held.
     *
     * @return the mass as given; empty for an observation
     */
    public Optional<Amount<Mass>> mass() {
        return Optional.ofNullable(mass);
    }

    /**
     * When it happened.
     *
     * @return the time, if it was noted
     */
    public Optional<Instant> time() {
        return Optional.ofNullable(time);
    }

    void requireOnDisplayOf(Balance balance) {
        if (line != null && mass != null) {
            Reading.requireOnDisplay(line, mass, balance);
        }
    }

    /** What is in the pot after this entry. */
    MadeBatch applyTo(MadeBatch made) {
        if (line == null || mass == null) {
            return made;
        }
        return kind == Kind.ADDITION
                ? made.plus(List.of(LineAddition.of(line, mass)))
                : Evaporation.of(made, mass, line).notAddedBack();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BenchEntry that
                && kind == that.kind
                && text.equals(that.text)
                && Objects.equals(line, that.line)
                && Objects.equals(mass, that.mass)
                && Objects.equals(time, that.time);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, text, line, mass, time);
    }

    @Override
    public String toString() {
        return kind + (line == null ? " " + text : " " + mass + " " + line.name());
    }
}
