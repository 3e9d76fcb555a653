package io.github.formulationmath.series;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.BalanceUnit;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A series of trials, weighed one way: what the displays read for the base, if there is one, and for every trial, what will be in each,
 * and how much is made in all.
 *
 * <p>Example: {@code series.best().orElseThrow().total()}.
 *
 * <p>Immutable and thread-safe.
 */
public final class SeriesPlan implements Explained {

    private static final Symbol BASE = Symbol.of("B", "size-of-base", Kind.MASS);
    private static final Symbol SIZE = Symbol.of("M", "size-of-trial", Kind.MASS);
    private static final Symbol PORTION = Symbol.of("b", "base-in-trial", Kind.MASS);
    private static final Symbol TOTAL = Symbol.of("S", "series-total", Kind.MASS);

    /** How the trials of a series are made. */
    public enum Way {
        /** Every version is weighed by itself. */
        FROM_SCRATCH,
        /** A base is made once, and every version from a portion of it. */
        FROM_BASE,
        /** Some versions are made from a base, the others are weighed by themselves. */
        SPLIT
    }

    private final SeriesSearch.Found found;
    private final WeighingMethod method;
    private final boolean isLeast;
    private final Optional<ExpectedProduct> expectedBase;
    private final List<Trial> trials;

    SeriesPlan(SeriesSearch.Found found, WeighingMethod method, boolean isLeast) {
        this.found = found;
        this.method = method;
        this.isLeast = isLeast;
        this.expectedBase = found.pot().map(pot -> ExpectedProduct.of(pot.plan(), method));
        var base = expectedBase.map(ExpectedProduct::masses);
        this.trials = found.members().stream()
                .map(member -> new Trial(
                        member.portion(),
                        member.plan(),
                        new Delivery(
                                member.portion(),
                                ExpectedProduct.of(member.plan(), method).masses(),
                                base)))
                .toList();
    }

    /**
     * A series as somebody else chose it: at sizes of one's own, or as it was written down. Nothing is searched for.
     *
     * @param versions the versions, of different names
     * @param tolerances how far the share of a line, as delivered, may be off
     * @param method how the additions are weighed
     * @param base how the base is weighed; empty if every version is weighed by itself
     * @param trials how each version is weighed, in the order of the versions: a plan of the version, or of what {@link Trial#plan()} of a plan
     *     with the same base weighs
     * @return the plan, which does not claim to be the least
     * @throws IllegalArgumentException if the plans are not of these versions and one base of theirs, or the base is not enough
     */
    public static SeriesPlan of(
            List<Formula> versions,
            Tolerances tolerances,
            WeighingMethod method,
            Optional<WeighingPlan> base,
            List<WeighingPlan> trials) {
        TrialSeries.requireVersions(Objects.requireNonNull(versions, "versions"));
        Objects.requireNonNull(method, "method");
        Tolerances checked = Objects.requireNonNull(tolerances, "tolerances").checkedFor(versions);
        return new SeriesPlan(
                SeriesSearch.Found.of(
                        List.copyOf(versions),
                        checked,
                        Objects.requireNonNull(base, "base"),
                        List.copyOf(Objects.requireNonNull(trials, "trials"))),
                method,
                false);
    }

    /**
     * How the trials are made.
     *
     * @return from scratch, from a base, or some from a base
     */
    public Way way() {
        boolean allFromBase =
                found.members().stream().allMatch(member -> member.portion().hasBase());
        if (found.pot().isEmpty()) {
            return Way.FROM_SCRATCH;
        }
        return allFromBase ? Way.FROM_BASE : Way.SPLIT;
    }

    /**
     * How the base is weighed.
     *
     * @return its plan; empty if there is none
     */
    public Optional<WeighingPlan> base() {
        return found.pot().map(SeriesSearch.Pot::plan);
    }

    /**
     * What the base will be made of.
     *
     * @return the shares of its lines with their bounds; empty if there is no base
     */
    public Optional<ExpectedProduct> expectedBase() {
        return expectedBase;
    }

    /**
     * The trials.
     *
     * @return an unmodifiable list in the order of the versions
     */
    public List<Trial> trials() {
        return trials;
    }

    /**
     * The trial of a version.
     *
     * @param versionName the name of the version, in any spelling that {@link SubstanceName} forgives
     * @return its trial
     * @throws IllegalArgumentException if no version is called so
     */
    public Trial trial(String versionName) {
        String wanted = SubstanceName.normalise(Objects.requireNonNull(versionName, "versionName"));
        return trials.stream()
                .filter(trial -> SubstanceName.normalise(trial.formula().name()).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("versionName is \"" + Excerpt.of(versionName)
                        + "\", which is none of the versions: they are "
                        + Excerpt.ofAll(trials.stream()
                                .map(trial -> trial.formula().name())
                                .toList())));
    }

    /**
     * All versions against a table of limits, each as it will be delivered: its shares lie where the errors of base and portion leave them.
     * One version by itself is checked by its {@link Trial}, as a plan is.
     *
     * @param checker limits, product and decision rule; {@link io.github.formulationmath.limit.DecisionRule#worstCase()} asks that no error of
     *     weighing can pass a limit
     * @return an unmodifiable list of one report for each trial, in their order
     */
    public List<LimitReport> check(LimitChecker checker) {
        Objects.requireNonNull(checker, "checker");
        return trials.stream().map(checker::check).toList();
    }

