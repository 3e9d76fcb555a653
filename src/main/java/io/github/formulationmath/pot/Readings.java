package io.github.formulationmath.pot;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * All readings of a batch, in the order in which they were taken, checked against what a display can show.
 *
 * <p>Tared before each line, a reading is the line itself; cumulative, it is everything so far. A line without a reading
 * counts as not written down.
 *
 * <p>Example: {@code Readings.of(plan, WeighingMethod.TARE_EACH, List.of(Reading.of(line, "12.3 g"), …))}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Readings implements Serializable {

    @Serial
    private static final long serialVersionUID = 2L;

    private final WeighingPlan plan;
    private final WeighingMethod method;
    private final List<Reading> taken;
    /** Whether lines without a reading are still to come. */
    private final boolean isOpen;

    private Readings(WeighingPlan plan, WeighingMethod method, List<Reading> taken, boolean isOpen) {
        this.plan = plan;
        this.method = method;
        this.taken = taken;
        this.isOpen = isOpen;
    }

    /**
     * Checks readings.
     *
     * @param plan what was to be weighed, and on which bench
     * @param method how it was weighed
     * @param readings the readings in the order in which they were taken, at most one per line
     * @return the readings
     * @throws IllegalArgumentException if a reading is of no line of the formula, a line has two, a reading is no multiple
     *     of the step of the display or more than the balance carries, a cumulative reading is below the one before it or
     *     on another balance, or a time lies before the previous one
     */
    public static Readings of(WeighingPlan plan, WeighingMethod method, List<Reading> readings) {
        return of(plan, method, readings, index -> {});
    }

    /**
     * The same, telling which reading is being looked at, so that a reader of files can say where a mistake stands.
     *
     * @param plan the plan
     * @param method how it was weighed
     * @param readings the readings
     * @param at told the place of each reading before it is looked at
     * @return the readings
     * @throws IllegalArgumentException as without the last argument
     */
    public static Readings of(WeighingPlan plan, WeighingMethod method, List<Reading> readings, IntConsumer at) {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(method, "method");
        List<Reading> taken = List.copyOf(Objects.requireNonNull(readings, "readings"));
        new ReadingsCheck(plan, method, false, at).check(taken);
        return new Readings(plan, method, taken, false);
    }

    /**
     * Readings of a batch that is only begun: lines without a reading are not in the pot yet, they are still to come. What
     * is known so far can be kept, looked at, mended, and taken up again by {@link #plus}.
     *
     * <p>Example: {@code Readings.begun(plan, WeighingMethod.TARE_EACH, List.of(Reading.of(line, "12.3 g")))}.
     *
     * @param plan what is to be weighed, and on which balances
     * @param method how it is weighed on the balance of the bench
     * @param readings the readings so far, in the order in which they were taken
     * @return the readings
     * @throws IllegalArgumentException as {@link #of(WeighingPlan, WeighingMethod, List)}, but lines may be missing
     */
    public static Readings begun(WeighingPlan plan, WeighingMethod method, List<Reading> readings) {
        return begun(plan, method, readings, index -> {});
    }

    /**
     * The same, telling which reading is being looked at.
     *
     * @param plan the plan
     * @param method how it is weighed
     * @param readings the readings so far
     * @param at told the place of each reading before it is looked at
     * @return the readings
     * @throws IllegalArgumentException as without the last argument
     */
    public static Readings begun(WeighingPlan plan, WeighingMethod method, List<Reading> readings, IntConsumer at) {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(method, "method");
        List<Reading> taken = List.copyOf(Objects.requireNonNull(readings, "readings"));
        new ReadingsCheck(plan, method, true, at).check(taken);
        return new Readings(plan, method, taken, true);
    }

    /**
     * A batch that is begun, every line up to one as it was planned, tared before each, and that one otherwise: "I poured
     * 3.2 g instead of 2.5 g".
     *
     * <p>Example: {@code Readings.upTo(plan, "Glycerin", "3.2 g")}.
     *
     * @param plan what is to be weighed
     * @param ingredientName the line that was weighed last
     * @param shown what its display read
     * @return the readings so far; the lines behind it in the formula are still to come
     * @throws IllegalArgumentException if no line has the name or several have, or the text is no mass that its display can read
     */
    public static Readings upTo(WeighingPlan plan, String ingredientName, String shown) {
        PlannedLine last = plan.line(ingredientName);
        List<Reading> readings = new ArrayList<>();
        for (PlannedLine line : plan.lines().subList(0, last.index())) {
            readings.add(Reading.of(line.line(), line.reading()));
        }
        readings.add(Reading.of(last.line(), shown));
        return begun(plan, WeighingMethod.TARE_EACH, readings);
    }

    /**
     * Readings as they are typed, each line tared before it was weighed: its name and what its display read, one after the other, parted by
     * semicolons or ends of lines. Lines that are not among them are still to come; once all are, the batch is finished.
     *
     * <p>Example: {@code Readings.parse(plan, "Aqua 228.9 g; Glycerin 15.2 g")}.
     *
     * @param plan what is weighed
     * @param text the readings in the order in which they were taken
     * @return the readings so far
     * @throws IllegalArgumentException if something is no reading of a line on its display; whatever is wrong is told at once, each with what
     *     was typed and what to write instead
     */
    public static Readings parse(WeighingPlan plan, String text) {
        List<Reading> typed =
                TypedReadings.read(Objects.requireNonNull(plan, "plan"), Objects.requireNonNull(text, "text"));
        Readings begun = begun(plan, WeighingMethod.TARE_EACH, typed);
        return begun.toCome().isEmpty() ? begun.finished() : begun;
    }

    /**
     * A whole batch, every line read as it was planned, tared before each.
     *
     * <p>Example: {@code MadeBatch.of(Readings.asPlanned(plan))}.
     *
     * @param plan what was weighed
     * @return the readings of all lines
     */
    public static Readings asPlanned(WeighingPlan plan) {
        return of(
                plan,
                WeighingMethod.TARE_EACH,
                Objects.requireNonNull(plan, "plan").lines().stream()
                        .map(line -> Reading.of(line.line(), line.reading()))
                        .toList());
    }

    /**
     * The same batch with one reading more.
     *
     * @param next what was read next
     * @return the readings, open or not as before
     * @throws IllegalArgumentException as {@link #begun(WeighingPlan, WeighingMethod, List)}
     */
    public Readings plus(Reading next) {
        List<Reading> all = new ArrayList<>(taken);
        all.add(Objects.requireNonNull(next, "next"));
        return isOpen ? begun(plan, method, all) : of(plan, method, all);
    }

    /**
     * The batch with nothing more to come: lines without a reading count as not written down.
     *
     * @return the readings of the whole batch
     * @throws IllegalArgumentException as {@link #of(WeighingPlan, WeighingMethod, List)}
     */
    public Readings finished() {
        return of(plan, method, taken);
    }

    /**
     * Whether lines may still come.
     *
     * @return true if the batch is only begun
     */
    public boolean isOpen() {
        return isOpen;
    }

    /**
     * The lines that are still to come.
     *
     * @return an unmodifiable list in the order of the formula; empty once the batch is finished
     */
    public List<FormulaLine> toCome() {
        Map<Integer, Reading> known = byLine();
        return plan.formula().lines().stream()
                .filter(line -> isOpen && !known.containsKey(line.index()))
                .toList();
    }

    /**
     * What was to be weighed.
     *
     * @return the plan
     */
    public WeighingPlan plan() {
        return plan;
    }

    /**
     * How it was weighed.
     *
     * @return the method
     */
    public WeighingMethod method() {
        return method;
    }

    /**
     * The readings that were taken, in order.
     *
     * @return an unmodifiable list
     */
    public List<Reading> taken() {
        return taken;
    }

    /**
     * The lines whose mass nobody wrote down.
     *
     * @return an unmodifiable list in the order of the formula
     */
    public List<FormulaLine> missing() {
        Set<Integer> toCome = toCome().stream().map(FormulaLine::position).collect(Collectors.toSet());
        Set<Integer> known = taken.stream()
                .filter(reading -> reading.kind() != Reading.Kind.NOT_WRITTEN_DOWN)
                .map(reading -> reading.line().position())
                .collect(Collectors.toSet());
        return plan.formula().lines().stream()
                .filter(line -> !known.contains(line.position()) && !toCome.contains(line.position()))
                .toList();
    }

    /**
     * What was put in of a line, as its display told: the reading, or what a cumulative reading is above the one before it. Nothing is
     * taken off for what stays in a boat, so that it is what left the material's own vessel.
     *
     * @param line a line of the formula
     * @return the mass, 0 if the line was left out; empty if nobody read it, alone or at all
     * @throws IllegalArgumentException if the formula has no such line
     */
    public Optional<Amount<Mass>> poured(FormulaLine line) {
        if (!plan.formula().has(Objects.requireNonNull(line, "line"))) {
            throw new IllegalArgumentException("line is " + Excerpt.of(line) + ", no line of \""
                    + Excerpt.of(plan.formula().name()) + "\": take it from that formula");
        }
        Reading reading = byLine().get(line.index());
        PotMass read = read()[line.index()];
        if (reading == null || read.isAssumed()) {
            return Optional.empty();
        }
        return Optional.of(Amount.grams(read.grams(Reckoning.plain()))
                .inUnitOf(plan.line(line).balance().readability()));
    }

    Balance balanceOf(Reading reading) {
        return reading.balance().orElse(plan.line(reading.line()).balance());
    }

    /** How a line was weighed: as all on the bench are, or as at the place that the plan gives it. */
    WeighingMethod methodOf(Reading reading) {
        return methodOf(plan, method, reading);
    }

    static WeighingMethod methodOf(WeighingPlan plan, WeighingMethod onBench, Reading reading) {
        boolean onBenchAfterAll =
                reading.balance().filter(plan.bench().balance()::equals).isPresent();
        return onBenchAfterAll ? onBench : plan.line(reading.line()).method(onBench);
    }

    /** The balance of each line, in the order of the formula: that of its reading, else that of the plan. */
    List<Balance> balances() {
        Balance[] balances = new Balance[plan.lines().size()];
        Arrays.setAll(balances, i -> plan.lines().get(i).balance());
        taken.forEach(reading -> balances[index(reading)] = balanceOf(reading));
        return List.of(balances);
    }

    /**
     * Where a line may lie of which nothing is known but the balance on which it was weighed, alone or on top of others.
     *
     * @param other the balance, if it was another than that of the plan
     */
    Bounds room(int line, Optional<Balance> other) {
        PlannedLine planned = plan.lines().get(line);
        Balance balance = other.orElse(planned.balance());
        WeighingMethod how = planned.method(method);
        boolean isInVessel = other.isEmpty() && !how.usesBoat();
        Amount<Mass> most = isInVessel ? balance.capacityUnder(plan.bench().vessel()) : balance.capacity();
        WeighingMethod alone = how.usesBoat() ? how : WeighingMethod.TARE_EACH;
        return SureMass.bounds(plan.formula().lines().get(line), most.canonical(), balance, alone);
    }

    /** The readings by line, from 0; a line has one at most. */
    Map<Integer, Reading> byLine() {
        return taken.stream().collect(Collectors.toMap(Readings::index, reading -> reading));
    }

    /** How the mass of each line follows from the readings, in the order of the formula. */
    List<PotMass> masses() {
        PotMass[] masses = read();
        taken.stream()
                .filter(reading -> reading.kind() != Reading.Kind.LEFT_OUT)
                .forEach(reading -> masses[index(reading)] = estimated(reading, masses[index(reading)]));
        toCome().forEach(line -> masses[line.index()] = new PotMass.Nothing());
        return List.of(masses);
    }

    /** What the displays say of each line, in the order of the formula; of a line without a reading what was planned. */
    private PotMass[] read() {
        PotMass[] masses = new PotMass[plan.lines().size()];
        Arrays.setAll(masses, i -> new PotMass.Planned(plan.batch().lines().get(i)));
        if (method == WeighingMethod.CUMULATIVE) {
            fillDifferences(masses);
        } else {
            taken.stream()
                    .filter(reading -> reading.kind() == Reading.Kind.SHOWN)
                    .forEach(reading -> masses[index(reading)] = PotMass.Shown.of(reading));
        }
        taken.stream()
                .filter(reading -> reading.kind() == Reading.Kind.LEFT_OUT)
                .forEach(reading -> masses[index(reading)] = new PotMass.Nothing());
        return masses;
    }

    /** What is planned is a mass already; what was read is corrected for what stays behind, and for the air. */
    private PotMass estimated(Reading reading, PotMass read) {
        return read instanceof PotMass.Planned
                ? read
                : new PotMass.Estimated(read, reading.line(), balanceOf(reading), methodOf(reading));
    }

    /**
     * A reading that follows on lines not written down is of all of them together. After a line from elsewhere the balance
     * is tared again.
     */
    private void fillDifferences(PotMass[] masses) {
        PotMass.Shown before = null;
        List<FormulaLine> together = new ArrayList<>();
        for (Reading reading : taken) {
            if (methodOf(reading) != WeighingMethod.CUMULATIVE) {
                before = null;
                together.clear();
                if (reading.kind() == Reading.Kind.SHOWN) {
                    masses[index(reading)] = PotMass.Shown.of(reading);
                }
                continue;
            }
            if (reading.kind() != Reading.Kind.LEFT_OUT) {
                together.add(reading.line());
            }
            if (reading.kind() == Reading.Kind.SHOWN) {
                PotMass.Shown shown = PotMass.Shown.of(reading);
                PotMass.Difference difference = new PotMass.Difference(before, shown);
                PotMass.Together all = PotMass.Together.of(List.copyOf(together));
                for (FormulaLine line : together) {
                    masses[line.index()] = together.size() == 1
                            ? difference
                            : new PotMass.PartOfDifference(difference, all, line, reading.line());
                }
                before = shown;
                together.clear();
            }
        }
    }

    private static int index(Reading reading) {
        return reading.line().index();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Readings that
                && method == that.method
                && isOpen == that.isOpen
                && taken.equals(that.taken)
                && plan.bench().equals(that.plan.bench())
                && plan.stations().equals(that.plan.stations())
                && plan.batch().size().equals(that.plan.batch().size())
                && plan.formula().equals(that.plan.formula());
    }

    @Override
    public int hashCode() {
        return Objects.hash(method, taken, plan.formula());
    }

    @Override
    public String toString() {
        return method + " " + taken
                + (toCome().isEmpty()
                        ? ""
                        : ", to come "
                                + toCome().stream().map(FormulaLine::name).toList());
    }
}
