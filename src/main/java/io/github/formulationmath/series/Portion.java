package io.github.formulationmath.series;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.OverfillException;
import io.github.formulationmath.plan.OverloadException;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One version as it is weighed, by itself or with a portion of base, and the sizes at which what is delivered keeps its tolerances.
 *
 * <p>A share as read is {@code (N_c·P/N + a)/T}: N_c of the N divisions of the base are of the line, P divisions of base and a of the
 * line are weighed, T is everything weighed. It passes if it is no more than τ·w from w, decided in whole numbers of divisions.
 */
final class Portion {

    private static final int MOST_JUMPS = 50;

    private final Formula version;
    private final Formula weighed;
    private final Bench bench;
    private final Tolerances tolerances;
    private final boolean hasBase;
    private final List<Place> places;
    private final Range conceivable;
    private final Map<Ratio, Optional<Tried>> plans = new HashMap<>();

    /** A line of the version: its place in what is weighed and in the base, -1 if it is not there, and the ends of its share. */
    private record Place(int own, int inBase, Ratio low, Ratio high) {

        static Place of(int own, int inBase, Ratio share, Ratio tolerance) {
            return new Place(
                    own, inBase, share.times(Ratio.ONE.minus(tolerance)), share.times(Ratio.ONE.plus(tolerance)));
        }
    }

    /** Between which ends a share of what is weighed has to lie. */
    private record Range(Ratio low, Ratio high) {}

    /** A plan with its divisions, line by line and together. */
    private record Tried(WeighingPlan plan, List<Ratio> divisions, Ratio whole) {

        static Tried of(WeighingPlan plan) {
            List<Ratio> divisions =
                    plan.lines().stream().map(PlannedLine::divisions).toList();
            return new Tried(plan, divisions, sum(divisions));
        }
    }

    private Portion(Formula version, Formula weighed, Bench bench, Tolerances tolerances, Optional<Formula> base) {
        this.version = version;
        this.weighed = weighed;
        this.bench = bench;
        this.tolerances = tolerances;
        this.hasBase = base.isPresent();
        Map<LineKey, FormulaLine> own = LineKey.lines(weighed);
        Map<LineKey, FormulaLine> common = base.map(LineKey::lines).orElse(Map.of());
        this.places = version.lines().stream()
                .map(line ->
                        Place.of(index(own, line), index(common, line), line.fraction(), tolerances.fraction(line)))
                .toList();
        this.conceivable = conceivable();
    }

    private static int index(Map<LineKey, FormulaLine> lines, FormulaLine line) {
        FormulaLine there = lines.get(LineKey.of(line));
        return there == null ? -1 : there.index();
    }

    static Portion byItself(Formula version, Bench bench, Tolerances tolerances) {
        return new Portion(version, version, bench, tolerances, Optional.empty());
    }

    static Portion of(Base base, int number, Formula baseFormula, Bench bench, Tolerances tolerances) {
        return new Portion(
                base.versions().get(number), base.portion(number), bench, tolerances, Optional.of(baseFormula));
    }

    Formula version() {
        return version;
    }

    boolean hasBase() {
        return hasBase;
    }

    Tolerances tolerances() {
        return tolerances;
    }

    /** The place of a line of the version in what is weighed, or -1. */
    int ownPlace(int line) {
        return places.get(line).own();
    }

    /** The place of a line of the version in the base, or -1. */
    int placeInBase(int line) {
        return places.get(line).inBase();
    }

    /** How it is weighed at a size; empty if balance or vessel do not take it. */
    Optional<WeighingPlan> plan(Ratio size) {
        return tried(size).map(Tried::plan);
    }

    private Optional<Tried> tried(Ratio size) {
        return plans.computeIfAbsent(size, grams -> plan(weighed, bench, grams).map(Tried::of));
    }

    static Optional<WeighingPlan> plan(Formula formula, Bench bench, Ratio grams) {
        try {
            return Optional.of(WeighingPlan.of(
                    Batch.of(
                            formula,
                            BatchSize.ofMass(
                                    Amount.grams(grams).inUnitOf(bench.balance().readability()))),
                    bench));
        } catch (OverloadException | OverfillException tooMuch) {
            return Optional.empty();
        }
    }

    /** How much base a plan takes, in grams. */
    static Ratio baseIn(WeighingPlan plan) {
        return plan.lines().get(0).reading().canonical();
    }

    /**
     * The least size on a grid that passes.
     *
     * @param from where to begin, on the grid
     * @param step the grid
     * @param base the divisions of the base; empty if there is none
     * @param mostBase how much base may be taken, in grams
     */
    Optional<Ratio> least(Ratio from, Ratio step, List<Ratio> base, Ratio mostBase, Effort effort) {
        Ratio ofBase = sum(base);
        Range portion = portionRange(base, ofBase);
        if (portion.low().compareTo(portion.high()) > 0) {
            return Optional.empty();
        }
        Ratio division = bench.balance().readability().canonical();
        Ratio mostDivisions = mostBase.dividedBy(division);
        // A closure may give a line one division less at the next size: only what is more than that too much ends the
        // search.
        Ratio tooMuch = mostDivisions.plus(Ratio.ONE);
        Ratio size = from;
        while (true) {
            Ratio next = skipped(size.dividedBy(division), portion).times(division);
            size = next.compareTo(size) > 0 ? next.dividedBy(step).ceil().times(step) : size;
            Optional<Tried> tried = effort.spends() ? tried(size) : Optional.empty();
            if (tried.isEmpty() || (hasBase && tried.get().divisions().get(0).compareTo(tooMuch) > 0)) {
                return Optional.empty();
            }
            boolean isThere = !hasBase || tried.get().divisions().get(0).compareTo(mostDivisions) <= 0;
            if (isThere && passes(tried.get(), base, ofBase)) {
                return Optional.of(size);
            }
            size = size.plus(step);
        }
    }

