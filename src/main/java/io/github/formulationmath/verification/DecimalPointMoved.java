package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.stream.Stream;

/**
 * One figure ten times too large or too small. Only a figure with two digits that count can say so: too many numbers
 * become the same single digit.
 */
final class DecimalPointMoved implements SlipModel {

    private static final Ratio TEN = Ratio.of(10);

    @Override
    public Stream<Hypothesis> figures(Claim claim, List<Ratio> right) {
        return claim.formula().lines().stream()
                .filter(line -> hasTwoDigits(claim, line))
                .flatMap(line -> Stream.of(TEN, Ratio.ONE.dividedBy(TEN)).map(factor -> of(line, right, factor)));
    }

    private static boolean hasTwoDigits(Claim claim, FormulaLine line) {
        Figure figure = claim.figures().get(line.position());
        return figure != null && figure.number().compareTo(claim.step(figure).times(TEN)) >= 0;
    }

    private static Hypothesis of(FormulaLine line, List<Ratio> right, Ratio factor) {
        Ratio grams = right.get(line.position() - 1).times(factor);
        return Hypothesis.single(Slip.DECIMAL_POINT_MOVED, line.name(), right, line, grams);
    }
}
