package io.github.formulationmath.choice;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Equipment for a repertoire by trying everything, in whole numbers: masses are milligrams, shares are thousandths, tolerances per cent,
 * prices are cents, a size is a fraction of a milligram. Shares no code and no rule with the library: a size passes if some whole number of steps is near
 * enough, the least size is looked for among all sizes at which some line begins to pass, and every set is looked at.
 */
final class BenchOracle {

    /** A size, p/q milligrams. */
    record Size(long p, long q) implements Comparable<Size> {

        @Override
        public int compareTo(Size other) {
            return Long.compare(Math.multiplyExact(p, other.q), Math.multiplyExact(other.p, q));
        }
    }

    /** A recipe: shares in thousandths, each at least 1; from and to in milligrams; step 0 for any size. */
    record Recipe(List<Integer> shares, long from, long to, int percent, long step) {}

    enum Use {
        BALANCE,
        POT,
        BOAT
    }

    /** A thing: of a balance its step and capacity, of a pot or boat its mass, in milligrams; price in cents. */
    record Thing(Use use, long step, long mass, int cents) {}

    private final List<Recipe> recipes;
    private final List<Thing> things;

    /** By set and recipe; null where it is not served. */
    private final Size[][] least;

    BenchOracle(List<Recipe> recipes, List<Thing> things) {
        this.recipes = recipes;
        this.things = things;
        this.least = new Size[1 << things.size()][recipes.size()];
        for (int j = 0; j < recipes.size(); j++) {
            fill(j);
        }
    }

    Size least(int set, int recipe) {
        return least[set][recipe];
    }

    boolean servesAll(int set) {
        return served(set) == recipes.size();
    }

    int served(int set) {
        int count = 0;
        for (Size size : least[set]) {
            count += size == null ? 0 : 1;
        }
        return count;
    }

    /** The sum of the least sizes of what is served, in milligrams: dividend and divisor. */
    BigInteger[] total(int set) {
        BigInteger p = BigInteger.ZERO;
        BigInteger q = BigInteger.ONE;
        for (Size size : least[set]) {
            if (size != null) {
                BigInteger b = BigInteger.valueOf(size.q);
                p = p.multiply(b).add(q.multiply(BigInteger.valueOf(size.p)));
                q = q.multiply(b);
            }
        }
        return new BigInteger[] {p, q};
    }

    static int compare(BigInteger[] a, BigInteger[] b) {
        return a[0].multiply(b[1]).compareTo(b[0].multiply(a[1]));
    }

    int price(int set) {
        int cents = 0;
        for (int i = 0; i < things.size(); i++) {
            cents += (set >> i & 1) == 0 ? 0 : things.get(i).cents;
        }
        return cents;
    }

    int owned() {
        int set = 0;
        for (int i = 0; i < things.size(); i++) {
            set |= things.get(i).cents == 0 ? 1 << i : 0;
        }
        return set;
    }

    private void fill(int j) {
        List<Size> sizes = starts(recipes.get(j));
        for (Size size : sizes) {
            boolean[][] passes = passes(recipes.get(j), size);
            if (!serves(least.length - 1, recipes.get(j), size, passes)) {
                continue;
            }
            for (int set = 0; set < least.length; set++) {
                boolean isBetter = least[set][j] == null || size.compareTo(least[set][j]) < 0;
                if (isBetter && serves(set, recipes.get(j), size, passes)) {
                    least[set][j] = size;
                }
            }
        }
    }

    /** Where the least passing size may lie: at the least size wanted, or where a line begins to be near enough to some n steps. */
    private List<Size> starts(Recipe recipe) {
        List<Size> all = new ArrayList<>();
        if (recipe.step > 0) {
            for (long size = recipe.step; size <= recipe.to; size += recipe.step) {
                if (size >= recipe.from) {
                    all.add(new Size(size, 1));
                }
            }
            return all;
        }
        if (recipe.from > 0) {
            all.add(new Size(recipe.from, 1));
        }
        for (Thing thing : things) {
            for (int share : recipe.shares) {
                // From n = (1 − τ)/(2τ) on one window runs into the next.
                long apart = (100 - recipe.percent) / (2 * recipe.percent) + 2;
                for (long n = 1; thing.use == Use.BALANCE && n <= apart; n++) {
                    Size start = new Size(n * thing.step * 100_000, (long) share * (100 + recipe.percent));
                    boolean isWanted = start.compareTo(new Size(recipe.from, 1)) >= 0
                            && start.compareTo(new Size(recipe.to, 1)) <= 0;
                    if (isWanted) {
                        all.add(start);
                    }
                }
            }
        }
        return all;
    }

