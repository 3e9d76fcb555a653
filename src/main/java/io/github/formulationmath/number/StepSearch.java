package io.github.formulationmath.number;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Multiples of steps with a given total that keep all rows of a {@link StepProgram}.
 *
 * <p>The unknowns are fixed one after the other. Before a value is tried, every row is given the most that the unknowns not
 * yet fixed can bring it: those with the largest coefficient take as much of the rest of the total as they can. If that is
 * too little for one row, no choice of the rest mends it, and the value is left out; so nothing is missed. What a row can
 * reach first rises and then falls as the value grows (it is the optimum of a linear program in its right side, which is
 * concave), so that the values worth trying are found by halving.
 */
final class StepSearch {

    private final List<Ratio> steps;
    private final List<StepBox.Row> rows;
    private int choicesLeft;
    private boolean leftOpen;

    StepSearch(StepProgram program, int choices) {
        this.steps = program.steps();
        this.rows = program.rows().stream().map(StepBox.Row::of).toList();
        this.choicesLeft = choices;
    }

    /** Whether a total was given up undecided. */
    boolean leftOpen() {
        return leftOpen;
    }

    boolean isExhausted() {
        return choicesLeft <= 0;
    }

    Optional<List<Ratio>> withTotal(Ratio total) {
        return StepBox.of(rows, steps, total).flatMap(this::within);
    }

    private Optional<List<Ratio>> within(StepBox box) {
        if (steps.stream().distinct().count() == 1) {
            for (List<Integer> order : orders(box)) {
                List<Ratio> values = filled(box, order);
                if (box.isKeptBy(values)) {
                    return Optional.of(values);
                }
            }
            if (box.rows().size() < 2) {
                // With one step, taking most of the best for the one row is the best there is.
                return Optional.empty();
            }
        }
        List<Ratio> found = new Branches(box).search();
        return Optional.ofNullable(found.isEmpty() ? null : found);
    }

    /** For every row, the unknowns that help it most first; without rows, as they come. */
    private static List<List<Integer>> orders(StepBox box) {
        List<List<Integer>> orders =
                new ArrayList<>(box.rows().stream().map(StepBox.Row::bestFirst).toList());
        Collections.reverse(orders);
        orders.add(IntStream.range(0, box.steps().size()).boxed().toList());
        return orders;
    }

    private static List<Ratio> filled(StepBox box, List<Integer> order) {
        Ratio[] values = new Ratio[order.size()];
        Ratio left = box.total();
        for (int j : order) {
            values[j] = box.least(j);
            left = left.minus(values[j]);
        }
        for (int j : order) {
            Ratio more = left.min(box.room(j));
            values[j] = values[j].plus(more);
            left = left.minus(more);
        }
        return List.of(values);
    }

    /** The search within one box: depth first, coarse steps before fine ones. */
    private final class Branches {

        private final StepBox box;
        private final List<Integer> order;
        private final Ratio[] values;
        private final Ratio[] leastFrom;
        private final Ratio[] mostFrom;
        private final Ratio[] gridFrom;
        private final int[] place;

        Branches(StepBox box) {
            this.box = box;
            this.order =
                    new ArrayList<>(IntStream.range(0, steps.size()).boxed().toList());
            order.sort(Comparator.comparing(this::isFree)
                    .thenComparing(Comparator.comparing(steps::get).reversed())
                    .thenComparing(j -> box.room(j)));
            this.values = new Ratio[steps.size()];
            this.leastFrom = new Ratio[steps.size() + 1];
            this.mostFrom = new Ratio[steps.size() + 1];
            this.gridFrom = new Ratio[steps.size() + 1];
            this.place = new int[steps.size()];
            gridFrom[steps.size()] = box.total();
            leastFrom[steps.size()] = Ratio.ZERO;
            mostFrom[steps.size()] = Ratio.ZERO;
            for (int k = steps.size() - 1; k >= 0; k--) {
                Ratio step = steps.get(order.get(k));
                gridFrom[k] = k == steps.size() - 1 ? step : StepProgram.grid(gridFrom[k + 1], step);
                place[order.get(k)] = k;
                leastFrom[k] = leastFrom[k + 1].plus(box.least(order.get(k)));
                mostFrom[k] = mostFrom[k + 1].plus(box.most(order.get(k)));
            }
        }

        private boolean isFree(int j) {
            return box.rows().stream().allMatch(row -> row.extra().get(j).isZero());
        }

