package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import java.util.stream.Stream;

/**
 * One figure ten times too large or too small. Only a figure with two digits that count can say so: too many numbers
 * become the same single digit.
 */
final class DecimalPointMoved implements SlipModel {

    private static final Ratio TEN = Ratio.of(10);

    @Override
    public Stream<Hypothesis> figures(Shown shown) {
        return shown.suspects().stream()
                .filter(line -> line.digits() >= 2)
                .flatMap(line -> Stream.of(TEN, Ratio.ONE.dividedBy(TEN)).flatMap(factor -> of(shown, line, factor)));
    }

    private static Stream<Hypothesis> of(Shown shown, ShownLine wrong, Ratio factor) {
        Ratio grams = shown.rightOf(wrong.line()).times(factor);
        return Hypothesis.single(Slip.DECIMAL_POINT_MOVED, wrong.line().name(), shown, wrong.line(), grams);
    }
}
