package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.working.Reckoning;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The smallest additions in whole steps, each line in those of its own balance. The total N, counted in the greatest amount
 * that divides all steps, is tried upwards from what the exact additions need. N fixes the new total, and with it for every line the least and the most steps that leave it within its
 * allowance; additions exist if the least do not add up to more than N and the most not to less. The steps left over go
 * first to the lines that bring in least of a capped substance: for one cap that is the least there can be of it, so that
 * the answer is certain; where several caps pull in different directions, or steps of different size do not fill up
 * what is left, it may stay open.
 */
final class DisplaySearch {

    /** Totals tried before the search is broken off; the same on every machine. */
    private static final int EFFORT = 10_000;

    private final MadeBatch made;
    private final CorrectionRules rules;
    private final CorrectionPlan plan;
    private final LineSteps lines;
    private final Ratio common;
    private final List<Allowance> allowances = new ArrayList<>();
    private final List<Cap> caps;
    private final List<List<Integer>> orders = new ArrayList<>();
    private boolean leftOpen;

    DisplaySearch(MadeBatch made, CorrectionRules rules, CorrectionPlan plan) {
        this.made = made;
        this.rules = rules;
        this.plan = plan;
        this.lines = new LineSteps(made);
        this.common = lines.common();
        this.caps = rules.numberedCaps();
        made.lines()
                .forEach(line -> allowances.add(CorrectionPlan.allowances(rules).apply(line.line())));
        orders.add(coarsestFirst());
        caps.forEach(cap -> orders.add(0, leastFirst(cap)));
    }

    private List<Integer> coarsestFirst() {
        return IntStream.range(0, made.lines().size())
                .boxed()
                .sorted(Comparator.<Integer, Ratio>comparing(lines::step).reversed())
                .toList();
    }

    private List<Integer> leastFirst(Cap cap) {
        return coarsestFirst().stream()
                .sorted(Comparator.comparing(i -> strength(cap, i)))
                .toList();
    }

    private Ratio strength(Cap cap, int line) {
        return made.lines()
                .get(line)
                .line()
                .ingredient()
                .strengthOf(cap.substance())
                .map(MassFraction::fraction)
                .orElse(Ratio.ZERO);
    }

    DisplayedAdditions search() {
        Ratio total = plan.additions().stream()
                .reduce(Ratio.ZERO, Ratio::plus)
                .dividedBy(common)
                .toWhole(RoundingMode.CEILING);
        Ratio most = rules.roomFor(made).minus(made.result()).dividedBy(common).floor();
        for (int tried = 0; tried < EFFORT; tried++) {
            if (total.compareTo(most) > 0) {
                return none();
            }
            Optional<List<Ratio>> steps = shareOut(total);
            if (steps.isPresent()) {
                return new DisplayedAdditions(
                        made,
                        rules,
                        steps.get(),
                        leftOpen ? DisplayedAdditions.Quality.WITHIN : DisplayedAdditions.Quality.SMALLEST);
            }
            total = total.plus(Ratio.ONE);
        }
        return DisplayedAdditions.nearest(made, rules, plan.additions());
    }

    private DisplayedAdditions none() {
        DisplayedAdditions nearest = DisplayedAdditions.nearest(made, rules, plan.additions());
        return leftOpen ? nearest : nearest.with(DisplayedAdditions.Quality.NONE_WITHIN);
    }

    /** Steps for all lines that add up to a total, if there are any within all allowances and caps. */
    private Optional<List<Ratio>> shareOut(Ratio total) {
        Ratio added = total.times(common);
        Ratio content = made.result().plus(added);
        List<Ratio> least = new ArrayList<>();
        List<Ratio> most = new ArrayList<>();
        for (int i = 0; i < allowances.size(); i++) {
            least.add(least(i, content));
            most.add(most(i, content));
            if (least.get(i).compareTo(most.get(i)) > 0) {
                return Optional.empty();
            }
        }
        if (grams(least).compareTo(added) > 0 || grams(most).compareTo(added) < 0) {
            return Optional.empty();
        }
        return withCaps(least, most, added, content);
    }

    private Ratio least(int i, Ratio content) {
        Ratio wanted = allowances.get(i).least(Reckoning.plain()).times(content);
        return lines.inSteps(i, wanted.minus(made.lines().get(i).result()), RoundingMode.CEILING)
                .max(Ratio.ZERO);
    }

    private Ratio most(int i, Ratio content) {
        MadeLine line = made.lines().get(i);
        Ratio allowed = allowances.get(i).most(Reckoning.plain()).times(content).minus(line.result());
        Ratio limited = rules.limitOf(line.line()).values().stream().reduce(allowed, Ratio::min);
        return lines.atMostCarried(i, lines.inSteps(i, limited, RoundingMode.FLOOR));
    }

    private Optional<List<Ratio>> withCaps(List<Ratio> least, List<Ratio> most, Ratio added, Ratio content) {
        for (int k = 0; k < orders.size(); k++) {
            List<Ratio> steps = filled(least, most, added, orders.get(k));
            if (grams(steps).equals(added) && caps.stream().allMatch(cap -> isKept(cap, lines.grams(steps), content))) {
                return Optional.of(steps);
            }
        }
        leftOpen |= !isImpossible(least, most, added, content);
        return Optional.empty();
    }

    /**
     * The order of a cap, filled up without regard to steps, makes the least of it: if that is too much, no steps will do.
     * Where each step divides the next, the coarsest first fill up what can be filled up at all.
     */
    private boolean isImpossible(List<Ratio> least, List<Ratio> most, Ratio added, Ratio content) {
        for (int k = 0; k < caps.size(); k++) {
            List<Ratio> grams = filledInGrams(least, most, added, orders.get(k));
            if (!isKept(caps.get(caps.size() - 1 - k), grams, content)) {
                return true;
            }
        }
        return lines.divideEachOther()
                && !grams(filled(least, most, added, coarsestFirst())).equals(added);
    }

    private List<Ratio> filledInGrams(List<Ratio> least, List<Ratio> most, Ratio added, List<Integer> order) {
        List<Ratio> grams = lines.grams(least);
        Ratio left = added.minus(grams(least));
        for (int i : order) {
            Ratio more = left.min(most.get(i).minus(least.get(i)).times(lines.step(i)));
            grams.set(i, grams.get(i).plus(more));
            left = left.minus(more);
        }
        return grams;
    }

    private List<Ratio> filled(List<Ratio> least, List<Ratio> most, Ratio added, List<Integer> order) {
        List<Ratio> steps = new ArrayList<>(least);
        Ratio left = added.minus(grams(least));
        for (int i : order) {
            Ratio more =
                    lines.inSteps(i, left, RoundingMode.FLOOR).min(most.get(i).minus(least.get(i)));
            steps.set(i, least.get(i).plus(more));
            left = left.minus(more.times(lines.step(i)));
        }
        return Collections.unmodifiableList(steps);
    }

    private boolean isKept(Cap cap, List<Ratio> grams, Ratio content) {
        Ratio there = Ratio.ZERO;
        for (int i = 0; i < grams.size(); i++) {
            Ratio mass = made.lines().get(i).result().plus(grams.get(i));
            there = there.plus(strength(cap, i).times(mass));
        }
        return there.compareTo(cap.most().fraction().times(content)) <= 0;
    }

    private Ratio grams(List<Ratio> steps) {
        return lines.grams(steps).stream().reduce(Ratio.ZERO, Ratio::plus);
    }
}
