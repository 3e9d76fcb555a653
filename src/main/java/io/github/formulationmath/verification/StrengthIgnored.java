package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A solution weighed as if it were the pure substance: the mass of the substance alone, with or without the q.s. line
 * taking what is missing. The strength is that of the first substance a material declares.
 */
final class StrengthIgnored implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Claim claim, List<Ratio> right) {
        List<FormulaLine> solutions = claim.formula().lines().stream()
                .filter(line -> line.ingredient().parts().size() > 1)
                .toList();
        Stream<List<FormulaLine>> choices = solutions.size() < 2
                ? solutions.stream().map(List::of)
                : Stream.concat(solutions.stream().map(List::of), Stream.of(solutions));
        return choices.flatMap(wrong -> of(claim, right, wrong));
    }

    private static Stream<Hypothesis> of(Claim claim, List<Ratio> right, List<FormulaLine> wrong) {
        List<Ratio> grams = new ArrayList<>(right);
        Ratio missing = Ratio.ZERO;
        for (FormulaLine line : wrong) {
            int place = line.position() - 1;
            grams.set(place, right.get(place).times(strength(line)));
            missing = missing.plus(right.get(place).minus(grams.get(place)));
        }
        String detail = wrong.size() == 1 ? wrong.get(0).name() : "";
        Hypothesis alone = Hypothesis.of(Slip.STRENGTH_IGNORED, detail, grams);
        Optional<FormulaLine> rest = claim.formula().quantitySufficientLine().filter(line -> !wrong.contains(line));
        if (rest.isEmpty()) {
            return Stream.of(alone);
        }
        List<Ratio> filled = new ArrayList<>(grams);
        int place = rest.get().position() - 1;
        filled.set(place, right.get(place).plus(missing));
        return Stream.of(alone, Hypothesis.of(Slip.STRENGTH_IGNORED, detail, filled));
    }

    private static Ratio strength(FormulaLine line) {
        return line.ingredient().parts().values().iterator().next().fraction();
    }
}
