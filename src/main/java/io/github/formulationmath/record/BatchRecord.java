package io.github.formulationmath.record;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.packing.Filling;
import io.github.formulationmath.packing.PackFill;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineCheck;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.pot.UsedLot;
import io.github.formulationmath.quantity.Amount;
import java.io.Serial;
import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The entry in the notebook: code, formula and plan, readings, what happened after them, how the batch was filled, and
 * amendments. What follows from it, like {@link #made()}, is worked out when it is asked for, and never written down.
 *
 * <p>A record is never changed; each step gives the next record. The first amendment closes it: from then on amendments
 * are all that can be added, and none can be taken away.
 *
 * <p>Example: {@code BatchRecord.of(code, readings, Tolerances.of("5 %")).with(BenchEntry.observation("smooth"))}.
 *
 * <p>Immutable and thread-safe.
 */
public final class BatchRecord implements Serializable {

    @Serial
    private static final long serialVersionUID = 3L;

    private final BatchCode code;
    /** What the house itself calls the batch; empty if that is the code. */
    private final String batchNumber;

    /** What was made up first, such as a stock or a base. */
    private final List<Readings> preparations;

    private final Readings readings;
    private final Tolerances tolerances;
    private final List<BenchEntry> entries;
    private final @Nullable Filled filled;
    private final AmendmentLog amendments;
    private transient volatile @Nullable MadeBatch made;

    private record Filled(Amount<Mass> residue, PackFill fill) implements Serializable {}

    private BatchRecord(
            BatchCode code,
            String batchNumber,
            List<Readings> preparations,
            Readings readings,
            Tolerances tolerances,
            List<BenchEntry> entries,
            @Nullable Filled filled,
            AmendmentLog amendments) {
        this.code = code;
        this.batchNumber = batchNumber;
        this.preparations = List.copyOf(preparations);
        this.readings = readings;
        this.tolerances = tolerances;
        this.entries = List.copyOf(entries);
        this.filled = filled;
        this.amendments = amendments;
    }

    /**
     * Opens a record.
     *
     * @param code the code of the batch
     * @param readings the readings, with the plan they were taken for
     * @param tolerances how far each line may be off
     * @return the record
     * @throws IllegalArgumentException if the readings add up to nothing
     */
    public static BatchRecord of(BatchCode code, Readings readings, Tolerances tolerances) {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(tolerances, "tolerances");
        MadeBatch made = MadeBatch.of(Objects.requireNonNull(readings, "readings"));
        return new BatchRecord(code, "", List.of(), readings, tolerances, List.of(), null, AmendmentLog.EMPTY)
                .knowing(made);
    }

    /**
     * The record with a batch number of the house's own. A label then carries that number and not the code, and the record leads from one to
     * the other.
     *
     * @param number what the house calls the batch, for example {@code "L 27"}
     * @return the next record
     * @throws IllegalArgumentException if the text is blank or longer than 500 characters
     * @throws IllegalStateException if the record was amended: it is closed
     */
    public BatchRecord withBatchNumber(String number) {
        requireOpen();
        String own = Texts.require("number", number, Texts.MAX_NAME);
        return new BatchRecord(code, own, preparations, readings, tolerances, entries, filled, amendments)
                .knowing(made());
    }

    /**
     * The record with something that was made up first and went into the batch as one line: a step of a stock, the base of a series.
     *
     * <p>Example: {@code record.withPreparation(Readings.asPlanned(plan))}.
     *
     * @param made what was read when it was made, of all its lines
     * @return the next record, with it behind those before
     * @throws IllegalArgumentException if lines of it are still to come
     * @throws IllegalStateException if the record was amended: it is closed
     */
    public BatchRecord withPreparation(Readings made) {
        requireOpen();
        if (Objects.requireNonNull(made, "made").isOpen()) {
            throw new IllegalArgumentException("made is " + Excerpt.of(made)
                    + ", with lines still to come: read those first, or say that there are none with finished()");
        }
        List<Readings> all = new ArrayList<>(preparations);
        all.add(made);
        return new BatchRecord(code, batchNumber, all, readings, tolerances, entries, filled, amendments)
                .knowing(made());
    }

    /**
     * The record with one more entry.
     *
     * @param entry what happened
     * @return the next record
     * @throws IllegalArgumentException if it happened before what went before it, is about a line of another formula,
     *     could not be read on the display, or cannot be (more was lost than there was)
     * @throws IllegalStateException if the record was amended: it is closed
     */
    public BatchRecord with(BenchEntry entry) {
        return with(List.of(Objects.requireNonNull(entry, "entry")));
    }

    /**
     * The record with more entries.
     *
     * @param more what happened, in order
     * @return the next record
     * @throws IllegalArgumentException as {@link #with(BenchEntry)}
     * @throws IllegalStateException as {@link #with(BenchEntry)}
     */
    public BatchRecord with(List<BenchEntry> more) {
        return with(more, index -> {});
    }

    /**
     * The same, telling which entry is being looked at, so that a reader of files can say where a mistake stands.
     *
     * @param more the entries
     * @param at told the place of each entry before it is looked at
     * @return the record with them
     * @throws IllegalArgumentException as without the last argument
     * @throws IllegalStateException as {@link #with(BenchEntry)}
     */
    public BatchRecord with(List<BenchEntry> more, IntConsumer at) {
        requireOpen();
        Instant before = lastTime();
        MadeBatch pot = made();
        int index = 0;
        for (BenchEntry entry : List.copyOf(Objects.requireNonNull(more, "more"))) {
            at.accept(index++);
            before = requireNotBefore(before, entry.time().orElse(before), "an entry");
            entry.requireShownOn(plan());
            pot = entry.applyTo(pot);
        }
        List<BenchEntry> all = new ArrayList<>(entries);
        all.addAll(more);
        return new BatchRecord(code, batchNumber, preparations, readings, tolerances, all, filled, amendments)
                .knowing(pot);
    }

    /**
     * The record with how the batch was filled.
     *
     * @param residue what stayed in vessel and tools, from 0 to what was made
     * @param fill what went into each pack
     * @return the next record
     * @throws IllegalArgumentException if the residue is out of range
     * @throws IllegalStateException if the record was amended: it is closed
     */
    public BatchRecord filled(Amount<Mass> residue, PackFill fill) {
        requireOpen();
        Filling.of(made().mass(), residue, fill);
        return new BatchRecord(
                code, batchNumber, preparations, readings, tolerances, entries, new Filled(residue, fill), amendments);
    }

    private void requireOpen() {
        if (!amendments.isEmpty()) {
            throw new IllegalStateException(
                    "record " + Excerpt.of(code) + " was amended and is closed: say it in another amendment");
        }
    }

    /**
     * The record with one more amendment.
     *
     * @param amendment what is said, and by whom
     * @return the next record
     * @throws IllegalArgumentException if it was said before what went before it
     */
    public BatchRecord amended(Amendment amendment) {
        Objects.requireNonNull(amendment, "amendment");
        requireNotBefore(amendments.lastTimeOr(lastTime()), amendment.time(), "an amendment");
        return new BatchRecord(
                code, batchNumber, preparations, readings, tolerances, entries, filled, amendments.plus(amendment));
    }

    private Instant lastTime() {
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i).time().isPresent()) {
                return entries.get(i).time().get();
            }
        }
        Instant last = Instant.MIN;
        for (Reading reading : readings.taken()) {
            last = reading.time().orElse(last);
        }
        return last;
    }

    private static Instant requireNotBefore(Instant before, Instant time, String what) {
        if (time.isBefore(before)) {
            throw new IllegalArgumentException(what + " has the time " + time + ", before what precedes it (" + before
                    + "): a record goes forward; give the time at which it was really made");
        }
        return time;
    }

    /**
     * The code of the batch.
     *
     * @return the code
     */
    public BatchCode code() {
        return code;
    }

    /**
     * The batch number that a label carries.
     *
     * @return that of the house, or else the code
     */
    public String batchNumber() {
        return batchNumber.isEmpty() ? code.toString() : batchNumber;
    }

    /**
     * Whether the house has a number of its own for the batch.
     *
     * @return false if its number is the code
     */
    public boolean hasOwnBatchNumber() {
        return !batchNumber.isEmpty();
    }

    /**
     * The lots that went into the batch, line by line: those of what was made up first, of the readings and of later additions, each once.
     *
     * @return an unmodifiable map of the lines with which a lot was noted, those of what was made up first before those of the formula
     */
    public Map<FormulaLine, List<UsedLot>> lots() {
        Map<FormulaLine, List<UsedLot>> all = new LinkedHashMap<>();
        preparations.forEach(made -> made.taken().stream()
                .filter(reading -> !reading.lots().isEmpty())
                .forEach(reading -> all.put(reading.line(), reading.lots())));
        for (FormulaLine line : formula().lines()) {
            List<UsedLot> own = lotsOf(line);
            if (!own.isEmpty()) {
                all.put(line, own);
            }
        }
        return Collections.unmodifiableMap(all);
    }

    /**
     * The lots that went into a line.
     *
     * @param line the line
     * @return an unmodifiable list in the order noted, each lot once with all that was taken of it; empty if none was noted
     */
    public List<UsedLot> lotsOf(FormulaLine line) {
        Objects.requireNonNull(line, "line");
        return UsedLot.together(Stream.concat(
                        readings.taken().stream()
                                .filter(reading -> reading.line().equals(line))
                                .flatMap(reading -> reading.lots().stream()),
                        entries.stream()
                                .filter(entry ->
                                        entry.line().filter(line::equals).isPresent())
                                .flatMap(entry -> entry.lots().stream()))
                .toList());
    }

    /**
     * The formula.
     *
     * @return the formula that the plan was made from
     */
    public Formula formula() {
        return plan().formula();
    }

    /**
     * The plan.
     *
     * @return what was to be weighed, and on which bench
     */
    public WeighingPlan plan() {
        return readings.plan();
    }

    /**
     * What was made up first and went into the batch.
     *
     * @return an unmodifiable list of readings, in the order in which it was made
     */
    public List<Readings> preparations() {
        return preparations;
    }

    /**
     * The readings.
     *
     * @return the readings
     */
    public Readings readings() {
        return readings;
    }

    /**
     * How far each line may be off.
     *
     * @return the tolerances
     */
    public Tolerances tolerances() {
        return tolerances;
    }

    /**
     * What happened after the readings, in order.
     *
     * @return an unmodifiable list
     */
    public List<BenchEntry> entries() {
        return entries;
    }

    /**
     * What the readings alone put into the pot.
     *
     * @return the batch before any entry
     */
    public MadeBatch madeAtFirst() {
        return MadeBatch.of(readings);
    }

    /**
     * What is in the pot after all entries.
     *
     * @return the batch as made
     */
    public MadeBatch made() {
        MadeBatch known = made;
        if (known == null) {
            known = madeAtFirst();
            for (BenchEntry entry : entries) {
                known = entry.applyTo(known);
            }
            made = known;
        }
        return known;
    }

    /** An entry is added to the pot that is known already: no pot is made anew from its readings for each of many. */
    private BatchRecord knowing(MadeBatch pot) {
        made = pot;
        return this;
    }

    /**
     * How the lines of what was made stand against their tolerances.
     *
     * @return one check per line
     */
    public List<LineCheck> deviations() {
        return made().check(tolerances);
    }

    /**
     * How the batch was filled.
     *
     * @return the packs, if that was written down
     */
    public Optional<Filling> filling() {
        return Optional.ofNullable(filled).map(f -> Filling.of(made().mass(), f.residue(), f.fill()));
    }

    /**
     * The amendments, in order.
     *
     * @return an unmodifiable list
     */
    public List<Amendment> amendments() {
        return amendments.list();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BatchRecord that
                && code.equals(that.code)
                && batchNumber.equals(that.batchNumber)
                && preparations.equals(that.preparations)
                && readings.equals(that.readings)
                && tolerances.equals(that.tolerances)
                && entries.equals(that.entries)
                && Objects.equals(filled, that.filled)
                && amendments.equals(that.amendments);
    }

    @Override
    public int hashCode() {
        return Objects.hash(code, readings, tolerances, entries, filled, amendments);
    }

    @Override
    public String toString() {
        return code + " " + formula().name() + ", " + entries.size() + " entries, "
                + amendments().size() + " amendments";
    }
}
