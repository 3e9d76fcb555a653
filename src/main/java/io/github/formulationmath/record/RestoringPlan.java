package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.working.Comparison;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Symbol;
import io.github.formulationmath.working.Working;
import java.io.Serial;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Mass;

/**
 * The additions that restore a formula exactly: the batch grows until the line that there is most of, for its share, is
 * right, {@code M_new = max z_i/w_i}, and every other line is made up to {@code w_i·M_new}. It explains the new batch mass.
 */
final class RestoringPlan implements AdditionPlan, Explained {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol NEEDED = Symbol.of("G", "batch-for-line", Kind.MASS);
    private static final Symbol NEW_MASS = Symbol.of("Mnew", "restored-batch-mass", Kind.MASS);
    private static final Symbol ADDITION = Symbol.of("x", "addition-to-restore", Kind.MASS);

    private final MadeBatch made;
    private final Ratio grams;
    private final List<Ratio> additions;
    private final List<ExceededCap> exceededCaps;
    private final List<Obstacle> obstacles;

    RestoringPlan(MadeBatch made, CorrectionRules rules) {
        this.made = made;
        this.grams = newMass(Reckoning.plain());
        List<Ratio> all = new ArrayList<>(made.lines().size());
        for (MadeLine line : made.lines()) {
            all.add(line.line().fraction().times(grams).minus(line.result()));
        }
        this.additions = List.copyOf(all);
        this.exceededCaps = exceededCaps(rules);
        this.obstacles = obstacles(rules);
    }

    /** The caps that the formula itself exceeds. */
    private List<ExceededCap> exceededCaps(CorrectionRules rules) {
        List<ExceededCap> exceeded = new ArrayList<>();
        for (Cap cap : rules.numberedCaps()) {
            MassFraction restored =
                    MassFraction.of(cap
                            .parts(
                                    Reckoning.plain(),
                                    made.lines(),
                                    line -> line.line().fraction())
                            .stream()
                            .reduce(Ratio.ZERO, Ratio::plus));
            if (restored.fraction().compareTo(cap.most().fraction()) > 0) {
                exceeded.add(new ExceededCap(cap.substance(), cap.most(), restored));
            }
        }
        return List.copyOf(exceeded);
    }

    private List<Obstacle> obstacles(CorrectionRules rules) {
        List<Obstacle> all = new ArrayList<>();
        for (AdditionLimit limit : rules.limits(made.plan().batch().formula())) {
            Ratio wanted = limit.lines().stream()
                    .map(line -> additions.get(line.index()))
                    .reduce(Ratio.ZERO, Ratio::plus);
            if (wanted.compareTo(limit.grams()) > 0) {
                Amount<Mass> more = Amount.grams(wanted.minus(limit.grams()));
                all.add(new Obstacle(limit.kind(), limit.first().name(), more));
            }
        }
        Ratio room = rules.roomFor(made);
        if (grams.compareTo(room) > 0) {
            all.add(new Obstacle(Obstacle.Kind.VESSEL_FULL, "", Amount.grams(grams.minus(room))));
        }
        exceededCaps.forEach(
                cap -> all.add(new Obstacle(Obstacle.Kind.CAP, cap.substance().name(), null)));
        return List.copyOf(all);
    }

    @Override
    public Correction.Outcome outcome() {
        if (!obstacles.isEmpty()) {
            return Correction.Outcome.OBSTRUCTED;
        }
        return total().isZero() ? Correction.Outcome.NOTHING_TO_DO : Correction.Outcome.MENDED;
    }

    @Override
    public List<Ratio> additions() {
        return additions;
    }

    @Override
    public List<Obstacle> obstacles() {
        return obstacles;
    }

    @Override
    public List<ExceededCap> exceededCaps() {
        return exceededCaps;
    }

    @Override
    public Ratio total() {
        return grams.minus(made.result());
    }

    @Override
    public <V> V deriveTotal(Reckoning<V> r) {
        return r.named(CorrectionPlan.TOTAL, r.difference(r.known(this), r.known(made)));
    }

    /** The line that there is most of for its share. */
    FormulaLine bindingLine() {
        return made.lines().get(additions.indexOf(Ratio.ZERO)).line();
    }

    Working additionWorking(int index) {
        MadeLine there = made.lines().get(index);
        FormulaLine line = there.line();
        return Working.of(
                Phrase.of("question.addition", line.name()),
                additions.get(index),
                r -> r.named(ADDITION, line, r.difference(r.product(r.known(line), r.known(this)), r.known(there))));
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
        return newMass(r);
    }

    private <V> V newMass(Reckoning<V> r) {
        List<V> needed = new ArrayList<>(made.lines().size());
        for (MadeLine line : made.lines()) {
            needed.add(r.named(NEEDED, line.line(), r.quotient(r.known(line), r.known(line.line()))));
        }
        V most = r.named(NEW_MASS, r.maximum(needed));
        r.holds(most, Comparison.AT_LEAST, r.known(made));
        return most;
    }
}
