package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.LineAmount;
import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.stream.Stream;

/** 3 parts of 4.2 taken as 3 % of the batch. */
final class PartsAsPercent implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Shown shown) {
        List<FormulaLine> lines = shown.claim().formula().lines();
        if (!lines.stream().allMatch(line -> line.amount() instanceof LineAmount.Parts)) {
            return Stream.empty();
        }
        Ratio batch = shown.batch().mass().canonical();
        List<Ratio> grams = lines.stream()
                .map(line -> ((LineAmount.Parts) line.amount())
                        .parts()
                        .dividedBy(100)
                        .times(batch))
                .toList();
        return Stream.of(Hypothesis.of(Slip.PARTS_AS_PERCENT, "", Hypothesis.all(grams)));
    }
}
