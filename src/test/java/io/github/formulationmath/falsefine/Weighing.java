package io.github.formulationmath.falsefine;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.falsefine.Corners.Scale;
import io.github.formulationmath.falsefine.Corners.Way;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.math.BigInteger;
import javax.measure.quantity.Mass;

/**
 * A batch of a recipe on a balance, in whole numbers.
 *
 * @param recipe the recipe
 * @param mass the batch, in steps of the display
 * @param step the step, in units of the last of {@code places}
 * @param places after the point, in grams
 * @param scale the balance and how it is used
 */
record Weighing(Recipe recipe, long mass, long step, int places, Scale scale) {

    /** A batch in which no reading is a tie, so that every way of rounding shows the same. */
    static Weighing of(Dice dice, Recipe recipe, Scale scale) {
        while (true) {
            int places = dice.between(0, 3);
            Weighing made = new Weighing(recipe, dice.between(20, 20_000), dice.of(1, 1, 2, 5), places, scale);
            if (!made.hasTie()) {
                return made;
            }
        }
    }

    private boolean hasTie() {
        for (int i = 0; i < recipe.rows().size(); i++) {
            if (target(i).times(2).minus(Exact.of(1)).over(Exact.of(2)).isWhole()) {
                return true;
            }
        }
        return false;
    }

    /** What a row should read, in steps. */
    Exact target(int row) {
        return Exact.of(Math.multiplyExact(recipe.shareOf(row), mass), Recipe.WHOLE);
    }

    /** What the display shows for every row, in steps. */
    long[] readings() {
        long[] readings = new long[recipe.rows().size()];
        for (int i = 0; i < readings.length; i++) {
            readings[i] = target(i).nearest().longValueExact();
        }
        return readings;
    }

    long[] strengths() {
        return recipe.rows().stream().mapToLong(Recipe.Row::counted).toArray();
    }

    /** So many steps as a text. */
    String steps(long count) {
        return Texts.grams(Math.multiplyExact(count, step), places);
    }

    /** A mass in half steps, in grams. */
    Exact gramsOfHalves(long halves) {
        return Exact.of(Math.multiplyExact(halves, step)).over(Exact.of(2).times(scaleOfPlaces()));
    }

    private Exact scaleOfPlaces() {
        return new Exact(BigInteger.TEN.pow(places), BigInteger.ONE);
    }

    Balance balance() {
        ErrorModel model = ErrorModel.readabilityOnly();
        if (scale.linearity() > 0) {
            String halfWidth = gramsOfHalves(scale.linearity()) + " g";
            model = scale.ofIndication()
                    ? model.withLinearityOfIndication(halfWidth)
                    : model.withLinearityOfNetReading(halfWidth);
        }
        if (scale.way() == Way.BOAT) {
            model = model.withResidue(halves(scale.least()), halves(scale.most()));
        }
        return Balance.of(steps(1), "1000 kg").withErrors(model);
    }

    private Amount<Mass> halves(long halves) {
        return Amount.mass(gramsOfHalves(halves) + " g");
    }

    WeighingMethod method() {
        return switch (scale.way()) {
            case EACH -> WeighingMethod.TARE_EACH;
            case CUMULATIVE -> WeighingMethod.CUMULATIVE;
            case BOAT -> WeighingMethod.FROM_BOAT;
            case DIFFERENCE -> WeighingMethod.valueOf("BY_DIFFERENCE");
        };
    }

    WeighingPlan plan() {
        return plan(recipe.formula());
    }

    WeighingPlan plan(Formula formula) {
        return WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(steps(mass))), balance());
    }
}
