package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All of a batch's requirements at once. Each only ever pushes a size on to the next that it allows, so going round until
 * none pushes ends at the next size that all allow.
 */
final class JointRequirement {

    /** One requirement with what it is called. */
    record Named(Phrase name, Requirement requirement) {}

    /** Where all requirements let the search rest, and the one that pushed last; -1 if none did. */
    record Rest(Landing landing, int requirement) {}

    private final List<Named> all;

    /** What every size that all allow is a multiple of, if that is more than one of them says by itself; else 0. */
    private final Ratio common;

    /** The requirement that is named where only a common multiple remains. */
    private final int gridOwner;

    private JointRequirement(List<Named> all) {
        this.all = List.copyOf(all);
        List<Ratio> grids = new ArrayList<>();
        int owner = -1;
        for (int i = 0; i < all.size(); i++) {
            Requirement requirement = all.get(i).requirement();
            requirement.grid().ifPresent(grids::add);
            owner = requirement.grid().isPresent() && !(requirement instanceof RoundingRequirement) ? i : owner;
        }
        this.common = owner >= 0 && grids.size() > 1 ? CommonPeriod.ofSizes(grids) : Ratio.ZERO;
        this.gridOwner = owner;
    }

    /** The next multiple that all must meet in, up or down from a size that is none. */
    private Rest aligned(Rest at, boolean up) {
        Ratio size = at.landing().at();
        if (common.isZero() || size.dividedBy(common).isInteger()) {
            return at;
        }
        Ratio multiples = size.dividedBy(common);
        Ratio next = (up ? multiples.ceil() : multiples.floor()).times(common);
        return new Rest(new Landing(next, Landing.NO_LINE), gridOwner);
    }

    static JointRequirement of(Formula formula, Bench bench, BatchConstraints constraints) {
        Balance balance = bench.balance();
        List<Named> all = new ArrayList<>();
        for (BatchCriterion criterion : constraints.criteria()) {
            constraints.benches(bench).stream()
                    .map(each -> criterion.closedBy(each.closure()))
                    .distinct()
                    .forEach(closed -> all.add(new Named(closed.name(), closed.of(formula, balance))));
        }
        constraints
                .leastSize()
                .ifPresent(size -> all.add(new Named(
                        Phrase.of("criterion.least-size", size.toString()),
                        new SizeRequirement(size.in(FormulationUnits.GRAM)))));
        constraints
                .step()
                .ifPresent(step -> all.add(new Named(
                        Phrase.of("criterion.in-steps", step.toString()),
                        new StepRequirement(step.in(FormulationUnits.GRAM)))));
        if (bench.closure() == Closure.QS_TAKES_REST) {
            all.add(new Named(Phrase.of("criterion.rest-left"), new RestRequirement(formula, balance)));
        }
        return new JointRequirement(all);
    }

    int size() {
        return all.size();
    }

    Named get(int index) {
        return all.get(index);
    }

    /** Why no size passes. */
    Optional<Phrase> obstacle() {
        return all.stream()
                .flatMap(named -> named.requirement().obstacle().stream())
                .findFirst();
    }

    /** The smallest size that all allow; empty if there is none up to a ceiling, or nothing is required at all. */
    Optional<Rest> smallest(SearchMeter meter, Ratio ceiling) {
        Rest start = new Rest(new Landing(Ratio.ZERO, Landing.NO_LINE), -1);
        for (int i = 0; i < all.size(); i++) {
            Landing own = all.get(i).requirement().smallest(meter);
            start = own.at().compareTo(start.landing().at()) > 0 ? new Rest(own, i) : start;
        }
        return start.requirement() < 0 ? Optional.empty() : climb(start, meter, ceiling);
    }

    /** The smallest size from a size on. */
    Optional<Rest> atLeast(Ratio from, SearchMeter meter, Ratio ceiling) {
        return climb(new Rest(new Landing(from, Landing.NO_LINE), -1), meter, ceiling);
    }

    private Optional<Rest> climb(Rest from, SearchMeter meter, Ratio ceiling) {
        Rest at = from;
        int calm = 0;
        for (int i = 0; calm < all.size(); i = (i + 1) % all.size()) {
            if (at.landing().at().compareTo(ceiling) > 0) {
                return Optional.empty();
            }
            Landing next = all.get(i).requirement().atLeast(at.landing().at(), meter);
            count(meter, next.at());
            boolean pushed = next.at().compareTo(at.landing().at()) > 0;
            calm = pushed ? 1 : calm + 1;
            at = pushed ? new Rest(next, i) : at;
            Rest onGrid = aligned(at, true);
            calm = onGrid.equals(at) ? calm : 0;
            at = onGrid;
        }
        return at.landing().at().compareTo(ceiling) > 0 ? Optional.empty() : Optional.of(at);
    }

    /** The largest size that all allow, from a size down. */
    Optional<Rest> atMost(Ratio from, SearchMeter meter) {
        Rest at = new Rest(new Landing(from, Landing.NO_LINE), -1);
        int calm = 0;
        for (int i = 0; calm < all.size(); i = (i + 1) % all.size()) {
            Optional<Landing> next =
                    all.get(i).requirement().atMost(at.landing().at(), meter);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            count(meter, next.get().at());
            boolean pushed = next.get().at().compareTo(at.landing().at()) < 0;
            calm = pushed ? 1 : calm + 1;
            at = pushed ? new Rest(next.get(), i) : at;
            Rest onGrid = aligned(at, false);
            if (onGrid.landing().at().isZero()) {
                return Optional.empty();
            }
            calm = onGrid.equals(at) ? calm : 0;
            at = onGrid;
        }
        return Optional.of(at);
    }

    /** Where the interval of sizes that all allow starts, around such a size. */
    Ratio unbrokenFrom(Ratio passing) {
        return all.stream()
                .map(named -> named.requirement().unbrokenFrom(passing))
                .reduce(Ratio::max)
                .orElse(passing);
    }

    private static void count(SearchMeter meter, Ratio reached) {
        if (meter.isPauseDue(false)) {
            meter.pause(reached);
        }
    }
}
