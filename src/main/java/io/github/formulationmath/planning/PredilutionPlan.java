package io.github.formulationmath.planning;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchLine;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Comparison;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import io.github.formulationmath.working.Working;
import java.util.List;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A pre-dilution as it is to be made: the dilution, what goes into the stock, the aliquot, what is left of the carrier, and
 * between which bounds the substance will be there in the end.
 *
 * <p>Immutable and thread-safe.
 */
public final class PredilutionPlan implements Predilution, Explained {

    private static final Symbol FACTOR = Symbol.of("F", "dilution-factor", Kind.NUMBER);
    private static final Symbol LEAST = Symbol.of("W", "least-weighed", Kind.MASS);
    private static final Symbol SUBSTANCE = Symbol.of("A", "stock-substance", Kind.MASS);
    private static final Symbol DILUENT = Symbol.of("B", "stock-diluent", Kind.MASS);
    private static final Symbol ALIQUOT = Symbol.of("Q", "aliquot", Kind.MASS);
    private static final Symbol CARRIER = Symbol.of("m", "carrier-left", Kind.MASS);
    private static final Symbol LOWEST = Symbol.of("lo", "delivered-lowest", Kind.MASS);
    private static final Symbol HIGHEST = Symbol.of("hi", "delivered-highest", Kind.MASS);
    private static final Symbol RELATIVE = Symbol.of("ε", "delivered-relative-error", Kind.SHARE);

    private static final Subject LEFT = Subject.of("left", "");
    private static final Subject DELIVERED = Subject.of("delivered", "");

    private final BatchLine line;
    private final BatchLine carrier;
    private final Balance balance;
    private final Ratio least;
    private final Ratio factor;

    private final @Nullable Tolerances delivered;

    PredilutionPlan(BatchLine line, BatchLine carrier, Balance balance, Ratio least, Ratio factor) {
        this(line, carrier, balance, least, factor, null);
    }

    private PredilutionPlan(
            BatchLine line,
            BatchLine carrier,
            Balance balance,
            Ratio least,
            Ratio factor,
            @Nullable Tolerances delivered) {
        this.line = line;
        this.carrier = carrier;
        this.balance = balance;
        this.least = least;
        this.factor = factor;
        this.delivered = delivered;
    }

    /** A dilution of so many parts, its stock made of as much substance as the aliquot weighs. */
    static PredilutionPlan delivering(
            BatchLine line, BatchLine carrier, Balance balance, Tolerances tolerances, Ratio parts) {
        return new PredilutionPlan(line, carrier, balance, line.result().times(parts), parts, tolerances);
    }

    static BatchLine carrierOf(Batch batch, FormulaLine line, FormulaLine carrier) {
        BatchLine giver = batch.line(carrier);
        if (giver.line().equals(line)) {
            throw new IllegalArgumentException(
                    "carrier is " + Excerpt.of(carrier.name()) + ", the line to dilute: take another");
        }
        return giver;
    }

    /** The largest error of the line weighed as it is, as a share of it. */
    static Ratio undilutedError(BatchLine line, Balance balance) {
        AdditionError error = weighed("m", line.mass(), balance);
        Ratio exact = line.result();
        return error.bounds()
                .greatest()
                .canonical()
                .minus(exact)
                .max(exact.minus(error.bounds().least().canonical()))
                .dividedBy(exact);
    }

    /** The plan, if its carrier has the diluent that the aliquot takes. */
    Predilution orTooLittleCarrier() {
        Ratio diluent = line.result().times(factor.minus(Ratio.ONE));
        if (diluent.compareTo(carrier.result()) <= 0) {
            return this;
        }
        return new NoPredilution(Phrase.of(
                "predilution.carrier-too-small",
                carrier.name(),
                carrier.mass().toString(),
                Amount.grams(diluent).toString()));
    }

    /**
     * The dilution F: one part of the substance in F parts of stock.
     *
     * @return a whole number, at least 2
     */
    public Ratio factor() {
        return factor;
    }

    /**
     * What of the substance goes into the stock.
     *
     * @return the mass in the unit of the balance, a whole number of divisions
     */
    public Amount<Mass> substance() {
        return shown(substance(Reckoning.plain()));
    }

    /**
     * What of the diluent goes into the stock.
     *
     * @return the mass in the unit of the balance, a whole number of divisions
     */
    public Amount<Mass> diluent() {
        return shown(diluent(Reckoning.plain()));
    }

    /**
     * What of the stock is taken for the batch.
     *
     * @return the exact mass in the unit of the balance
     */
    public Amount<Mass> aliquot() {
        return shown(aliquot(Reckoning.plain()));
    }

