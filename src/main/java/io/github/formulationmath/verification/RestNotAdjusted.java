package io.github.formulationmath.verification;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.stream.Stream;

/**
 * The q.s. line as it was before something else changed: given the whole batch; left at its mass before the overage was
 * added to the others; or left as if another line, or the lines of a phase, had never been written.
 */
final class RestNotAdjusted {

    private RestNotAdjusted() {}

    static Stream<Hypothesis> ways(Shown shown) {
        return shown.suspects().stream()
                .map(FigureCheck::formulaLine)
                .filter(FormulaLine::isQuantitySufficient)
                .flatMap(rest -> Stream.of(
                                Stream.of(with(shown, rest, rest.name(), shown.mass())),
                                beforeOverage(shown, rest),
                                beforeLine(shown, rest),
                                beforePhase(shown, rest))
                        .flatMap(ways -> ways));
    }

    private static Stream<Hypothesis> beforeOverage(Shown shown, FormulaLine rest) {
        return shown.claim().size() instanceof BatchSize.OfPacks packs
                ? Stream.of(with(
                        shown,
                        rest,
                        rest.name(),
                        shown.rightOf(rest)
                                .dividedBy(Ratio.ONE.plus(packs.overage().fraction()))))
                : Stream.empty();
    }

    private static Stream<Hypothesis> beforeLine(Shown shown, FormulaLine rest) {
        return shown.formula().lines().stream()
                .filter(line -> !line.equals(rest))
                .map(line -> without(shown, rest, line.name(), List.of(line)));
    }

    /** A phase of one line is that line; all other lines together are the whole batch, and told so. */
    private static Stream<Hypothesis> beforePhase(Shown shown, FormulaLine rest) {
        return shown.formula().phases().stream().flatMap(phase -> {
            List<FormulaLine> others =
                    phase.lines().stream().filter(line -> !line.equals(rest)).toList();
            return others.size() > 1 && others.size() < shown.right().size() - 1
                    ? Stream.of(without(shown, rest, phase.name(), others))
                    : Stream.empty();
        });
    }

    /** Without some lines the rest would be larger by just their mass, since the batch stays what it is. */
    private static Hypothesis without(Shown shown, FormulaLine rest, String name, List<FormulaLine> lines) {
        Ratio larger = lines.stream().map(shown::rightOf).reduce(shown.rightOf(rest), Ratio::plus);
        return with(shown, rest, rest.name() + " + " + name, larger);
    }

    private static Hypothesis with(Shown shown, FormulaLine rest, String detail, Ratio grams) {
        return Hypothesis.alone(shown, detail, List.of(rest), line -> grams.dividedBy(shown.rightOf(line)));
    }
}
