package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchLine;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What a claim shows beside what is right, worked out once, so that each hypothesis costs only what it changes. */
final class Shown {

    /**
     * With more wrong figures than this, no slip of a single line can explain half of them: it moves that line and the q.s.
     * line.
     */
    private static final int MOST_FOR_ONE_LINE = 4;

    private final Claim claim;
    private final Batch batch;
    private final List<Ratio> right;
    private final Map<Integer, ShownLine> lines = new LinkedHashMap<>();
    private final List<ShownLine> wrong;
    private final List<ShownLine> farthestFirst;
    private final Map<String, Ratio> phaseMasses = new HashMap<>();
    private final boolean restCloses;

    Shown(Claim claim, Batch batch) {
        this.claim = claim;
        this.batch = batch;
        this.right = batch.lines().stream().map(BatchLine::result).toList();
        Steps steps = Steps.of(claim);
        for (FormulaLine line : claim.formula().lines()) {
            Figure figure = claim.figures().get(line.position());
            if (figure != null) {
                lines.put(line.position(), ShownLine.of(line, figure, steps.of(figure), rightOf(line)));
            }
        }
        this.wrong = lines.values().stream().filter(ShownLine::isWrong).toList();
        this.farthestFirst = lines.values().stream()
                .sorted(Comparator.comparing(ShownLine::distance).reversed())
                .toList();
        for (Phase phase : claim.formula().phases()) {
            phaseMasses.put(
                    phase.name(), phase.lines().stream().map(this::rightOf).reduce(Ratio.ZERO, Ratio::plus));
        }
        this.restCloses = rest().filter(this::closes).isPresent();
    }

    Claim claim() {
        return claim;
    }

    Batch batch() {
        return batch;
    }

    /** The right masses in grams, in the order of the formula. */
    List<Ratio> right() {
        return right;
    }

    Ratio rightOf(FormulaLine line) {
        return right.get(line.position() - 1);
    }

    Ratio massOf(Phase phase) {
        return Objects.requireNonNull(phaseMasses.get(phase.name()), phase.name());
    }

    /** The lines with a figure, in the order of the formula. */
    Collection<ShownLine> lines() {
        return lines.values();
    }

    @Nullable
    ShownLine at(int position) {
        return lines.get(position);
    }

    boolean isComplete() {
        return lines.size() == right.size();
    }

    Optional<FormulaLine> rest() {
        return claim.formula().quantitySufficientLine();
    }

    /** The lines whose figures are not ours to the nearest step. */
    List<ShownLine> wrong() {
        return wrong;
    }

    boolean isWrong(FormulaLine line) {
        ShownLine shown = lines.get(line.position());
        return shown != null && shown.isWrong();
    }

    /** The lines that a slip of one line can be looked for in: a slip that moves no wrong figure explains nothing. */
    List<ShownLine> suspects() {
        return wrong.size() > MOST_FOR_ONE_LINE ? List.of() : wrong;
    }

    /** Whether the figure of the q.s. line is the batch less all other figures, to its own step. */
    boolean restCloses() {
        return restCloses;
    }

    private boolean closes(FormulaLine rest) {
        ShownLine shown = lines.get(rest.position());
        if (shown == null || !isComplete()) {
            return false;
        }
        Ratio others = lines.values().stream()
                .map(ShownLine::grams)
                .reduce(Ratio.ZERO, Ratio::plus)
                .minus(shown.grams());
        Ratio left = shown.numberFor(batch.result().minus(others));
        return Hypothesis.Display.NEAREST.mayShow(
                left, shown.step(), shown.figure().number());
    }

    /** How far off the farthest figure is, in steps, of the lines that a hypothesis leaves as they should be. */
    Ratio worstBeside(Set<Integer> changed) {
        return farthestFirst.stream()
                .filter(shown -> !changed.contains(shown.line().position()))
                .findFirst()
                .map(ShownLine::distance)
                .orElse(Ratio.ZERO);
    }
}
