package io.github.formulationmath.record;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Lines;
import io.github.formulationmath.formula.MassFormulaBuilder;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.planning.Tolerances;
import io.github.formulationmath.planning.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What is in the pot: the mass of every line as the readings tell it, or as later additions and losses left it. Its
 * {@link #result()} is the mass of everything, {@code Z = Σ z_i}.
 *
 * <p>Example: {@code MadeBatch.of(readings).line("Glycerin").check(Tolerances.of("5 %")).verdict()}.
 *
 * <p>Immutable and thread-safe.
 */
public final class MadeBatch implements Weighed, Lines<MadeLine>, Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 2L;

    private final WeighingPlan plan;
    private final PotSymbols symbols;
    private final List<MadeLine> lines;
    private final PotErrors errors;
    private final Ratio grams;

    private MadeBatch(
            WeighingPlan plan, PotSymbols symbols, List<PotMass> masses, List<Balance> balances, PotErrors errors) {
        this.plan = plan;
        this.symbols = symbols;
        this.errors = errors;
        List<MadeLine> all = new ArrayList<>(masses.size());
        for (int i = 0; i < masses.size(); i++) {
            FormulaLine line = plan.batch().formula().lines().get(i);
            all.add(new MadeLine(this, line, masses.get(i), balances.get(i)));
        }
        this.lines = Collections.unmodifiableList(all);
        this.grams = derive(Reckoning.plain());
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
        MadeBatch made = new MadeBatch(
                readings.plan(), new PotSymbols(0), readings.masses(), readings.balances(), PotErrors.of(readings));
        if (made.grams.isZero()) {
            throw new IllegalArgumentException("the readings add up to 0: nothing was made");
        }
        return made;
    }

    /**
     * The pot after more was weighed in, each addition by itself: into the tared pot on the balance of the bench, or on the
     * balance that it says.
     *
     * @param additions what was added, as the display read it
     * @return what is in the pot then
     * @throws IllegalArgumentException if an addition is of no line of the formula, or a line has two
     */
    public MadeBatch plus(List<LineAddition> additions) {
        Map<Integer, PotMass> byLine = new HashMap<>();
        List<LineAddition> all = List.copyOf(Objects.requireNonNull(additions, "additions"));
        List<Balance> balances = balances();
        Symbol symbol = symbols.next().added();
        for (LineAddition addition : all) {
            FormulaLine line = addition.line();
            int index = formula().indexOf(line);
            Balance balance = addition.balance().orElse(plan.bench().balance());
            PotMass more = new PotMass.Estimated(
                    new PotMass.Added(symbol, line, addition.grams()), line, balance, WeighingMethod.TARE_EACH);
            if (byLine.putIfAbsent(line.position(), more) != null) {
                throw new IllegalArgumentException(
                        "additions has " + Excerpt.of(line.name()) + " twice: add the two up");
            }
            balances.set(index, balance);
        }
        return after(
                line -> plus(line, byLine.get(line.line().position())),
                balances,
                errors.plus(all, plan.bench().balance()));
    }

    private static PotMass plus(MadeLine line, @Nullable PotMass more) {
        return more == null ? new PotMass.Same(line) : new PotMass.Plus(line, more);
    }

    /** The pot after something happened to its lines, each known to within the same errors as before and some more. */
    MadeBatch after(Function<MadeLine, PotMass> change, PotErrors newErrors) {
        return after(change, balances(), newErrors);
    }

    private MadeBatch after(Function<MadeLine, PotMass> change, List<Balance> balances, PotErrors newErrors) {
        return new MadeBatch(plan, symbols.next(), lines.stream().map(change).toList(), balances, newErrors);
    }

    private List<Balance> balances() {
        List<Balance> all = new ArrayList<>(lines.size());
        lines.forEach(line -> all.add(line.balance()));
        return all;
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
     * @return the mass in grams, above 0
     */
    public Amount<Mass> mass() {
        return Amount.grams(grams);
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
        return plan.batch().formula();
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
     * Checks limits again, on what was made.
     *
     * @param checker the limits, the product and the rule of decision
     * @return the report on the shares as made and what the displays hide of them
     */
    public LimitReport check(LimitChecker checker) {
        return Objects.requireNonNull(checker, "checker").check(this);
    }

    /**
     * What was made, written down as a formula in masses, to be checked against limits or made again. Lines of which
     * nothing was put in are left out.
     *
     * @return the formula of the pot
     */
    public Formula asFormula() {
        MassFormulaBuilder masses = Formula.inMasses(plan.batch().formula().name());
        for (Phase phase : plan.batch().formula().phases()) {
            List<MadeLine> there = phase.lines().stream()
                    .map(this::line)
                    .filter(line -> line.mass().signum() > 0)
                    .toList();
            if (!there.isEmpty()) {
                masses.phase(phase.name());
                there.forEach(line -> masses.line(line.line().ingredient(), line.mass()));
            }
        }
        return masses.build();
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.made-total");
    }

    @Override
    public Ratio result() {
        return grams;
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        List<V> masses = new ArrayList<>(lines.size());
        for (MadeLine line : lines) {
            masses.add(r.known(line));
        }
        return r.named(symbols.total(), r.sum(masses));
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

    PotSymbols symbols() {
        return symbols;
    }

    PotErrors errors() {
        return errors;
    }

    Bounds shareBounds(MadeLine line) {
        return errors.shareBounds(line.index());
    }

    Bounds massBounds(MadeLine line) {
        return errors.massBounds(line.index());
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
        return plan.batch().formula().name() + " as made: " + lines;
    }
}
