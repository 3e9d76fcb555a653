package io.github.formulationmath.series;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The least total of each way. From scratch every version has its least passing size. With a base the least size of each version depends on
 * the composition that the displays give the base, so that bases are tried from the least conceivable upwards, each with the least
 * sizes that pass with it, until not even the wanted sizes could make the total less. Sets of versions are tried in the order of the
 * least total that they could have.
 */
final class SeriesSearch {

    private final Wanted wanted;
    private final List<Portion> alone;
    private final List<Optional<Ratio>> sizesAlone;
    private final Effort effort = new Effort();

    /** A version at a size, and how it is weighed. */
    record Member(Portion portion, Ratio size, WeighingPlan plan) {}

    /** A base as it is weighed, in the end. */
    record Pot(Base base, WeighingPlan plan) {}

    /** A series: its base, if it has one, its versions in their order, and its total in grams. */
    record Found(Optional<Pot> pot, List<Member> members, Ratio total) {

        /** What was weighed, or is going to be, after plans that somebody has: which base it is, they tell. */
        static Found of(
                List<Formula> versions, Tolerances tolerances, Optional<WeighingPlan> base, List<WeighingPlan> plans) {
            if (plans.size() != versions.size()) {
                throw new IllegalArgumentException("trials are " + plans.size() + " plans, and there are "
                        + versions.size() + " versions: give one plan for each");
            }
            List<Integer> some = IntStream.range(0, plans.size())
                    .filter(i -> !plans.get(i).formula().equals(versions.get(i)))
                    .boxed()
                    .toList();
            Optional<Pot> pot = base.map(plan -> new Pot(base(versions, some, plan, plans), plan));
            if (pot.isEmpty() && !some.isEmpty()) {
                WeighingPlan first = plans.get(some.get(0));
                throw new IllegalArgumentException("trials has a plan of " + Excerpt.of(first.formula()) + " for "
                        + Excerpt.of(versions.get(some.get(0)))
                        + ", and no base that it could be a portion of: plan the version itself, or give the base");
            }
            List<Member> members = IntStream.range(0, plans.size())
                    .mapToObj(i -> member(versions.get(i), some.indexOf(i), plans.get(i), pot, tolerances))
                    .toList();
            requireEnough(pot, members);
            Ratio total =
                    pot.map(each -> each.plan().batch().mass().canonical()).orElse(Ratio.ZERO);
            for (Member member : members) {
                Ratio ofBase = member.portion().hasBase()
                        ? member.plan().lines().get(0).target().mass().canonical()
                        : Ratio.ZERO;
                total = total.plus(member.size()).minus(ofBase);
            }
            return new Found(pot, members, total);
        }

        private static Base base(
                List<Formula> versions, List<Integer> some, WeighingPlan plan, List<WeighingPlan> plans) {
            List<Base> all = some.isEmpty()
                    ? List.of()
                    : Base.allOf(some.stream().map(versions::get).toList(), Set.of());
            return all.stream()
                    .filter(base -> base.formula().equals(plan.formula())
                            && IntStream.range(0, some.size())
                                    .allMatch(i -> base.portion(i)
                                            .equals(plans.get(some.get(i)).formula())))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("base is " + Excerpt.of(plan.formula())
                            + ", which is no base that the trials take a portion of: their plans have to be of the versions, or of"
                            + " portions of this base as Trial.plan() of a series has them"));
        }

        private static Member member(
                Formula version, int number, WeighingPlan plan, Optional<Pot> pot, Tolerances tolerances) {
            Portion portion = number < 0 || pot.isEmpty()
                    ? Portion.byItself(version, plan.bench(), tolerances)
                    : Portion.of(pot.get().base(), number, pot.get().plan().formula(), plan.bench(), tolerances);
            return new Member(portion, plan.batch().mass().canonical(), plan);
        }

