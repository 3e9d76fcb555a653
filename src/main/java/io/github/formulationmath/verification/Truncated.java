package io.github.formulationmath.verification;

import io.github.formulationmath.number.Rounding;
import java.math.RoundingMode;
import java.util.stream.Stream;

/** The digits beyond the step cut off. */
final class Truncated implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Shown shown) {
        return Stream.of(Hypothesis.displayed(
                Slip.TRUNCATED,
                shown.right(),
                (exact, step, number) -> Rounding.toMultipleOf(step)
                        .with(RoundingMode.DOWN)
                        .apply(exact)
                        .equals(number)));
    }
}
