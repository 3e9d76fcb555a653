package io.github.formulationmath.falsefine;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.size.BatchWindow;
import io.github.formulationmath.size.CapTarget;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.MinimumBatch;

/** Asks the library whether a batch keeps a cap whatever the balance does. */
final class CapJudge {

    private CapJudge() {}

    /** The least size said to keep the cap, and every larger one, is this one or smaller. */
    static boolean sizeIsKept(WeighedLimitCase asked) {
        Weighing weighing = asked.weighing();
        return MinimumBatch.of(formula(asked), weighing.balance(), criterion(asked))
                .mass()
                .map(least -> !Answers.grams(least).isAbove(weighing.gramsOfHalves(2 * weighing.mass())))
                .orElse(false);
    }

    /** The size is in the window of sizes that keep the cap. */
    static boolean windowHolds(WeighedLimitCase asked) {
        Weighing weighing = asked.weighing();
        return BatchWindow.of(formula(asked), weighing.balance(), criterion(asked))
                .contains(weighing.steps(weighing.mass()));
    }

    /** The share that one may aim at is what the recipe has, or more. */
    static boolean mayAimAt(WeighedLimitCase asked) {
        Weighing weighing = asked.weighing();
        Batch batch = Batch.of(formula(asked), BatchSize.ofMass(weighing.steps(weighing.mass())));
        Exact has = new Exact(
                weighing.recipe().counted(),
                Exact.of(Recipe.WHOLE).times(Recipe.MATERIAL).top());
        return CapTarget.of(batch, weighing.balance(), substance(asked.written()), cap(asked), weighing.method())
                .share()
                .map(share -> !Exact.read(share.fraction()).isBelow(has))
                .orElse(false);
    }

    private static Formula formula(WeighedLimitCase asked) {
        return asked.weighing().recipe().formula();
    }

    private static Criterion criterion(WeighedLimitCase asked) {
        return Criterion.capKept(
                substance(asked.written()), cap(asked), asked.weighing().method());
    }

    static Substance substance(LimitCase written) {
        return Recipe.substance(Spelling.of(written.name(), written.cas()));
    }

    private static MassFraction cap(WeighedLimitCase asked) {
        return MassFraction.parse(Texts.percent(asked.written().cap(), 6));
    }
}
