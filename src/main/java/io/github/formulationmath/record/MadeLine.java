package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Line;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.planning.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Symbol;
import io.github.formulationmath.working.Working;
import java.io.Serial;
import java.io.Serializable;
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
public final class MadeLine implements Line, Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 2L;

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
     * @return the mass in grams, at least 0
     */
    public Amount<Mass> mass() {
        return Amount.grams(grams);
    }

    /**
     * Between which masses the true one is sure to lie, by everything that is bounded in the errors of the balances: display,
     * tare, linearity, residue, air. Repeatability and calibration have no bounds and are left out.
     *
     * @return the interval in grams
     */
    public Bounds massBounds() {
        return made.massBounds(this);
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
     * addition, or that of the bench if it has none.
     *
     * @return the balance of the line
     */
    public Balance balance() {
        return balance;
    }

    /** Whether its balance is that of the bench, which needs no saying. */
    boolean isOnBench() {
        return balance.equals(made.plan().bench().balance());
    }

    /**
     * The share of everything in the pot.
     *
     * @return the mass fraction, exact for the estimates as they are
     */
    public MassFraction share() {
        return MassFraction.of(share(Reckoning.plain()));
    }

    /**
     * How {@link #share()} comes about.
     *
     * @return the working
     */
    public Working shareWorking() {
        return Working.of(Phrase.of("question.made-share", name()), share(Reckoning.plain()), this::share);
    }

    /**
     * Between which shares the true one is sure to lie, by the same errors as {@link #massBounds()}.
     *
     * @return the interval as fractions of one: the true extremes while everything was weighed in and written down; wider
     *     where a line was not, after a second weighing, and above 500 lines
     */
    public Bounds shareBounds() {
        return made.shareBounds(this);
    }

    /**
     * How far the mass is from the exact mass planned.
     *
     * @return made minus planned, in grams; negative if there is too little
     */
    public Amount<Mass> deviation() {
        return Amount.grams(deviation(Reckoning.plain()));
    }

    /**
     * How {@link #deviation()} comes about.
     *
     * @return the working
     */
    public Working deviationWorking() {
        return Working.of(Phrase.of("question.mass-deviation", name()), deviation(Reckoning.plain()), this::deviation);
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

    @Override
    public Phrase question() {
        return Phrase.of("question.made-mass", name());
    }

    @Override
    public Ratio result() {
        return grams;
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        return r.named(made.symbols().mass(), line, origin.grams(r));
    }

    <V> V share(Reckoning<V> r) {
        return r.named(made.symbols().share(), line, r.quotient(r.known(this), r.known(made)));
    }

    private <V> V deviation(Reckoning<V> r) {
        V planned = r.known(made.plan().batch().line(line));
        return r.named(DEVIATION, line, r.difference(r.known(this), planned));
    }

    Symbol symbol() {
        return made.symbols().mass();
    }

    @Override
    public String toString() {
        return name() + " " + mass();
    }
}
