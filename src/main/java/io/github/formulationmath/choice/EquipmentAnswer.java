package io.github.formulationmath.choice;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;

/**
 * A set of equipment, what it costs, a plan for every demand that it meets, and why the others are not met. If it is an answer to
 * {@link EquipmentChoice#cheapest()}, the clauses show that no cheaper set does.
 *
 * <p>Immutable and thread-safe.
 */
public final class EquipmentAnswer implements Explained {

    private static final Symbol PRICE = Symbol.of("p", "item-price", Kind.MONEY);
    private static final Symbol TOTAL = Symbol.of("K", "equipment-price", Kind.MONEY);
    private static final Symbol SIZE = Symbol.of("M", "smallest-served", Kind.MASS);
    private static final Symbol SIZES = Symbol.of("S", "sizes-together", Kind.MASS);

    private final EquipmentList list;
    private final long set;
    private final List<ServingPlan> plans;
    private final List<Unserved> unserved;
    private final Proof proof;

    /** What shows that the set is the best; certain or not. */
    record Proof(List<EquipmentClause> clauses, List<Long> others, boolean isCertain) {

        static final Proof NONE = new Proof(List.of(), List.of(), true);
    }

    EquipmentAnswer(EquipmentList list, long set, List<ServingPlan> plans, List<Unserved> unserved, Proof proof) {
        this.list = list;
        this.set = set;
        this.plans = List.copyOf(plans);
        this.unserved = List.copyOf(unserved);
        this.proof = proof;
    }

    /**
     * The whole set, with what is there already.
     *
     * @return an unmodifiable list in the order of the candidates
     */
    public List<Equipment> equipment() {
        return list.of(set);
    }

    /**
     * What has to be bought.
     *
     * @return an unmodifiable list in the order of the candidates, empty if nothing
     */
    public List<Equipment> toBuy() {
        return list.of(set & ~list.owned());
    }

    /**
     * What that costs.
     *
     * @return the exact price in the currency of the candidates, with its working
     */
    public Money price() {
        return list.money(price(Reckoning.plain()))
                .withWorking(answer -> Phrase.of("question.equipment-price"), this, EquipmentAnswer::price);
    }

    private <V> V price(Reckoning<V> r) {
        List<V> prices = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            Equipment item = list.at(i);
            if ((set >> i & 1) != 0 && !item.isOwned()) {
                Subject subject = Subject.of(Integer.toString(i + 1), item.name());
                prices.add(r.given(
                        PRICE,
                        subject,
                        item.price().number(),
                        Source.written(item.price().toString())));
            }
        }
        proof.clauses.forEach(clause -> r.note(() -> Phrase.of("note.clause", clause.toString())));
        return r.named(TOTAL, prices.isEmpty() ? r.literal(0) : r.sum(prices));
    }

    /** As {@link #price()}. */
    @Override
    public Origin origin() {
        return price().origin();
    }

    /**
     * A plan for every demand that is met, at its least size.
     *
     * @return an unmodifiable list in the order of the demands
     */
    public List<ServingPlan> plans() {
        return plans;
    }

    /**
     * The demands that are not met, why, and what would meet them.
     *
     * @return an unmodifiable list in the order of the demands
     */
    public List<Unserved> unserved() {
        return unserved;
    }

    /**
     * Whether every demand is met.
     *
     * @return true if there is a plan for each
     */
    public boolean servesAll() {
        return unserved.isEmpty();
    }

    /**
     * The smallest batches of all demands that are met, together.
     *
     * @return the exact sum in the unit of the first plan, 0 if none is met, with its working
     */
    public Amount<Mass> totalSize() {
        return Amount.grams(totalSize(Reckoning.plain()))
                .withWorking(answer -> Phrase.of("question.sizes-together"), this, EquipmentAnswer::totalSize)
                .inUnitOf(
                        plans.isEmpty()
                                ? Amount.grams(Ratio.ZERO)
                                : plans.get(0).size());
    }

    private <V> V totalSize(Reckoning<V> r) {
        List<V> sizes = new ArrayList<>();
        for (ServingPlan plan : plans) {
            // The lines of two formulas bear the same numbers: how each size was found, its own plan tells.
            Subject subject = Subject.of(
                    Integer.toString(sizes.size() + 1), plan.formula().name());
            sizes.add(r.given(SIZE, subject, plan.grams(), Source.user()));
        }
        return r.named(SIZES, sizes.isEmpty() ? r.literal(Ratio.ZERO) : r.sum(sizes));
    }

    /**
     * What shows that no cheaper set does as much.
     *
     * @return an unmodifiable list; empty if nothing has to be bought, or the set was given
     */
    public List<EquipmentClause> clauses() {
        return proof.clauses;
    }

    /**
     * Other sets that do as much for the same price.
     *
     * @return an unmodifiable list of sets, in the order of the candidates
     */
    public List<List<Equipment>> othersOfThatPrice() {
        return proof.others.stream().map(list::of).toList();
    }

    /**
     * Whether the search went to its end. If it was broken off, the set does what the plans show, and a cheaper one may be there.
     *
     * @return true if there is none better
     */
    public boolean isProven() {
        return proof.isCertain;
    }

    /** What to buy, the price, and what is made with it. */
    @Override
    public String toString() {
        String buy = toBuy().isEmpty()
                ? "nothing to buy"
                : toBuy().stream().map(Equipment::name).collect(Collectors.joining(" and ")) + " for " + price();
        String made = plans.isEmpty()
                ? ""
                : plans.stream()
                        .map(plan -> plan.formula().name() + " " + plan.told())
                        .collect(Collectors.joining(", ", "; smallest batches ", ""));
        String not = unserved.isEmpty()
                ? ""
                : unserved.stream().map(Unserved::toString).collect(Collectors.joining("; ", "; not served: ", ""));
        return buy + made + not + (proof.isCertain ? "" : " (a cheaper set may be there: the search was broken off)");
    }
}