    /**
     * How far the share of a line, as delivered, may be off.
     *
     * @return the tolerances
     */
    public Tolerances tolerances() {
        return found.members().get(0).portion().tolerances();
    }

    /**
     * How the additions are weighed.
     *
     * @return the method
     */
    public WeighingMethod method() {
        return method;
    }

    /**
     * How much is made in all: the base, and what is weighed beside it and by itself.
     *
     * @return the exact total of the sizes in the unit of the display of the trials, with its working
     */
    public Amount<Mass> total() {
        return Amount.grams(found.total())
                .inUnitOf(unit())
                .withWorking(plan -> Phrase.of("question.series-total"), this, SeriesPlan::total);
    }

    private Amount<Mass> unit() {
        return trials.get(0).plan().bench().balance().readability();
    }

    private <V> V total(Reckoning<V> r) {
        List<V> parts = new ArrayList<>();
        found.pot().ifPresent(pot -> parts.add(r.given(BASE, pot.plan().batch().mass(), Source.user())));
        for (SeriesSearch.Member member : found.members()) {
            Subject subject = Subject.of(
                    Integer.toString(found.members().indexOf(member) + 1),
                    member.portion().version().name());
            Amount<Mass> whole = Amount.grams(member.size())
                    .inUnitOf(member.plan().bench().balance().readability());
            V size = r.given(SIZE, subject, whole, Source.user());
            if (member.portion().hasBase()) {
                Ratio portion = member.plan().lines().get(0).target().mass().canonical();
                size = r.difference(size, r.given(PORTION, subject, portion, Source.user()));
            }
            parts.add(size);
        }
        return r.named(TOTAL, r.sum(parts));
    }

    /** As {@link #total()}. */
    @Override
    public Origin origin() {
        return total().origin();
    }

    /**
     * What is left of the base after all portions, if every display reads what is planned.
     *
     * @return the mass, with what was said to stay in the vessel; empty if there is no base
     */
    public Optional<Amount<Mass>> leftOfBase() {
        return base().map(plan -> {
            Amount<Mass> left = plan.total();
            for (Trial trial : trials) {
                Optional<PlannedLine> portion = trial.portionOfBase();
                left = portion.isPresent() ? left.minus(portion.get().reading()) : left;
            }
            return left;
        });
    }

    /**
     * What is taken of every material, as the displays read.
     *
     * @return an unmodifiable map by the name of the ingredient, in the order in which the versions name them first
     */
    public Map<String, Amount<Mass>> needs() {
        Map<String, Amount<Mass>> masses = new LinkedHashMap<>();
        Map<String, String> names = new LinkedHashMap<>();
        Amount<Mass> nothing = total().times(0);
        trials.forEach(trial -> trial.formula().lines().forEach(line -> {
            names.putIfAbsent(line.ingredient().normalName(), line.name());
            masses.putIfAbsent(line.ingredient().normalName(), nothing);
        }));
        base().ifPresent(plan -> add(plan.lines(), masses));
        for (Trial trial : trials) {
            List<PlannedLine> lines = trial.plan().lines();
            boolean hasBase = trial.portionOfBase().isPresent();
            add(hasBase ? lines.subList(1, lines.size()) : lines, masses);
        }
        Map<String, Amount<Mass>> all = new LinkedHashMap<>();
        masses.forEach((key, mass) -> all.put(names.getOrDefault(key, key), mass));
        return Collections.unmodifiableMap(all);
    }

    private static void add(List<PlannedLine> lines, Map<String, Amount<Mass>> masses) {
        for (PlannedLine line : lines) {
            masses.merge(line.line().ingredient().normalName(), line.reading(), Amount::plus);
        }
    }

    /**
     * Whether the plan was found by a search that went to its end. If it was broken off, or the plan was chosen or written down by somebody,
     * it does what it says, and one of a smaller total may be there.
     *
     * @return true if there is none with a smaller total this way
     */
    public boolean isLeast() {
        return isLeast;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SeriesPlan that
                && method == that.method
                && tolerances().equals(that.tolerances())
                && base().equals(that.base())
                && plans().equals(that.plans())
                && versions().equals(that.versions());
    }

    private List<WeighingPlan> plans() {
        return trials.stream().map(Trial::plan).toList();
    }

    private List<Formula> versions() {
        return trials.stream().map(Trial::formula).toList();
    }

    @Override
    public int hashCode() {
        return Objects.hash(method, base(), plans());
    }

    /** So much that it is enough, in few digits. */
    static String told(Amount<Mass> least) {
        return BalanceUnit.least(least.withoutWorking(), more -> true);
    }

    /** The way, the total, and what is made. */
    @Override
    public String toString() {
        String made = trials.stream().map(Trial::toString).collect(Collectors.joining(", "));
        String base = base().map(plan -> "base " + plan.batch().mass().toldExactly() + ", ")
                .orElse("");
        return Phrase.of("way." + way().name()) + ", " + told(total()) + " in all: " + base + made;
    }
}