        private static void requireEnough(Optional<Pot> pot, List<Member> members) {
            Ratio taken = members.stream()
                    .filter(member -> member.portion().hasBase())
                    .map(member -> Portion.baseIn(member.plan()))
                    .reduce(Ratio.ZERO, Ratio::plus);
            pot.map(each -> each.plan().total())
                    .filter(there -> there.canonical().compareTo(taken) < 0)
                    .ifPresent(there -> {
                        throw new IllegalArgumentException("base is " + Excerpt.of(there) + ", and the trials take "
                                + Excerpt.of(Amount.grams(taken)) + " of it: make more base, or smaller trials");
                    });
        }
    }

    SeriesSearch(Wanted wanted) {
        this.wanted = wanted;
        this.alone = wanted.versions().stream()
                .map(version -> Portion.byItself(version, wanted.bench(), wanted.tolerances()))
                .toList();
        this.sizesAlone = alone.stream()
                .map(portion -> portion.least(wanted.first(), wanted.grid(), List.of(), Ratio.ZERO, effort))
                .toList();
    }

    /** Whether the search was broken off somewhere, so that less may be possible. */
    boolean isCutShort() {
        return effort.isSpent();
    }

    /** The versions of which no size passes by itself. */
    List<Formula> impossibleAlone() {
        return IntStream.range(0, alone.size())
                .filter(i -> sizesAlone.get(i).isEmpty())
                .mapToObj(wanted.versions()::get)
                .toList();
    }

    /** Each version by itself. */
    Optional<Found> fromScratch() {
        if (!impossibleAlone().isEmpty()) {
            return Optional.empty();
        }
        List<Member> members =
                IntStream.range(0, alone.size()).mapToObj(this::memberAlone).toList();
        Map<String, Ratio> use = new HashMap<>();
        members.forEach(member -> member.portion().addUse(member.plan(), use));
        Ratio total = members.stream().map(Member::size).reduce(Ratio.ZERO, Ratio::plus);
        return isWithinMost(total) && wanted.hasStockFor(use)
                ? Optional.of(new Found(Optional.empty(), members, total))
                : Optional.empty();
    }

    private Member memberAlone(int version) {
        Ratio size = sizesAlone.get(version).orElseThrow();
        return new Member(
                alone.get(version), size, alone.get(version).plan(size).orElseThrow());
    }

    private boolean isWithinMost(Ratio total) {
        return wanted.most()
                .filter(most -> total.compareTo(most.canonical()) > 0)
                .isEmpty();
    }

    /** All versions from one base. */
    Optional<Found> fromBase() {
        return onBase(IntStream.range(0, alone.size()).boxed().toList(), null);
    }

    /** Some versions from a base and others by themselves, if that is less than a total. */
    Optional<Found> split(@Nullable Ratio below) {
        Optional<Found> best = Optional.empty();
        Ratio bound = below;
        for (List<Integer> some : partsInOrder()) {
            if (effort.isSpent() || (bound != null && leastTotal(some).compareTo(bound) >= 0)) {
                break;
            }
            Optional<Found> found = onBase(some, bound);
            best = found.isPresent() ? found : best;
            bound = found.map(Found::total).orElse(bound);
        }
        return best;
    }

    /** Two versions or more, but not all; those that could have the least total first. */
    private List<List<Integer>> partsInOrder() {
        List<List<Integer>> all = new ArrayList<>();
        for (int set = 0; set < 1 << alone.size(); set++) {
            int bits = set;
            List<Integer> some = IntStream.range(0, alone.size())
                    .filter(i -> (bits >> i & 1) != 0)
                    .boxed()
                    .toList();
            boolean othersPass = IntStream.range(0, alone.size())
                    .allMatch(i -> some.contains(i) || sizesAlone.get(i).isPresent());
            if (some.size() > 1 && some.size() < alone.size() && othersPass) {
                all.add(some);
            }
        }
        all.sort(Comparator.comparing(this::leastTotal));
        return all;
    }

    /** What stays in the vessel of the base, the sizes wanted, and the others by themselves. */
    private Ratio leastTotal(List<Integer> some) {
        return wanted.left().canonical().plus(wanted.first().times(some.size())).plus(totalOfOthers(some));
    }

    private Ratio totalOfOthers(List<Integer> some) {
        return IntStream.range(0, alone.size())
                .filter(i -> !some.contains(i))
                .mapToObj(i -> sizesAlone.get(i).orElseThrow())
                .reduce(Ratio.ZERO, Ratio::plus);
    }

    /** The least total with these versions from a base, whichever base, if it is less than another. */
    private Optional<Found> onBase(List<Integer> some, @Nullable Ratio below) {
        Optional<Found> best = Optional.empty();
        Ratio bound = below;
        for (Base base : Base.allOf(some.stream().map(wanted.versions()::get).toList(), wanted.keptOut())) {
            Optional<Found> found = new BaseSearch(base, some).least(bound);
            best = found.isPresent() ? found : best;
            bound = found.map(Found::total).orElse(bound);
        }
        return best;
    }

    /** The search with one base. */
    private final class BaseSearch {

        private final Base base;
        private final List<Integer> some;
        private final Formula formula;
        private final List<Portion> portions;
        private final List<Ratio> first;
        private final Ratio others;
        private final Map<String, Ratio> useOfOthers = new HashMap<>();
        /** With what the portions take beside the base at least. */
        private final Map<String, Ratio> leastUse;

        BaseSearch(Base base, List<Integer> some) {
            this.base = base;
            this.some = some;
            this.formula = base.formula();
            this.portions = IntStream.range(0, some.size())
                    .mapToObj(i -> Portion.of(base, i, formula, wanted.bench(), wanted.tolerances()))
                    .toList();
            this.first = portions.stream()
                    .map(portion -> portion.firstConceivable(wanted.first(), wanted.grid()))
                    .toList();
            this.others = totalOfOthers(some);
            for (int i = 0; i < alone.size(); i++) {
                if (!some.contains(i)) {
                    Member member = memberAlone(i);
                    member.portion().addUse(member.plan(), useOfOthers);
                }
            }
            this.leastUse = new HashMap<>(useOfOthers);
            for (int i = 0; i < portions.size(); i++) {
                portions.get(i).addLeastUse(first.get(i), leastUse);
            }
        }

        Optional<Found> least(@Nullable Ratio below) {
            Ratio division = wanted.baseBench().balance().readability().canonical();
            Ratio beside = beside(first);
            Ratio size = needed(first).dividedBy(division).ceil().times(division);
            Ratio bound = below;
            Found best = null;
            while (isWithinMost(size.plus(beside))
                    && (bound == null || size.plus(beside).compareTo(bound) < 0)) {
                Optional<WeighingPlan> plan =
                        effort.spends() ? Portion.plan(formula, wanted.baseBench(), size) : Optional.empty();
                if (plan.isEmpty() || isShortAnyway(plan.get())) {
                    break;
                }
                Optional<Found> found = with(plan.get(), size);
                if (found.isPresent() && (bound == null || found.get().total().compareTo(bound) < 0)) {
                    best = found.get();
                    bound = best.total();
                }
                size = size.plus(division);
            }
            return Optional.ofNullable(best);
        }

        /** What is weighed beside the base, and the versions by themselves. */
        private Ratio beside(List<Ratio> sizes) {
            Ratio sum = others;
            for (int i = 0; i < sizes.size(); i++) {
                sum = sum.plus(
                        sizes.get(i).times(Ratio.ONE.minus(base.portions().get(i))));
            }
            return sum;
        }

        private Ratio needed(List<Ratio> sizes) {
            Ratio sum = wanted.left().canonical();
            for (int i = 0; i < sizes.size(); i++) {
                sum = sum.plus(sizes.get(i).times(base.portions().get(i)));
            }
            return sum;
        }

        /** Whether base and least portions take more of a material than there is, by more than rounding could shift. */
        private boolean isShortAnyway(WeighingPlan plan) {
            Map<String, Ratio> use = new HashMap<>(leastUse);
            Ratio shift = plan.bench().balance().readability().canonical();
            for (PlannedLine line : plan.lines()) {
                use.merge(
                        line.line().ingredient().normalName(),
                        line.reading().canonical().minus(shift),
                        Ratio::plus);
            }
            return !wanted.hasStockFor(use);
        }

        /** With one base: the least sizes that pass, if there is enough of everything. */
        private Optional<Found> with(WeighingPlan plan, Ratio size) {
            List<Ratio> divisions =
                    plan.lines().stream().map(PlannedLine::divisions).toList();
            Ratio left = plan.total().canonical().minus(wanted.left().canonical());
            List<Member> members = new ArrayList<>();
            for (Portion portion : portions) {
                Ratio most = left.minus(leastAfter(members.size()));
                Optional<Ratio> least =
                        portion.least(first.get(members.size()), wanted.grid(), divisions, most, effort);
                if (least.isEmpty()) {
                    return Optional.empty();
                }
                WeighingPlan own = portion.plan(least.get()).orElseThrow();
                members.add(new Member(portion, least.get(), own));
                left = left.minus(Portion.baseIn(own));
            }
            List<Ratio> sizes = members.stream().map(Member::size).toList();
            if (size.compareTo(needed(sizes)) < 0 || !isSurelyEnough(plan, members) || !hasStock(plan, members)) {
                return Optional.empty();
            }
            Ratio total = size.plus(beside(sizes));
            return isWithinMost(total)
                    ? Optional.of(new Found(Optional.of(new Pot(base, plan)), inOrder(members), total))
                    : Optional.empty();
        }

        /** Whether the least that the base can weigh is enough for the most that the portions can take. */
        private boolean isSurelyEnough(WeighingPlan plan, List<Member> members) {
            Ratio need = wanted.left().canonical();
            for (Member member : members) {
                need = need.plus(ExpectedProduct.of(member.plan(), wanted.method())
                        .masses()
                        .additions()
                        .get(0)
                        .bounds()
                        .greatest()
                        .canonical());
            }
            Map<Integer, Ratio> all = new HashMap<>();
            IntStream.range(0, plan.lines().size()).forEach(i -> all.put(i, Ratio.ONE));
            Ratio there = ExpectedProduct.of(plan, wanted.method())
                    .masses()
                    .sum(all)
                    .least()
                    .canonical();
            return there.compareTo(need) >= 0;
        }

        /** What the versions after one take of the base at least, but for what rounding may take off. */
        private Ratio leastAfter(int version) {
            Ratio sum = Ratio.ZERO;
            for (int i = version + 1; i < first.size(); i++) {
                sum = sum.plus(first.get(i).times(base.portions().get(i)))
                        .minus(wanted.bench().balance().readability().canonical());
            }
            return sum.max(Ratio.ZERO);
        }

        private boolean hasStock(WeighingPlan plan, List<Member> members) {
            Map<String, Ratio> use = new HashMap<>(useOfOthers);
            plan.lines()
                    .forEach(line -> use.merge(
                            line.line().ingredient().normalName(),
                            line.reading().canonical(),
                            Ratio::plus));
            members.forEach(member -> member.portion().addUse(member.plan(), use));
            return wanted.hasStockFor(use);
        }

        /** With the versions by themselves, in the order of all. */
        private List<Member> inOrder(List<Member> members) {
            return IntStream.range(0, alone.size())
                    .mapToObj(i -> some.contains(i) ? members.get(some.indexOf(i)) : memberAlone(i))
                    .toList();
        }
    }
}
