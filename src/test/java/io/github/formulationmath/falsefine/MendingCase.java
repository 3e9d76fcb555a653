package io.github.formulationmath.falsefine;

import io.github.formulationmath.falsefine.Corners.Scale;
import io.github.formulationmath.falsefine.Corners.Way;
import io.github.formulationmath.falsefine.LimitCase.Named;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A pot, with a cap on one substance.
 *
 * @param weighing the plan
 * @param named the substance
 * @param cap of 10⁸
 * @param percent how far a share may be off its own, of 100
 * @param readings what was read, in steps
 * @param within whether the cap and all tolerances are kept as read
 */
record MendingCase(Weighing weighing, Named named, long cap, int percent, long[] readings, boolean within)
        implements Proven {

    @Override
    public boolean holds() {
        Exact[] masses = Arrays.stream(readings).mapToObj(Exact::of).toArray(Exact[]::new);
        return within ? isKept(masses) : !keepsCap(masses);
    }

    /** Whether masses, in any one unit, keep the cap and the tolerances. */
    boolean isKept(Exact[] masses) {
        return keepsCap(masses) && IntStream.range(0, masses.length).allMatch(i -> isNear(i, masses));
    }

    private boolean keepsCap(Exact[] masses) {
        Exact counted = Exact.ZERO;
        for (int i = 0; i < masses.length; i++) {
            counted = counted.plus(masses[i].times(weighing.strengths()[i]));
        }
        return !counted.times(Recipe.WHOLE).isAbove(total(masses).times(cap).times(Recipe.MATERIAL));
    }

    private boolean isNear(int line, Exact[] masses) {
        Exact target = total(masses).times(weighing.recipe().shareOf(line));
        Exact off = masses[line].times(Recipe.WHOLE).minus(target).abs();
        return !off.times(100).isAbove(target.times(percent));
    }

    private static Exact total(Exact[] masses) {
        return Arrays.stream(masses).reduce(Exact.ZERO, Exact::plus);
    }

    static MendingCase exceeded(Dice dice) {
        return search(dice, false);
    }

    static MendingCase kept(Dice dice) {
        return search(dice, true);
    }

    private static MendingCase search(Dice dice, boolean within) {
        while (true) {
            Named named = Named.any(dice);
            Recipes recipes = new Recipes(dice, named.name(), named.cas());
            long share = dice.between(500_000, 4_000_000);
            Recipe recipe = recipes.holding(recipes.pieces(share, dice.between(1, 3)), !dice.oneIn(4));
            Weighing weighing = Weighing.of(dice, recipe, new Scale(Way.EACH, 0, false, 0, 0));
            long[] readings = weighing.readings();
            if (Arrays.stream(readings).anyMatch(n -> n == 0)) {
                continue;
            }
            for (int i = 0; i < readings.length && !within; i++) {
                readings[i] += dice.oneIn(2) && recipe.rows().get(i).counted() > 0
                        ? dice.between(0, (int) Math.min(1000, readings[i]))
                        : dice.between(0, 1);
            }
            long cap = share + dice.between(0L, share / 2);
            MendingCase made = new MendingCase(weighing, named, cap, dice.of(5, 20, 50), readings, within);
            if (made.holds()) {
                return made;
            }
        }
    }

    @Override
    public String toString() {
        return weighing + ", " + named + " at most " + cap + ", within " + percent + " %, read "
                + Arrays.toString(readings);
    }
}
