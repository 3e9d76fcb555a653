package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;

/** The digits beyond the step cut off. */
final class Truncated implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Claim claim, List<Ratio> right) {
        return Stream.of(new Hypothesis(
                Slip.TRUNCATED,
                "",
                right,
                (exact, step, shown) -> Rounding.toMultipleOf(step)
                        .with(RoundingMode.DOWN)
                        .apply(exact)
                        .equals(shown)));
    }
}
