package io.github.formulationmath.classroom;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * Which wrong answers stand beside the right one, so that the right one is not told by its size: how many are smaller is
 * drawn, and so is whether it is the one nearest to a number of the question, or to the mean. Mistakes of the topic come first;
 * one answer with the decimal point moved may stand among them, and fills up where the mistakes are too few.
 */
final class Choices {

    static final int WRONG = 3;

    /** In one of so many exercises a moved point may be offered. */
    private static final int SHIFTED = 3;

    private final Ratio right;
    private final List<Ratio> givens;

    private Choices(Ratio right, List<Ratio> givens) {
        this.right = right;
        this.givens = givens;
    }

    /** The wrong answers; fewer than {@link #WRONG} if there are not as many that differ. */
    static List<Misstep> of(Draft draft, Ratio right, Draw draw) {
        List<Misstep> pool = new ArrayList<>();
        for (Misstep slip : draft.slips()) {
            if (draft.isPlausible(slip.value()) && !Misstep.isShift(slip.value(), right)) {
                addIfNew(slip, right, pool);
            }
        }
        if (draw.oneIn(SHIFTED)) {
            shifts(right).stream()
                    .filter(slip -> draft.isPlausible(slip.value()))
                    .forEach(slip -> addIfNew(slip, right, pool));
        }
        return new Choices(right, draft.givens()).balanced(pool, draw);
    }

    private static void addIfNew(Misstep slip, Ratio right, List<Misstep> known) {
        if (!slip.value().equals(right)
                && known.stream().noneMatch(other -> other.value().equals(slip.value()))) {
            known.add(slip);
        }
    }

    /** The point moved one place, to either side. */
    private static List<Misstep> shifts(Ratio right) {
        return List.of(
                new Misstep(Said.of("mistake.point-to-the-right"), right.times(10)),
                new Misstep(Said.of("mistake.point-to-the-left"), right.dividedBy(10)));
    }

    private List<Misstep> balanced(List<Misstep> pool, Draw draw) {
        int smaller = draw.between(0, WRONG);
        boolean nearest = draw.oneIn(WRONG + 1);
        boolean mean = draw.oneIn(WRONG + 1);
        List<List<Misstep>> sets = triples(pool);
        Predicate<List<Misstep>> bySize = set -> smallerThanRight(set) == smaller;
        Predicate<List<Misstep>> byGivens = set -> isNearestToAGiven(set) == nearest;
        Predicate<List<Misstep>> byMean = set -> isNearestToTheMean(set) == mean;
        for (Predicate<List<Misstep>> wanted :
                List.of(bySize.and(byGivens).and(byMean), bySize.and(byGivens), bySize.and(byMean), bySize, byGivens)) {
            List<List<Misstep>> fitting = sets.stream().filter(wanted).toList();
            if (!fitting.isEmpty()) {
                return draw.oneOf(fitting);
            }
        }
        return sets.isEmpty() ? List.of() : draw.oneOf(sets);
    }

    /** All choices of three of which at most one has the digits of the right answer. */
    private List<List<Misstep>> triples(List<Misstep> pool) {
        List<List<Misstep>> all = new ArrayList<>();
        for (int i = 0; i < pool.size(); i++) {
            for (int j = i + 1; j < pool.size(); j++) {
                for (int k = j + 1; k < pool.size(); k++) {
                    List<Misstep> set = List.of(pool.get(i), pool.get(j), pool.get(k));
                    if (set.stream().filter(this::isMoved).count() <= 1) {
                        all.add(set);
                    }
                }
            }
        }
        return all;
    }

    private boolean isMoved(Misstep slip) {
        return Misstep.isShift(slip.value(), right);
    }

    private int smallerThanRight(List<Misstep> set) {
        return (int)
                set.stream().filter(slip -> slip.value().compareTo(right) < 0).count();
    }

    private boolean isNearestToAGiven(List<Misstep> set) {
        Ratio mine = distance(right);
        return set.stream().allMatch(slip -> distance(slip.value()).compareTo(mine) > 0);
    }

    private Ratio distance(Ratio value) {
        return givens.stream()
                .map(given -> given.minus(value).abs())
                .min(Comparator.naturalOrder())
                .orElse(Ratio.ZERO);
    }

    private boolean isNearestToTheMean(List<Misstep> set) {
        Ratio sum = right;
        for (Misstep slip : set) {
            sum = sum.plus(slip.value());
        }
        Ratio mean = sum.dividedBy(set.size() + 1L);
        Ratio mine = mean.minus(right).abs();
        return set.stream().allMatch(slip -> mean.minus(slip.value()).abs().compareTo(mine) > 0);
    }
}
