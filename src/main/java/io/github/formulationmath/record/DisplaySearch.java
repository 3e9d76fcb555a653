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
import org.jspecify.annotations.Nullable;

/**
 * The smallest additions in whole steps of the display. The total N of the steps is tried upwards from what the exact
 * additions need. N fixes the new total, and with it for every line the least and the most steps that leave it within its
 * allowance; additions exist if the least do not add up to more than N and the most not to less. The steps left over go
 * first to the lines that bring in least of a capped substance: for one cap that is the least there can be of it, so that
 * the answer is certain; where several caps pull in different directions it may stay open.
 */
final class DisplaySearch {

    /** Totals tried before the search is broken off; the same on every machine. */
    private static final int EFFORT = 10_000;

    private final MadeBatch made;
    private final CorrectionRules rules;
    private final CorrectionPlan plan;
    private final Ratio step;
    private final List<Allowance> allowances = new ArrayList<>();
    private final List<Cap> caps;
    private final List<List<Integer>> orders = new ArrayList<>();
    private boolean leftOpen;

    DisplaySearch(MadeBatch made, CorrectionRules rules, CorrectionPlan plan) {
        this.made = made;
        this.rules = rules;
        this.plan = plan;
        this.step = made.plan().bench().balance().gramsPerDivision();
        this.caps = rules.numberedCaps();
        made.lines()
                .forEach(line -> allowances.add(CorrectionPlan.allowances(rules).apply(line.line())));
        orders.add(IntStream.range(0, made.lines().size()).boxed().toList());
        caps.forEach(cap -> orders.add(0, leastFirst(cap)));
    }

    private List<Integer> leastFirst(Cap cap) {
        return IntStream.range(0, made.lines().size())
                .boxed()
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
                .dividedBy(step)
                .toWhole(RoundingMode.CEILING);
        Ratio most = rules.roomFor(made).minus(made.result()).dividedBy(step).floor();
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
        Ratio content = made.result().plus(total.times(step));
        List<Ratio> least = new ArrayList<>();
        List<Ratio> most = new ArrayList<>();
        for (int i = 0; i < allowances.size(); i++) {
            least.add(least(i, content));
            most.add(most(i, content));
            if (least.get(i).compareTo(most.get(i)) > 0) {
                return Optional.empty();
            }
        }
        if (sum(least).compareTo(total) > 0 || sum(most).compareTo(total) < 0) {
            return Optional.empty();
        }
        return withCaps(least, most, total, content);
    }

    private Ratio least(int i, Ratio content) {
        Ratio wanted = allowances.get(i).least(Reckoning.plain()).times(content);
        return inSteps(wanted.minus(made.lines().get(i).result()), RoundingMode.CEILING)
                .max(Ratio.ZERO);
    }

    private Ratio most(int i, Ratio content) {
        MadeLine line = made.lines().get(i);
        Ratio allowed = allowances.get(i).most(Reckoning.plain()).times(content).minus(line.result());
        Ratio limited = rules.limitOf(line.line()).values().stream().reduce(allowed, Ratio::min);
        return inSteps(limited, RoundingMode.FLOOR);
    }

    private Ratio inSteps(Ratio grams, RoundingMode mode) {
        return grams.dividedBy(step).toWhole(mode);
    }

    private Optional<List<Ratio>> withCaps(List<Ratio> least, List<Ratio> most, Ratio total, Ratio content) {
        boolean possible = true;
        for (int k = 0; k < orders.size(); k++) {
            List<Ratio> steps = filled(least, most, total, orders.get(k));
            @Nullable
            Cap broken = caps.stream()
                    .filter(cap -> !isKept(cap, steps, content))
                    .findFirst()
                    .orElse(null);
            if (broken == null) {
                return Optional.of(steps);
            }
            // The order of a cap makes the least of it: if that is too much, no steps will do.
            possible &= k >= caps.size() || isKept(caps.get(caps.size() - 1 - k), steps, content);
        }
        leftOpen |= possible;
        return Optional.empty();
    }

    private static List<Ratio> filled(List<Ratio> least, List<Ratio> most, Ratio total, List<Integer> order) {
        List<Ratio> steps = new ArrayList<>(least);
        Ratio left = total.minus(sum(least));
        for (int i : order) {
            Ratio more = left.min(most.get(i).minus(least.get(i)));
            steps.set(i, least.get(i).plus(more));
            left = left.minus(more);
        }
        return Collections.unmodifiableList(steps);
    }

    private boolean isKept(Cap cap, List<Ratio> steps, Ratio content) {
        Ratio there = Ratio.ZERO;
        for (int i = 0; i < steps.size(); i++) {
            Ratio mass = made.lines().get(i).result().plus(steps.get(i).times(step));
            there = there.plus(strength(cap, i).times(mass));
        }
        return there.compareTo(cap.most().fraction().times(content)) <= 0;
    }

    private static Ratio sum(List<Ratio> numbers) {
        return numbers.stream().reduce(Ratio.ZERO, Ratio::plus);
    }
}
