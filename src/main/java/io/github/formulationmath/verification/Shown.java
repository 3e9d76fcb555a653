package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchLine;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
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
    private final Steps steps;
    private final FigureSet toOnePlace;
    private final FigureSet coarserWhenLarger;
    private final List<ShownLine> wrong;
    private final List<ShownLine> farthestFirst;
    private final Map<String, Ratio> phaseMasses = new HashMap<>();
    private final boolean restCloses;

    Shown(Claim claim, Batch batch) {
        this.claim = claim;
        this.batch = batch;
        this.right = batch.lines().stream().map(BatchLine::result).toList();
        List<FormulaLine> given = claim.formula().lines().stream()
                .filter(line -> claim.figures().containsKey(line.position()))
                .toList();
        List<Figure> figures = given.stream().map(this::figure).toList();
        this.steps = Steps.of(claim, figures);
        this.toOnePlace = set(given, steps::even);
        this.coarserWhenLarger = toOnePlace.withSteps(beside -> inGrams(given, steps.coarserWhenLarger(beside)));
        int place = restPlace();
        this.restCloses = place >= 0 && toOnePlace.closesWith(place);
        List<Ratio> each = steps.coarserWhenLarger(restCloses ? place : -1);
        for (int i = 0; i < given.size(); i++) {
            FormulaLine line = given.get(i);
            lines.put(line.position(), ShownLine.of(line, figures.get(i), each.get(i), rightOf(line)));
        }
        this.wrong = lines.values().stream().filter(ShownLine::isWrong).toList();
        this.farthestFirst = lines.values().stream()
                .sorted(Comparator.comparing(ShownLine::distance).reversed())
                .toList();
        for (Phase phase : claim.formula().phases()) {
            phaseMasses.put(
                    phase.name(), phase.lines().stream().map(this::rightOf).reduce(Ratio.ZERO, Ratio::plus));
        }
    }

    private Figure figure(FormulaLine line) {
        return Objects.requireNonNull(claim.figures().get(line.position()), line.name());
    }

    private FigureSet set(List<FormulaLine> given, IntFunction<List<Ratio>> stepsBeside) {
        return new FigureSet(
                given.stream().map(this::rightOf).toList(),
                given.stream()
                        .map(line -> figure(line).number().times(gramsPerUnit(line)))
                        .toList(),
                beside -> inGrams(given, stepsBeside.apply(beside)),
                batch.result(),
                given.size() == right.size()
                        && given.stream().noneMatch(line -> figure(line).isVolume()));
    }

    private Ratio gramsPerUnit(FormulaLine line) {
        return ShownLine.gramsPerUnit(line, figure(line));
    }

    private List<Ratio> inGrams(List<FormulaLine> given, List<Ratio> each) {
        List<Ratio> grams = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            grams.add(each.get(i).times(gramsPerUnit(given.get(i))));
        }
        return grams;
    }

    /** The figures with the steps of one place for all. */
    FigureSet toOnePlace() {
        return toOnePlace;
    }

    /** The figures, larger ones to fewer places. */
    FigureSet coarserWhenLarger() {
        return coarserWhenLarger;
    }

    /** Where the q.s. line stands in the sets, or −1. */
    int restPlace() {
        return rest().map(FormulaLine::index).orElse(-1);
    }

    /** How finely the total was shown beside these figures, in its unit. */
    Ratio stepOf(Figure total) {
        return steps.ofTotal(total);
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
        return right.get(line.index());
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

    /** Whether the figure of the q.s. line is the batch less all other figures. */
    boolean restCloses() {
        return restCloses;
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
