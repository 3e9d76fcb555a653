package io.github.formulationmath.falsefine;

import io.github.formulationmath.falsefine.ClaimText.Unit;
import java.util.List;

/**
 * Figures that somebody shows.
 *
 * @param figures in steps
 * @param unit what a step is
 * @param left lines without a figure
 * @param total what is shown as the total, in steps; none if below 0
 * @param fault what is wrong
 */
record ClaimCase(Figures figures, Unit unit, List<Integer> left, long total, Fault fault) implements Proven {

    /** What is wrong with a claim. */
    enum Fault {
        /** No rounding gives the figures, nor does a habit. */
        FIGURE,
        /** Only a habit does. */
        HABIT,
        /** A line shows 0 of something. */
        NOTHING_SHOWN,
        /** A line has no figure. */
        LEFT_OUT,
        /** The total is another number. */
        TOTAL,
        NONE
    }

    @Override
    public boolean holds() {
        return switch (fault) {
            case FIGURE -> !figures.isRounding() && !figures.isHabit();
            case HABIT -> !figures.isRounding() && figures.isHabit();
            case NOTHING_SHOWN -> showsNothing();
            case LEFT_OUT -> !left.isEmpty();
            case TOTAL -> isTotalWrong();
            case NONE -> figures.isRounding() && !showsNothing() && left.isEmpty() && total < 0;
        };
    }

    private boolean showsNothing() {
        for (int i = 0; i < figures.size(); i++) {
            if (figures.shown()[i] == 0 && figures.shares()[i] > 0) {
                return true;
            }
        }
        return false;
    }

    /** Neither the batch, rounded, nor the sum of what is shown, nor the batch by a habit that the figures have. */
    private boolean isTotalWrong() {
        Exact off = Exact.of(figures.batch(), 10).minus(Exact.of(total)).abs();
        return off.isAbove(Exact.of(1)) && total != figures.sum() && !figures.hasHabitOf(total);
    }

    static ClaimCase wrongFigure(Dice dice) {
        return search(dice, Fault.FIGURE);
    }

    static ClaimCase habit(Dice dice) {
        return search(dice, Fault.HABIT);
    }

    private static ClaimCase search(Dice dice, Fault fault) {
        while (true) {
            ClaimCase made = of(changed(dice, right(dice)), dice.of(Unit.decimals()), fault);
            if (made.holds()) {
                return made;
            }
        }
    }

    private static ClaimCase of(Figures figures, Unit unit, Fault fault) {
        return new ClaimCase(figures, unit, List.of(), -1, fault);
    }

    /** Quarters of an ounce, all of them odd, one of them wrong by up to less than an ounce or more. */
    static ClaimCase wrongOunces(Dice dice) {
        while (true) {
            Figures right = Figures.rounded(dice, shares(dice, 2), dice.between(100L, 900L));
            int line = dice.between(0, 1);
            Figures wrong = right.with(line, right.shown()[line] + dice.of(-3L, -2L, -1L, 1L, 2L, 3L, 8L));
            ClaimCase made = of(wrong, Unit.QUARTER_OUNCE, Fault.FIGURE);
            if (wrong.shown()[0] % 2 == 1 && wrong.shown()[1] % 2 == 1 && made.holds()) {
                return made;
            }
        }
    }

    static ClaimCase nothingShown(Dice dice) {
        while (true) {
            Figures right = Figures.rounded(dice, shares(dice, dice.between(2, 6)), dice.between(50L, 3000L));
            ClaimCase made = of(right, dice.of(Unit.decimals()), Fault.NOTHING_SHOWN);
            if (made.holds() && right.isRounding() && right.sum() > 0) {
                return made;
            }
        }
    }

    static ClaimCase leftOut(Dice dice) {
        Figures right = right(dice);
        List<Integer> all = dice.shuffled(
                java.util.stream.IntStream.range(0, right.size()).boxed().toList());
        List<Integer> left = all.subList(0, dice.between(1, right.size() - 1));
        return new ClaimCase(right, dice.of(Unit.decimals()), List.copyOf(left), -1, Fault.LEFT_OUT);
    }

    static ClaimCase wrongTotal(Dice dice) {
        while (true) {
            Figures right = right(dice);
            long total = right.sum() + dice.between(-20, 20);
            ClaimCase made = new ClaimCase(right, dice.of(Unit.decimals()), List.of(), total, Fault.TOTAL);
            if (total > 0 && made.holds()) {
                return made;
            }
        }
    }

    /** Rounded in one of the ways that are right. */
    static ClaimCase sound(Dice dice) {
        while (true) {
            Figures right = dice.oneIn(3) ? atTies(dice) : right(dice);
            long rest = right.shown()[0] - right.sum() + right.batch() / 10 + dice.between(0, 1);
            Figures figures = dice.oneIn(2) ? right : right.with(0, rest);
            ClaimCase made = of(figures, dice.oneIn(5) ? Unit.QUARTER_OUNCE : dice.of(Unit.decimals()), Fault.NONE);
            boolean quarters = made.unit() != Unit.QUARTER_OUNCE || isOdd(figures);
            if (quarters && made.holds()) {
                return made;
            }
        }
    }

    private static boolean isOdd(Figures figures) {
        return java.util.Arrays.stream(figures.shown()).allMatch(n -> n % 2 == 1);
    }

    private static Figures right(Dice dice) {
        while (true) {
            long batch = dice.oneIn(4) ? dice.between(200L, 99_999L) : 10 * dice.between(20L, 9_999L);
            Figures right = Figures.rounded(dice, shares(dice, dice.between(2, 6)), batch);
            if (java.util.Arrays.stream(right.shown()).allMatch(n -> n > 0)) {
                return right;
            }
        }
    }

    /** Halves of a per cent in hundreds of steps, which make half a step more often than not. */
    private static Figures atTies(Dice dice) {
        int[] shares = new int[dice.between(2, 4)];
        shares[0] = 10_000;
        for (int i = 1; i < shares.length; i++) {
            shares[i] = 50 * dice.between(1, 50);
            shares[0] -= shares[i];
        }
        return Figures.rounded(dice, shares, 1000 * dice.between(1L, 9L));
    }

    /** Shares as people write them: tenths, halves and whole per cents, the first the rest. */
    private static int[] shares(Dice dice, int lines) {
        int[] shares = new int[lines];
        int rest = 10_000;
        for (int i = 1; i < lines; i++) {
            int unit = dice.of(1, 10, 50, 100);
            shares[i] = unit * dice.between(1, Math.max(1, 2_000 / unit / (i + 1)));
            rest -= shares[i];
        }
        shares[0] = rest;
        return shares;
    }

    private static Figures changed(Dice dice, Figures right) {
        int line = dice.between(0, right.size() - 1);
        int other = dice.between(0, right.size() - 1);
        long figure = right.shown()[line];
        return switch (dice.between(0, 6)) {
            case 0 -> right.with(line, figure + (figure > 1 ? dice.of(1, -1) : 1));
            case 1 -> right.with(line, Math.max(0, figure + dice.between(-9, 9)));
            case 2 -> right.with(line, figure * 10);
            case 3 -> right.with(line, right.shown()[other]).with(other, figure);
            case 4 -> right.with(line, figure + 1).with(other, Math.max(0, right.shown()[other] - 1));
            case 5 -> scaled(right, dice.of(97, 103, 110, 90));
            default -> right.with(line, figure / 10);
        };
    }

    private static Figures scaled(Figures right, long percent) {
        Figures scaled = right;
        for (int i = 0; i < right.size(); i++) {
            scaled = scaled.with(i, right.shown()[i] * percent / 100);
        }
        return scaled;
    }
}
