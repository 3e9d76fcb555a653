package io.github.formulationmath.choice;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.weighing.Vessel;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Which balances, pots and boats to buy for a repertoire of formulas, of what the caller lists: the cheapest set that serves all,
 * the best within a budget, or how the smallest batches shrink with the price.
 *
 * <p>A set serves a {@link Demand} if some plan on it passes at some size of the range: the pot stands on one balance to the end, every
 * line is weighed there or, from a boat, on another balance of the set, and meets the criterion there; loads and volumes are those
 * of the exact masses. A boat takes one line after another, and a line is not divided. Where no pot, or no boat, is among the candidates,
 * one is taken that weighs nothing and holds everything, and {@link #notConsidered()} says so.
 *
 * <p><b>How it is found:</b> the cheapest set that meets all clauses known is asked; if it fails a demand, candidates are added one by one
 * while it still fails, and those left out are a new clause, "this demand needs one of these". The first set that serves all is the
 * cheapest there is, because every set that serves meets every clause. More equipment never serves less, which is what the clauses stand on;
 * so does "serves all with smallest batches of less than so much together", by which the front is searched.
 *
 * <p>Example: {@code EquipmentChoice.of(candidates, demands).cheapest()}.
 *
 * <p>Immutable in what it answers; thread-safe.
 */
public final class EquipmentChoice {

    private final EquipmentList list;
    private final List<Demand> demands;
    private final SetSearch search;

    private EquipmentChoice(EquipmentList list, List<Demand> demands) {
        this.list = list;
        this.demands = demands;
        this.search = new SetSearch(list, demands);
    }

    /**
     * A choice among candidates.
     *
     * @param candidates what may be bought and, at a price of 0, what is there already: 1 to 60 things of different names, among
     *     them a balance; prices in one currency
     * @param demands what is to be made, at least one
     * @return the choice
     * @throws IllegalArgumentException if there is no balance, nothing to make, two candidates have one name, prices are in two
     *     currencies, or a criterion looks at lines together
     */
    public static EquipmentChoice of(List<Equipment> candidates, List<Demand> demands) {
        List<Demand> wanted = List.copyOf(Objects.requireNonNull(demands, "demands"));
        if (wanted.isEmpty()) {
            throw new IllegalArgumentException("demands is empty: at least one formula is needed");
        }
        return new EquipmentChoice(new EquipmentList(candidates), wanted);
    }

    /**
     * The cheapest set that serves every demand, with the other sets of that price.
     *
     * @return the set with its proof; if all candidates together do not serve all, all of them, with what is not served and why
     */
    public EquipmentAnswer cheapest() {
        synchronized (search) {
            if (!search.all().servesAll(list.everything())) {
                return answer(list.everything(), EquipmentAnswer.Proof.NONE);
            }
            SetSearch.Best best = search.cheapest(search.all(), null);
            return proven(best);
        }
    }

    /**
     * The set within a budget that serves most demands; of those, the cheapest; of those, the one with the smallest total of test
     * batches; of those, the first in the order of the candidates.
     *
     * @param budget what may be spent, at least 0, in the currency of the candidates
     * @return the set with plans for what it serves and, for each demand it does not serve, why
     * @throws IllegalArgumentException if the budget is negative or in another currency
     */
    public EquipmentAnswer within(Money budget) {
        if (Objects.requireNonNull(budget, "budget").number().signum() < 0) {
            throw new IllegalArgumentException("budget is " + Excerpt.of(budget) + ": it must be at least 0");
        }
        list.at(0).price().compareTo(budget);
        synchronized (search) {
            return proven(search.within(budget.number()));
        }
    }

    /**
     * The set within a budget, as text, that serves most demands; see {@link #within(Money)}.
     *
     * @param budget for example {@code "60 EUR"}
     * @return the set
     * @throws IllegalArgumentException if the text is no money, negative or in another currency
     */
    public EquipmentAnswer within(String budget) {
        return within(Money.parse(Objects.requireNonNull(budget, "budget")));
    }

    /**
     * Price against test batches: the sets that serve all of which none is both as cheap and of a smaller total of smallest
     * batches. The first is the cheapest; the last has the smallest total that all candidates together allow.
     *
     * @return an unmodifiable list of rising price and falling total; empty if all candidates together do not serve all
     */
    public List<EquipmentAnswer> front() {
        synchronized (search) {
            return search.front().stream().map(this::proven).toList();
        }
    }

    /**
     * What a set serves, whatever it costs.
     *
     * @param set some of the candidates; what is there already counts in any case
     * @return plans for what it serves and, for each demand it does not serve, why
     * @throws IllegalArgumentException if something is none of the candidates
     */
    public EquipmentAnswer serving(List<Equipment> set) {
        long word = list.owned();
        for (Equipment item : List.copyOf(Objects.requireNonNull(set, "set"))) {
            int index = list.all().indexOf(item);
            if (index < 0) {
                throw new IllegalArgumentException(
                        "set has " + Excerpt.of(item) + ", which is none of the candidates: add it to them first");
            }
            word |= 1L << index;
        }
        synchronized (search) {
            return answer(word, EquipmentAnswer.Proof.NONE);
        }
    }

    /**
     * What could limit a batch but was not considered, because there is no pot or boat among the candidates or a density is missing.
     *
     * @return an unmodifiable list, empty if everything given was considered
     */
    public List<Phrase> notConsidered() {
        Set<Phrase> all = new LinkedHashSet<>();
        if (!list.hasPots()) {
            all.add(Phrase.of("unconsidered.no-pot"));
        }
        if (!list.hasBoats()) {
            all.add(Phrase.of("unconsidered.no-boat"));
        }
        for (Equipment item : list.all()) {
            boolean hasVolume =
                    EquipmentList.vessel(item).flatMap(Vessel::workingVolume).isPresent();
            demands.stream()
                    .filter(demand -> hasVolume
                            && demand.formula().lines().stream()
                                    .anyMatch(
                                            line -> line.ingredient().density().isEmpty()))
                    .forEach(demand -> all.add(Phrase.of(
                            "unconsidered.station-volume",
                            item.name(),
                            demand.formula().name())));
        }
        return List.copyOf(all);
    }

    private EquipmentAnswer proven(SetSearch.Best best) {
        List<Long> others = best.sets().subList(1, best.sets().size());
        return answer(best.sets().get(0), new EquipmentAnswer.Proof(search.told(best), others, best.isCertain()));
    }

    private EquipmentAnswer answer(long set, EquipmentAnswer.Proof proof) {
        List<ServingPlan> plans = new ArrayList<>();
        List<Unserved> unserved = new ArrayList<>();
        for (Fitting fit : search.fits()) {
            Optional<Fitting.Served> served = fit.on(set);
            served.ifPresentOrElse(
                    found -> plans.add(ServingPlan.of(fit, found, list)),
                    () -> unserved.add(new WhyUnserved(fit.demand(), list, set, search.serves(fit)).told()));
        }
        return new EquipmentAnswer(list, set, plans, unserved, proof);
    }

    @Override
    public String toString() {
        return (demands.size() == 1 ? "1 formula, " : demands.size() + " formulas, ") + list.all();
    }
}
