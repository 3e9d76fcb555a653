package io.github.formulationmath.packing;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * What one line costs: its mass times the price of a pack over what is in it.
 *
 * <p>Example: 12 g at 12.50 EUR for 250 g cost 0.60 EUR.
 *
 * <p>Immutable and thread-safe.
 *
 * @param line the line of the formula
 * @param mass how much of it is used
 * @param offer the offer it is reckoned with, the first of the ingredient
 */
public record LineCost(FormulaLine line, Amount<Mass> mass, Offer offer) {

    private static final Symbol COST = Symbol.of("K", "line-cost", Kind.MONEY);

    /**
     * Refuses null.
     *
     * @param line the line of the formula
     * @param mass how much of it is used
     * @param offer the offer it is reckoned with
     */
    public LineCost {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(mass, "mass");
        Objects.requireNonNull(offer, "offer");
    }

    /**
     * The cost.
     *
     * @return the exact cost in the currency of the price list, with its working
     */
    public Money cost() {
        return Money.of(cost(Reckoning.plain()), offer.price().currency())
                .withWorking(line -> Phrase.of("question.line-cost", line.line.name()), this, LineCost::cost);
    }

    private <V> V cost(Reckoning<V> r) {
        V price = offer.price(r, line);
        V size = offer.packSize(r, line);
        return r.named(COST, line, r.quotient(r.product(r.known(mass), price), size));
    }

    @Override
    public String toString() {
        return line.name() + " " + cost();
    }
}
