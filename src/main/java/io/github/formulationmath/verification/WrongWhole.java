package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchLine;
import io.github.formulationmath.scaling.BatchSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The shares of one phase, or of every phase, taken of the mass of that phase. */
final class WrongWhole implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Claim claim, List<Ratio> right) {
        List<Phase> phases = claim.formula().phases();
        if (phases.size() < 2) {
            return Stream.empty();
        }
        Stream<Hypothesis> single = phases.stream().map(phase -> of(claim, right, List.of(phase), phase.name()));
        return Stream.concat(single, Stream.of(of(claim, right, phases, "")));
    }

    private static Hypothesis of(Claim claim, List<Ratio> right, List<Phase> wrong, String detail) {
        List<Ratio> grams = new ArrayList<>(right);
        for (Phase phase : wrong) {
            Set<Integer> places =
                    phase.lines().stream().map(FormulaLine::position).collect(Collectors.toSet());
            Ratio whole = places.stream().map(place -> right.get(place - 1)).reduce(Ratio.ZERO, Ratio::plus);
            Batch asIfWhole = Batch.of(claim.formula(), BatchSize.ofMass(Amount.grams(whole)));
            for (BatchLine line : asIfWhole.lines()) {
                if (places.contains(line.line().position())) {
                    grams.set(line.line().position() - 1, line.result());
                }
            }
        }
        return Hypothesis.of(Slip.WRONG_WHOLE, detail, grams);
    }
}
