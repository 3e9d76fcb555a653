package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The q.s. line as it was before something else changed: given the whole batch; left at its mass before the overage was
 * added to the others; or left as if another line, or the lines of a phase, had never been written.
 */
final class RestNotAdjusted implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Claim claim, List<Ratio> right) {
        Optional<FormulaLine> rest = claim.formula().quantitySufficientLine();
        return rest.isEmpty() ? Stream.empty() : of(claim, right, rest.get());
    }

    private static Stream<Hypothesis> of(Claim claim, List<Ratio> right, FormulaLine rest) {
        Stream<Hypothesis> whole = Stream.of(with(right, rest, claim.batch().result(), rest.name()));
        return Stream.of(whole, beforeOverage(claim, right, rest), before(claim, right, rest))
                .flatMap(ways -> ways);
    }

    private static Stream<Hypothesis> beforeOverage(Claim claim, List<Ratio> right, FormulaLine rest) {
        if (!(claim.size() instanceof ClaimedSize.OfPacks packs)) {
            return Stream.empty();
        }
        Ratio factor = Ratio.ONE.plus(packs.overage().fraction());
        return Stream.of(with(right, rest, right.get(rest.position() - 1).dividedBy(factor), rest.name()));
    }

    /** Without a line or a phase the rest would be larger by just its mass, since the batch stays what it is. */
    private static Stream<Hypothesis> before(Claim claim, List<Ratio> right, FormulaLine rest) {
        Stream<Hypothesis> lines = claim.formula().lines().stream()
                .filter(line -> !line.equals(rest))
                .map(line -> without(right, rest, List.of(line), line.name()));
        Stream<Hypothesis> phases =
                claim.formula().phases().stream().flatMap(phase -> withoutPhase(right, rest, phase));
        return Stream.concat(lines, phases);
    }

    /** A phase of one line is that line; all other lines together are the whole batch, and told so. */
    private static Stream<Hypothesis> withoutPhase(List<Ratio> right, FormulaLine rest, Phase phase) {
        List<FormulaLine> others =
                phase.lines().stream().filter(line -> !line.equals(rest)).toList();
        return others.size() < 2 || others.size() == right.size() - 1
                ? Stream.empty()
                : Stream.of(without(right, rest, others, phase.name()));
    }

    private static Hypothesis without(List<Ratio> right, FormulaLine rest, List<FormulaLine> left, String name) {
        Ratio grams = left.stream()
                .map(line -> right.get(line.position() - 1))
                .reduce(right.get(rest.position() - 1), Ratio::plus);
        return with(right, rest, grams, rest.name() + " + " + name);
    }

    private static Hypothesis with(List<Ratio> right, FormulaLine rest, Ratio grams, String detail) {
        return Hypothesis.single(Slip.REST_NOT_ADJUSTED, detail, right, rest, grams);
    }
}
