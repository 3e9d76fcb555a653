package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.stream.Stream;

/** The share of one line taken of the mass of a phase that the line is not in. */
final class OtherPhase implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Claim claim, List<Ratio> right) {
        Ratio batch = claim.batch().result();
        return claim.formula().phases().stream().flatMap(phase -> {
            Ratio share = massOf(phase, right).dividedBy(batch);
            return claim.formula().lines().stream()
                    .filter(line -> !phase.lines().contains(line))
                    .filter(line -> claim.figures().containsKey(line.position()))
                    .map(line -> of(line, phase, right, share));
        });
    }

    private static Hypothesis of(FormulaLine line, Phase phase, List<Ratio> right, Ratio phaseShare) {
        Ratio grams = right.get(line.position() - 1).times(phaseShare);
        return Hypothesis.single(Slip.OTHER_PHASE, line.name() + " · " + phase.name(), right, line, grams);
    }

    private static Ratio massOf(Phase phase, List<Ratio> right) {
        return phase.lines().stream()
                .map(line -> right.get(line.position() - 1))
                .reduce(Ratio.ZERO, Ratio::plus);
    }
}
