package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;

/** A formula, a bench and constraints, and the search for the window they leave. */
final class WindowQuestion {

    /** How far beyond the capacity the search for what would open the window goes. */
    private static final long FAR_BEYOND = 1_000_000;

    private final Formula formula;
    private final Bench bench;
    private final BatchConstraints constraints;
    private final JointRequirement requirements;
    private final List<Ceiling> ceilings;

    WindowQuestion(Formula formula, Bench bench, BatchConstraints constraints) {
        this.formula = formula;
        this.bench = bench;
        this.constraints = constraints;
        this.requirements = JointRequirement.of(formula, bench.balance(), constraints);
        this.ceilings = Ceiling.of(formula, bench, constraints);
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
                ? ceiling.get().most(r)
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
        return new WindowEnd(this, false, ceilingLanding(), requirements.size() + ceilings.indexOf(lowest()));
    }

    private Ceiling lowest() {
        Ceiling lowest = ceilings.get(0);
        for (Ceiling ceiling : ceilings) {
            boolean lower = ceiling.most(Reckoning.plain()).compareTo(lowest.most(Reckoning.plain())) < 0;
            lowest = lower ? ceiling : lowest;
        }
        return lowest;
    }

    BatchWindow answer(SearchMeter meter) {
        Landing top = ceilingLanding();
        if (requirements.obstacle().isPresent()) {
            return new EmptyWindow(this, null, List.of());
        }
        Optional<JointRequirement.Rest> low = requirements.smallest(meter, top.at());
        if (low.isEmpty()) {
            return empty(meter);
        }
        WindowEnd lower =
                new WindowEnd(this, true, low.get().landing(), low.get().requirement());
        JointRequirement.Rest high = requirements.atMost(top.at(), meter).orElseThrow();
        WindowEnd upper =
                high.requirement() < 0 ? upperEnd() : new WindowEnd(this, false, high.landing(), high.requirement());
        return new FeasibleWindow(this, lower, upper);
    }

    private BatchWindow empty(SearchMeter meter) {
        Ratio far = bench.balance().capacity().in(FormulationUnits.GRAM).times(FAR_BEYOND);
        Optional<JointRequirement.Rest> beyond = requirements.smallest(meter, far);
        WindowEnd lower = beyond.map(rest -> new WindowEnd(this, true, rest.landing(), rest.requirement()))
                .orElse(null);
        return new EmptyWindow(this, lower, openings(beyond));
    }

    private List<WindowOpening> openings(Optional<JointRequirement.Rest> beyond) {
        List<WindowOpening> openings = new ArrayList<>();
        beyond.ifPresent(rest -> {
            Ratio needed = rest.landing().at();
            ceilings.stream()
                    .filter(ceiling -> ceiling.most(Reckoning.plain()).compareTo(needed) < 0)
                    .forEach(ceiling -> openings.addAll(ceiling.openingsFor(needed)));
            finerBalance().ifPresent(d -> openings.add(new WindowOpening.FinerBalance(d)));
            preDilution(rest).ifPresent(openings::add);
        });
        return openings;
    }

    /** The coarsest step of the series 1-2-5, finer than this balance's, at which a batch under the ceilings passes. */
    private Optional<Amount<Mass>> finerBalance() {
        Ratio top = ceilingLanding().at();
        for (Amount<Mass> d : StepSeries.finerThan(bench.balance().readability())) {
            Balance finer = Balance.of(d, bench.balance().capacity())
                    .withErrors(bench.balance().errors())
                    .withMinimumLoad(bench.balance().minimumLoad());
            SearchMeter meter = new SearchMeter(SearchEffort.ofChecks(1_000_000));
            try {
                JointRequirement joint = JointRequirement.of(formula, finer, constraints);
                if (joint.obstacle().isEmpty() && joint.smallest(meter, top).isPresent()) {
                    return Optional.of(d);
                }
            } catch (SearchLimitException e) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** A line that alone asks for too much: diluted so far that the largest batch gives it what it needs. */
    private Optional<WindowOpening> preDilution(JointRequirement.Rest rest) {
        boolean byLine = rest.landing().line() >= 0;
        boolean somethingFits = ceilingLanding().at().signum() > 0;
        if (!byLine || !somethingFits || formula.lines().size() == 1) {
            return Optional.empty();
        }
        Ratio factor =
                rest.landing().at().dividedBy(ceilingLanding().at()).ceil().max(Ratio.of(2));
        return Optional.of(
                new WindowOpening.PreDilute(formula.lines().get(rest.landing().line()), factor));
    }
}
