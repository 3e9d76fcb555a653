package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.util.List;
import java.util.Optional;

/** A formula, a bench and constraints, and the search for the window they leave. */
final class WindowQuestion {

    private final Formula formula;
    private final Formula weighed;
    private final Bench bench;
    private final BatchConstraints constraints;
    private final JointRequirement requirements;
    private final List<Ceiling> ceilings;

    WindowQuestion(Formula formula, Bench bench, BatchConstraints constraints) {
        this(formula, formula, bench, constraints);
    }

    /** What is weighed is the formula with some of its lines as dilutions. */
    private WindowQuestion(Formula formula, Formula weighed, Bench bench, BatchConstraints constraints) {
        this.formula = formula;
        this.weighed = weighed;
        this.bench = bench;
        this.constraints = constraints;
        this.requirements = JointRequirement.of(weighed, bench, constraints);
        this.ceilings = Ceiling.of(formula, weighed, bench, constraints);
    }

    Formula formula() {
        return formula;
    }

    Bench bench() {
        return bench;
    }

    BatchConstraints constraints() {
        return constraints;
    }

    Formula weighed() {
        return weighed;
    }

    List<Ceiling> ceilings() {
        return ceilings;
    }

    WindowQuestion with(Bench newBench) {
        return new WindowQuestion(formula, weighed, newBench, constraints);
    }

    WindowQuestion with(BatchConstraints newConstraints) {
        return new WindowQuestion(formula, weighed, bench, newConstraints);
    }

    WindowQuestion weighing(Formula withDilutions) {
        return new WindowQuestion(formula, withDilutions, bench, constraints);
    }

    JointRequirement requirements() {
        return requirements;
    }

    Optional<Ceiling> ceiling(int binding) {
        return binding >= requirements.size()
                ? Optional.of(ceilings.get(binding - requirements.size()))
                : Optional.empty();
    }

    Phrase nameOf(int binding) {
        return ceiling(binding)
                .map(Ceiling::phrase)
                .orElseGet(() -> requirements.get(binding).name());
    }

    <V> V derive(Reckoning<V> r, boolean lower, Landing at, int binding) {
        Optional<Ceiling> ceiling = ceiling(binding);
        V size = ceiling.isPresent()
                ? ceiling.get().shown(r, at.at())
                : requirements.get(binding).requirement().edge(r, at, lower);
        return lower
                ? r.named(BatchSymbols.LOWER, BatchSymbols.LOW, size)
                : r.named(BatchSymbols.UPPER, BatchSymbols.HIGH, size);
    }

    /** The lowest ceiling. */
    Landing ceilingLanding() {
        return new Landing(lowest().most(Reckoning.plain()), Landing.NO_LINE);
    }

    /** The upper end as the ceilings alone set it. */
    WindowEnd upperEnd() {
        return new WindowEnd(this, false, ceilingLanding(), lowestBinding());
    }

    private int lowestBinding() {
        return requirements.size() + ceilings.indexOf(lowest());
    }

    private Ceiling lowest() {
        Ceiling lowest = ceilings.get(0);
        for (Ceiling ceiling : ceilings) {
            boolean lower = ceiling.most(Reckoning.plain()).compareTo(lowest.most(Reckoning.plain())) < 0;
            lowest = lower ? ceiling : lowest;
        }
        return lowest;
    }

    /** The smallest batch, if there is one, and it fits. */
    private Optional<JointRequirement.Rest> smallest(SearchMeter meter) {
        if (requirements.obstacle().isPresent()) {
            return Optional.empty();
        }
        Ratio top = ceilings.stream().map(Ceiling::bound).reduce(Ratio::min).orElseThrow();
        return requirements
                .smallest(meter, top)
                .filter(rest -> ceilings.stream()
                        .allMatch(ceiling -> ceiling.allows(rest.landing().at())));
    }

    boolean hasBatch(SearchMeter meter) {
        return smallest(meter).isPresent();
    }

    /** The smallest size that is large enough, whatever the bench allows, within a million times its capacity. */
    Optional<JointRequirement.Rest> beyond(SearchMeter meter) {
        return requirements.smallest(meter, Openings.farBeyond(bench));
    }

    BatchWindow answer(SearchMeter meter) {
        if (requirements.obstacle().isPresent()) {
            return new EmptyWindow(this, null, List.of());
        }
        Optional<JointRequirement.Rest> low = smallest(meter);
        if (low.isEmpty()) {
            return empty(meter);
        }
        Landing least = low.get().landing();
        WindowEnd lower = new WindowEnd(this, true, least, low.get().requirement());
        Landing top = ceilingLanding();
        if (least.at().compareTo(top.at()) >= 0) {
            Landing only = new Landing(least.at(), Landing.NO_LINE);
            return new FeasibleWindow(this, lower, new WindowEnd(this, false, only, lowestBinding()));
        }
        JointRequirement.Rest high = requirements.atMost(top.at(), meter).orElseThrow();
        WindowEnd upper =
                high.requirement() < 0 ? upperEnd() : new WindowEnd(this, false, high.landing(), high.requirement());
        return new FeasibleWindow(this, lower, upper);
    }

    private BatchWindow empty(SearchMeter meter) {
        Optional<JointRequirement.Rest> beyond = beyond(meter);
        WindowEnd lower = beyond.map(rest -> new WindowEnd(this, true, rest.landing(), rest.requirement()))
                .orElse(null);
        return new EmptyWindow(
                this, lower, beyond.map(new Openings(this)::forNeeded).orElse(List.of()));
    }
}
