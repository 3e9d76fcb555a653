package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The smallest additions in whole steps of the display, by branch and bound: each program without the demand for whole
 * numbers gives a bound; a fractional addition is asked to be at most the step below, or at least the step above (A. H.
 * Land and A. G. Doig, An automatic method of solving discrete programming problems, 1960; from memory).
 */
final class DisplaySearch {

    /** Programs solved before the search is broken off; the same on every machine. */
    private static final int EFFORT = 300;

    private final MadeBatch made;
    private final CorrectionRules rules;
    private final CorrectionPlan plan;
    private final LinearProgram inSteps;
    private @Nullable List<Ratio> best;
    private int solved;

    /** Bounds on the steps of each line. */
    private record Node(List<LinearProgram.Row> branches) {

        Node with(int unknowns, int j, Ratio sign, Ratio least) {
            List<Ratio> coefficients = new ArrayList<>(Collections.nCopies(unknowns, Ratio.ZERO));
            coefficients.set(j, sign);
            List<LinearProgram.Row> more = new ArrayList<>(branches);
            more.add(new LinearProgram.Row(coefficients, least.times(sign)));
            return new Node(more);
        }
    }

    DisplaySearch(MadeBatch made, CorrectionRules rules, CorrectionPlan plan) {
        this.made = made;
        this.rules = rules;
        this.plan = plan;
        this.inSteps = inSteps();
    }

    /** The program of the correction with additions counted in steps. */
    private LinearProgram inSteps() {
        Ratio step = made.plan().bench().balance().gramsPerDivision();
        List<Condition> conditions =
                AdditionConditions.of(made, rules, CorrectionPlan.allowances(rules), AdditionConditions.caps(rules));
        List<Ratio> ones = Collections.nCopies(made.lines().size(), Ratio.ONE);
        List<LinearProgram.Row> rows = LinearProof.program(conditions, ones).rows().stream()
                .map(row ->
                        new LinearProgram.Row(row.coefficients(), row.least().dividedBy(step)))
                .toList();
        return new LinearProgram(ones, rows);
    }

    DisplayedAdditions search() {
        Deque<Node> open = new ArrayDeque<>();
        open.push(new Node(List.of()));
        while (!open.isEmpty() && solved < EFFORT) {
            visit(open.pop(), open);
        }
        return result(open.isEmpty());
    }

    private DisplayedAdditions result(boolean complete) {
        if (best != null) {
            DisplayedAdditions.Quality quality =
                    complete ? DisplayedAdditions.Quality.SMALLEST : DisplayedAdditions.Quality.WITHIN;
            return new DisplayedAdditions(made, rules, best, quality);
        }
        DisplayedAdditions nearest = DisplayedAdditions.nearest(made, rules, plan.additions());
        return complete
                ? new DisplayedAdditions(made, rules, stepsOf(nearest), DisplayedAdditions.Quality.NONE_WITHIN)
                : nearest;
    }

    private List<Ratio> stepsOf(DisplayedAdditions additions) {
        List<Ratio> steps = new ArrayList<>(Collections.nCopies(made.lines().size(), Ratio.ZERO));
        additions
                .additions()
                .forEach(a -> steps.set(
                        a.line().position() - 1,
                        a.mass().ratioTo(made.plan().bench().balance().readability())));
        return steps;
    }

    private void visit(Node node, Deque<Node> open) {
        solved++;
        List<LinearProgram.Row> rows = new ArrayList<>(inSteps.rows());
        rows.addAll(node.branches());
        LinearAnswer answer = new LinearProgram(inSteps.costs(), rows).solve();
        if (!(answer instanceof LinearAnswer.Optimal optimal) || !canBeatBest(optimal.cost())) {
            return;
        }
        tryRoundedUp(optimal.values());
        int j = firstFraction(optimal.values());
        if (j < 0) {
            offer(optimal.values());
        } else if (canBeatBest(optimal.cost())) {
            Ratio value = optimal.values().get(j);
            // The step above is looked at first: more of a missing line mends sooner than less.
            open.push(node.with(inSteps.costs().size(), j, Ratio.of(-1), value.toWhole(RoundingMode.FLOOR)));
            open.push(node.with(inSteps.costs().size(), j, Ratio.ONE, value.toWhole(RoundingMode.CEILING)));
        }
    }

    /** A total in whole steps is a whole number, so a bound counts from the next one up. */
    private boolean canBeatBest(Ratio bound) {
        return best == null || bound.toWhole(RoundingMode.CEILING).compareTo(total(best)) < 0;
    }

    private void tryRoundedUp(List<Ratio> values) {
        List<Ratio> up =
                values.stream().map(v -> v.toWhole(RoundingMode.CEILING)).toList();
        if (inSteps.rows().stream().allMatch(row -> row.at(up).compareTo(row.least()) >= 0)) {
            offer(up);
        }
    }

    private void offer(List<Ratio> steps) {
        if (best == null || total(steps).compareTo(total(best)) < 0) {
            best = steps;
        }
    }

    private static Ratio total(List<Ratio> steps) {
        return steps.stream().reduce(Ratio.ZERO, Ratio::plus);
    }

    private static int firstFraction(List<Ratio> values) {
        for (int j = 0; j < values.size(); j++) {
            if (!values.get(j).isInteger()) {
                return j;
            }
        }
        return -1;
    }
}
