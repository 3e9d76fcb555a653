package io.github.formulationmath.size;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;

/** What would open a window without a batch. Each answer was applied and the window looked for before it is told. */
final class Openings {

    /** How many checks one trial may take. */
    private static final long TRIAL = 1_000_000;

    /** How many dilutions are tried before the search for some gives up. */
    private static final int MOST_DILUTIONS = 200;

    private final WindowSearch search;

    Openings(WindowSearch search) {
        this.search = search;
    }

    /** All that open it; the smallest size needed, and what needs it, are known. */
    List<WindowOpening> forNeeded(Sizes.Rest rest) {
        List<WindowOpening> openings = new ArrayList<>();
        for (WindowOpening opening : raised(rest.at())) {
            if (opens(applied(search, opening))) {
                openings.add(opening);
            }
        }
        finerBalance().ifPresent(openings::add);
        dilution(rest).ifPresent(openings::add);
        return openings;
    }

    private static boolean opens(WindowSearch changed) {
        try {
            return changed.hasBatch(new SearchMeter(SearchEffort.ofChecks(TRIAL)));
        } catch (SearchLimitException e) {
            return false;
        }
    }

    /** Every ceiling that is too low, raised; where one can be raised in two ways, an opening for each. */
    private List<WindowOpening> raised(Ratio needed) {
        List<List<WindowOpening>> ways = List.of(List.of());
        for (Ceiling ceiling : search.ceilings()) {
            if (!ceiling.allows(needed)) {
                List<List<WindowOpening>> longer = new ArrayList<>();
                for (WindowOpening own : ceiling.openingsFor(needed)) {
                    ways.forEach(way -> {
                        List<WindowOpening> both = new ArrayList<>(way);
                        both.add(own);
                        longer.add(both);
                    });
                }
                ways = longer;
            }
        }
        return ways.stream()
                .map(way -> way.size() == 1 ? way.get(0) : new WindowOpening.Together(way))
                .toList();
    }

    private static WindowSearch applied(WindowSearch on, WindowOpening opening) {
        Bench bench = on.bench();
        if (opening instanceof WindowOpening.FinerBalance finer) {
            return on.with(bench.on(
                    like(bench.balance(), finer.readability(), bench.balance().capacity())));
        }
        if (opening instanceof WindowOpening.HigherCapacity higher) {
            return on.with(bench.on(like(bench.balance(), bench.balance().readability(), higher.capacity())));
        }
        if (opening instanceof WindowOpening.LighterVessel lighter) {
            Vessel vessel = Vessel.of(bench.vessel().name(), lighter.mass());
            boolean holds = bench.vessel().workingVolume().isPresent();
            return on.with(bench.with(
                    holds
                            ? vessel.holding(
                                    bench.vessel().brimVolume().orElseThrow(),
                                    bench.vessel().workingVolume().orElseThrow())
                            : vessel));
        }
        if (opening instanceof WindowOpening.LargerVessel larger) {
            return on.with(bench.with(bench.vessel().holding(larger.workingVolume(), larger.workingVolume())));
        }
        if (opening instanceof WindowOpening.MoreStock more) {
            return on.with(on.constraints().withStock(more.ingredientName(), more.mass()));
        }
        WindowSearch all = on;
        for (WindowOpening each : ((WindowOpening.Together) opening).all()) {
            all = applied(all, each);
        }
        return all;
    }

    private static Balance like(Balance balance, Amount<Mass> readability, Amount<Mass> capacity) {
        return Balance.of(readability, capacity).withErrors(balance.errors()).withMinimumLoad(balance.minimumLoad());
    }

    /** The coarsest step of the series 1-2-5, finer than this balance's, at which there is a batch. */
    private Optional<WindowOpening> finerBalance() {
        return CoarsestStep.StepSeries.finerThan(search.bench().balance().readability()).stream()
                .map(WindowOpening.FinerBalance::new)
                .filter(finer -> opens(applied(search, finer)))
                .map(WindowOpening.class::cast)
                .findFirst();
    }

    /** Whatever line asks for too much is diluted further, until there is a batch or the carrier can give no more. */
    private Optional<WindowOpening> dilution(Sizes.Rest first) {
        List<FormulaLine> lines = search.formula().lines();
        Ratio top = search.top();
        boolean judged = search.constraints().criteria().stream().allMatch(OfWeighings.class::isInstance);
        if (!judged || top.signum() <= 0 || lines.size() == 1) {
            return Optional.empty();
        }
        FormulaLine carrier = search.formula()
                .quantitySufficientLine()
                .orElseGet(() -> Collections.max(lines, Comparator.comparing(FormulaLine::fraction)));
        List<Ratio> factors = new ArrayList<>(Collections.nCopies(lines.size(), Ratio.ONE));
        Optional<Sizes.Rest> rest = Optional.of(first);
        WindowSearch changed = search;
        for (int i = 0; i < MOST_DILUTIONS && rest.isPresent(); i++) {
            int line = binding(changed, rest.get(), carrier);
            if (line == carrier.index()) {
                return Optional.empty();
            }
            Ratio before = factors.get(line);
            Ratio needed = before.times(rest.get().at()).dividedBy(top).ceil();
            factors.set(line, needed.max(before.plus(Ratio.ONE)));
            if (Diluted.diluent(search.formula(), factors).compareTo(carrier.fraction()) >= 0) {
                return Optional.empty();
            }
            changed = search.weighing(Diluted.formula(search.formula(), factors, carrier));
            if (opens(changed)) {
                return Optional.of(preDilute(factors, carrier));
            }
            rest = beyond(changed);
        }
        return Optional.empty();
    }

    private static Optional<Sizes.Rest> beyond(WindowSearch changed) {
        try {
            return changed.beyond(new SearchMeter(SearchEffort.ofChecks(TRIAL)));
        } catch (SearchLimitException e) {
            return Optional.empty();
        }
    }

    /** The line that binds; where it is the total, or something that is no line, the smallest that is weighed. */
    private static int binding(WindowSearch changed, Sizes.Rest rest, FormulaLine carrier) {
        if (rest.landing().line().isPresent()) {
            return rest.landing().line().getAsInt();
        }
        return changed.weighed().lines().stream()
                .filter(line -> line.position() != carrier.position())
                .min(Comparator.comparing(FormulaLine::fraction))
                .map(FormulaLine::index)
                .orElseThrow();
    }

    private WindowOpening preDilute(List<Ratio> factors, FormulaLine carrier) {
        List<WindowOpening.Dilution> dilutions = search.formula().lines().stream()
                .filter(line -> factors.get(line.index()).compareTo(Ratio.ONE) > 0)
                .map(line -> new WindowOpening.Dilution(line, factors.get(line.index())))
                .toList();
        return new WindowOpening.PreDilute(dilutions, carrier);
    }
}
