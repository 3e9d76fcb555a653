package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Evaporation;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.UsedLot;
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

    /** The longest text of an entry, in characters; longer ones belong into a document of their own. */
    public static final int LONGEST_TEXT = 10_000;

    @Serial
    private static final long serialVersionUID = 3L;

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
    private final @Nullable Reading weighed;
    private final @Nullable Instant time;

    private BenchEntry(Kind kind, String text, @Nullable Reading weighed, @Nullable Instant time) {
        this.kind = kind;
        this.text = text;
        this.weighed = weighed;
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
        return new BenchEntry(Kind.OBSERVATION, Texts.require("text", text, Texts.MAX_LENGTH), null, null);
    }

    /**
     * An addition to the pot.
     *
     * @param addition what was added, as the display read it, on the balance it says
     * @return the entry
     */
    public static BenchEntry addition(LineAddition addition) {
        Objects.requireNonNull(addition, "addition");
        Reading read = Reading.of(addition.line(), addition.mass());
        return new BenchEntry(
                Kind.ADDITION, "", addition.balance().map(read::on).orElse(read), null);
    }

    /**
     * A second weighing of the pot.
     *
     * @param contentNow what is in the pot now, without the vessel
     * @param from the line that went off, usually the water
     * @return the entry
     */
    public static BenchEntry weighedAgain(Amount<Mass> contentNow, FormulaLine from) {
        Objects.requireNonNull(contentNow, "contentNow");
        return new BenchEntry(
                Kind.WEIGHED_AGAIN, "", Reading.of(Objects.requireNonNull(from, "from"), contentNow), null);
    }

    /**
     * The same entry, weighed on another balance than that of the bench.
     *
     * @param other the balance
     * @return the entry on that balance
     * @throws IllegalStateException if it is an observation, for which nothing was weighed
     */
    public BenchEntry on(Balance other) {
        Objects.requireNonNull(other, "other");
        if (weighed == null) {
            throw new IllegalStateException(
                    "an observation was weighed on no balance: say it in its text, or enter what was weighed");
        }
        return new BenchEntry(kind, text, weighed.on(other), time);
    }

    /**
     * The same entry with who weighed it.
     *
     * @param who the person, as the house writes it
     * @return the entry with the person
     * @throws IllegalArgumentException if the text is blank or longer than 500 characters
     * @throws IllegalStateException if it is an observation: say in its text who made it
     */
    public BenchEntry by(String who) {
        return new BenchEntry(kind, text, requireWeighed("by a person").by(who), time);
    }

    /**
     * The same addition with a lot of the material; where it came from several, one after the other.
     *
     * @param lot the lot, and how much of it was added if that is known
     * @return the entry with the lot behind those before
     * @throws IllegalArgumentException if the lot is noted already
     * @throws IllegalStateException if nothing was added
     */
    public BenchEntry from(UsedLot lot) {
        Objects.requireNonNull(lot, "lot");
        if (kind == Kind.WEIGHED_AGAIN) {
            throw new IllegalStateException("a second weighing adds nothing from lot " + Excerpt.of(lot.code())
                    + ": note the lot with the reading or the addition that it went into");
        }
        return new BenchEntry(kind, text, requireWeighed("from a lot").from(lot), time);
    }

    /**
     * The same addition with a lot of the material.
     *
     * @param lot the lot, as it stands on the material
     * @return the entry with the lot behind those before
     * @throws IllegalArgumentException as {@link #from(UsedLot)}, or if the text is blank or longer than 500 characters
     * @throws IllegalStateException if nothing was added
     */
    public BenchEntry fromLot(String lot) {
        return from(UsedLot.of(lot));
    }

    private Reading requireWeighed(String what) {
        return weighed()
                .orElseThrow(() -> new IllegalStateException("an observation was not weighed, and not " + what
                        + ": say it in its text, or enter what was weighed"));
    }

    /**
     * The same entry with its time.
     *
     * @param when the time
     * @return the entry
     */
    public BenchEntry at(Instant when) {
        return new BenchEntry(kind, text, weighed, Objects.requireNonNull(when, "when"));
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
        return weighed().map(Reading::line);
    }

    /**
     * What was added, or what the pot held.
     *
     * @return the mass as given; empty for an observation
     */
    public Optional<Amount<Mass>> mass() {
        return weighed().flatMap(Reading::shown);
    }

    /**
     * The balance it was weighed on, if it was another than that of the bench.
     *
     * @return the balance; empty for an observation
     */
    public Optional<Balance> balance() {
        return weighed().flatMap(Reading::balance);
    }

    /**
     * Who weighed it.
     *
     * @return the person, if that was noted; empty for an observation
     */
    public Optional<String> person() {
        return weighed().flatMap(Reading::person);
    }

    /**
     * The lots of the material that was added.
     *
     * @return an unmodifiable list in the order noted; empty if none was
     */
    public List<UsedLot> lots() {
        return weighed().map(Reading::lots).orElse(List.of());
    }

    /**
     * When it happened.
     *
     * @return the time, if it was noted
     */
    public Optional<Instant> time() {
        return Optional.ofNullable(time);
    }

    private Optional<Reading> weighed() {
        return Optional.ofNullable(weighed);
    }

    /** What no display of the bench, or of the balance that is said, can have shown is a mistake. */
    void requireShownOn(WeighingPlan plan) {
        weighed().ifPresent(reading -> requireShown(reading, plan));
    }

    /** The pot is weighed where it stands, an addition where its line was planned. */
    private Balance used(Reading reading, WeighingPlan plan) {
        return reading.balance()
                .orElseGet(() -> kind == Kind.WEIGHED_AGAIN
                        ? plan.bench().balance()
                        : plan.line(reading.line()).balance());
    }

    private void requireShown(Reading reading, WeighingPlan plan) {
        Amount<Mass> mass = reading.shown().orElseThrow();
        boolean pot = kind == Kind.WEIGHED_AGAIN;
        if (!plan.formula().has(reading.line())) {
            throw new IllegalArgumentException("an entry is made for " + Excerpt.of(reading.line())
                    + ", which is no line of \"" + Excerpt.of(plan.formula().name())
                    + "\": take the line from that formula");
        }
        Balance used = used(reading, plan);
        String what = pot ? "the pot" : Excerpt.of(reading.line().name());
        Reading.requireOnDisplay(what, mass, used);
        // An addition may come from a boat, the pot stands in its vessel.
        Amount<Mass> most = pot ? used.capacityUnder(plan.bench().vessel()) : used.capacity();
        Reading.requireCarried(what, mass, most, pot);
    }

    /** What is in the pot after this entry. */
    MadeBatch applyTo(MadeBatch made) {
        return weighed().map(reading -> after(made, reading)).orElse(made);
    }

    private MadeBatch after(MadeBatch made, Reading reading) {
        Amount<Mass> mass = reading.shown().orElseThrow();
        Balance used = used(reading, made.plan());
        return kind == Kind.ADDITION
                ? made.plus(List.of(LineAddition.of(reading.line(), mass).on(used)))
                : new Evaporation(made, mass, reading.line(), used).notAddedBack();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BenchEntry that
                && kind == that.kind
                && text.equals(that.text)
                && Objects.equals(weighed, that.weighed)
                && Objects.equals(time, that.time);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, text, weighed, time);
    }

    @Override
    public String toString() {
        return kind + " "
                + weighed()
                        .map(reading -> reading.shown().orElseThrow() + " "
                                + reading.line().name())
                        .orElse(text);
    }
}
