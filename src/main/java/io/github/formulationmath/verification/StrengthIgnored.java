package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A solution weighed as if it were the pure substance: the mass of the substance alone. The strength is that of the first
 * substance a material declares.
 */
final class StrengthIgnored implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Shown shown) {
        List<FormulaLine> solutions = shown.claim().formula().lines().stream()
                .filter(StrengthIgnored::isSolution)
                .toList();
        Stream<Hypothesis> single = shown.suspects().stream()
                .map(ShownLine::line)
                .filter(StrengthIgnored::isSolution)
                .flatMap(line -> of(shown, List.of(line), line.name()));
        return solutions.size() < 2 ? single : Stream.concat(single, of(shown, solutions, ""));
    }

    private static boolean isSolution(FormulaLine line) {
        return line.ingredient().parts().size() > 1;
    }

    private static Stream<Hypothesis> of(Shown shown, List<FormulaLine> wrong, String detail) {
        Map<Integer, Ratio> grams = new HashMap<>();
        wrong.forEach(line -> grams.put(line.position(), shown.rightOf(line).times(strength(line))));
        return Hypothesis.bothWays(Slip.STRENGTH_IGNORED, detail, shown, grams);
    }

    private static Ratio strength(FormulaLine line) {
        return line.ingredient().parts().values().iterator().next().fraction();
    }
}
