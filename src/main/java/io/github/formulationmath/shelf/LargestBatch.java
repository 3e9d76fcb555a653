package io.github.formulationmath.shelf;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.BalanceUnit;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The largest batch that a shelf gives, by exact masses: {@code M = min over the ingredients of what there is / Σw}, the sum over all
 * lines of the ingredient in whatever phases. If each line is to come from one lot, what an ingredient allows is the most that any way of
 * dealing its lines to its lots does.
 *
 * <p>Example: 5 % Glycerin in two lines of 3 and 2 %, and 20 g of it: 400 g.
 *
 * <p>Immutable and thread-safe.
 */
public final class LargestBatch implements Explained {

    private static final Symbol STOCK = Symbol.of("q", "on-the-shelf", Kind.MASS);
    private static final Symbol MOST = Symbol.of("M", "most-of-ingredient", Kind.MASS);
    private static final Symbol LARGEST = Symbol.of("M", "largest-from-shelf", Kind.MASS);
    private static final Subject MAX = Subject.of("max", "");

    private final Formula formula;
    private final Picking picking;
    private final List<Need> needs;

    /**
     * So much of an ingredient is missing for a batch.
     *
     * @param ingredientName the ingredient
     * @param missing how much more there would have to be, above 0
     */
    public record Shortage(String ingredientName, Amount<Mass> missing) {

        /**
         * Refuses null.
         *
         * @param ingredientName the ingredient
         * @param missing how much more there would have to be
         */
        public Shortage {
            Objects.requireNonNull(ingredientName, "ingredientName");
            Objects.requireNonNull(missing, "missing");
        }

        /** In few digits, and enough of it. */
        String told() {
            return BalanceUnit.least(missing, more -> true);
        }

        @Override
        public String toString() {
            return ingredientName + " " + told();
        }
    }

    /** An ingredient: its lines, the lots that count, and how its lines are dealt to them, if each is to come from one. */
    private record Need(List<FormulaLine> lines, List<Lot> lots, Optional<Dealing> dealing) {

        private Ratio shares() {
            return lines.stream().map(FormulaLine::fraction).reduce(Ratio.ZERO, Ratio::plus);
        }

        private Ratio stock() {
            return lots.stream().map(lot -> lot.left().canonical()).reduce(Ratio.ZERO, Ratio::plus);
        }

        /** That of its first lot, if it has any. */
        Amount<Mass> unit(Amount<Mass> other) {
            return lots.isEmpty() ? other : lots.get(0).left().inSmallerUnit();
        }

        Ratio most() {
            return dealing.isPresent() ? dealing.get().most(lines, lots) : stock().dividedBy(shares());
        }

        private String name() {
            return lines.get(0).name();
        }

        <V> V most(Reckoning<V> r) {
            if (dealing.isPresent()) {
                return r.named(MOST, lines.get(0), dealing.get().most(r, lines, lots));
            }
            List<V> masses = new ArrayList<>();
            lots.forEach(lot -> masses.add(LargestBatch.stock(r, lines.get(0), lots.indexOf(lot), lot)));
            V all = masses.isEmpty() ? r.literal(0) : r.sum(masses);
            List<V> shares = new ArrayList<>();
            lines.forEach(line -> shares.add(r.known(line)));
            return r.named(MOST, lines.get(0), r.quotient(all, r.sum(shares)));
        }
    }

    private LargestBatch(Formula formula, Picking picking, List<Need> needs) {
        this.formula = formula;
        this.picking = picking;
        this.needs = List.copyOf(needs);
    }

    static <V> V stock(Reckoning<V> r, FormulaLine line, int number, Lot lot) {
        Subject subject = Subject.of(line.subscript() + "," + (number + 1), lot.ingredientName() + " " + lot.code());
        return r.given(STOCK, subject, lot.left(), Source.written(lot.left().toString()));
    }

    static LargestBatch of(Shelf shelf, Formula formula, Picking picking) {
        Map<String, List<FormulaLine>> byName = new LinkedHashMap<>();
        formula.lines().stream()
                .filter(line -> line.fraction().signum() > 0)
                .forEach(line -> byName.computeIfAbsent(line.ingredient().normalName(), none -> new ArrayList<>())
                        .add(line));
        List<Need> needs = new ArrayList<>();
        byName.forEach((name, lines) -> {
            List<Lot> lots = shelf.lotsOf(name, picking);
            Optional<Dealing> dealing =
                    picking.mixesLots() || lots.isEmpty() ? Optional.empty() : Optional.of(Dealing.best(lines, lots));
            needs.add(new Need(List.copyOf(lines), lots, dealing));
        });
        return new LargestBatch(formula, picking, needs);
    }

    /**
     * The formula.
     *
     * @return what is to be made
     */
    public Formula formula() {
        return formula;
    }

    /**
     * How it is taken.
     *
     * @return the picking
     */
    public Picking picking() {
        return picking;
    }

    /**
     * The largest batch.
     *
     * @return the exact mass in the unit in which parts of the first lot are weighed, 0 if an ingredient is missing, with its working
     */
    public Amount<Mass> mass() {
        return Amount.grams(grams())
                .withWorking(
                        all -> Phrase.of("question.largest-from-shelf", all.formula.name()), this, LargestBatch::mass)
                .inUnitOf(unit());
    }