    /** By line and thing: whether a display of that step reads it near enough. */
    private boolean[][] passes(Recipe recipe, Size size) {
        boolean[][] passes = new boolean[recipe.shares.size()][things.size()];
        for (int i = 0; i < recipe.shares.size(); i++) {
            for (int b = 0; b < things.size(); b++) {
                passes[i][b] = things.get(b).use == Use.BALANCE
                        && isNear(recipe.shares.get(i), size, things.get(b).step, recipe.percent);
            }
        }
        return passes;
    }

    /** Whether some n has |n·d − m| ≤ τ·m with m = share·size. */
    private static boolean isNear(int share, Size size, long step, int percent) {
        long mass = Math.multiplyExact(share, size.p);
        long unit = Math.multiplyExact(Math.multiplyExact(1000L, size.q), step);
        for (long n = Math.max(1, mass / unit); n <= mass / unit + 1; n++) {
            if (Math.multiplyExact(Math.abs(n * unit - mass), 100L) <= Math.multiplyExact(percent, mass)) {
                return true;
            }
        }
        return false;
    }

    private boolean serves(int set, Recipe recipe, Size size, boolean[][] passes) {
        boolean[] byBoat = byBoat(set, recipe, size, passes);
        for (int v = 0; v < things.size(); v++) {
            for (int b = 0; b < things.size(); b++) {
                if (isIn(set, v, Use.POT)
                        && isIn(set, b, Use.BALANCE)
                        && carries(things.get(b), things.get(v), 1000, size)
                        && everyLine(b, passes, byBoat)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean[] byBoat(int set, Recipe recipe, Size size, boolean[][] passes) {
        boolean[] byBoat = new boolean[recipe.shares.size()];
        for (int i = 0; i < byBoat.length; i++) {
            for (int b = 0; b < things.size(); b++) {
                for (int z = 0; z < things.size() && isIn(set, b, Use.BALANCE) && passes[i][b]; z++) {
                    byBoat[i] |=
                            isIn(set, z, Use.BOAT) && carries(things.get(b), things.get(z), recipe.shares.get(i), size);
                }
            }
        }
        return byBoat;
    }

    private static boolean everyLine(int main, boolean[][] passes, boolean[] byBoat) {
        for (int i = 0; i < byBoat.length; i++) {
            if (!byBoat[i] && !passes[i][main]) {
                return false;
            }
        }
        return true;
    }

    private boolean isIn(int set, int thing, Use use) {
        return (set >> thing & 1) != 0 && things.get(thing).use == use;
    }

    /** vessel + share·size ≤ capacity. */
    private static boolean carries(Thing balance, Thing vessel, int share, Size size) {
        long room = Math.multiplyExact(Math.multiplyExact(balance.mass - vessel.mass, 1000L), size.q);
        return Math.multiplyExact(share, size.p) <= room;
    }

    /** Recipes and equipment at random: a pot and a boat at least, some of it owned. */
    static BenchOracle random(Random dice) {
        long[] steps = {5000, 2000, 1000, 500, 200, 100};
        long[] capacities = {20_000, 60_000, 150_000, 400_000};
        List<Thing> things = new ArrayList<>();
        int count = 4 + dice.nextInt(7);
        for (int i = 0; i < count; i++) {
            Use use = i < 2 ? Use.BALANCE : i == 2 ? Use.POT : i == 3 ? Use.BOAT : Use.values()[dice.nextInt(3)];
            int cents = dice.nextInt(5) == 0 ? 0 : 100 + 50 * dice.nextInt(40);
            things.add(
                    switch (use) {
                        case BALANCE -> new Thing(use, steps[dice.nextInt(6)], capacities[dice.nextInt(4)], cents);
                        case POT -> new Thing(use, 0, 1000 * (1 + dice.nextInt(60)), cents);
                        case BOAT -> new Thing(use, 0, 500 * (1 + dice.nextInt(20)), cents);
                    });
        }
        List<Recipe> recipes = new ArrayList<>();
        for (int j = 1 + dice.nextInt(4); j > 0; j--) {
            recipes.add(recipe(dice));
        }
        return new BenchOracle(recipes, things);
    }

    private static Recipe recipe(Random dice) {
        List<Integer> shares = new ArrayList<>();
        int left = 1000;
        for (int lines = dice.nextInt(4); lines > 0; lines--) {
            int share = Math.min(left - 1, 1 + dice.nextInt(dice.nextBoolean() ? 30 : 400));
            if (share > 0) {
                shares.add(share);
                left -= share;
            }
        }
        shares.add(left);
        int[] percents = {1, 2, 5, 10, 20};
        long from = dice.nextInt(3) == 0 ? 0 : 1000L * (1 + dice.nextInt(80));
        long to = from + 1000L * (1 + dice.nextInt(120));
        long step = dice.nextBoolean() ? 0 : 1000L * (1 + dice.nextInt(10));
        return new Recipe(shares, from, to, percents[dice.nextInt(5)], step);
    }

    List<Recipe> recipes() {
        return recipes;
    }

    List<Thing> things() {
        return things;
    }
}
