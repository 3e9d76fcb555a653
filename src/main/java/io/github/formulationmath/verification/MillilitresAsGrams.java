package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchLine;
import io.github.formulationmath.scaling.BatchSize;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A batch of so many millilitres made as so many grams, or lines given in millilitres with grams written behind. */
final class MillilitresAsGrams implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Claim claim, List<Ratio> right) {
        return Stream.concat(batch(claim), lines(claim, right));
    }

    private static Stream<Hypothesis> batch(Claim claim) {
        if (!(claim.size() instanceof ClaimedSize.OfVolume volume)) {
            return Stream.empty();
        }
        Batch batch = Batch.of(claim.formula(), BatchSize.ofMass(Amount.grams(volume.millilitres())));
        return Stream.of(Hypothesis.of(
                Slip.MILLILITRES_AS_GRAMS,
                volume.volume().toString(),
                batch.lines().stream().map(BatchLine::result).toList()));
    }

    private static Stream<Hypothesis> lines(Claim claim, List<Ratio> right) {
        List<FormulaLine> liquids = claim.formula().lines().stream()
                .filter(line -> line.ingredient().density().isPresent())
                .toList();
        Stream<Hypothesis> single = liquids.stream().map(line -> of(right, List.of(line), line.name()));
        return liquids.size() < 2 ? single : Stream.concat(single, Stream.of(of(right, liquids, "")));
    }

    private static Hypothesis of(List<Ratio> right, List<FormulaLine> wrong, String detail) {
        List<Ratio> grams = new ArrayList<>(right);
        for (FormulaLine line : wrong) {
            grams.set(line.position() - 1, right.get(line.position() - 1).dividedBy(Claim.densityOf(line)));
        }
        return Hypothesis.of(Slip.MILLILITRES_AS_GRAMS, detail, grams);
    }
}
