package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.io.Serializable;

/**
 * What one line costs: its mass times the price of a pack over what is in it.
 *
 * <p>Example: 12 g at 12.50 for 250 g cost 0.60.
 *
 * <p>Immutable and thread-safe.
 */
public final class LineCost implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol COST = Symbol.of("K", "line-cost", Kind.MONEY);

    private final Explained mass;
    private final FormulaLine line;
    private final Offer offer;
    private final Ratio cost;

    LineCost(Explained mass, FormulaLine line, Offer offer) {
        this.mass = mass;
        this.line = line;
        this.offer = offer;
        this.cost = derive(Reckoning.plain());
    }

    /**
     * The line.
     *
     * @return the line of the formula
     */
    public FormulaLine line() {
        return line;
    }

    /**
     * The offer it is reckoned with.
     *
     * @return the first offer of the ingredient
     */
    public Offer offer() {
        return offer;
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.line-cost", line.name());
    }

    /** The exact cost in the currency of the price list. */
    @Override
    public Ratio result() {
        return cost;
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        V price = offer.price(r, line);
        V size = offer.packSize(r, line);
        return r.named(COST, line, r.quotient(r.product(r.known(mass), price), size));
    }

    @Override
    public String toString() {
        return line.name() + " " + cost;
    }
}
