package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Two neighbouring digits of one figure written in the wrong order, also across the decimal point. A zero in front counts
 * as no digit: 9.0 for 0.9 is a decimal point moved.
 */
final class DigitsExchanged {

    private DigitsExchanged() {}

    static Stream<Hypothesis> ways(Shown shown) {
        return shown.suspects().stream().flatMap(wrong -> of(shown, wrong));
    }

    /** What was shown less what was meant is added to the right mass: so the figure keeps its own distance. */
    private static Stream<Hypothesis> of(Shown shown, FigureCheck wrong) {
        return meant(wrong.figure())
                .filter(meant -> Hypothesis.Display.NEAREST.mayShow(
                        wrong.expected().exactValue(), wrong.step().exactValue(), meant))
                .map(meant -> wrong.figure()
                        .number()
                        .minus(meant)
                        .dividedBy(wrong.expected().exactValue()))
                .flatMap(off -> Hypothesis.changed(
                        shown, wrong.line().name(), List.of(wrong.formulaLine()), line -> Ratio.ONE.plus(off)));
    }

    /** The numbers that become the figure when two of their neighbouring digits change places. */
    private static Stream<Ratio> meant(Figure figure) {
        String written = figure.decimal();
        if (written == null) {
            return Stream.empty();
        }
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
