package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.LinearAnswer;
import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The programs behind a correction, solved one after the other as far as they are needed. */
record CorrectionPlan(
        Correction.Outcome outcome,
        List<Ratio> additions,
        List<Obstacle> obstacles,
        @Nullable LinearProof proof,
        @Nullable LinearProof deviationProof,
        List<ExceededCap> exceededCaps)
        implements AdditionPlan {

    static final Symbol TOTAL = Symbol.of("X", "total-addition", Kind.MASS);
    private static final Symbol WORST = Symbol.of("T", "worst-deviation", Kind.SHARE);

    static CorrectionPlan of(MadeBatch made, CorrectionRules rules) {
        List<Cap> caps = rules.numberedCaps();
        List<PotCondition> conditions = PotConditions.of(made, rules, allowances(rules), caps);
        LinearProgram program = program(made, conditions);
        LinearAnswer answer = program.solve();
        if (answer instanceof LinearAnswer.Optimal optimal) {
            boolean nothing = optimal.cost().isZero();
            return new CorrectionPlan(
                    nothing ? Correction.Outcome.NOTHING_TO_DO : Correction.Outcome.MENDED,
                    optimal.values(),
                    List.of(),
                    proof(made, conditions, optimal),
                    null,
                    List.of());
        }
        return bestPossible(made, rules, obstacles(conditions, program, answer));
    }

    /** The smallest total of additions under conditions. */
    static LinearProgram program(MadeBatch made, List<PotCondition> conditions) {
        return LinearProof.program(conditions, Collections.nCopies(made.lines().size(), Ratio.ONE));
    }

    /** Conditions that contradict each other, none of which could be left out. */
    private static List<Obstacle> obstacles(List<PotCondition> conditions, LinearProgram program, LinearAnswer answer) {
        List<Integer> needed = new ArrayList<>(answer.binding());
        for (int k : answer.binding()) {
            List<Integer> others = new ArrayList<>(needed);
            others.remove((Integer) k);
            List<LinearProgram.Row> rows =
                    others.stream().map(program.rows()::get).toList();
            if (new LinearProgram(program.costs(), rows).solve() instanceof LinearAnswer.Infeasible) {
                needed = others;
            }
        }
        return needed.stream()
                .map(conditions::get)
                .map(condition -> new Obstacle(condition.kind(), condition.name(), null))
                .toList();
    }

    private static CorrectionPlan bestPossible(MadeBatch made, CorrectionRules rules, List<Obstacle> obstacles) {
        List<Cap> raised = CapExcess.least(made, rules);
        List<PotCondition> firm = new ArrayList<>(PotConditions.ofBench(made, rules));
        firm.addAll(PotConditions.ofCaps(made, raised));
        List<Condition> conditions = ShareCondition.of(made, firm, PotConditions.ofLines(made, within(Ratio.ZERO)));
        LinearAnswer.Optimal deviation = solved(conditions, made);
        LinearProof deviationProof = new LinearProof(conditions, unknowns(made), deviation, WORST);
        List<PotCondition> again = PotConditions.of(made, rules, within(deviation.cost()), raised);
        LinearAnswer.Optimal least = (LinearAnswer.Optimal) program(made, again).solve();
        return new CorrectionPlan(
                Correction.Outcome.BEST_POSSIBLE,
                least.values(),
                obstacles,
                proof(made, again, least),
                deviationProof,
                exceeded(rules.numberedCaps(), raised));
    }

    /** These programs always have an answer: nothing is asked of the lines, or the worst of them is what is asked for. */
    static LinearAnswer.Optimal solved(List<Condition> conditions, MadeBatch made) {
        List<Ratio> costs =
                unknowns(made).stream().map(LinearProof.Unknown::cost).toList();
        return (LinearAnswer.Optimal) LinearProof.program(conditions, costs).solve();
    }

    private static Function<FormulaLine, Allowance> within(Ratio deviation) {
        return line -> new Allowance(line, deviation, Source.user());
    }

    static Function<FormulaLine, Allowance> allowances(CorrectionRules rules) {
        return line -> Allowance.of(line, rules.tolerances().forLine(line));
    }

    private static List<ExceededCap> exceeded(List<Cap> caps, List<Cap> raised) {
        List<ExceededCap> exceeded = new ArrayList<>();
        for (int i = 0; i < caps.size(); i++) {
            if (!raised.get(i).most().equals(caps.get(i).most())) {
                exceeded.add(new ExceededCap(
                        caps.get(i).substance(),
                        caps.get(i).most(),
                        raised.get(i).most()));
            }
        }
        return exceeded;
    }

    private static LinearProof proof(
            MadeBatch made, List<? extends Condition> conditions, LinearAnswer.Optimal answer) {
        List<LinearProof.Unknown> unknowns = new ArrayList<>();
        String letter = made.symbols().next().added().letter();
        for (MadeLine line : made.lines()) {
            unknowns.add(
                    new LinearProof.Unknown(letter, "added-mass", Kind.MASS, line.subscript(), line.name(), Ratio.ONE));
        }
        return new LinearProof(conditions, unknowns, answer, TOTAL);
    }

    private static List<LinearProof.Unknown> unknowns(MadeBatch made) {
        List<LinearProof.Unknown> all = new ArrayList<>();
        all.add(new LinearProof.Unknown("S", "old-pot-share", Kind.SHARE, "", "", Ratio.ZERO));
        for (MadeLine line : made.lines()) {
            all.add(new LinearProof.Unknown("y", "added-share", Kind.SHARE, line.subscript(), line.name(), Ratio.ZERO));
        }
        all.add(new LinearProof.Unknown("t", "worst-deviation", Kind.SHARE, "", "", Ratio.ONE));
        return all;
    }

    @Override
    public Ratio total() {
        return proof == null ? Ratio.ZERO : proof.answer().cost();
    }

    @Override
    public <V> V deriveTotal(Reckoning<V> r) {
        if (outcome == Correction.Outcome.NOTHING_TO_DO || proof == null) {
            r.note(() -> Phrase.of("note.nothing-to-add"));
            return r.named(TOTAL, r.literal(0));
        }
        return proof.derive(r);
    }
}
