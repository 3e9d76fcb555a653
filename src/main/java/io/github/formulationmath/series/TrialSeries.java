package io.github.formulationmath.series;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;

/**
 * Versions of one idea that are to be tried side by side, and how little must be made for that: each by itself, all from portions of a
 * base that is made once, or some of them so.
 *
 * <p>A share of a trial is kept if what the displays deliver is no further from it than its tolerance; what the errors of weighing may add
 * to that, {@link Trial.Share#bounds()} tells. A base can hold lines whose shares keep their proportions in all versions made from it, and of the
 * q.s. line as much as each of them has; of several bases the one with the least total is taken. It is made so large that, whatever the
 * bounded errors do, it is enough for all portions and what stays in its vessel. A base is stirred until it is even, and nothing evaporates; whether
 * its lines can be made up by themselves at all is no arithmetic, and {@link #withoutInBase} keeps out what cannot.
 *
 * <p>Example: {@code TrialSeries.of(List.of(firstFormula, secondFormula), Bench.of(pocket), "20 g", "5 %").best()}.
 *
 * <p>Immutable and thread-safe.
 */
public final class TrialSeries {

    /** How many versions a series may have. */
    public static final int MOST_VERSIONS = 12;

    private final Wanted wanted;

    private TrialSeries(Wanted wanted) {
        this.wanted = wanted;
    }

    /**
     * A series.
     *
     * @param versions the versions, 2 to {@value #MOST_VERSIONS} formulas of different names
     * @param bench the balance, and the vessel in which each trial is made; rounded line by line or closed by largest remainders
     * @param least how much of each version is wanted at least, above 0
     * @param tolerances how far the share of a line, as delivered, may be off
     * @return the series
     * @throws IllegalArgumentException if there are too few or too many versions, two of one name, a tolerance is of something that is
     *     in no version, or the bench closes in another way
     */
    public static TrialSeries of(List<Formula> versions, Bench bench, Amount<Mass> least, Tolerances tolerances) {
        List<Formula> all = List.copyOf(Objects.requireNonNull(versions, "versions"));
        requireClosure(Objects.requireNonNull(bench, "bench"));
        requireVersions(all);
        return new TrialSeries(new Wanted(
                all,
                Amount.requirePositive("least", Objects.requireNonNull(least, "least")),
                Objects.requireNonNull(tolerances, "tolerances").checkedFor(all),
                bench,
                bench,
                WeighingMethod.TARE_EACH,
                Amount.grams(Ratio.ZERO),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                Set.of()));
    }

    static void requireVersions(List<Formula> all) {
        if (all.size() < 2 || all.size() > MOST_VERSIONS) {
            throw new IllegalArgumentException("versions are " + all.size() + ": a series has 2 to " + MOST_VERSIONS
                    + " of them; a single one is a batch, and more are two series");
        }
        Set<String> names = new HashSet<>();
        for (Formula version : all) {
            if (!names.add(SubstanceName.normalise(version.name()))) {
                throw new IllegalArgumentException("versions has two called \"" + Excerpt.of(version.name())
                        + "\": give each its own name, so that they can be told apart");
            }
        }
    }

    /**
     * A series, of which each version is wanted in the same least amount and within one tolerance.
     *
     * @param versions the versions, 2 to {@value #MOST_VERSIONS} formulas of different names
     * @param bench the balance, and the vessel in which each trial is made
     * @param least how much of each version is wanted at least, for example {@code "20 g"}
     * @param tolerance how far a share, as delivered, may be off, as a share of it, for example {@code "5 %"}
     * @return the series
     * @throws IllegalArgumentException as {@link #of(List, Bench, Amount, Tolerances)}, or if a text is no mass or no share
     */
    public static TrialSeries of(List<Formula> versions, Bench bench, String least, String tolerance) {
        return of(versions, bench, Amount.mass(least), Tolerances.of(tolerance));
    }

    private static void requireClosure(Bench bench) {
        if (bench.closure() != Closure.INDEPENDENT && bench.closure() != Closure.CLOSED) {
            throw new IllegalArgumentException("bench closes by " + bench.closure()
                    + ", which looks at lines that a base or a portion may not have: let it close by "
                    + Closure.INDEPENDENT + " or " + Closure.CLOSED);
        }
    }