    /**
     * Between which ends the share of any base has to lie: all its lines together, if they come with it alone, are it; if one of them is
     * weighed beside it, too, it is more than the others together.
     */
    private Range conceivable() {
        Ratio low = Ratio.ZERO;
        Ratio high = Ratio.ZERO;
        for (Place place : places) {
            if (place.inBase() >= 0) {
                low = low.plus(place.own() < 0 ? place.low() : Ratio.ZERO);
                high = high.plus(place.own() < 0 ? place.high() : Ratio.ONE);
            }
        }
        return new Range(low, high.min(Ratio.ONE));
    }

    /** Between which ends the share of the base has to lie, so that the lines that come with it alone pass. */
    private Range portionRange(List<Ratio> base, Ratio ofBase) {
        Range range = conceivable;
        for (Place place : places) {
            if (hasBase && place.own() < 0) {
                Ratio there = base.get(place.inBase());
                if (there.isZero()) {
                    return new Range(Ratio.ONE, Ratio.ZERO);
                }
                range = new Range(
                        range.low().max(place.low().times(ofBase).dividedBy(there)),
                        range.high().min(place.high().times(ofBase).dividedBy(there)));
            }
        }
        return range;
    }

    /** A size on a grid below which none from one on passes, whatever the base. */
    Ratio firstConceivable(Ratio from, Ratio step) {
        Ratio division = bench.balance().readability().canonical();
        Ratio size = from;
        // A few jumps are all that is needed of a bound; a tolerance of 0 could go on for ever.
        for (int i = 0; i < MOST_JUMPS; i++) {
            Ratio next = skipped(size.dividedBy(division), conceivable).times(division);
            if (next.compareTo(size) <= 0) {
                break;
            }
            size = next.dividedBy(step).ceil().times(step);
        }
        return size;
    }

    /**
     * A size, in divisions, below which none from this one on passes. A line that is weighed by itself alone passes only if a whole n has
     * {@code w(1−τ)·T ≤ n ≤ w(1+τ)·T}, and T, what all displays read, is no further from the size than half a division a line. So does the
     * portion of base between its own ends.
     */
    private Ratio skipped(Ratio divisions, Range portion) {
        Ratio slack = Ratio.of(weighed.lines().size(), 2);
        Ratio at = divisions;
        for (Place place : places) {
            if (place.inBase() < 0) {
                at = jump(at, place.low(), place.high(), slack);
            }
        }
        return hasBase ? jump(at, portion.low(), portion.high(), slack) : at;
    }

    private static Ratio jump(Ratio at, Ratio low, Ratio high, Ratio slack) {
        Ratio n = low.times(at.minus(slack)).ceil().max(Ratio.ONE);
        return at.max(n.dividedBy(high).minus(slack));
    }

    /** Whether every share that the readings deliver keeps its tolerance. */
    private boolean passes(Tried tried, List<Ratio> base, Ratio sumOfBase) {
        List<Ratio> own = tried.divisions();
        Ratio ofBase = hasBase ? sumOfBase : Ratio.ONE;
        Ratio total = tried.whole().times(ofBase);
        for (Place place : places) {
            Ratio there = Ratio.ZERO;
            if (place.inBase() >= 0) {
                there = base.get(place.inBase()).times(own.get(0));
            }
            if (place.own() >= 0) {
                there = there.plus(own.get(place.own()).times(ofBase));
            }
            if (there.compareTo(place.low().times(total)) < 0
                    || there.compareTo(place.high().times(total)) > 0) {
                return false;
            }
        }
        return total.signum() > 0;
    }

    static Ratio sum(List<Ratio> divisions) {
        Ratio sum = Ratio.ZERO;
        for (Ratio each : divisions) {
            sum = sum.plus(each);
        }
        return sum;
    }

    /** What is weighed at a size, by material: readings of the lines that are no base. */
    void addUse(WeighingPlan plan, Map<String, Ratio> use) {
        List<PlannedLine> lines = new ArrayList<>(plan.lines());
        for (PlannedLine line : hasBase ? lines.subList(1, lines.size()) : lines) {
            use.merge(line.line().ingredient().normalName(), line.reading().canonical(), Ratio::plus);
        }
    }

    /** What is weighed at a size or more at least, beside the base: no reading is a division or more from its target. */
    void addLeastUse(Ratio size, Map<String, Ratio> use) {
        Ratio division = bench.balance().readability().canonical();
        for (FormulaLine line : weighed.lines()) {
            if (!hasBase || line.index() > 0) {
                Ratio least = line.fraction().times(size).minus(division).max(Ratio.ZERO);
                use.merge(line.ingredient().normalName(), least, Ratio::plus);
            }
        }
    }
}
