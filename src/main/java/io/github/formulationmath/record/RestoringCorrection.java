package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.verification.Outcome;
import io.github.formulationmath.working.Comparison;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Symbol;
import io.github.formulationmath.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The additions that restore a formula exactly: the batch grows until the line that there is most of, for its share, is
 * right, {@code M_new = max z_i/w_i}, and every other line is made up to {@code w_i·M_new}.
 */
final class RestoringCorrection extends Correction {

    private static final Symbol NEEDED = Symbol.of("G", "batch-for-line", Kind.MASS);
    private static final Symbol NEW_MASS = Symbol.of("Mnew", "restored-batch-mass", Kind.MASS);
    private static final Symbol ADDITION = Symbol.of("x", "addition-to-restore", Kind.MASS);

    /** How large the batch has to become. */
    private record NewMass(MadeBatch made, Ratio result) implements Explained {

        static NewMass of(MadeBatch made) {
            return new NewMass(made, new NewMass(made, Ratio.ZERO).derive(Reckoning.plain()));
        }

        @Override
        public Phrase question() {
            return Phrase.of("question.restored-batch-mass");
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
    }

    private final NewMass restored;

    private RestoringCorrection(MadeBatch made, CorrectionRules rules, Findings findings, NewMass restored) {
        super(made, rules, findings);
        this.restored = restored;
    }

    static RestoringCorrection of(MadeBatch made, CorrectionRules rules) {
        NewMass restored = NewMass.of(made);
        List<Ratio> grams = made.lines().stream()
                .map(line -> line.line().fraction().times(restored.result()).minus(line.result()))
                .toList();
        Ratio total = restored.result().minus(made.result());
        List<Obstacle> obstacles = new ArrayList<>();
        List<ExceededCap> exceeded = new ArrayList<>();
        List<Condition> broken = new ArrayList<>();
        List<PotConstraint> all = new ArrayList<>(PotConstraints.ofBench(made, rules));
        all.addAll(PotConstraints.yielding(made, rules));
        for (PotConstraint each : all) {
            Ratio slack = PotRow.of(each, grams.size()).slack(grams, total);
            if (slack.signum() < 0) {
                obstacles.add(obstacle(each, slack));
                if (each instanceof PotConstraints.Capped cap) {
                    Ratio share = cap.most().fraction().minus(slack.dividedBy(restored.result()));
                    exceeded.add(new ExceededCap(cap.substance(), cap.most(), MassFraction.of(share)));
                } else if (each instanceof PotConstraints.Kept kept) {
                    broken.add(kept.condition());
                }
            }
        }
        Outcome outcome =
                !obstacles.isEmpty() ? Outcome.OBSTRUCTED : total.isZero() ? Outcome.NOTHING_TO_DO : Outcome.MENDED;
        return new RestoringCorrection(
                made, rules, new Findings(outcome, grams, obstacles, exceeded, broken), restored);
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
    public Optional<Working> additionWorking(FormulaLine line) {
        MadeLine there = made().line(line);
        return Optional.of(Working.of(
                Phrase.of("question.addition", line.name()),
                grams().get(there.index()),
                r -> r.named(
                        ADDITION, line, r.difference(r.product(r.known(line), r.known(restored)), r.known(there)))));
    }

    @Override
    public Optional<FormulaLine> bindingLine() {
        return Optional.of(made().lines().get(grams().indexOf(Ratio.ZERO)).line());
    }

    @Override
    public Ratio result() {
        return restored.result().minus(made().result());
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        return r.named(TOTAL, r.difference(r.known(restored), r.known(made())));
    }
}
