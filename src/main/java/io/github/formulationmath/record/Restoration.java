package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.working.Comparison;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Symbol;
import io.github.formulationmath.working.Working;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * The formula restored exactly: nothing can be taken out, so the batch grows until the line that there is most of, for its
 * share, is right, {@code M_new = max z_i/w_i}, and every other line is made up to {@code w_i·M_new}.
 *
 * <p>Example: 100 g were planned as 80 + 20, and 22 g of the second were poured. 22/0.2 = 110 g is the new batch, which
 * takes 88 g of the first: 8 g more.
 *
 * <p>Whether the additions can be made is told by {@link #obstacles()}; the arithmetic is given in any case.
 *
 * <p>Immutable and thread-safe.
 */
public final class Restoration implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol NEEDED = Symbol.of("G", "batch-for-line", Kind.MASS);
    private static final Symbol NEW_MASS = Symbol.of("Mnew", "restored-batch-mass", Kind.MASS);
    private static final Symbol ADDITION = Symbol.of("x", "addition-to-restore", Kind.MASS);

    private final MadeBatch made;
    private final CorrectionRules rules;
    private final Ratio grams;
    private final List<Ratio> additions;

    private Restoration(MadeBatch made, CorrectionRules rules) {
        this.made = made;
        this.rules = rules.checkedFor(made);
        this.grams = derive(Reckoning.plain());
        List<Ratio> all = new ArrayList<>(made.lines().size());
        for (MadeLine line : made.lines()) {
            all.add(line.line().fraction().times(grams).minus(line.result()));
        }
        this.additions = List.copyOf(all);
    }

    /**
     * Works out the additions.
     *
     * @param made what is in the pot
     * @param rules what stands in the way; tolerances do not matter here
     * @return the restoration
     * @throws IllegalArgumentException if the rules name a line that is none of the formula
     */
    public static Restoration of(MadeBatch made, CorrectionRules rules) {
        return new Restoration(Objects.requireNonNull(made, "made"), Objects.requireNonNull(rules, "rules"));
    }

    /**
     * The new batch mass.
     *
     * @return the mass in grams
     */
    public Amount<Mass> newMass() {
        return Amount.grams(grams);
    }

    /**
     * The line that there is most of for its share; it needs no addition and sets the size of all others.
     *
     * @return the line
     */
    public FormulaLine bindingLine() {
        return made.lines().get(additions.indexOf(Ratio.ZERO)).line();
    }

    /**
     * What to add.
     *
     * @return the additions above 0, in the order of the formula
     */
    public List<LineAddition> additions() {
        return LineAddition.listOf(made, additions);
    }

    /**
     * What to add of one line.
     *
     * @param line the line
     * @return the mass in grams, at least 0
     */
    public Amount<Mass> addition(FormulaLine line) {
        return Amount.grams(additions.get(index(line)));
    }

    /**
     * How {@link #addition} comes about.
     *
     * @param line the line
     * @return the working
     */
    public Working additionWorking(FormulaLine line) {
        MadeLine there = made.lines().get(index(line));
        return Working.of(
                Phrase.of("question.addition", line.name()),
                additions.get(index(line)),
                r -> r.named(ADDITION, line, r.difference(r.product(r.known(line), r.known(this)), r.known(there))));
    }

    private int index(FormulaLine line) {
        return made.indexOf(Objects.requireNonNull(line, "line"));
    }

    /**
     * What stands in the way of these additions.
     *
     * @return the obstacles; none if the formula can be restored exactly
     */
    public List<Obstacle> obstacles() {
        List<Obstacle> obstacles = new ArrayList<>();
        for (AdditionLimit limit : rules.limits(made.plan().batch().formula())) {
            Ratio wanted = limit.lines().stream()
                    .map(line -> additions.get(line.position() - 1))
                    .reduce(Ratio.ZERO, Ratio::plus);
            if (wanted.compareTo(limit.grams()) > 0) {
                Amount<Mass> more = Amount.grams(wanted.minus(limit.grams()));
                obstacles.add(new Obstacle(limit.kind(), limit.first().name(), more));
            }
        }
        Ratio room = rules.roomFor(made);
        if (grams.compareTo(room) > 0) {
            obstacles.add(new Obstacle(Obstacle.Kind.VESSEL_FULL, "", Amount.grams(grams.minus(room))));
        }
        return List.copyOf(obstacles);
    }

    /**
     * Whether nothing stands in the way.
     *
     * @return true if there is no obstacle
     */
    public boolean isPossible() {
        return obstacles().isEmpty();
    }

    /**
     * The pot after the additions, as if they could be weighed exactly.
     *
     * @return what would be in the pot; its shares are those of the formula
     */
    public MadeBatch after() {
        return made.plus(additions());
    }

    /**
     * The additions as a display can show them.
     *
     * @return each addition rounded to the step of the display, and what comes of it
     */
    public DisplayedAdditions onDisplay() {
        return DisplayedAdditions.nearest(made, rules, additions);
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.restored-batch-mass");
    }

    @Override
    public Ratio result() {
        return grams;
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        List<V> needed = new ArrayList<>(made.lines().size());
        for (MadeLine line : made.lines()) {
            needed.add(r.named(NEEDED, line.line(), r.quotient(r.known(line), r.known(line.line()))));
        }
        V most = r.named(NEW_MASS, r.maximum(needed));
        r.holds(most, Comparison.AT_LEAST, r.known(made));
        return most;
    }

    @Override
    public String toString() {
        return "restored to " + newMass() + " by " + additions();
    }
}
