package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Divided by a density where it should be multiplied, or the other way round: the batch, or the lines shown as volumes. */
final class DensityInverted implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Claim claim, List<Ratio> right) {
        return Stream.concat(batch(claim, right), lines(claim, right));
    }

    private static Stream<Hypothesis> batch(Claim claim, List<Ratio> right) {
        if (!(claim.size() instanceof ClaimedSize.OfVolume size)) {
            return Stream.empty();
        }
        Ratio density = size.density().gramsPerMillilitre();
        return Stream.of(Hypothesis.scaled(
                Slip.DENSITY_INVERTED, size.density().toString(), right, Ratio.ONE.dividedBy(density.times(density))));
    }

    private static Stream<Hypothesis> lines(Claim claim, List<Ratio> right) {
        List<FormulaLine> volumes = claim.formula().lines().stream()
                .filter(line -> isVolume(claim.figures(), line))
                .toList();
        if (volumes.isEmpty()) {
            return Stream.empty();
        }
        List<Ratio> grams = new ArrayList<>(right);
        for (FormulaLine line : volumes) {
            Ratio density = Claim.densityOf(line);
            grams.set(line.position() - 1, right.get(line.position() - 1).times(density.times(density)));
        }
        return Stream.of(Hypothesis.of(Slip.DENSITY_INVERTED, "", grams));
    }

    private static boolean isVolume(Map<Integer, Figure> figures, FormulaLine line) {
        Figure figure = figures.get(line.position());
        return figure != null && figure.isVolume();
    }
}
