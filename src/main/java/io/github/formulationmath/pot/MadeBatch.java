package io.github.formulationmath.pot;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Lines;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What is in the pot: the mass of every line as the readings tell it, or as later additions and losses left it, and
 * the {@link #mass()} of everything, {@code Z = Σ z_i}.
 *
 * <p>Example: {@code MadeBatch.of(readings).line("Glycerin").check(Tolerances.of("5 %")).verdict()}.
 *
 * <p>Immutable and thread-safe.
 */
public final class MadeBatch implements Weighed, Lines<MadeLine>, Explained {

    /** The most strokes behind a letter. */
    private static final int PRIMES = 3;

    private final WeighingPlan plan;
    /** Each mending has letters of its own, so that before and after can meet in one working. */
    private final int stage;

    private final List<MadeLine> lines;
    private final PotErrors errors;
    private final Ratio grams;

    private MadeBatch(WeighingPlan plan, int stage, List<PotMass> masses, List<Balance> balances, PotErrors errors) {
        this.plan = plan;
        this.stage = stage;
        this.errors = errors;
        List<MadeLine> all = new ArrayList<>(masses.size());
        for (int i = 0; i < masses.size(); i++) {
            FormulaLine line = plan.formula().lines().get(i);
            all.add(new MadeLine(this, line, masses.get(i), balances.get(i)));
        }
        this.lines = Collections.unmodifiableList(all);
        this.grams = sum(Reckoning.plain());
    }

    /**
     * What the readings put into the pot.
     *
     * @param readings the readings
     * @return the batch as made
     * @throws IllegalArgumentException if nothing was put in at all
     */
    public static MadeBatch of(Readings readings) {
        Objects.requireNonNull(readings, "readings");
        List<PotMass> masses = readings.masses();
        MadeBatch made = new MadeBatch(readings.plan(), 0, masses, readings.balances(), PotErrors.of(readings, masses));
        if (made.grams.isZero()) {
            throw new IllegalArgumentException("the readings add up to 0: nothing was made");
        }
        return made;
    }

    /**
     * The pot after more was weighed in, each addition by itself: on the balance on which its line was
     * planned, or on the one that it says.
     *
     * @param additions what was added, as the display read it
     * @return what is in the pot then
     * @throws IllegalArgumentException if an addition is of no line of the formula, or a line has two
     */
    public MadeBatch plus(List<LineAddition> additions) {
        List<LineAddition> all = List.copyOf(Objects.requireNonNull(additions, "additions"));
        Map<Integer, PotMass> byLine = new HashMap<>();
        List<Balance> balances = balances();
        Symbol symbol = symbolOfNext();
        for (LineAddition addition : all) {
            MadeLine there = line(addition.line());
            FormulaLine line = there.line();
            Balance balance = addition.balanceIn(plan);
            PotMass shown = new PotMass.Shown(symbol, line, addition.mass(), Source.user());
            // The line was weighed before, and what is known of that weighing bears its number.
            Subject again = Subject.of(line.subscript() + "," + symbol.letter(), line.name());
            PotMass more = new PotMass.Estimated(shown, again, balance, addition.methodIn(plan));
            if (byLine.putIfAbsent(there.index(), new PotMass.Plus(there, more)) != null) {
                throw new IllegalArgumentException(
                        "additions has " + Excerpt.of(line.name()) + " twice: add the two up");
            }
            balances.set(there.index(), balance);
        }
        return after(
                line -> byLine.getOrDefault(line.index(), new PotMass.Same(line)), balances, errors.plus(all, plan));
    }

    /** The pot after something happened to its lines, each known to within the same errors as before and some more. */
    MadeBatch after(Function<MadeLine, PotMass> change, PotErrors newErrors) {
        return after(change, balances(), newErrors);
    }

    private MadeBatch after(Function<MadeLine, PotMass> change, List<Balance> balances, PotErrors newErrors) {
        return new MadeBatch(plan, stage + 1, lines.stream().map(change).toList(), balances, newErrors);
    }

    private List<Balance> balances() {
        return new ArrayList<>(lines.stream().map(MadeLine::balance).toList());
    }

    /**
     * What was to be made, and on which bench.
     *
     * @return the plan
     */
    public WeighingPlan plan() {
        return plan;
    }

    /**
     * The mass of everything in the pot.
     *
     * @return the mass in the unit of the display of the bench, above 0, with its working
     */
    public Amount<Mass> mass() {
        return Amount.grams(grams)
                .withWorking(made -> Phrase.of("question.made-total"), this, MadeBatch::sum)
                .inUnitOf(plan.bench().balance().readability());
    }

    @Override
    public List<MadeLine> lines() {
        return lines;
    }

    /**
     * Holds every line against its tolerance.
     *
     * @param tolerances how far each line may be off
     * @return one check per line, in the order of the formula
     */
    public List<LineCheck> check(Tolerances tolerances) {
        Objects.requireNonNull(tolerances, "tolerances");
        return lines.stream().map(line -> line.check(tolerances)).toList();
    }

    /**
     * The formula that was weighed.
     *
     * @return the formula of the plan, as written
     */
    @Override
    public Formula formula() {
        return plan.formula();
    }

    /**
     * The masses of the lines with everything the displays hide, one per line in the order of the formula, to be checked
     * against limits or put onto a label. After additions, a second weighing, or readings in another order, each line is
     * taken to be anywhere within its own bounds, and as uncertain as the weighings behind it were in any sum with others,
     * repeatability and calibration included: on the safe side for every decision rule and coverage factor.
     *
     * @return the masses together
     */
    @Override
    public MadeMasses masses() {
        return errors.masses(lines);
    }

    /**
     * What was made, written down as a formula in masses, to be checked against limits or made again. Lines of which
     * nothing was put in are left out.
     *
     * @return the formula of the pot
     */
    public Formula asFormula() {
        return plan.formula().withMasses(line -> line(line).mass());
    }

    /** Where the {@link #mass()} comes from. */
    @Override
    public Origin origin() {
        return mass().origin();
    }

    private <V> V sum(Reckoning<V> r) {
        List<V> masses = new ArrayList<>(lines.size());
        for (MadeLine line : lines) {
            masses.add(r.known(line));
        }
        return r.named(Symbol.of("Z" + mark(stage), "made-total", Kind.MASS), r.sum(masses));
    }

    /** The mass of everything in grams. */
    Ratio grams() {
        return grams;
    }

    /** What decides whether two batches are the same: how much of each line is in the pot, whether that is known, and where. */
    private List<Object> contents() {
        List<Object> all = new ArrayList<>(3 * lines.size());
        for (MadeLine line : lines) {
            all.add(line.mass());
            all.add(line.isAssumed());
            all.add(line.balance());
        }
        return all;
    }

    /**
     * The letter of what is added next, the same before and after it is added.
     *
     * @return its symbol
     */
    public Symbol symbolOfNext() {
        return Symbol.of("x" + mark(stage + 1), "added-mass", Kind.MASS);
    }

    /**
     * Whether a balance behind it has an error without a bound, repeatability or a calibration's uncertainty, so that the bounds of its
     * lines are not the whole of what may happen. What lines have in common once each stands by itself is none: it is in their
     * bounds.
     *
     * @return true if there is one
     */
    public boolean leavesErrorsOut() {
        return IntStream.range(0, errors.size()).mapToObj(errors::spread).anyMatch(Spread::isUnbounded);
    }

    Symbol massOfLine() {
        return Symbol.of("z" + mark(stage), "made-mass", Kind.MASS);
    }

    Symbol shareOfLine() {
        return Symbol.of("v" + mark(stage), "made-share", Kind.SHARE);
    }

    Symbol contentNow() {
        return Symbol.of("Z" + mark(stage) + (stage > PRIMES ? "" : "_") + "now", "content-now", Kind.MASS);
    }

    Symbol evaporated() {
        return Symbol.of("E" + mark(stage), "evaporated-mass", Kind.MASS);
    }

    /** z, z′, z′′, z′′′, and then z_(4): no plain number, which would be the index of a line. */
    private static String mark(int stage) {
        return stage > PRIMES ? "_(" + stage + ")" : "′".repeat(stage);
    }

    PotErrors errors() {
        return errors;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MadeBatch that
                && plan.equals(that.plan)
                && errors.equals(that.errors)
                && contents().equals(that.contents());
    }

    @Override
    public int hashCode() {
        return Objects.hash(plan, grams);
    }

    @Override
    public String toString() {
        return plan.formula().name() + " as made: " + lines;
    }
}