    /**
     * With the base weighed on another bench, a larger balance with a larger pot.
     *
     * @param baseBench where the base is weighed
     * @return the series
     * @throws IllegalArgumentException if the bench closes in another way than line by line or by largest remainders
     */
    public TrialSeries withBaseOn(Bench baseBench) {
        requireClosure(Objects.requireNonNull(baseBench, "baseBench"));
        return new TrialSeries(wanted.on(baseBench));
    }

    /**
     * Weighed another way than tared before each line.
     *
     * @param method tared before each line, or tared once
     * @return the series
     * @throws IllegalArgumentException if the method uses a boat, in which some of a portion would stay
     */
    public TrialSeries by(WeighingMethod method) {
        if (Objects.requireNonNull(method, "method").usesBoat()) {
            throw new IllegalArgumentException("method is " + method
                    + ": a portion of base is weighed into the vessel of its trial; take TARE_EACH or CUMULATIVE");
        }
        return new TrialSeries(wanted.by(method));
    }

    /**
     * With something of the base that stays in its vessel and cannot be portioned.
     *
     * @param left how much, at least 0
     * @return the series
     * @throws IllegalArgumentException if it is negative
     */
    public TrialSeries withLeftInVessel(Amount<Mass> left) {
        return new TrialSeries(wanted.leaving(Amount.requireNotNegative("left", left)));
    }

    /**
     * With something of the base that stays in its vessel, as text.
     *
     * @param left how much, for example {@code "2 g"}
     * @return the series
     * @throws IllegalArgumentException if the text is no mass, or it is negative
     */
    public TrialSeries withLeftInVessel(String left) {
        return withLeftInVessel(Amount.mass(left));
    }

    /**
     * With sizes of trials that are whole multiples of a step; else of the step of the display. The base comes in steps of its display.
     *
     * @param step the step, above 0, for example {@code "5 g"}
     * @return the series
     * @throws IllegalArgumentException if the text is no mass or not above 0
     */
    public TrialSeries inStepsOf(String step) {
        return new TrialSeries(wanted.in(Amount.requirePositive("step", Amount.mass(step))));
    }

    /**
     * With no more than so much in all.
     *
     * @param most the most that is to be made, above 0, for example {@code "250 g"}
     * @return the series
     * @throws IllegalArgumentException if the text is no mass or not above 0
     */
    public TrialSeries upTo(String most) {
        return new TrialSeries(wanted.upTo(Optional.of(Amount.requirePositive("most", Amount.mass(most)))));
    }

    /**
     * With no more than so much of a material, as the displays read, in all trials and the base together.
     *
     * @param ingredientName the material
     * @param most how much there is, at least 0
     * @return the series
     * @throws IllegalArgumentException if no version has the material, or it is negative
     */
    public TrialSeries withStock(String ingredientName, Amount<Mass> most) {
        String name = requireNamed(ingredientName);
        Amount.requireNotNegative("most", Objects.requireNonNull(most, "most"));
        Map<String, Amount<Mass>> stock = new HashMap<>(wanted.stock());
        stock.put(name, most);
        return new TrialSeries(wanted.with(stock));
    }

    /**
     * With no more than so much of a material, as text.
     *
     * @param ingredientName the material
     * @param most how much there is, for example {@code "40 g"}
     * @return the series
     * @throws IllegalArgumentException as {@link #withStock(String, Amount)}, or if the text is no mass
     */
    public TrialSeries withStock(String ingredientName, String most) {
        return withStock(ingredientName, Amount.mass(most));
    }

    /**
     * With a material that no base may have: what must not be heated, or is added last.
     *
     * @param ingredientName the material
     * @return the series
     * @throws IllegalArgumentException if no version has the material
     */
    public TrialSeries withoutInBase(String ingredientName) {
        Set<String> keptOut = new HashSet<>(wanted.keptOut());
        keptOut.add(requireNamed(ingredientName));
        return new TrialSeries(wanted.without(Set.copyOf(keptOut)));
    }

