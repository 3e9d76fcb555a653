package io.github.formulationmath.choice;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The search for sets by clauses, which it keeps from one question to the next. Not thread-safe. */
final class SetSearch {

    private static final int MOST_CLAUSES = 1_000;

    private final EquipmentList list;
    private final List<Fitting> fits;
    private final Set<Clause> clauses = new LinkedHashSet<>();

    /** Demand number i needs one of a set; or, with i less than 0, all with less than a total in grams do. */
    private record Clause(int demand, @Nullable Ratio below, long oneOf) {}

    /** The best sets, all of one price, of which the first is told; what was asked of them; and whether the search ended. */
    record Best(List<Long> sets, Goal goal, boolean isCertain) {}

    /** What is asked of a set: that it serves some demands, if need be with less than a total. */
    record Goal(List<Integer> demands, @Nullable Ratio below) {}

    /** A goal with what it takes to ask for it. */
    final class Asked {

        private final Goal goal;

        Asked(Goal goal) {
            this.goal = goal;
        }

        boolean servesAll(long set) {
            return goal.demands().stream().allMatch(i -> fits.get(i).serves(set));
        }

        /** The demand that is failed, −1 if it is the total, nothing if the set does all. */
        private List<Integer> failed(long set) {
            List<Integer> failed = new ArrayList<>(goal.demands().stream()
                    .filter(i -> !fits.get(i).serves(set))
                    .toList());
            if (failed.isEmpty() && !isBelow(set)) {
                failed.add(-1);
            }
            return failed;
        }

        private boolean fails(int demand, long set) {
            return demand >= 0 ? !fits.get(demand).serves(set) : !servesAll(set) || !isBelow(set);
        }

        private boolean isBelow(long set) {
            Ratio below = goal.below();
            return below == null || total(set, goal.demands()).compareTo(below) < 0;
        }

        /** The clauses that hold of every set that does it: a set that stays below a total stays below a larger one. */
        private List<Clause> own() {
            return clauses.stream()
                    .filter(clause -> clause.demand >= 0
                            ? goal.demands().contains(clause.demand)
                            : goal.below() != null && clause.below != null && clause.below.compareTo(goal.below()) >= 0)
                    .toList();
        }
    }

    SetSearch(EquipmentList list, List<Demand> demands) {
        this.list = list;
        this.fits = demands.stream().map(demand -> new Fitting(demand, list)).toList();
    }

    List<Fitting> fits() {
        return fits;
    }

    /** Whether even everything fails a demand. */
    boolean serves(Fitting fit) {
        return fit.serves(list.everything());
    }

    Asked all() {
        return new Asked(new Goal(everyDemand(), null));
    }

    private List<Integer> everyDemand() {
        return IntStream.range(0, fits.size()).boxed().toList();
    }

    private Ratio total(long set, List<Integer> demands) {
        return demands.stream()
                .map(i -> fits.get(i).on(set).orElseThrow().grams())
                .reduce(Ratio.ZERO, Ratio::plus);
    }

    /** The cheapest sets for what everything together does. */
    Best cheapest(Asked asked, @Nullable Ratio most) {
        List<Long> serving = new ArrayList<>();
        boolean isCertain = true;
        while (true) {
            List<Long> open = asked.own().stream().map(Clause::oneOf).distinct().toList();
            CheapestHit.Answer hit = CheapestHit.of(list.prices(), open, most);
            isCertain &= hit.isCertain() && clauses.size() <= MOST_CLAUSES;
            boolean allServe = true;
            serving.clear();
            for (long bought : hit.sets()) {
                long set = bought | list.owned();
                List<Integer> failed = asked.failed(set);
                failed.forEach(demand -> learn(asked, demand, set));
                allServe &= failed.isEmpty();
                if (failed.isEmpty()) {
                    serving.add(set);
                } else if (isCertain) {
                    // One lesson may rule out many of the sets that are left: ask again for the cheapest.
                    break;
                }
            }
            if (allServe) {
                return new Best(List.copyOf(serving), asked.goal, isCertain);
            }
            if (!isCertain) {
                return serving.isEmpty() ? fallback(asked, most) : new Best(List.copyOf(serving), asked.goal, false);
            }
        }
    }

    /** What serves, without a claim that it is the cheapest: everything, less what can be spared, the dearest first. */
    private Best fallback(Asked asked, @Nullable Ratio most) {
        long set = list.everything();
        for (int item : IntStream.range(0, list.size())
                .boxed()
                .sorted((a, b) -> list.prices().get(b).compareTo(list.prices().get(a)))
                .toList()) {
            long less = set & ~(1L << item) | list.owned();
            set = asked.failed(less).isEmpty() ? less : set;
        }
        boolean isCheapEnough = most == null || price(set).compareTo(most) <= 0;
        return new Best(isCheapEnough ? List.of(set) : List.of(), asked.goal, false);
    }

    private Ratio price(long set) {
        return list.of(set).stream().map(item -> item.price().number()).reduce(Ratio.ZERO, Ratio::plus);
    }

