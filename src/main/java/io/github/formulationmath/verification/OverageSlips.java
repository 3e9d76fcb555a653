package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.scaling.BatchSize;
import java.util.stream.Stream;

/** The overage of packs left out, or added to a mass that has it already. */
final class OverageSlips implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Shown shown) {
        if (!(shown.claim().size() instanceof BatchSize.OfPacks packs)
                || packs.overage().fraction().isZero()) {
            return Stream.empty();
        }
        Ratio factor = Ratio.ONE.plus(packs.overage().fraction());
        String overage = packs.overage().toString();
        return Stream.of(
                Hypothesis.scaled(Slip.OVERAGE_LEFT_OUT, overage, shown.right(), Ratio.ONE.dividedBy(factor)),
                Hypothesis.scaled(Slip.OVERAGE_TWICE, overage, shown.right(), factor));
    }
}
