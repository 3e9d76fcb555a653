package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.scaling.BatchSize;
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
        return shown.claim().size() instanceof BatchSize.OfVolume size
                ? size.density().stream().map(density -> inverted(shown, density))
                : Stream.empty();
    }

    private static Hypothesis inverted(Shown shown, Density density) {
        Ratio grams = density.gramsPerMillilitre();
        return Hypothesis.scaled(
                Slip.DENSITY_INVERTED, density.toString(), shown.right(), Ratio.ONE.dividedBy(grams.times(grams)));
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
