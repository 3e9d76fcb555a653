package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.math.RoundingMode;
import java.util.stream.Stream;

/** Rounded to a tenth or a hundredth of the step, and the outcome to the step; halves go up, as people round. */
final class RoundedTwice implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Shown shown) {
        return Stream.of(10, 100).map(finer -> Hypothesis.displayed(Slip.ROUNDED_TWICE, shown.right(), twice(finer)));
    }

    private static Hypothesis.Display twice(int finer) {
        return (exact, step, shown) -> {
            Ratio once = halfUp(step.dividedBy(finer)).apply(exact);
            return halfUp(step).apply(once).equals(shown);
        };
    }

    private static Rounding halfUp(Ratio step) {
        return Rounding.toMultipleOf(step).with(RoundingMode.HALF_UP);
    }
}
