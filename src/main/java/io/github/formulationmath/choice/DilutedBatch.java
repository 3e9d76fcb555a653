package io.github.formulationmath.choice;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.LineAmount;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import java.io.Serial;
import java.io.Serializable;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A batch some lines of which are weighed as stocks: the {@link #stocks()}, each with the plans of its steps, and the {@link
 * #batch()} as it is then weighed, with the stock where the line was and so much less of the line that gave the diluent. Both
 * are planned, printed, read, recorded and mended like any other batch; its substances are those of the formula as written.
 *
 * <p>What the stocks do not hold exactly flows into what is made: {@link #expected} and {@link #made} are of the formula as
 * written, with the sure bounds of the strength carried through, to be checked against limits and tolerances.
 *
 * <p>A stock is made in one step, or in two where one step would make more stock than batch, or than the balance carries.
 *
 * <p>Example: {@code DilutedBatch.of(batch).diluting(line, oil, balance, Tolerances.of("0.5 %")).stocks()}.
 *
 * <p>Immutable and thread-safe.
 */
public final class DilutedBatch implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final int MOST_PARTS_OF_A_STEP = 100;

    private final Batch asWritten;
    private final Batch batch;
    private final List<StockMixture> stocks;

    private DilutedBatch(Batch asWritten, Batch batch, List<StockMixture> stocks) {
        this.asWritten = asWritten;
        this.batch = batch;
        this.stocks = List.copyOf(stocks);
    }

    /**
     * A batch that nothing is diluted for yet.
     *
     * @param batch the batch
     * @return the batch as it is
     */
    public static DilutedBatch of(Batch batch) {
        return new DilutedBatch(Objects.requireNonNull(batch, "batch"), batch, List.of());
    }

    /**
     * The same batch with one line more weighed as a stock: in the smallest dilution that delivers it within its tolerance.
     *
     * @param line the line to dilute, of the formula as written
     * @param carrier the line that gives the diluent
     * @param balance the balance on which the stock and what is taken of it are weighed, tared before each addition
     * @param tolerances how far what is delivered may be off
     * @return the batch with the stock
     * @throws IllegalArgumentException if a line is none of the formula's, the two are the same, the line is diluted already,
     *     or gives a diluent, or no dilution helps; it says why
     */
    public DilutedBatch diluting(FormulaLine line, FormulaLine carrier, Balance balance, Tolerances tolerances) {
        Objects.requireNonNull(balance, "balance");
        Objects.requireNonNull(tolerances, "tolerances");
        int place = asWritten.formula().indexOf(line);
        int giver = asWritten.formula().indexOf(carrier);
        requireFree(place, giver);
        StockMixture found = stock(place, giver, balance, tolerances);
        return with(found);
    }

    private void requireFree(int place, int giver) {
        for (StockMixture stock : stocks) {
            if (stock.line().index() == place
                    || stock.line().index() == giver
                    || stock.carrier().index() == place) {
                String name = asWritten.formula().lines().get(place).name();
                throw new IllegalArgumentException("line is " + Excerpt.of(name) + ", diluted in "
                        + Excerpt.of(asWritten.formula().lines().get(giver).name())
                        + ": one of the two is a stock, or gives the diluent of one, already; take other lines");
            }
        }
    }

    private StockMixture stock(int place, int giver, Balance balance, Tolerances tolerances) {
        FormulaLine line = batch.formula().lines().get(place);
        FormulaLine carrier = batch.formula().lines().get(giver);
        Predilution one = Predilution.of(batch, line, carrier, balance, tolerances);
        if (one instanceof Predilution.None none) {
            // Two steps deliver no better than one of as many parts.
            throw new IllegalArgumentException(
                    "line is " + Excerpt.of(line.name()) + ", which no dilution helps: " + none.reason());
        }
        PredilutionPlan plan = (PredilutionPlan) one;
        if (plan.carrierLeft().signum() == 0) {
            throw new IllegalArgumentException("carrier is " + Excerpt.of(carrier.name()) + ", all of which, "
                    + batch.lines().get(giver).mass().told() + ", a stock of " + Excerpt.of(line.name())
                    + " would take: something of it must be left to weigh; dilute in another line, or make a larger"
                    + " batch");
        }
        Ratio begin = plan.substance().canonical();
        Ratio mass = begin.times(plan.factor());
        boolean isCarried = isCarried(balance, mass);
        if (!isCarried || mass.compareTo(batch.mass().canonical()) > 0) {
            Optional<StockMixture> two = inTwoSteps(place, giver, balance, tolerances);
            if (two.isPresent()) {
                return two.get();
            }
        }
        if (!isCarried) {
            throw new IllegalArgumentException("line is "
                    + Excerpt.of(written(place).name()) + ", which 1 in "
                    + plan.factor() + " is a stock of "
                    + Amount.grams(mass).inUnitOf(balance.readability()).told() + ", more than the balance carries, "
                    + balance.capacity().told() + ", and no two steps of at most " + MOST_PARTS_OF_A_STEP
                    + " parts help: make a larger batch, or take a finer balance");
        }
        return StockMixture.of(batch, written(place), written(giver), balance, List.of(plan.factor()), begin);
    }

    private FormulaLine written(int place) {
        return asWritten.formula().lines().get(place);
    }

    /** The smallest of two like steps; of more parts in a step there are none at a bench. */
    private Optional<StockMixture> inTwoSteps(int place, int giver, Balance balance, Tolerances tolerances) {
        Ratio exact = batch.lines().get(place).mass().canonical();
        Ratio allowed = tolerances.fraction(batch.formula().lines().get(place));
        for (int parts = 2; parts <= MOST_PARTS_OF_A_STEP; parts++) {
            for (int more = 0; more <= 1; more++) {
                List<Ratio> factors = List.of(Ratio.of(parts), Ratio.of(parts + more));
                Ratio aliquot = exact.times((long) parts * (parts + more));
                if (aliquot.minus(exact)
                                .compareTo(batch.lines().get(giver).mass().canonical())
                        >= 0) {
                    return Optional.empty();
                }
                Ratio d = balance.readability().canonical();
                Ratio begin = aliquot.dividedBy(d).toWhole(RoundingMode.CEILING).times(d);
                if (isCarried(balance, begin.times((long) parts + more))) {
                    StockMixture stock =
                            StockMixture.of(batch, written(place), written(giver), balance, factors, begin);
                    if (delivered(stock, aliquot, exact, balance).compareTo(allowed) <= 0) {
                        return Optional.of(stock);
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isCarried(Balance balance, Ratio grams) {
        return balance.carries(Amount.grams(grams));
    }

    /** The largest error of what is delivered, as a share of it. */
    private static Ratio delivered(StockMixture stock, Ratio aliquot, Ratio exact, Balance balance) {
        Ratio divisions = aliquot.dividedBy(balance.readability().canonical()).rounded(Rounding.toDecimalPlaces(0));
        AdditionError error = AdditionError.of(Addition.of(
                "aliquot", Amount.grams(aliquot), balance.readability().times(divisions), balance));
        var strength = stock.strength();
        Ratio least = strength.least().fraction().times(error.bounds().least().canonical());
        Ratio most =
                strength.greatest().fraction().times(error.bounds().greatest().canonical());
        return most.minus(exact).max(exact.minus(least)).dividedBy(exact);
    }

    private DilutedBatch with(StockMixture stock) {
        Ratio moved = batch.formula()
                .lines()
                .get(stock.line().index())
                .fraction()
                .times(stock.parts().minus(Ratio.ONE));
        Ingredient diluted = stock.ingredient(batch);
        Formula weighed = Formula.inPercent(asWritten.formula().name())
                .linesOf(
                        batch.formula(),
                        line -> line.index() == stock.line().index() ? diluted : line.ingredient(),
                        line -> Optional.of(weighed(line, stock, moved)))
                .build();
        List<StockMixture> all = new ArrayList<>(stocks);
        all.add(stock);
        return new DilutedBatch(asWritten, Batch.of(weighed, asWritten.size()), all);
    }

    private static LineAmount weighed(FormulaLine line, StockMixture stock, Ratio moved) {
        if (line.index() == stock.line().index()) {
            return new LineAmount.Share(MassFraction.of(line.fraction().times(stock.parts())));
        }
        if (line.isQuantitySufficient()) {
            return line.amount();
        }
        Ratio less = line.index() == stock.carrier().index() ? moved : Ratio.ZERO;
        return new LineAmount.Share(MassFraction.of(line.fraction().minus(less)));
    }

    /**
     * The batch as written.
     *
     * @return the batch without stocks
     */
    public Batch asWritten() {
        return asWritten;
    }

    /**
     * The batch as it is weighed: a line for each of the formula as written, stocks in the places of their lines.
     *
     * @return the batch, to be planned like any other
     */
    public Batch batch() {
        return batch;
    }

    /**
     * The stocks, in the order in which they were asked for.
     *
     * @return an unmodifiable list
     */
    public List<StockMixture> stocks() {
        return stocks;
    }

    /**
     * What a plan of the {@link #batch()} makes, of the formula as written, its stocks weighed as planned.
     *
     * @param plan a plan of the batch as it is weighed
     * @param method how what is weighed on the balance of its bench is weighed
     * @return the masses of the lines as written, with the errors of the stocks carried through
     * @throws IllegalArgumentException if the plan is of another formula
     */
    public Weighed expected(WeighingPlan plan, WeighingMethod method) {
        List<List<Weighed>> steps = stocks.stream()
                .map(stock -> stock.steps().stream()
                        .map(step -> (Weighed) ExpectedProduct.of(step, WeighingMethod.TARE_EACH))
                        .toList())
                .toList();
        return made(ExpectedProduct.of(Objects.requireNonNull(plan, "plan"), method), steps);
    }

    /**
     * What was made, of the formula as written: what was weighed into the batch, and into the steps of each stock.
     *
     * @param product what is in the pot, of the {@link #batch()}
     * @param steps for each stock what was weighed in each of its steps
     * @return the masses of the lines as written, with the errors of the stocks carried through
     * @throws IllegalArgumentException if the product is of another formula, or the steps are not those of the stocks
     */
    public Weighed made(Weighed product, List<? extends List<? extends Weighed>> steps) {
        if (!Objects.requireNonNull(product, "product").formula().equals(batch.formula())) {
            throw new IllegalArgumentException(
                    "product is of \"" + Excerpt.of(product.formula().name())
                            + "\", not of this batch as it is weighed: plan batch() and weigh that");
        }
        if (Objects.requireNonNull(steps, "steps").size() != stocks.size()) {
            throw new IllegalArgumentException("steps has " + steps.size() + " stocks, and there are " + stocks.size()
                    + ": give what was weighed for each");
        }
        return new DilutedMasses(asWritten.formula(), stocks, product, steps).weighed();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof DilutedBatch that && asWritten.equals(that.asWritten) && stocks.equals(that.stocks);
    }

    @Override
    public int hashCode() {
        return Objects.hash(asWritten, stocks);
    }

    @Override
    public String toString() {
        List<String> said = new ArrayList<>(List.of(asWritten.toString()));
        for (StockMixture stock : stocks) {
            said.add(stock.toString());
            said.add("then " + changed(stock.line().index()) + ", and "
                    + changed(stock.carrier().index()));
        }
        return String.join("\n", said);
    }

    /** What is weighed of a line now, and what it was. */
    private String changed(int place) {
        return said(batch.lines().get(place)) + " instead of "
                + said(asWritten.lines().get(place));
    }

    private static String said(BatchLine line) {
        return line.mass().toldExactly() + " " + line.name();
    }
}
