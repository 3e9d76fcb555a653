package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.scaling.BatchSize;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The q.s. line as it was before something else changed: given the whole batch; left at its mass before the overage was
 * added to the others; or left as if another line, or the lines of a phase, had never been written.
 */
final class RestNotAdjusted implements SlipModel {

    @Override
    public Stream<Hypothesis> figures(Shown shown) {
        return shown.suspects().stream()
                .map(ShownLine::line)
                .filter(FormulaLine::isQuantitySufficient)
                .flatMap(rest -> of(shown, rest));
    }

    private static Stream<Hypothesis> of(Shown shown, FormulaLine rest) {
        Stream<Hypothesis> whole = Stream.of(with(rest, shown.batch().mass().canonical(), rest.name()));
        return Stream.of(whole, beforeOverage(shown, rest), beforeLine(shown, rest), beforePhase(shown, rest))
                .flatMap(ways -> ways);
    }

    private static Stream<Hypothesis> beforeOverage(Shown shown, FormulaLine rest) {
        if (!(shown.claim().size() instanceof BatchSize.OfPacks packs)) {
            return Stream.empty();
        }
        Ratio factor = Ratio.ONE.plus(packs.overage().fraction());
        return Stream.of(with(rest, shown.rightOf(rest).dividedBy(factor), rest.name()));
    }

    /** Without a line the rest would be larger by just its mass, since the batch stays what it is. */
    private static Stream<Hypothesis> beforeLine(Shown shown, FormulaLine rest) {
        return shown.claim().formula().lines().stream()
                .filter(line -> line.position() != rest.position())
                .map(line -> without(shown, rest, shown.rightOf(line), line.name()));
    }

    /** A phase of one line is that line; all other lines together are the whole batch, and told so. */
    private static Stream<Hypothesis> beforePhase(Shown shown, FormulaLine rest) {
        return shown.claim().formula().phases().stream()
                .filter(phase -> others(phase, rest) > 1
                        && others(phase, rest) < shown.right().size() - 1)
                .map(phase -> without(shown, rest, massBeside(shown, phase, rest), phase.name()));
    }

    private static int others(Phase phase, FormulaLine rest) {
        return phase.lines().size() - (phase.name().equals(rest.phase()) ? 1 : 0);
    }

    private static Ratio massBeside(Shown shown, Phase phase, FormulaLine rest) {
        Ratio mass = shown.massOf(phase);
        return phase.name().equals(rest.phase()) ? mass.minus(shown.rightOf(rest)) : mass;
    }

    private static Hypothesis without(Shown shown, FormulaLine rest, Ratio left, String name) {
        return with(rest, shown.rightOf(rest).plus(left), rest.name() + " + " + name);
    }

    private static Hypothesis with(FormulaLine rest, Ratio grams, String detail) {
        return Hypothesis.of(Slip.REST_NOT_ADJUSTED, detail, Map.of(rest.position(), grams));
    }
}
