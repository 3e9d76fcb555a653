package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Two neighbouring digits of one figure written in the wrong order, also across the decimal point. A zero in front counts
 * as no digit: 9.0 for 0.9 is a decimal point moved.
 */
final class DigitsExchanged implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Claim claim, List<Ratio> right) {
        return claim.figures().entrySet().stream()
                .flatMap(shown -> of(claim, claim.formula().lines().get(shown.getKey() - 1), shown.getValue(), right));
    }

    /** What was shown less what was meant is added to the right mass: so the figure keeps its own distance. */
    private static Stream<Hypothesis> of(Claim claim, FormulaLine line, Figure figure, List<Ratio> right) {
        Ratio mass = right.get(line.position() - 1);
        Ratio exact = claim.shown(line, figure, mass);
        return meant(figure)
                .filter(meant -> Hypothesis.Display.NEAREST.mayShow(exact, claim.step(figure), meant))
                .map(meant -> figure.number().minus(meant).dividedBy(exact))
                .map(off -> Hypothesis.single(
                        Slip.DIGITS_EXCHANGED, line.name(), right, line, mass.times(Ratio.ONE.plus(off))));
    }

    /** The numbers that become the figure when two of their neighbouring digits change places. */
    private static Stream<Ratio> meant(Figure figure) {
        String written = figure.written().substring(0, figure.written().indexOf(' '));
        String digits = written.replace(".", "");
        int point = written.length() > digits.length() ? written.indexOf('.') : digits.length();
        return IntStream.range(1, digits.length())
                .filter(at -> digits.charAt(at - 1) != digits.charAt(at))
                .filter(at -> at > 1 || digits.charAt(0) != '0' && digits.charAt(1) != '0')
                .mapToObj(at -> digits.substring(0, at - 1)
                        + digits.charAt(at)
                        + digits.charAt(at - 1)
                        + digits.substring(at + 1))
                .map(swapped -> Ratio.parse(swapped).times(scale(digits.length() - point)));
    }

    private static Ratio scale(int places) {
        return Ratio.parse("1e-" + places);
    }
}
