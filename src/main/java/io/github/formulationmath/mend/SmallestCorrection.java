package io.github.formulationmath.mend;

import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;

/** The smallest additions, by linear programs that are solved one after the other as far as they are needed. */
final class SmallestCorrection extends Correction {

    private static final Symbol WORST = Symbol.of("T", "worst-deviation", Kind.SHARE);
    private static final Symbol OLD_POT = Symbol.of("S", "old-pot-share", Kind.SHARE);
    private static final Symbol ADDED = Symbol.of("y", "added-share", Kind.SHARE);
    private static final Symbol WORST_LINE = Symbol.of("t", "worst-deviation", Kind.SHARE);

    private final LinearProof proof;
    private final @Nullable LinearProof deviationProof;

    private SmallestCorrection(
            MadeBatch made,
            CorrectionRules rules,
            Findings findings,
            LinearProof proof,
            @Nullable LinearProof deviationProof) {
        super(made, rules, findings);
        this.proof = proof;
        this.deviationProof = deviationProof;
    }

    static SmallestCorrection of(MadeBatch made, CorrectionRules rules) {
        List<PotConstraint> constraints = PotConstraint.of(made, rules);
        LinearProgram program = program(made, constraints);
        LinearProgram.Answer answer = program.solve();
        if (answer instanceof LinearProgram.Answer.Optimal optimal) {
            Outcome outcome = optimal.cost().isZero() ? Outcome.NOTHING_TO_DO : Outcome.MENDED;
            Findings findings = new Findings(outcome, optimal.values(), List.of(), List.of(), List.of());
            return new SmallestCorrection(made, rules, findings, proof(made, constraints, optimal), null);
        }
        return bestPossible(made, rules, obstacles(constraints, program, answer));
    }

    /** The smallest total of additions under constraints. */
    static LinearProgram program(MadeBatch made, List<PotConstraint> constraints) {
        return LinearProof.program(constraints, Collections.nCopies(made.lines().size(), Ratio.ONE));
    }

    /** Conditions that contradict each other, none of which could be left out. */
    private static List<Obstacle> obstacles(
            List<PotConstraint> constraints, LinearProgram program, LinearProgram.Answer answer) {
        List<Integer> needed = new ArrayList<>(answer.binding());
        for (int k : answer.binding()) {
            List<Integer> others = new ArrayList<>(needed);
            others.remove((Integer) k);
            List<LinearProgram.Row> rows =
                    others.stream().map(program.rows()::get).toList();
            if (new LinearProgram(program.costs(), rows).solve() instanceof LinearProgram.Answer.Infeasible) {
                needed = others;
            }
        }
        return needed.stream()
                .map(constraints::get)
                .map(each -> new Obstacle(each.kind(), each.name(), Optional.empty()))
                .toList();
    }

    private static SmallestCorrection bestPossible(MadeBatch made, CorrectionRules rules, List<Obstacle> obstacles) {
        List<PotConstraint.Yielding> eased = Concessions.least(made, rules);
        List<PotConstraint> firm = new ArrayList<>(PotConstraint.ofBench(made, rules));
        firm.addAll(eased);
        List<LinearProof.Constraint> shares = ShareConstraint.of(made, firm, PotConstraint.ofLines(made, Ratio.ZERO));
        LinearProgram.Answer.Optimal deviation = solved(shares, made);
        List<PotConstraint> again = new ArrayList<>(PotConstraint.ofLines(made, deviation.cost()));
        again.addAll(eased);
        again.addAll(PotConstraint.ofBench(made, rules));
        LinearProgram.Answer.Optimal least =
                (LinearProgram.Answer.Optimal) program(made, again).solve();
        Findings findings = new Findings(
                Outcome.BEST_POSSIBLE, least.values(), obstacles, exceeded(made, rules, eased), broken(eased));
        return new SmallestCorrection(
                made,
                rules,
                findings,
                proof(made, again, least),
                new LinearProof(shares, unknowns(made), deviation, WORST));
    }

    /** These programs always have an answer: nothing is asked of the lines, or the worst of them is what is asked for. */
    static LinearProgram.Answer.Optimal solved(List<LinearProof.Constraint> constraints, MadeBatch made) {
        List<Ratio> costs =
                unknowns(made).stream().map(LinearProof.Unknown::cost).toList();
        return (LinearProgram.Answer.Optimal)
                LinearProof.program(constraints, costs).solve();
    }

    private static List<ExceededCap> exceeded(
            MadeBatch made, CorrectionRules rules, List<PotConstraint.Yielding> eased) {
        List<ExceededCap> exceeded = new ArrayList<>();
        List<PotConstraint.Yielding> asked = PotConstraint.yielding(made, rules);
        for (int i = 0; i < asked.size(); i++) {
            if (asked.get(i) instanceof PotConstraint.Capped cap
                    && eased.get(i) instanceof PotConstraint.Capped least
                    && !cap.most().equals(least.most())) {
                exceeded.add(new ExceededCap(cap.substance(), cap.most(), least.most()));
            }
        }
        return exceeded;
    }

    private static List<Condition> broken(List<PotConstraint.Yielding> eased) {
        List<Condition> broken = new ArrayList<>();
        for (PotConstraint.Yielding each : eased) {
            if (each instanceof PotConstraint.Kept kept && !kept.easing().isZero()) {
                broken.add(kept.condition());
            }
        }
        return broken;
    }

    private static LinearProof proof(
            MadeBatch made, List<PotConstraint> constraints, LinearProgram.Answer.Optimal answer) {
        Symbol added = made.symbolOfNext();
        List<LinearProof.Unknown> unknowns = new ArrayList<>();
        made.lines().forEach(line -> unknowns.add(new LinearProof.Unknown(added, line.line(), Ratio.ONE)));
        return new LinearProof(constraints, unknowns, answer, TOTAL);
    }

    private static List<LinearProof.Unknown> unknowns(MadeBatch made) {
        List<LinearProof.Unknown> all = new ArrayList<>();
        all.add(new LinearProof.Unknown(OLD_POT, Subject.none(), Ratio.ZERO));
        made.lines().forEach(line -> all.add(new LinearProof.Unknown(ADDED, line.line(), Ratio.ZERO)));
        all.add(new LinearProof.Unknown(WORST_LINE, Subject.none(), Ratio.ONE));
        return all;
    }

    @Override
    <V> V addition(Reckoning<V> r, MadeLine line) {
        total(r);
        return proof.unknowns().get(line.index()).given(r, grams().get(line.index()));
    }

    @Override
    public Optional<Amount<Dimensionless>> worstDeviation() {
        return Optional.ofNullable(deviationProof)
                .map(known -> Amount.percent(known.answer().cost().times(100))
                        .withWorking(proof -> Phrase.of("question.worst-deviation"), known, LinearProof::derive));
    }

    @Override
    public DisplayedAdditions onDisplay() {
        return outcome() == Outcome.MENDED ? DisplayedAdditions.smallest(made(), rules(), grams()) : super.onDisplay();
    }

    @Override
    Ratio totalGrams() {
        return proof.answer().cost();
    }

    @Override
    <V> V total(Reckoning<V> r) {
        if (outcome() == Outcome.NOTHING_TO_DO) {
            r.note(() -> Phrase.of("note.nothing-to-add"));
            return r.named(TOTAL, r.literal(0));
        }
        return proof.derive(r);
    }
}
