package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Figures as one set, all in grams: are they the targets rounded, under any rule for ties? A set is if (A) each figure is a
 * multiple of its step within half a step of its target, ends included; or (B) all but one are so, the others taking no step
 * from that one, and that one is the batch less the others, the batch as it is or rounded to the step, a tie either way; or
 * (C) each is the multiple below or above its target, together they make the batch rounded to the step, a tie either way, and
 * no remainder left down is larger than one taken up; a target that is a multiple itself stays, and counts on neither side.
 */
final class FigureSet {

    private final List<Ratio> targets;
    private final List<Ratio> shown;
    private final IntFunction<List<Ratio>> stepsBeside;
    private final List<Ratio> steps;
    private final Ratio batch;
    private final boolean closable;
    private final List<Integer> outside;
    private final Ratio sum;

    /**
     * Puts a set together.
     *
     * @param stepsBeside the step of each figure, by the place of a figure that the others take no step from; or −1
     * @param closable whether every line has a figure, and each is a mass: else nothing closes
     */
    FigureSet(
            List<Ratio> targets,
            List<Ratio> shown,
            IntFunction<List<Ratio>> stepsBeside,
            Ratio batch,
            boolean closable) {
        this.targets = targets;
        this.shown = shown;
        this.stepsBeside = stepsBeside;
        this.steps = stepsBeside.apply(-1);
        this.batch = batch;
        this.closable = closable;
        this.outside = IntStream.range(0, shown.size())
                .filter(i -> !isNearest(i))
                .boxed()
                .toList();
        this.sum = shown.stream().reduce(Ratio.ZERO, Ratio::plus);
    }

    private boolean isNearest(int i) {
        return isRounded(targets.get(i), steps.get(i), shown.get(i));
    }

    private static boolean isMultiple(Ratio value, Ratio step) {
        return step.isZero() ? value.isZero() : value.dividedBy(step).isInteger();
    }

    /** The set with other targets and another batch, all by the same factor. */
    FigureSet scaled(Ratio factor) {
        List<Ratio> others =
                targets.stream().map(target -> target.times(factor)).toList();
        return new FigureSet(others, shown, stepsBeside, batch.times(factor), closable);
    }

    /** The set with steps that are what they are, whichever figure stands aside. */
    FigureSet withSteps(List<Ratio> others) {
        return new FigureSet(targets, shown, aside -> others, batch, closable);
    }

    FigureSet withSteps(IntFunction<List<Ratio>> others) {
        return new FigureSet(targets, shown, others, batch, closable);
    }

    Ratio batch() {
        return batch;
    }

    /** (A). */
    boolean eachIsNearest() {
        return outside.isEmpty();
    }

    /** (B), with the line at a place taking the rest. */
    boolean takesRest(int place) {
        return closesWith(place) && othersAreNearest(place);
    }

    /** Whether each figure but one is its target, rounded. */
    boolean othersAreNearest(int place) {
        List<Ratio> beside = stepsBeside.apply(place);
        return IntStream.range(0, shown.size())
                .allMatch(i -> i == place || isRounded(targets.get(i), beside.get(i), shown.get(i)));
    }

    /** Whether the figure at a place is the batch less the others, whatever these are. */
    boolean closesWith(int place) {
        if (!closable) {
            return false;
        }
        Ratio others = sum.minus(shown.get(place));
        Ratio figure = shown.get(place);
        Ratio own = steps.get(place);
        return isRounded(batch.minus(others), own, figure)
                || isMultiple(figure, own) && isRounded(batch, finest(stepsBeside.apply(place), place), sum);
    }

    /** (C). */
    boolean sharesRemainders() {
        if (!closable) {
            return false;
        }
        Ratio step = finest(steps, -1);
        if (step.isZero() || !isRounded(batch, step, sum)) {
            return false;
        }
        Ratio largestDown = Ratio.ZERO;
        Ratio smallestUp = Ratio.ONE;
        for (int i = 0; i < shown.size(); i++) {
            Ratio quota = targets.get(i).dividedBy(step);
            Ratio above = shown.get(i).dividedBy(step).minus(quota.floor());
            Ratio remainder = quota.minus(quota.floor());
            if (!above.isZero() && (remainder.isZero() || !above.equals(Ratio.ONE))) {
                return false;
            }
            if (!remainder.isZero() && above.isZero()) {
                largestDown = largestDown.max(remainder);
            } else if (!remainder.isZero()) {
                smallestUp = smallestUp.min(remainder);
            }
        }
        return largestDown.compareTo(smallestUp) <= 0;
    }

    /** Whether a number is the nearest multiple of a step, at a tie either. */
    static boolean isRounded(Ratio exact, Ratio step, Ratio rounded) {
        return isMultiple(rounded, step) && Hypothesis.Display.NEAREST.mayShow(exact, step, rounded);
    }

    /** The finest step of all figures but one. */
    private static Ratio finest(List<Ratio> steps, int except) {
        @Nullable Ratio finest = null;
        for (int i = 0; i < steps.size(); i++) {
            if (i != except) {
                finest = finest == null ? steps.get(i) : finest.min(steps.get(i));
            }
        }
        return finest == null ? Objects.requireNonNull(steps.get(except)) : finest;
    }

    /** Whether figures lie half-way, and neither up, down, even nor odd is the rule of them all; one may stand aside. */
    boolean mixesTies(int except) {
        List<Ratio> beside = stepsBeside.apply(except);
        List<Boolean> ups = new ArrayList<>();
        List<Boolean> evens = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            Ratio off = shown.get(i).minus(targets.get(i));
            if (i != except && !off.isZero() && off.abs().times(2).equals(beside.get(i))) {
                ups.add(off.signum() > 0);
                evens.add(shown.get(i).dividedBy(beside.get(i).times(2)).isInteger());
            }
        }
        return isMixed(ups) && isMixed(evens);
    }

    private static boolean isMixed(List<Boolean> directions) {
        return directions.contains(true) && directions.contains(false);
    }
}
