package io.github.formulationmath.mend;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * The additions that restore a formula exactly: the batch grows until the line that there is most of, for its share, is
 * right, {@code M_new = max z_i/w_i}, and every other line is made up to {@code w_i·M_new}.
 */
final class RestoringCorrection extends Correction {

    private static final Symbol NEEDED = Symbol.of("G", "batch-for-line", Kind.MASS);
    private static final Symbol NEW_MASS = Symbol.of("M_new", "restored-batch-mass", Kind.MASS);
    private static final Symbol ADDITION = Symbol.of("x", "addition-to-restore", Kind.MASS);

    private final Amount<Mass> newMass;

    private RestoringCorrection(MadeBatch made, CorrectionRules rules, Findings findings, Amount<Mass> newMass) {
        super(made, rules, findings);
        this.newMass = newMass;
    }

    private static <V> V newMass(MadeBatch made, Reckoning<V> r) {
        List<V> needed = new ArrayList<>(made.lines().size());
        for (MadeLine line : made.lines()) {
            needed.add(r.named(NEEDED, line.line(), r.quotient(r.known(line), r.known(line.line()))));
        }
        V most = r.named(NEW_MASS, r.maximum(needed));
        r.holds(most, Comparison.AT_LEAST, r.known(made));
        return most;
    }

    static Correction of(MadeBatch made, CorrectionRules rules) {
        Ratio restored = newMass(made, Reckoning.plain());
        List<Ratio> grams = made.lines().stream()
                .map(line ->
                        line.line().fraction().times(restored).minus(line.mass().canonical()))
                .toList();
        Ratio total = restored.minus(made.mass().canonical());
        List<Obstacle> obstacles = new ArrayList<>();
        List<ExceededCap> exceeded = new ArrayList<>();
        List<Condition> broken = new ArrayList<>();
        List<PotConstraint> all = new ArrayList<>(PotConstraint.ofBench(made, rules));
        all.addAll(PotConstraint.yielding(made, rules));
        for (PotConstraint each : all) {
            Ratio slack = each.row(grams.size()).slack(grams, total);
            if (slack.signum() < 0) {
                obstacles.add(obstacle(each, slack));
                if (each instanceof PotConstraint.Capped cap) {
                    Ratio share = cap.most().fraction().minus(slack.dividedBy(restored));
                    exceeded.add(new ExceededCap(cap.substance(), cap.most(), MassFraction.of(share)));
                } else if (each instanceof PotConstraint.Kept kept) {
                    broken.add(kept.condition());
                }
            }
        }
        Outcome outcome =
                !obstacles.isEmpty() ? Outcome.OBSTRUCTED : total.isZero() ? Outcome.NOTHING_TO_DO : Outcome.MENDED;
        Amount<Mass> newMass = Amount.grams(restored)
                .withWorking(pot -> Phrase.of("question.restored-batch-mass"), made, RestoringCorrection::newMass);
        return new RestoringCorrection(made, rules, new Findings(outcome, grams, obstacles, exceeded, broken), newMass);
    }

    /** Of what is at the bench it can be said how much is missing. */
    private static Obstacle obstacle(PotConstraint broken, Ratio slack) {
        return new Obstacle(
                broken.kind(),
                broken.name(),
                broken instanceof PotConstraint.OfContents
                        ? Optional.empty()
                        : Optional.of(Amount.grams(slack.unaryMinus())));
    }

    @Override
    <V> V addition(Reckoning<V> r, MadeLine there) {
        FormulaLine line = there.line();
        return r.named(ADDITION, line, r.difference(r.product(r.known(line), r.known(newMass)), r.known(there)));
    }

    @Override
    public Amount<Mass> newMass() {
        return newMass;
    }

    @Override
    public Optional<FormulaLine> bindingLine() {
        return Optional.of(made().lines().get(grams().indexOf(Ratio.ZERO)).line());
    }

    @Override
    Ratio totalGrams() {
        return newMass.canonical().minus(made().mass().canonical());
    }

    @Override
    <V> V total(Reckoning<V> r) {
        return r.named(TOTAL, r.difference(r.known(newMass), r.known(made())));
    }
}
