package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Divided by a density where it should be multiplied, or the other way round: the batch, or the lines shown as volumes. */
final class DensityInverted implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Shown shown) {
        return Stream.concat(batch(shown), lines(shown));
    }

    private static Stream<Hypothesis> batch(Shown shown) {
        if (!(shown.claim().size() instanceof ClaimedSize.OfVolume size)) {
            return Stream.empty();
        }
        Ratio density = size.density().gramsPerMillilitre();
        return Stream.of(Hypothesis.scaled(
                Slip.DENSITY_INVERTED,
                size.density().toString(),
                shown.right(),
                Ratio.ONE.dividedBy(density.times(density))));
    }

    private static Stream<Hypothesis> lines(Shown shown) {
        List<ShownLine> volumes =
                shown.lines().stream().filter(line -> line.figure().isVolume()).toList();
        if (volumes.isEmpty()) {
            return Stream.empty();
        }
        Map<Integer, Ratio> grams = new HashMap<>();
        for (ShownLine volume : volumes) {
            Ratio density = Claim.densityOf(volume.line());
            grams.put(volume.line().position(), shown.rightOf(volume.line()).times(density.times(density)));
        }
        return Stream.of(Hypothesis.of(Slip.DENSITY_INVERTED, "", grams));
    }
}