    /** Adds to a set that fails whatever leaves it failing, the cheapest first; what stays out is a clause. */
    private void learn(Asked asked, int demand, long failing) {
        long set = failing;
        for (int item : IntStream.range(0, list.size())
                .boxed()
                .sorted((a, b) -> list.prices().get(a).compareTo(list.prices().get(b)))
                .toList()) {
            long more = set | 1L << item;
            set = more != set && asked.fails(demand, more) ? more : set;
        }
        clauses.add(new Clause(demand, demand < 0 ? asked.goal.below() : null, list.everything() & ~set));
    }

    /** Of the sets of a budget: the most demands, then the lowest price, then the smallest total. */
    Best within(Ratio budget) {
        List<Integer> able =
                everyDemand().stream().filter(i -> serves(fits.get(i))).toList();
        Budget ask = new Budget(budget, able);
        for (int size = able.size(); size > 0; size--) {
            ask.choose(new ArrayList<>(), 0, size);
            if (ask.best != null) {
                return ask.answer();
            }
        }
        return new Best(List.of(list.owned()), new Goal(List.of(), null), ask.isCertain);
    }

    /** Goes through the demands that might be served together, as long as clauses leave them within the budget. */
    private final class Budget {

        private static final int MOST_ASKED = 20_000;

        private final Ratio budget;
        private final List<Integer> able;
        private @Nullable Best best;
        private @Nullable Ratio price;
        private @Nullable Ratio total;
        private boolean isCertain = true;
        private int asked;

        Budget(Ratio budget, List<Integer> able) {
            this.budget = budget;
            this.able = able;
        }

        void choose(List<Integer> chosen, int next, int size) {
            if (asked >= MOST_ASKED) {
                isCertain = false;
                return;
            }
            if (chosen.size() == size) {
                ask(new Goal(List.copyOf(chosen), null));
                return;
            }
            for (int i = next; i <= able.size() - (size - chosen.size()); i++) {
                chosen.add(able.get(i));
                if (mayBeWithin(chosen)) {
                    choose(chosen, i + 1, size);
                }
                chosen.remove(chosen.size() - 1);
            }
        }

        private boolean mayBeWithin(List<Integer> demands) {
            asked++;
            List<Long> known = new Asked(new Goal(List.copyOf(demands), null))
                    .own().stream().map(Clause::oneOf).toList();
            CheapestHit.Answer hit = CheapestHit.of(list.prices(), known, budget);
            return !hit.sets().isEmpty() || !hit.isCertain();
        }

        private void ask(Goal goal) {
            Best found = cheapest(new Asked(goal), price == null ? budget : price);
            isCertain = isCertain && found.isCertain();
            for (long set : found.sets()) {
                Ratio cost = price(set);
                Ratio sizes = total(set, goal.demands());
                if (price == null
                        || total == null
                        || cost.compareTo(price) < 0
                        || (cost.equals(price) && sizes.compareTo(total) < 0)) {
                    price = cost;
                    total = sizes;
                    best = new Best(first(set, found.sets()), goal, true);
                }
            }
        }

        private Best answer() {
            if (best == null) {
                throw new IllegalStateException("nothing was found");
            }
            return new Best(best.sets(), best.goal(), isCertain);
        }
    }

    private static List<Long> first(long set, List<Long> sets) {
        List<Long> all = new ArrayList<>(List.of(set));
        sets.stream().filter(other -> other != set).forEach(all::add);
        return List.copyOf(all);
    }

    /** Rising prices, falling totals. */
    List<Best> front() {
        if (!all().servesAll(list.everything())) {
            return List.of();
        }
        Map<Ratio, Best> byPrice = new LinkedHashMap<>();
        Ratio below = null;
        while (true) {
            Asked asked = new Asked(new Goal(everyDemand(), below));
            if (!asked.failed(list.everything()).isEmpty()) {
                return List.copyOf(byPrice.values());
            }
            Best best = cheapest(asked, null);
            long smallest = best.sets().stream()
                    .min((a, b) -> total(a, everyDemand()).compareTo(total(b, everyDemand())))
                    .orElseThrow();
            below = total(smallest, everyDemand());
            List<Long> equal = best.sets().stream()
                    .filter(set -> total(set, everyDemand()).equals(total(smallest, everyDemand())))
                    .toList();
            byPrice.put(price(smallest), new Best(first(smallest, equal), best.goal(), best.isCertain()));
        }
    }

    /** The clauses behind an answer, for a reader. */
    List<EquipmentClause> told(Best best) {
        return new Asked(best.goal())
                .own().stream()
                        .map(clause -> new EquipmentClause(
                                clause.demand < 0
                                        ? Optional.empty()
                                        : Optional.of(fits.get(clause.demand).demand()),
                                Optional.ofNullable(clause.below)
                                        .map(grams -> Amount.grams(grams)
                                                .inUnitOf(fits.get(0)
                                                        .demand()
                                                        .sizes()
                                                        .least())),
                                list.of(clause.oneOf)))
                        .toList();
    }
}
