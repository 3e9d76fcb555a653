package io.github.formulationmath.classroom;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.MinimumBatch;
import io.github.formulationmath.weighing.Balance;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;

/** Exercises on the balance: what it shows, how far that is off, and how small a batch may be. */
final class BalanceTopics {

    private static final Ratio HALF = Ratio.of(1, 2);
    private static final Ratio PERCENT_PLACE = Ratio.of(1, 10_000);
    private static final int TRIES = 400;

    private BalanceTopics() {}

    /** A line of a batch on a display. */
    private record OnDisplay(String name, Ratio share, Ratio batch, Ratio step) {

        static OnDisplay drawn(Draw draw, List<Ratio> steps) {
            return new OnDisplay(
                    draw.ingredients(1).get(0),
                    draw.multiple(3, 39, 400),
                    draw.multiple(15, 60, 1).times(5),
                    draw.oneOf(steps));
        }

        Ratio mass() {
            return share.times(batch);
        }

        boolean isTie() {
            Ratio steps = mass().dividedBy(step);
            return steps.minus(steps.floor()).equals(HALF);
        }

        boolean isOnGrid() {
            return mass().dividedBy(step).isInteger();
        }

        Ratio to(RoundingMode mode) {
            return Rounding.toMultipleOf(step).with(mode).apply(mass());
        }

        Ratio to(Ties ties) {
            return ties.to(step).apply(mass());
        }

        Inset[] parts() {
            return new Inset[] {Inset.percent(share), Inset.name(name), Inset.grams(batch), Inset.grams(step)};
        }

        Batch inBatch() {
            Formula cream = RecipeTopics.cream(List.of(name), List.of(share));
            return Batch.of(cream, BatchSize.ofMass(Amount.grams(batch)));
        }
    }

    /** The reading: the nearest step of the display. In a third of the exercises the mass lies half way between two steps. */
    static Draft rounding(Draw draw, Ties ties) {
        boolean tie = draw.oneIn(3);
        OnDisplay line = OnDisplay.drawn(draw, List.of(Ratio.of(1, 10), Ratio.of(1, 5), HALF));
        for (int i = 0; i < TRIES && (line.isOnGrid() || line.isTie() != tie); i++) {
            line = OnDisplay.drawn(draw, List.of(Ratio.of(1, 10), Ratio.of(1, 5), HALF));
        }
        Rounding digits = ties.to(line.step());
        Ratio mass = line.mass();
        Ratio wholePercent = Rounding.toMultipleOf(Ratio.of(1, 100))
                .with(RoundingMode.HALF_UP)
                .apply(line.share());
        Ratio tenth = Rounding.toMultipleOf(Ratio.of(1, 10))
                .with(RoundingMode.HALF_UP)
                .apply(mass);
        Draft draft = new Draft(Topic.ROUNDING, "", digits, line.parts()).atMost(line.batch());
        if (line.isTie()) {
            draft.slipOfRounding("other-rule-for-ties", line.to(ties.other()));
        }
        draft.slipOfRounding("cut-off", line.to(RoundingMode.DOWN))
                .slipOfRounding("always-up", line.to(RoundingMode.UP))
                .slipOfRounding("to-a-tenth", tenth, Inset.grams(Ratio.of(1, 10)), Inset.grams(line.step()))
                .slipOfRounding("whole-grams", mass.toWhole(RoundingMode.HALF_UP))
                .slipOfRounding("whole-grams-up", mass.ceil())
                .slipOfRounding("whole-grams-down", mass.floor())
                .slip("percent-rounded-first", wholePercent.times(line.batch()))
                .slip("percent-as-grams", line.share().times(100))
                .slipOfRounding("steps-as-grams", digits.apply(mass).dividedBy(line.step()))
                .check(
                        Inset.grams(digits.apply(mass).minus(mass).abs()),
                        Inset.grams(line.step().dividedBy(2)));
        return draft.answeredBy(Kind.MASS, line.inBatch().line(line.name()).mass());
    }

