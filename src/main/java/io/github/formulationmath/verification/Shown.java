package io.github.formulationmath.verification;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.Ratio;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
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
    private final Map<Integer, FigureCheck> lines = new LinkedHashMap<>();
    private final Steps steps;
    private final FigureSet toOnePlace;
    private final FigureSet coarserWhenLarger;
    private final List<FigureCheck> wrong;
    private final Map<Integer, Ratio> farthestFirst = new LinkedHashMap<>();
    private final Map<String, Ratio> phaseShares = new HashMap<>();
    private final boolean restCloses;

    Shown(Claim claim) {
        this.claim = claim;
        this.batch = Batch.of(claim.formula(), claim.size());
        this.right = batch.lines().stream().map(line -> line.mass().canonical()).toList();
        List<BatchLine> given = batch.lines().stream()
                .filter(line -> claim.figures().containsKey(line.line().position()))
                .toList();
        List<Figure> figures = given.stream().map(this::figure).toList();
        List<Ratio> grams = given.stream()
                .map(line -> figure(line).gramsPerUnit(line.line()))
                .toList();
        this.steps = Steps.of(claim, figures);
        this.toOnePlace = new FigureSet(
                given.stream().map(line -> rightOf(line.line())).toList(),
                times(figures.stream().map(Figure::number).toList(), grams),
                beside -> times(steps.even(beside), grams),
                mass(),
                given.size() == right.size() && figures.stream().noneMatch(Figure::isVolume));
        this.coarserWhenLarger = toOnePlace.withSteps(beside -> times(steps.coarserWhenLarger(beside), grams));
        int place = restPlace();
        this.restCloses = place >= 0 && toOnePlace.closesWith(place);
        List<Ratio> each = steps.coarserWhenLarger(restCloses ? place : -1);
        for (int i = 0; i < given.size(); i++) {
            FigureCheck check = FigureCheck.of(given.get(i), figures.get(i), each.get(i));
            lines.put(check.formulaLine().position(), check);
        }
        this.wrong = lines.values().stream().filter(FigureCheck::isWrong).toList();
    }

    private Figure figure(BatchLine line) {
        return Objects.requireNonNull(claim.figures().get(line.line().position()), line.name());
    }

    private static List<Ratio> times(List<Ratio> numbers, List<Ratio> grams) {
        return IntStream.range(0, numbers.size())
                .mapToObj(i -> numbers.get(i).times(grams.get(i)))
                .toList();
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

    Formula formula() {
        return claim.formula();
    }

    Batch batch() {
        return batch;
    }

    /** The mass of the whole batch in grams. */
    Ratio mass() {
        return batch.mass().canonical();
    }

    /** The right masses in grams, in the order of the formula. */
    List<Ratio> right() {
        return right;
    }

    Ratio rightOf(FormulaLine line) {
        return right.get(line.index());
    }

    /** What share of the whole batch a phase is; worked out when first asked for. */
    Ratio shareOfPhase(String name) {
        if (phaseShares.isEmpty()) {
            for (Phase phase : claim.formula().phases()) {
                Ratio whole = phase.lines().stream().map(this::rightOf).reduce(Ratio.ZERO, Ratio::plus);
                phaseShares.put(phase.name(), whole.dividedBy(mass()));
            }
        }
        return Objects.requireNonNull(phaseShares.get(name), name);
    }

    /** The lines with a figure, in the order of the formula. */
    Collection<FigureCheck> lines() {
        return lines.values();
    }

    @Nullable
    FigureCheck at(int position) {
        return lines.get(position);
    }

    Optional<FormulaLine> rest() {
        return claim.formula().quantitySufficientLine();
    }

    /** The lines whose figures are not ours to the nearest step. */
    List<FigureCheck> wrong() {
        return wrong;
    }

    boolean isWrong(FormulaLine line) {
        FigureCheck shown = lines.get(line.position());
        return shown != null && shown.isWrong();
    }

    /** The lines that a slip of one line can be looked for in: a slip that moves no wrong figure explains nothing. */
    List<FigureCheck> suspects() {
        return wrong.size() > MOST_FOR_ONE_LINE ? List.of() : wrong;
    }

    /** Whether the figure of the q.s. line is the batch less all other figures. */
    boolean restCloses() {
        return restCloses;
    }

    /** How far off the farthest figure is, in steps, of the lines that a hypothesis leaves as they should be. */
    Ratio worstBeside(Set<Integer> changed) {
        if (farthestFirst.isEmpty()) {
            lines.entrySet().stream()
                    .map(line -> Map.entry(line.getKey(), line.getValue().distance()))
                    .sorted(Map.Entry.<Integer, Ratio>comparingByValue().reversed())
                    .forEach(line -> farthestFirst.put(line.getKey(), line.getValue()));
        }
        return farthestFirst.entrySet().stream()
                .filter(line -> !changed.contains(line.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(Ratio.ZERO);
    }
}
