package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The q.s. line given the whole batch, or left at its mass before the overage was added to the others. */
final class RestNotAdjusted implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Claim claim, List<Ratio> right) {
        Optional<FormulaLine> rest = claim.formula().quantitySufficientLine();
        if (rest.isEmpty()) {
            return Stream.empty();
        }
        int place = rest.get().position() - 1;
        String name = rest.get().name();
        Hypothesis whole = with(right, place, claim.batch().result(), name);
        if (!(claim.size() instanceof ClaimedSize.OfPacks packs)) {
            return Stream.of(whole);
        }
        Ratio before = right.get(place).dividedBy(Ratio.ONE.plus(packs.overage().fraction()));
        return Stream.of(whole, with(right, place, before, name));
    }

    private static Hypothesis with(List<Ratio> right, int place, Ratio rest, String name) {
        List<Ratio> grams = new ArrayList<>(right);
        grams.set(place, rest);
        return Hypothesis.of(Slip.REST_NOT_ADJUSTED, name, grams);
    }
}
