package io.github.formulationmath.pot;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Line;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * One line of what was made: its mass z in the pot, its share v = z/Z of everything in the pot, and how far both are from
 * what was planned.
 *
 * <p>Example: 12.3 g read of 12 g planned in a pot of 400 g make a share of 3.075 % where 3 % was asked for, 2.5 % too
 * much of it.
 *
 * <p>Immutable and thread-safe.
 */
public final class MadeLine implements Line, Explained {

    private static final Symbol DEVIATION = Symbol.of("Δ", "mass-deviation", Kind.MASS);

    private final MadeBatch made;
    private final FormulaLine line;
    private final PotMass origin;
    private final Balance balance;
    private final Ratio grams;

    MadeLine(MadeBatch made, FormulaLine line, PotMass origin, Balance balance) {
        this.made = made;
        this.line = line;
        this.origin = origin;
        this.balance = balance;
        this.grams = origin.grams(Reckoning.plain());
    }

    @Override
    public FormulaLine line() {
        return line;
    }

    /**
     * The mass that is most likely in the pot: as read, corrected for what is known of residue and air. It lies within the
     * {@link #massBounds()}, and is the same estimate as that of {@link MadeBatch#masses()}.
     *
     * @return the mass in the unit of its display, at least 0, with its working
     */
    public Amount<Mass> mass() {
        return Amount.grams(grams)
                .withWorking(line -> Phrase.of("question.made-mass", line.name()), this, MadeLine::mass)
                .inUnitOf(unit());
    }

    private <V> V mass(Reckoning<V> r) {
        return r.named(made.massOfLine(), line, origin.grams(r));
    }

    /**
     * Between which masses the true one is sure to lie, by everything that is bounded in the errors of the balances: display,
     * tare, linearity, residue, air. Repeatability and calibration have no bounds and are left out.
     *
     * @return the interval in the unit of its display
     */
    public Interval<Amount<Mass>> massBounds() {
        Bounds bounds = bounds();
        return Interval.of(
                Amount.grams(bounds.lower().orElseThrow()).inUnitOf(unit()),
                Amount.grams(bounds.upper().orElseThrow()).inUnitOf(unit()));
    }

    /** The same in grams. */
    Bounds bounds() {
        return made.errors().massBounds(index());
    }

    /**
     * Whether nobody wrote the mass down, so that {@link #mass()} is a guess from the plan.
     *
     * @return true for a guess
     */
    public boolean isAssumed() {
        return origin.isAssumed();
    }

    /**
     * The balance on which this line was last weighed, and on which more of it would be: that of its latest reading or
     * addition, or that of the plan if it has none.
     *
     * @return the balance of the line
     */
    public Balance balance() {
        return balance;
    }

    /**
     * Whether its balance is that of the bench, under the vessel of the batch.
     *
     * @return true if it is
     */
    public boolean isOnBench() {
        return balance.equals(made.plan().bench().balance());
    }

    /** Whether its balance is that of the plan, which needs no saying. */
    boolean isAsPlanned() {
        return balance.equals(made.plan().line(line).balance());
    }

    /**
     * What its balance carries of it in one go: beside the boat in which the plan has it weighed, if that is its balance.
     *
     * @return the largest addition to it, in the unit of the balance
     */
    public Amount<Mass> carried() {
        WeighingStation station = made.plan().line(line).station();
        return station.isBoat() && station.balance().equals(balance) ? station.room() : balance.capacity();
    }

    /**
     * The share of everything in the pot.
     *
     * @return the mass fraction, exact for the estimates as they are, with its working
     */
    public MassFraction share() {
        return MassFraction.of(share(Reckoning.plain()))
                .withWorking(line -> Phrase.of("question.made-share", line.name()), this, MadeLine::share);
    }

    /**
     * Between which shares the true one is sure to lie, by the same errors as {@link #massBounds()}.
     *
     * @return the interval, up to 100 %: the true extremes while everything was weighed in and written down; wider where a line was not,
     *     after a second weighing, and above 500 lines
     */
    public Interval<MassFraction> shareBounds() {
        Bounds bounds = possibleShares();
        return Interval.of(
                MassFraction.of(bounds.lower().orElseThrow()),
                MassFraction.of(bounds.upper().orElseThrow().min(Ratio.ONE)));
    }

    /** The same as fractions of one. */
    Bounds possibleShares() {
        return made.errors().shareBounds(index());
    }

    /**
     * How far the mass is from the exact mass planned.
     *
     * @return made minus planned, in the unit of its display, with its working; negative if there is too little
     */
    public Amount<Mass> deviation() {
        return Amount.grams(deviation(Reckoning.plain()))
                .withWorking(line -> Phrase.of("question.mass-deviation", line.name()), this, MadeLine::deviation)
                .inUnitOf(unit());
    }

    /** An amount in the unit of the display that the line is planned on. */
    private Amount<Mass> unit() {
        return made.plan().line(line).balance().readability();
    }

    /**
     * Holds the share against a tolerance.
     *
     * @param tolerances how far each line may be off
     * @return the check with its verdict
     */
    public LineCheck check(Tolerances tolerances) {
        return new LineCheck(
                this, Objects.requireNonNull(tolerances, "tolerances").forLine(line));
    }

    /** Where the {@link #mass()} comes from. */
    @Override
    public Origin origin() {
        return mass().origin();
    }

    /** As that of {@link #mass()}, told in its unit. */
    @Override
    public Working working() {
        return mass().working();
    }

    /** The step in which more of it can be weighed, in grams. */
    Ratio step() {
        return balance.readability().canonical();
    }

    /** The mass in grams. */
    Ratio grams() {
        return grams;
    }

    <V> V share(Reckoning<V> r) {
        return r.named(made.shareOfLine(), line, r.quotient(r.known(this), r.known(made)));
    }

    private <V> V deviation(Reckoning<V> r) {
        V planned = r.known(made.plan().batch().line(line));
        return r.named(DEVIATION, line, r.difference(r.known(this), planned));
    }

    @Override
    public String toString() {
        return name() + " " + mass().told();
    }
}