    private String requireNamed(String ingredientName) {
        String name = SubstanceName.normalise(Objects.requireNonNull(ingredientName, "ingredientName"));
        if (wanted.versions().stream()
                .noneMatch(version -> version.lines().stream()
                        .anyMatch(line -> line.ingredient().normalName().equals(name)))) {
            throw new IllegalArgumentException("ingredientName is " + Excerpt.of(ingredientName)
                    + ", which no version has: name it as the formulas do");
        }
        return name;
    }

    /**
     * The versions.
     *
     * @return an unmodifiable list, as they were given
     */
    public List<Formula> versions() {
        return wanted.versions();
    }

    /**
     * The way with the least total; of equal ones from scratch before a base, and a base for all before one for some.
     *
     * @return the plan; empty if there is none, {@link #obstacles()} says why. It {@link SeriesPlan#isLeast() is least} if no way at all
     *     has a smaller total
     */
    public Optional<SeriesPlan> best() {
        SeriesSearch search = new SeriesSearch(wanted);
        return found(search).stream()
                .map(Way::found)
                .reduce((a, b) -> b.total().compareTo(a.total()) < 0 ? b : a)
                .map(least -> new SeriesPlan(least, wanted.method(), !search.isCutShort()));
    }

    /**
     * Every way there is: from scratch, from one base, and split between the two if that is less than either.
     *
     * @return an unmodifiable list of up to three plans, each the least of its way; empty if there is none
     */
    public List<SeriesPlan> ways() {
        return found(new SeriesSearch(wanted)).stream()
                .map(way -> new SeriesPlan(way.found(), wanted.method(), way.isLeast()))
                .toList();
    }

    /** What was found one way, and whether that was searched to the end. */
    private record Way(SeriesSearch.Found found, boolean isLeast) {}

    private static List<Way> found(SeriesSearch search) {
        List<Way> all = new ArrayList<>();
        search.fromScratch().ifPresent(found -> all.add(new Way(found, !search.isCutShort())));
        search.fromBase().ifPresent(found -> all.add(new Way(found, !search.isCutShort())));
        Optional<Ratio> least = all.stream().map(way -> way.found().total()).reduce(Ratio::min);
        search.split(least.orElse(null)).ifPresent(found -> all.add(new Way(found, !search.isCutShort())));
        return List.copyOf(all);
    }

    /**
     * Why the series cannot be made as asked.
     *
     * @return an unmodifiable list; empty if there is a plan
     */
    public List<Phrase> obstacles() {
        if (best().isPresent()) {
            return List.of();
        }
        Optional<SeriesPlan> free =
                new TrialSeries(wanted.upTo(Optional.empty()).with(Map.of())).best();
        if (free.isEmpty()) {
            return impossible();
        }
        List<Phrase> all = new ArrayList<>();
        free.get()
                .needs()
                .forEach((name, need) -> Optional.ofNullable(wanted.stock().get(SubstanceName.normalise(name)))
                        .filter(there -> there.compareTo(need) < 0)
                        .ifPresent(there -> all.add(
                                Phrase.of("obstacle.stock", name, SeriesPlan.told(need), there.toldExactly()))));
        wanted.most()
                .filter(most -> free.get().total().compareTo(most) > 0)
                .ifPresent(most -> all.add(
                        Phrase.of("obstacle.total", SeriesPlan.told(free.get().total()), most.toldExactly())));
        return all.isEmpty() ? List.of(Phrase.of("obstacle.together")) : List.copyOf(all);
    }

    private List<Phrase> impossible() {
        SeriesSearch search = new SeriesSearch(wanted);
        String step = wanted.bench().balance().readability().toString();
        return search.impossibleAlone().stream()
                .map(version -> Phrase.of("obstacle.no-size", version.name(), step, smallest(version)))
                .toList();
    }

    private static String smallest(Formula version) {
        return version.lines().stream()
                .min((a, b) -> a.fraction().compareTo(b.fraction()))
                .map(FormulaLine::name)
                .orElse("");
    }

    @Override
    public String toString() {
        return Stream.of(
                        wanted.versions().stream().map(Formula::name).toList().toString(),
                        "each of at least " + wanted.least())
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
    }
}