    /**
     * What is left to weigh of the line that gives the diluent.
     *
     * @return the exact mass in the unit of the balance
     */
    public Amount<Mass> carrierLeft() {
        return shown(carrierLeft(Reckoning.plain()));
    }

    /**
     * How {@link #carrierLeft()} comes about.
     *
     * @return the working
     */
    public Working carrierLeftWorking() {
        return Working.of(
                Phrase.of("question.carrier-left", carrier.name()), carrierLeft(Reckoning.plain()), this::carrierLeft);
    }

    /**
     * Between which masses the substance will be in the batch, the errors of both weighings of the stock and of the aliquot
     * carried through: its strength is lowest with too little substance and too much diluent, and the aliquot with it.
     *
     * @return an interval in grams around the exact mass of the line
     */
    public Bounds deliveredBounds() {
        return Bounds.closed(lowest(Reckoning.plain()), highest(Reckoning.plain()));
    }

    /**
     * The largest possible error of the delivered mass, as a share of it; within the tolerance, if the plan was asked for by
     * one.
     *
     * @return the relative error, at least 0
     */
    public Ratio relativeError() {
        return relative(Reckoning.plain());
    }

    /**
     * How {@link #relativeError()} comes about, from every weighing.
     *
     * @return the working
     */
    public Working relativeErrorWorking() {
        return Working.of(Phrase.of("question.delivered-relative-error", line.name()), relativeError(), this::relative);
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.aliquot", line.name());
    }

    /** The aliquot in grams. */
    @Override
    public Ratio result() {
        return aliquot(Reckoning.plain());
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        return aliquot(r);
    }

    private <V> V factor(Reckoning<V> r) {
        if (delivered != null) {
            return r.named(FACTOR, r.literal(factor));
        }
        V smallest = r.rounded(r.quotient(least(r), r.known(line)), BatchSymbols.UP);
        return r.named(FACTOR, smallest);
    }

    private <V> V least(Reckoning<V> r) {
        return r.given(LEAST, least, Source.user());
    }

    private <V> V substance(Reckoning<V> r) {
        V d = BatchSymbols.readability(r, balance);
        V needed = delivered != null ? aliquot(r) : r.maximum(List.of(least(r), r.known(line)));
        return r.named(SUBSTANCE, r.product(r.rounded(r.quotient(needed, d), BatchSymbols.UP), d));
    }

    private <V> V diluent(Reckoning<V> r) {
        return r.named(DILUENT, r.product(substance(r), r.difference(factor(r), r.literal(1))));
    }

    private <V> V aliquot(Reckoning<V> r) {
        return r.named(ALIQUOT, r.product(r.known(line), factor(r)));
    }

    private <V> V carrierLeft(Reckoning<V> r) {
        V inAliquot = r.difference(aliquot(r), r.known(line));
        return r.named(CARRIER, LEFT, r.difference(r.known(carrier), inAliquot));
    }

    private AdditionError weighed(String index, Amount<Mass> target) {
        return weighed(index, target, balance);
    }

    private static AdditionError weighed(String index, Amount<Mass> target, Balance balance) {
        Ratio divisions = balance.divisions(target).rounded(Rounding.toDecimalPlaces(0));
        return AdditionError.of(Addition.of(index, target, balance.readability().times(divisions), balance));
    }

    private <V> V lowest(Reckoning<V> r) {
        V a = r.known(weighed("A", substance()).bounds().least());
        V b = r.known(weighed("B", diluent()).bounds().greatest());
        V q = r.known(weighed("Q", aliquot()).bounds().least());
        return r.named(LOWEST, DELIVERED, r.product(r.quotient(a, r.sum(a, b)), q));
    }

    private <V> V highest(Reckoning<V> r) {
        V a = r.known(weighed("A", substance()).bounds().greatest());
        V b = r.known(weighed("B", diluent()).bounds().least());
        V q = r.known(weighed("Q", aliquot()).bounds().greatest());
        return r.named(HIGHEST, DELIVERED, r.product(r.quotient(a, r.sum(a, b)), q));
    }

    private <V> V relative(Reckoning<V> r) {
        V exact = r.known(line);
        V error = r.maximum(List.of(r.difference(highest(r), exact), r.difference(exact, lowest(r))));
        V relative = r.named(RELATIVE, r.quotient(error, exact));
        if (delivered != null) {
            r.note(() -> Phrase.of("note.smaller-dilutions-tried"));
            r.holds(relative, Comparison.AT_MOST, delivered.value(r, line.line()));
        }
        return relative;
    }

    private Amount<Mass> shown(Ratio grams) {
        return BalanceUnit.amount(balance, grams);
    }

    @Override
    public String toString() {
        return line.name() + " 1 in " + factor + ": " + substance() + " and " + diluent() + " of " + carrier.name()
                + ", of which " + aliquot();
    }
}
