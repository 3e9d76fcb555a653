package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.io.Serializable;
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
        Ratio capExcess)
        implements Serializable {

    private static final Symbol TOTAL = Symbol.of("X", "total-addition", Kind.MASS);
    private static final Symbol WORST = Symbol.of("T", "worst-deviation", Kind.SHARE);

    static CorrectionPlan of(MadeBatch made, CorrectionRules rules) {
        List<Cap> caps = rules.numberedCaps();
        List<Condition> conditions = AdditionConditions.of(made, rules, allowances(rules), caps);
        List<Ratio> ones = Collections.nCopies(made.lines().size(), Ratio.ONE);
        LinearAnswer answer = LinearProof.program(conditions, ones).solve();
        if (answer instanceof LinearAnswer.Optimal optimal) {
            boolean nothing = optimal.cost().isZero();
            return new CorrectionPlan(
                    nothing ? Correction.Outcome.NOTHING_TO_DO : Correction.Outcome.MENDED,
                    optimal.values(),
                    List.of(),
                    proof(made, conditions, optimal),
                    null,
                    Ratio.ZERO);
        }
        return bestPossible(made, rules, obstacles(conditions, answer));
    }

    /** The conditions that contradict each other. */
    private static List<Obstacle> obstacles(List<Condition> conditions, LinearAnswer answer) {
        return answer.binding().stream()
                .map(conditions::get)
                .map(condition -> new Obstacle(condition.kind(), condition.name(), null))
                .toList();
    }

    private static CorrectionPlan bestPossible(MadeBatch made, CorrectionRules rules, List<Obstacle> obstacles) {
        Ratio excess = solved(DeviationConditions.forExcess(made, rules), made).cost();
        List<Condition> conditions = DeviationConditions.forDeviation(made, rules, excess);
        LinearAnswer.Optimal deviation = solved(conditions, made);
        LinearProof deviationProof = new LinearProof(conditions, unknowns(made), deviation, WORST);
        List<Condition> again =
                AdditionConditions.of(made, rules, within(deviation.cost()), relaxed(rules.numberedCaps(), excess));
        List<Ratio> ones = Collections.nCopies(made.lines().size(), Ratio.ONE);
        LinearAnswer.Optimal least =
                (LinearAnswer.Optimal) LinearProof.program(again, ones).solve();
        return new CorrectionPlan(
                Correction.Outcome.BEST_POSSIBLE,
                least.values(),
                obstacles,
                proof(made, again, least),
                deviationProof,
                excess);
    }

    /** These programs always have an answer: nothing is asked of the lines, or the worst of them is what is asked for. */
    private static LinearAnswer.Optimal solved(List<Condition> conditions, MadeBatch made) {
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

    private static List<Cap> relaxed(List<Cap> caps, Ratio excess) {
        return excess.isZero()
                ? caps
                : caps.stream()
                        .map(cap -> new Cap(
                                cap.number(),
                                cap.substance(),
                                MassFraction.of(
                                        cap.most().fraction().plus(excess).min(Ratio.ONE))))
                        .toList();
    }

    private static LinearProof proof(MadeBatch made, List<Condition> conditions, LinearAnswer.Optimal answer) {
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

    <V> V derive(Reckoning<V> r) {
        if (outcome == Correction.Outcome.NOTHING_TO_DO || proof == null) {
            r.note(() -> Phrase.of("note.nothing-to-add"));
            return r.named(TOTAL, r.literal(0));
        }
        return proof.derive(r);
    }
}
