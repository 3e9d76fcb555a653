package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.Ratio;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The shares of one phase, or of every phase, taken of the mass of that phase. */
final class WrongWhole implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Shown shown) {
        List<Phase> phases = shown.claim().formula().phases();
        if (phases.size() < 2) {
            return Stream.empty();
        }
        Stream<Hypothesis> single = phases.stream()
                .filter(phase -> phase.lines().stream().anyMatch(shown::isWrong))
                .flatMap(phase -> of(shown, List.of(phase), phase.name()));
        return Stream.concat(single, of(shown, phases, ""));
    }

    private static Stream<Hypothesis> of(Shown shown, List<Phase> wrong, String detail) {
        Map<Integer, Ratio> grams = new HashMap<>();
        for (Phase phase : wrong) {
            Ratio share = shown.massOf(phase).dividedBy(shown.batch().mass().canonical());
            for (FormulaLine line : phase.lines()) {
                grams.put(line.position(), shown.rightOf(line).times(share));
            }
        }
        return Hypothesis.bothWays(Slip.WRONG_WHOLE, detail, shown, grams);
    }
}
