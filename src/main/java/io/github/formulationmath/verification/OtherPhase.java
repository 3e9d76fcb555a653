package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.Ratio;
import java.util.stream.Stream;

/** The share of one line taken of the mass of a phase that the line is not in. */
final class OtherPhase implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Shown shown) {
        return shown.claim().formula().phases().stream()
                .flatMap(phase -> shown.suspects().stream()
                        .map(ShownLine::line)
                        .filter(line -> !line.phase().equals(phase.name()))
                        .flatMap(line -> of(shown, line, phase)));
    }

    private static Stream<Hypothesis> of(Shown shown, FormulaLine line, Phase phase) {
        Ratio share = shown.massOf(phase).dividedBy(shown.batch().mass().canonical());
        Ratio grams = shown.rightOf(line).times(share);
        return Hypothesis.single(Slip.OTHER_PHASE, line.name() + " · " + phase.name(), shown, line, grams);
    }
}
