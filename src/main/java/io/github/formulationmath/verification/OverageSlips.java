package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchLine;
import io.github.formulationmath.scaling.BatchSize;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;

/** The overage of packs left out, or added to a mass that has it already. */
final class OverageSlips implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Claim claim, List<Ratio> right) {
        if (!(claim.size() instanceof ClaimedSize.OfPacks packs)
                || packs.overage().fraction().isZero()) {
            return Stream.empty();
        }
        BatchSize without = BatchSize.ofPacks(packs.packs(), packs.fillMass(), MassFraction.ZERO);
        Amount<Mass> fillWithOverage =
                packs.fillMass().times(Ratio.ONE.plus(packs.overage().fraction()));
        BatchSize twice = BatchSize.ofPacks(packs.packs(), fillWithOverage, packs.overage());
        String overage = packs.overage().toString();
        return Stream.of(
                Hypothesis.of(Slip.OVERAGE_LEFT_OUT, overage, masses(claim, without)),
                Hypothesis.of(Slip.OVERAGE_TWICE, overage, masses(claim, twice)));
    }

    private static List<Ratio> masses(Claim claim, BatchSize size) {
        return Batch.of(claim.formula(), size).lines().stream()
                .map(BatchLine::result)
                .toList();
    }
}
