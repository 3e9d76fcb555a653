package io.github.formulationmath.choice;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Origin.Figure;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.Balance;
import java.math.RoundingMode;
import java.util.List;
import javax.measure.quantity.Dimensionless;
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

    private static final Rounding UP = Rounding.toDecimalPlaces(0).with(RoundingMode.CEILING);

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
        return new PredilutionPlan(
                line, carrier, balance, line.mass().canonical().times(parts), parts, tolerances);
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
        return weighed("m", line.mass(), balance)
                .largest()
                .canonical()
                .dividedBy(line.mass().canonical());
    }

    /** The plan, if its carrier has the diluent that the aliquot takes. */
    Predilution orTooLittleCarrier() {
        Ratio diluent = line.mass().canonical().times(factor.minus(Ratio.ONE));
        if (diluent.compareTo(carrier.mass().canonical()) <= 0) {
            return this;
        }
        return new Predilution.None(Phrase.of(
                "predilution.carrier-too-small",
                carrier.name(),
                carrier.mass().told(),
                Amount.grams(diluent).inUnitOf(carrier.mass()).told()));
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
        return shown("question.stock-substance", PredilutionPlan::substance);
    }

    /**
     * What of the diluent goes into the stock.
     *
     * @return the mass in the unit of the balance, a whole number of divisions
     */
    public Amount<Mass> diluent() {
        return shown("question.stock-diluent", PredilutionPlan::diluent);
    }

    /**
     * What of the stock is taken for the batch.
     *
     * @return the exact mass in the unit of the balance
     */
    public Amount<Mass> aliquot() {
        return shown("question.aliquot", PredilutionPlan::aliquot);
    }

    /** As {@link #aliquot()}. */
    @Override
    public Origin origin() {
        return aliquot().origin();
    }

    /**
     * What is left to weigh of the line that gives the diluent.
     *
     * @return the exact mass in the unit of the balance
     */
    public Amount<Mass> carrierLeft() {
        return Amount.grams(carrierLeft(Reckoning.plain()))
                .inUnitOf(balance.readability())
                .withWorking(
                        plan -> Phrase.of("question.carrier-left", plan.carrier.name()),
                        this,
                        PredilutionPlan::carrierLeft);
    }

    /**
     * Between which masses the substance will be in the batch, the errors of both weighings of the stock and of the aliquot
     * carried through: its strength is lowest with too little substance and too much diluent, and the aliquot with it.
     *
     * @return an interval around the exact mass of the line, in the unit of the balance
     */
    public Interval<Amount<Mass>> deliveredBounds() {
        return Interval.of(
                shown("question.delivered-lowest", PredilutionPlan::lowest),
                shown("question.delivered-highest", PredilutionPlan::highest));
    }

    /**
     * The largest possible error of the delivered mass, as a share of it; within the tolerance, if the plan was asked for by
     * one.
     *
     * @return the relative error, at least 0, in percent
     */
    public Amount<Dimensionless> relativeError() {
        return Amount.percent(relative(Reckoning.plain()).times(100))
                .withWorking(
                        plan -> Phrase.of("question.delivered-relative-error", plan.line.name()),
                        this,
                        PredilutionPlan::relative);
    }

    private <V> V factor(Reckoning<V> r) {
        if (delivered != null) {
            return r.named(FACTOR, r.literal(factor));
        }
        V smallest = r.rounded(r.quotient(least(r), r.known(line)), UP);
        return r.named(FACTOR, smallest);
    }

    private <V> V least(Reckoning<V> r) {
        return r.given(LEAST, least, Source.user());
    }

    private <V> V substance(Reckoning<V> r) {
        V d = Divisions.readability(r, balance);
        V needed = delivered != null ? aliquot(r) : r.maximum(List.of(least(r), r.known(line)));
        return r.named(SUBSTANCE, r.product(r.rounded(r.quotient(needed, d), UP), d));
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

    <V> V relative(Reckoning<V> r) {
        V exact = r.known(line);
        V error = r.maximum(List.of(r.difference(highest(r), exact), r.difference(exact, lowest(r))));
        V relative = r.named(RELATIVE, r.quotient(error, exact));
        if (delivered != null) {
            r.note(() -> Phrase.of("note.smaller-dilutions-tried"));
            r.holds(relative, Comparison.AT_MOST, delivered.value(r, line.line()));
        }
        return relative;
    }

    private Amount<Mass> shown(String question, Figure<PredilutionPlan> figure) {
        return Amount.grams(figure.in(this, Reckoning.plain()))
                .inUnitOf(balance.readability())
                .withWorking(plan -> Phrase.of(question, plan.line.name()), this, figure);
    }

    @Override
    public String toString() {
        return substance().told() + " " + line.name() + " and " + diluent().told() + " "
                + carrier.name() + " make a stock, "
                + line.name() + " 1 in " + factor + "; weigh " + aliquot().told() + " of it instead of "
                + line.mass().told() + " "
                + line.name() + ", and " + carrierLeft().told() + " " + carrier.name() + " instead of "
                + carrier.mass().told();
    }
}
