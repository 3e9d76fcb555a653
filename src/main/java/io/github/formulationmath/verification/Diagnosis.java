package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What would explain figures that disagree. A slip is a cause only if it reproduces every figure within its own rounding;
 * slips that do are told together, since these figures cannot tell them apart.
 *
 * <p>Immutable and thread-safe.
 */
public final class Diagnosis {

    private static final Comparator<Cause> BEST = Comparator.<Cause>comparingInt(
                    c -> c.missed().size())
            .thenComparing(Cause::worst)
            .thenComparing(Cause::slip);

    private final List<Cause> causes;
    private final List<Cause> others;

    private Diagnosis(List<Cause> causes, List<Cause> others) {
        this.causes = List.copyOf(causes);
        this.others = List.copyOf(others);
    }

    static Diagnosis none() {
        return new Diagnosis(List.of(), List.of());
    }

    static Diagnosis of(Claim claim, List<Ratio> right) {
        Map<Slip, Cause> best = new EnumMap<>(Slip.class);
        for (SlipModel model : SlipModel.ALL) {
            model.figures(claim, right)
                    .map(hypothesis -> cause(claim, hypothesis))
                    .forEach(cause -> best.merge(cause.slip(), cause, (a, b) -> BEST.compare(a, b) <= 0 ? a : b));
        }
        List<Cause> ranked = best.values().stream().sorted(BEST).toList();
        int unexplained = missed(claim, right, Hypothesis.Display.NEAREST).size();
        return new Diagnosis(
                ranked.stream().filter(Cause::explainsAll).toList(),
                ranked.stream()
                        .filter(cause -> !cause.explainsAll() && cause.missed().size() < unexplained)
                        .toList());
    }

    /** The lines whose figures cannot be these masses on such a display. */
    private static List<FormulaLine> missed(Claim claim, List<Ratio> grams, Hypothesis.Display display) {
        List<FormulaLine> missed = new ArrayList<>();
        for (FormulaLine line : claim.formula().lines()) {
            Figure figure = claim.figures().get(line.position());
            if (figure != null) {
                Ratio exact = claim.shown(line, figure, grams.get(line.position() - 1));
                if (!display.mayShow(exact, claim.step(figure), figure.number())) {
                    missed.add(line);
                }
            }
        }
        return missed;
    }

    private static Cause cause(Claim claim, Hypothesis hypothesis) {
        Ratio worst = Ratio.ZERO;
        for (FormulaLine line : claim.formula().lines()) {
            Figure figure = claim.figures().get(line.position());
            if (figure != null) {
                Ratio exact = claim.shown(line, figure, hypothesis.grams().get(line.position() - 1));
                Ratio step = claim.step(figure);
                worst = worst.max(figure.number().minus(exact).abs().dividedBy(step));
            }
        }
        List<FormulaLine> missed = missed(claim, hypothesis.grams(), hypothesis.display());
        return new Cause(hypothesis.slip(), hypothesis.detail(), missed, worst);
    }

    /**
     * The slips that reproduce every figure.
     *
     * @return the closest first; empty if no known slip explains the figures, or if nothing needs explaining
     */
    public List<Cause> causes() {
        return causes;
    }

    /**
     * Whether one slip alone explains the figures.
     *
     * @return false if none does, or if several do and cannot be told apart
     */
    public boolean isUnique() {
        return causes.size() == 1;
    }

    /**
     * The next best: the slip that comes closest among those that do not reproduce every figure. One that reproduces no more
     * figures than the right calculation does explains nothing, and is not told.
     *
     * @return the slip, if one misses fewer figures than there are to explain
     */
    public Optional<Cause> runnerUp() {
        return others.stream().findFirst();
    }

    @Override
    public String toString() {
        return causes.isEmpty() ? "no known slip explains this" : causes.toString();
    }
}