        /** The values, or an empty list. */
        List<Ratio> search() {
            return from(0, box.total()) ? List.of(values) : List.of();
        }

        private boolean from(int k, Ratio left) {
            if (k == order.size()) {
                return left.isZero() && box.isKeptBy(List.of(values));
            }
            if (!left.dividedBy(gridFrom[k]).isInteger()) {
                return false;
            }
            int j = order.get(k);
            Ratio step = steps.get(j);
            Ratio low = box.least(j)
                    .max(left.minus(mostFrom[k + 1]))
                    .dividedBy(step)
                    .toWhole(RoundingMode.CEILING);
            Ratio high = box.most(j)
                    .min(left.minus(leastFrom[k + 1]))
                    .dividedBy(step)
                    .toWhole(RoundingMode.FLOOR);
            for (StepBox.Row row : box.rows()) {
                if (low.compareTo(high) > 0) {
                    return false;
                }
                Reach reach = new Reach(row, k, left);
                Ratio top = reach.top(low, high);
                if (reach.at(top).compareTo(row.wanted(box.total())) < 0) {
                    return false;
                }
                low = reach.first(low, top);
                high = reach.last(top, high);
            }
            return middleOut(k, left, low, high);
        }

        private boolean middleOut(int k, Ratio left, Ratio low, Ratio high) {
            Ratio middle = low.plus(high).dividedBy(2).floor();
            for (Ratio off = Ratio.ZERO; ; off = off.plus(Ratio.ONE)) {
                Ratio above = middle.plus(off);
                Ratio below = middle.minus(off);
                boolean hasAbove = above.compareTo(high) <= 0;
                boolean hasBelow = !off.isZero() && below.compareTo(low) >= 0;
                if (!hasAbove && below.compareTo(low) < 0) {
                    return false;
                }
                if (hasAbove && isIn(k, left, above) || hasBelow && isIn(k, left, below)) {
                    return true;
                }
                if (isExhausted()) {
                    leftOpen = true;
                    return false;
                }
            }
        }

        private boolean isIn(int k, Ratio left, Ratio count) {
            if (choicesLeft-- <= 0) {
                leftOpen = true;
                return false;
            }
            int j = order.get(k);
            values[j] = count.times(steps.get(j));
            return from(k + 1, left.minus(values[j]));
        }

        /** What a row can reach at most, by the steps given to the k-th unknown. */
        private final class Reach {

            private final StepBox.Row row;
            private final int k;
            private final Ratio left;

            Reach(StepBox.Row row, int k, Ratio left) {
                this.row = row;
                this.k = k;
                this.left = left;
            }

            Ratio at(Ratio count) {
                int own = order.get(k);
                Ratio value = count.times(steps.get(own));
                Ratio sum = row.extra().get(own).times(value);
                Ratio spare = left.minus(value).minus(leastFrom[k + 1]);
                for (int j : row.bestFirst()) {
                    if (place[j] < k) {
                        sum = sum.plus(row.extra().get(j).times(values[j]));
                    } else if (place[j] > k) {
                        Ratio more = spare.min(box.room(j));
                        spare = spare.minus(more);
                        sum = sum.plus(row.extra().get(j).times(box.least(j).plus(more)));
                    }
                }
                return sum;
            }

            /** Where it is highest: the first count after which it does not rise. */
            Ratio top(Ratio low, Ratio high) {
                return halved(low, high, n -> at(n.plus(Ratio.ONE)).compareTo(at(n)) <= 0);
            }

            /** The first count up to the top that reaches what is wanted. */
            Ratio first(Ratio low, Ratio top) {
                return halved(low, top, this::isEnough);
            }

            /** The last count from the top on that does. */
            Ratio last(Ratio top, Ratio high) {
                Ratio beyond = halved(top, high.plus(Ratio.ONE), n -> !isEnough(n));
                return beyond.minus(Ratio.ONE);
            }

            private boolean isEnough(Ratio count) {
                return at(count).compareTo(row.wanted(box.total())) >= 0;
            }

            /** The first whole number from low on for which something holds that then goes on to hold; high if none before. */
            private Ratio halved(Ratio low, Ratio high, Predicate<Ratio> holds) {
                Ratio from = low;
                Ratio to = high;
                while (from.compareTo(to) < 0) {
                    Ratio middle = from.plus(to).dividedBy(2).floor();
                    if (holds.test(middle)) {
                        to = middle;
                    } else {
                        from = middle.plus(Ratio.ONE);
                    }
                }
                return from;
            }
        }
    }
}