    /** An amount in the unit that the shelf is written in: that in which parts of the first lot are weighed. */
    private Amount<Mass> unit() {
        return needs.stream()
                .flatMap(need -> need.lots().stream())
                .findFirst()
                .map(lot -> lot.left().inSmallerUnit())
                .orElseGet(() -> Amount.grams(Ratio.ZERO));
    }

    private Ratio grams() {
        return needs.stream().map(Need::most).reduce(Ratio::min).orElse(Ratio.ZERO);
    }

    private <V> V mass(Reckoning<V> r) {
        List<V> each = new ArrayList<>();
        for (Need need : needs) {
            each.add(need.most(r));
        }
        return r.named(LARGEST, MAX, r.minimum(each));
    }

    /** As {@link #mass()}. */
    @Override
    public Origin origin() {
        return mass().origin();
    }

    /**
     * All ingredients that limit the batch: none of it could be larger without more of each.
     *
     * @return an unmodifiable list of names, at least one
     */
    public List<String> limiting() {
        Ratio most = grams();
        return needs.stream()
                .filter(need -> need.most().equals(most))
                .map(Need::name)
                .toList();
    }

    /**
     * The batch if what limits it were no limit: what the others allow.
     *
     * @return the exact mass in grams; empty if everything limits it alike
     */
    public Optional<Amount<Mass>> next() {
        Ratio most = grams();
        return needs.stream()
                .map(Need::most)
                .filter(own -> own.compareTo(most) > 0)
                .reduce(Ratio::min)
                .map(grams -> Amount.grams(grams).inUnitOf(unit()));
    }

    /**
     * How much more of each limiting ingredient reaches the {@link #next()} batch, as further lots may be mixed in; where each line is to come
     * from one lot, one more lot of the whole need of the ingredient does, and that is told.
     *
     * @return an unmodifiable list; empty if there is no next
     */
    public List<Shortage> toReachNext() {
        return next().map(this::shortFor).orElse(List.of());
    }

    /**
     * What is missing for a batch of some size.
     *
     * @param size the batch mass, above 0
     * @return what more is needed, as {@link #toReachNext()} counts it; empty if the shelf gives the batch
     * @throws IllegalArgumentException if the size is not above 0
     */
    public List<Shortage> shortFor(Amount<Mass> size) {
        Ratio grams = Amount.requirePositive("size", size).canonical();
        List<Shortage> missing = new ArrayList<>();
        for (Need need : needs) {
            if (need.most().compareTo(grams) < 0) {
                Ratio wanted = need.shares().times(grams);
                Ratio more = picking.mixesLots() ? wanted.minus(need.stock()) : wanted;
                missing.add(new Shortage(need.name(), Amount.grams(more).inUnitOf(need.unit(unit()))));
            }
        }
        return List.copyOf(missing);
    }

    /**
     * How many whole batches of a size the shelf gives, one after another.
     *
     * @param size the mass of one batch, above 0
     * @return a whole number of batches
     * @throws IllegalArgumentException if the size is not above 0, or each line is to come from one lot and some ingredient stands in several
     *     lines
     */
    public int batchesOf(Amount<Mass> size) {
        Ratio grams = Amount.requirePositive("size", size).canonical();
        if (picking.mixesLots()) {
            return count(grams().dividedBy(grams));
        }
        return needs.stream().mapToInt(need -> batches(need, grams)).min().orElse(0);
    }

    private static int batches(Need need, Ratio grams) {
        if (need.lines().size() > 1) {
            throw new IllegalArgumentException("picking takes each line from one lot, and " + Excerpt.of(need.name())
                    + " stands in several lines: let lots be mixed to count batches, or ask for each batch by itself");
        }
        Ratio one = need.shares().times(grams);
        return need.lots().stream()
                .mapToInt(lot -> count(lot.left().canonical().dividedBy(one)))
                .reduce(0, Math::addExact);
    }

    private static int count(Ratio batches) {
        Ratio whole = batches.floor();
        return whole.compareTo(Ratio.of(Integer.MAX_VALUE)) >= 0
                ? Integer.MAX_VALUE
                : whole.numerator().intValueExact();
    }

    /** The mass, what limits it, and what the next lot opens. */
    @Override
    public String toString() {
        String limit = formula.name() + ": " + told(mass()) + ", limited by " + String.join(", ", limiting());
        return next().map(more -> limit + "; with "
                        + toReachNext().stream()
                                .map(each -> each.told() + " more " + each.ingredientName())
                                .collect(Collectors.joining(" and "))
                        + " " + told(more))
                .orElse(limit);
    }

    /** A greatest batch in few digits, and no larger than it is. */
    private static String told(Amount<Mass> greatest) {
        return BalanceUnit.greatest(greatest, less -> true);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LargestBatch that
                && formula.equals(that.formula)
                && picking.equals(that.picking)
                && needs.equals(that.needs);
    }

    @Override
    public int hashCode() {
        return Objects.hash(formula, picking, needs);
    }
}
