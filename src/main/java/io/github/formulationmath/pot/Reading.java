package io.github.formulationmath.pot;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import java.io.Serial;
import java.io.Serializable;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What was read off the display for one line, or that nothing was.
 *
 * <p>A line may have been left out ({@link #leftOut}), which is a mass of exactly 0, or put in and not written down
 * ({@link #notWrittenDown}), which is a mass that nobody knows.
 *
 * <p>Example: {@code Reading.of(formula.line("Glycerin"), Amount.mass("12.3 g")).at(instant)}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Reading implements Serializable {

    @Serial
    private static final long serialVersionUID = 3L;

    /** What a line can come to at the bench. */
    public enum Kind {
        /** The display was read. */
        SHOWN,
        /** The line was not put in at all. */
        LEFT_OUT,
        /** The line was put in, and its reading is missing. */
        NOT_WRITTEN_DOWN
    }

    private final FormulaLine line;
    private final Kind kind;
    private final Amount<Mass> shown;
    private final @Nullable Balance balance;
    private final @Nullable Instant time;
    private final @Nullable ReadingNotes notes;

    private Reading(
            FormulaLine line,
            Kind kind,
            Amount<Mass> shown,
            @Nullable Balance balance,
            @Nullable Instant time,
            @Nullable ReadingNotes notes) {
        this.line = Objects.requireNonNull(line, "line");
        this.kind = kind;
        this.shown = shown;
        this.balance = balance;
        this.time = time;
        this.notes = notes;
    }

    /**
     * A reading.
     *
     * @param line the line that was weighed
     * @param shown what the display read, at least 0; whether it is of this line alone or of everything so far is said by
     *     the weighing method of the {@link Readings}
     * @return the reading
     * @throws IllegalArgumentException if the reading is negative
     */
    public static Reading of(FormulaLine line, Amount<Mass> shown) {
        if (Objects.requireNonNull(shown, "shown").signum() < 0) {
            throw new IllegalArgumentException("shown is " + Excerpt.of(shown) + " for " + Excerpt.of(line.name())
                    + ": a display below 0 means that something was taken out or the tare is gone; weigh again");
        }
        return new Reading(line, Kind.SHOWN, shown, null, null, null);
    }

    /**
     * A reading as text.
     *
     * @param line the line that was weighed
     * @param shown what the display read, for example {@code "12.3 g"}
     * @return the reading
     * @throws IllegalArgumentException if the text is no mass, or negative
     */
    public static Reading of(FormulaLine line, String shown) {
        return of(line, Amount.mass(shown));
    }

    /**
     * A line that was not put in.
     *
     * @param line the line
     * @return a reading of exactly 0 that hides no rounding
     */
    public static Reading leftOut(FormulaLine line) {
        return new Reading(line, Kind.LEFT_OUT, Amount.grams(Ratio.ZERO), null, null, null);
    }

    /**
     * A line that was put in without a note of how much.
     *
     * @param line the line
     * @return the missing reading
     */
    public static Reading notWrittenDown(FormulaLine line) {
        return new Reading(line, Kind.NOT_WRITTEN_DOWN, Amount.grams(Ratio.ZERO), null, null, null);
    }

    /**
     * The same reading, taken on another balance than that on which the line was planned.
     *
     * @param other the balance
     * @return the reading on that balance
     */
    public Reading on(Balance other) {
        return new Reading(line, kind, shown, Objects.requireNonNull(other, "other"), time, notes);
    }

    /**
     * The same reading with the time it was taken.
     *
     * @param when the time
     * @return the reading with its time
     */
    public Reading at(Instant when) {
        return new Reading(line, kind, shown, balance, Objects.requireNonNull(when, "when"), notes);
    }

    /**
     * The same reading with who took it.
     *
     * @param who the person, as the house writes it
     * @return the reading with the person
     * @throws IllegalArgumentException if the text is blank or longer than 500 characters
     */
    public Reading by(String who) {
        return new Reading(line, kind, shown, balance, time, noted().by(who));
    }

    /**
     * The same reading with a lot of the material; where the line came from several, one after the other.
     *
     * @param lot the lot, as it stands on the material
     * @return the reading with the lot behind those before
     * @throws IllegalArgumentException if the text is blank or longer than 500 characters, or the lot is noted already
     */
    public Reading fromLot(String lot) {
        return from(UsedLot.of(lot));
    }

    /**
     * The same reading with a lot of the material and how much of it went into the line.
     *
     * @param lot the lot, as it stands on the material
     * @param mass how much of it, for example {@code "9 g"}
     * @return the reading with the lot behind those before
     * @throws IllegalArgumentException as {@link #fromLot(String)}, or if the text is no mass or not above 0
     */
    public Reading fromLot(String lot, String mass) {
        return from(UsedLot.of(lot, mass));
    }

    /**
     * The same reading with a lot of the material.
     *
     * @param lot the lot, and how much of it went into the line if that is known
     * @return the reading with the lot behind those before
     * @throws IllegalArgumentException if the lot is noted already
     */
    public Reading from(UsedLot lot) {
        return new Reading(line, kind, shown, balance, time, noted().fromLot(Objects.requireNonNull(lot, "lot")));
    }

    /**
     * The same reading with a field of one's own; one of the same name replaces the one before.
     *
     * @param name the name of the field, for example {@code "room"}
     * @param text what is noted there, for example {@code "21 °C"}
     * @return the reading with the field
     * @throws IllegalArgumentException if a text is blank, the name longer than 500 or the text than 10000 characters
     */
    public Reading withNote(String name, String text) {
        return new Reading(line, kind, shown, balance, time, noted().with(name, text));
    }

    /**
     * Who took it.
     *
     * @return the person, if that was noted
     */
    public Optional<String> person() {
        return Optional.ofNullable(noted().person());
    }

    /**
     * The lots of the material.
     *
     * @return an unmodifiable list in the order noted; empty if none was
     */
    public List<UsedLot> lots() {
        return Collections.unmodifiableList(noted().lots());
    }

    /**
     * The fields of one's own.
     *
     * @return an unmodifiable map from name to text, in the order noted
     */
    public Map<String, String> notes() {
        return noted().fields();
    }

    /**
     * The line.
     *
     * @return the line of the formula
     */
    public FormulaLine line() {
        return line;
    }

    /**
     * Whether the display was read, the line left out, or its reading missing.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * What the display read.
     *
     * @return the reading as given; empty if there is none
     */
    public Optional<Amount<Mass>> shown() {
        return kind == Kind.SHOWN ? Optional.of(shown) : Optional.empty();
    }

    /**
     * The balance, if it was another than that on which the line was planned.
     *
     * @return the balance
     */
    public Optional<Balance> balance() {
        return Optional.ofNullable(balance);
    }

    /**
     * When it was read.
     *
     * @return the time, if it was noted
     */
    public Optional<Instant> time() {
        return Optional.ofNullable(time);
    }

    /** What is noted beside it, most often nothing. */
    private ReadingNotes noted() {
        return notes == null ? ReadingNotes.NONE : notes;
    }

    void requireOnDisplayOf(Balance used) {
        requireOnDisplay(line.name(), shown, used);
    }

    /**
     * Refuses a number that a display cannot show: it shows whole steps.
     *
     * @param what what it is a reading of
     * @param shown what is said to be shown
     * @param used the balance
     * @throws IllegalArgumentException if it is no multiple of the step
     */
    public static void requireOnDisplay(String what, Amount<Mass> shown, Balance used) {
        Ratio divisions = shown.ratioTo(used.readability());
        if (!divisions.isInteger()) {
            throw new IllegalArgumentException(
                    "shown is " + Excerpt.of(shown) + " for " + Excerpt.of(what) + ", no multiple of the step "
                            + Excerpt.of(used.readability()) + " of the display: it can read "
                            + Excerpt.of(used.readability().times(divisions.toWhole(RoundingMode.FLOOR))) + " or "
                            + Excerpt.of(used.readability().times(divisions.toWhole(RoundingMode.CEILING)))
                            + "; look for a slip of the pen, or say which other balance it was: on(balance)");
        }
    }

    /**
     * Refuses a number that a display cannot show because the balance does not carry so much.
     *
     * @param what what it is a reading of
     * @param load what would rest on the balance, beside the vessel if that is left out of {@code most}
     * @param most what the balance carries
     * @param isBesideVessel whether the vessel is left out of it
     * @throws IllegalArgumentException if the load is more
     */
    public static void requireCarried(String what, Amount<Mass> load, Amount<Mass> most, boolean isBesideVessel) {
        if (load.compareTo(most) > 0) {
            throw new IllegalArgumentException("the load is " + load.told() + " for " + what
                    + ", more than the balance carries (" + most.told() + (isBesideVessel ? " besides the vessel" : "")
                    + ") by " + load.minus(most).told()
                    + ": look for a slip of the pen, or say which other balance it was: on(balance)");
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Reading that
                && line.equals(that.line)
                && kind == that.kind
                && shown.equals(that.shown)
                && Objects.equals(balance, that.balance)
                && Objects.equals(time, that.time)
                && noted().equals(that.noted());
    }

    @Override
    public int hashCode() {
        return Objects.hash(line, kind, shown, balance, time, noted());
    }

    @Override
    public String toString() {
        return line.name() + ": "
                + switch (kind) {
                    case SHOWN -> shown.toString();
                    case LEFT_OUT -> "left out";
                    case NOT_WRITTEN_DOWN -> "not written down";
                };
    }
}
