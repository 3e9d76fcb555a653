package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.scaling.BatchSize;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A batch of so many millilitres made as so many grams, or lines given in millilitres with grams written behind. */
final class MillilitresAsGrams implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Shown shown) {
        return Stream.concat(batch(shown), lines(shown));
    }

    private static Stream<Hypothesis> batch(Shown shown) {
        if (!(shown.claim().size() instanceof BatchSize.OfVolume volume)) {
            return Stream.empty();
        }
        Ratio asGrams = volume.volume()
                .in(FormulationUnits.MILLILITRE)
                .dividedBy(shown.batch().mass().canonical());
        return Stream.of(
                Hypothesis.scaled(Slip.MILLILITRES_AS_GRAMS, volume.volume().toString(), shown.right(), asGrams));
    }

    private static Stream<Hypothesis> lines(Shown shown) {
        List<FormulaLine> liquids = shown.claim().formula().lines().stream()
                .filter(MillilitresAsGrams::isLiquid)
                .toList();
        Stream<Hypothesis> single = shown.suspects().stream()
                .map(ShownLine::line)
                .filter(MillilitresAsGrams::isLiquid)
                .flatMap(line -> of(shown, List.of(line), line.name()));
        return liquids.size() < 2 ? single : Stream.concat(single, of(shown, liquids, ""));
    }

    private static boolean isLiquid(FormulaLine line) {
        return line.ingredient().density().isPresent();
    }

    private static Stream<Hypothesis> of(Shown shown, List<FormulaLine> wrong, String detail) {
        Map<Integer, Ratio> grams = new HashMap<>();
        wrong.forEach(line -> grams.put(line.position(), shown.rightOf(line).dividedBy(Claim.densityOf(line))));
        return Hypothesis.bothWays(Slip.MILLILITRES_AS_GRAMS, detail, shown, grams);
    }
}