    /** |r − m| / m. */
    static Draft relativeError(Draw draw, Ties ties) {
        List<Ratio> steps = List.of(Ratio.of(1, 10), Ratio.of(1, 5), HALF);
        OnDisplay line = OnDisplay.drawn(draw, steps);
        for (int i = 0; i < TRIES && (line.isOnGrid() || line.isTie()); i++) {
            line = OnDisplay.drawn(draw, steps);
        }
        Ratio mass = line.mass();
        Ratio reading = line.to(Ties.DISPLAY);
        Ratio off = reading.minus(mass).abs();
        Draft draft = new Draft(Topic.RELATIVE_ERROR, "", ties.to(PERCENT_PLACE), line.parts());
        draft.slip("of-the-reading", off.dividedBy(reading))
                .slip("of-the-batch", off.dividedBy(line.batch()))
                .slip("step-as-percent", line.step().dividedBy(100))
                .slip("share-as-error", line.share())
                .slip("of-the-step", off.dividedBy(line.step()))
                .slip("step-instead-of-error", line.step().dividedBy(mass))
                .slip("worst-instead-of-real", line.step().dividedBy(2).dividedBy(mass))
                .slip("grams-as-percent", off.dividedBy(100))
                .slip("error-times-mass", off.times(mass).dividedBy(100))
                .slip("error-inverted", mass.dividedBy(off).dividedBy(100))
                .slip("of-a-whole-gram", off)
                .check(Inset.percent(line.step().dividedBy(2).dividedBy(mass)));
        WeighingPlan plan = WeighingPlan.of(line.inBatch(), Balance.of(line.step() + " g", "2 kg"));
        return draft.answeredBy(Kind.SHARE, plan.line(line.name()).relativeRoundingError());
    }

    private static Ratio upTo(long step, Ratio value) {
        return Rounding.toMultipleOf(Ratio.of(step)).with(RoundingMode.CEILING).apply(value);
    }

    /** The largest of q / w, and up to the next whole gram. */
    static Draft smallestBatch(Draw draw) {
        Rounding digits = Rounding.toMultipleOf(Ratio.ONE).with(RoundingMode.CEILING);
        List<String> names = draw.ingredients(3);
        List<Ratio> w = draw.some(3, List.of(3, 5, 6, 7, 9, 11, 13, 14, 17, 18, 19)).stream()
                .map(share -> Ratio.of(share, 400))
                .toList();
        Ratio least = draw.multiple(2, 9, 2);
        Ratio sum = w.get(0).plus(w.get(1)).plus(w.get(2));
        List<Ratio> rising = w.stream().sorted(Comparator.naturalOrder()).toList();
        Ratio exact = least.dividedBy(rising.get(0));
        Draft draft =
                new Draft(Topic.SMALLEST_BATCH, "", digits, Inset.lines(names, w, Inset::percent, Inset.grams(least)));
        Ratio inThatBatch = digits.apply(exact).times(rising.get(0));
        draft.slip("largest-instead-of-smallest", least.dividedBy(rising.get(2)))
                .slip("middle-instead-of-smallest", least.dividedBy(rising.get(1)))
                .slip("all-lines-together", least.dividedBy(sum))
                .slip("mean-of-the-shares", least.times(3).dividedBy(sum))
                .slip(
                        "batches-added",
                        exact.plus(least.dividedBy(rising.get(1))).plus(least.dividedBy(rising.get(2))))
                .slip("multiplied-by-the-percentage", least.times(rising.get(0)).times(100))
                .slip("rest-decides", least.dividedBy(Ratio.ONE.minus(sum)))
                .slip("least-for-each-line", least.times(3).dividedBy(rising.get(0)))
                .slipOfRounding("up-to-whole-tens", upTo(10, exact))
                .slipOfRounding("up-to-whole-hundreds", upTo(100, exact))
                .slipOfRounding("rounded-down", exact.floor())
                .check(Inset.grams(inThatBatch));
        MinimumBatch found = MinimumBatch.of(
                RecipeTopics.cream(names, w), Balance.of("0.1 g", "5 kg"), Criterion.leastNetMass(Amount.grams(least)));
        return draft.answeredBy(Kind.MASS, ((MinimumBatch.Found) found).smallest());
    }
}
