package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.planning.Bench;
import io.github.formulationmath.planning.Closure;
import io.github.formulationmath.planning.PlannedLine;
import io.github.formulationmath.planning.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchLine;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;

/** Holds the figures of a claim against the batch, each for itself and then as a closed set. */
final class FigureChecks {

    private final Claim claim;
    private final Batch batch;

    private FigureChecks(Claim claim, Batch batch) {
        this.claim = claim;
        this.batch = batch;
    }

    static List<FigureCheck> of(Claim claim, Batch batch) {
        FigureChecks checks = new FigureChecks(claim, batch);
        List<FigureCheck> alone = checks.each(false);
        boolean disagree = alone.stream().anyMatch(check -> check.agreement() == Agreement.DISAGREES);
        return disagree && checks.areClosed() ? checks.each(true) : alone;
    }

    private List<FigureCheck> each(boolean closed) {
        List<FigureCheck> checks = new ArrayList<>();
        for (BatchLine line : batch.lines()) {
            Figure figure = claim.figures().get(line.line().position());
            if (figure != null) {
                Ratio expected = claim.shown(line.line(), figure, line.result());
                Ratio step = claim.step(figure);
                checks.add(new FigureCheck(line, figure, expected, step, agreement(figure, expected, step, closed)));
            }
        }
        return List.copyOf(checks);
    }

    private static Agreement agreement(Figure figure, Ratio expected, Ratio step, boolean closed) {
        if (figure.number().equals(expected)) {
            return Agreement.AGREES;
        }
        if (Hypothesis.Display.NEAREST.mayShow(expected, step, figure.number())) {
            return Agreement.AGREES_AS_ROUNDED;
        }
        return closed ? Agreement.AGREES_AS_CLOSED : Agreement.DISAGREES;
    }

    /** Whether the figures are those of a plan that shares out what rounding leaves over. */
    private boolean areClosed() {
        Optional<Balance> display = display();
        if (display.isEmpty() || claim.figures().size() < batch.lines().size()) {
            return false;
        }
        boolean hasRest = batch.formula().quantitySufficientLine().isPresent();
        return isPlan(display.get(), Closure.CLOSED) || hasRest && isPlan(display.get(), Closure.QS_TAKES_REST);
    }

    private boolean isPlan(Balance display, Closure closure) {
        try {
            WeighingPlan plan = WeighingPlan.of(batch, Bench.of(display).closing(closure));
            return plan.lines().stream().allMatch(this::isShown);
        } catch (IllegalArgumentException e) {
            // The batch cannot be closed so on such a display: then the figures are not closed so.
            return false;
        }
    }

    private boolean isShown(PlannedLine planned) {
        Figure figure = claim.figures().get(planned.target().line().position());
        return figure != null && figure.number().times(figure.unitSize()).equals(planned.result());
    }

    /** A display that moves by the step of the figures, if they all have the same and are masses. */
    private Optional<Balance> display() {
        Set<Ratio> steps = claim.figures().values().stream()
                .map(figure -> claim.step(figure).times(figure.unitSize()))
                .collect(Collectors.toSet());
        if (steps.size() > 1 || claim.figures().values().stream().anyMatch(Figure::isVolume)) {
            return Optional.empty();
        }
        Amount<Mass> step = Amount.grams(steps.iterator().next());
        Ratio divisions = batch.result()
                .times(2)
                .dividedBy(step.in(FormulationUnits.GRAM))
                .ceil()
                .max(Ratio.ONE);
        return Optional.of(Balance.of(step, step.times(divisions)));
    }
}
