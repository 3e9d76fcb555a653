package io.github.formulationmath.shelf;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.pot.UsedLot;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;

/**
 * Which lot goes into which line, what that costs, and what is left on the shelf. Lots are taken in their order of use; where each line is to
 * come from one lot, the first lots in that order with which all lines can be served.
 *
 * <p>What is taken costs its part of what the lot was bought for: 12 g of a lot of 250 g at 12.50 EUR cost 0.60 EUR, exactly.
 *
 * <p>Immutable and thread-safe.
 */
public final class Taking implements Explained {

    private static final Symbol TAKEN = Symbol.of("m", "taken-from-lot", Kind.MASS);
    private static final Symbol PRICE = Symbol.of("P", "lot-price", Kind.MONEY);
    private static final Symbol CONTENTS = Symbol.of("Q", "lot-contents", Kind.MASS);
    private static final Symbol COST = Symbol.of("K", "lots-cost", Kind.MONEY);

    private final Shelf shelf;
    private final List<Need> needs;
    private final Picking picking;
    private final List<Use> uses;
    private final List<LargestBatch.Shortage> shortages;

    /**
     * So much of a lot for a line.
     *
     * @param line the line
     * @param lot the lot as it stood on the shelf
     * @param mass how much of it goes into the line, above 0
     */
    public record Use(FormulaLine line, Lot lot, Amount<Mass> mass) {

        /**
         * Refuses null.
         *
         * @param line the line
         * @param lot the lot
         * @param mass how much of it
         */
        public Use {
            Objects.requireNonNull(line, "line");
            Objects.requireNonNull(lot, "lot");
            Objects.requireNonNull(mass, "mass");
        }

        @Override
        public String toString() {
            return mass.toldExactly() + " of " + lot.code();
        }
    }

    /** What a line asks for. */
    record Need(FormulaLine line, Amount<Mass> mass) {

        static List<Need> of(Batch batch) {
            return batch.lines().stream()
                    .map(line -> new Need(line.line(), line.mass().withoutWorking()))
                    .filter(Need::isSomething)
                    .toList();
        }

        static List<Need> of(WeighingPlan plan) {
            return plan.lines().stream()
                    .map(line -> new Need(line.line(), line.reading().withoutWorking()))
                    .filter(Need::isSomething)
                    .toList();
        }

        static List<Need> of(Readings readings) {
            return readings.plan().formula().lines().stream()
                    .flatMap(line -> readings.poured(line).map(mass -> new Need(line, mass)).stream())
                    .filter(Need::isSomething)
                    .toList();
        }

        private boolean isSomething() {
            return mass.signum() > 0;
        }
    }

    private Taking(
            Shelf shelf, List<Need> needs, Picking picking, List<Use> uses, List<LargestBatch.Shortage> shortages) {
        this.shelf = shelf;
        this.needs = needs;
        this.picking = picking;
        this.uses = List.copyOf(uses);
        this.shortages = List.copyOf(shortages);
    }

    static Taking of(Shelf shelf, List<Need> needs, Picking picking) {
        Map<String, List<Need>> byName = new LinkedHashMap<>();
        needs.forEach(need -> byName.computeIfAbsent(need.line().ingredient().normalName(), none -> new ArrayList<>())
                .add(need));
        List<Use> uses = new ArrayList<>();
        List<LargestBatch.Shortage> shortages = new ArrayList<>();
        byName.forEach((name, own) -> {
            Draw draw = new Draw(own, shelf.lotsOf(name, picking));
            boolean isEnough = picking.mixesLots() ? draw.mixed() : draw.oneEach(0);
            uses.addAll(draw.uses());
            if (!isEnough) {
                shortages.add(draw.shortage(picking.mixesLots()));
            }
        });
        uses.sort((a, b) -> Integer.compare(a.line().index(), b.line().index()));
        return new Taking(shelf, needs, picking, uses, shortages);
    }

    /** One ingredient, while it is being taken. */
    private static final class Draw {

        private static final int MOST_TRIED = 200_000;

        private final List<Need> needs;
        private final List<Lot> lots;
        private final Ratio[] left;
        private final List<Use> uses = new ArrayList<>();
        private int tried;

        Draw(List<Need> needs, List<Lot> lots) {
            this.needs = needs;
            this.lots = lots;
            this.left = lots.stream().map(lot -> lot.left().canonical()).toArray(Ratio[]::new);
        }

        List<Use> uses() {
            return uses;
        }

        boolean mixed() {
            boolean isEnough = true;
            for (Need need : needs) {
                Ratio open = need.mass().canonical();
                for (int z = 0; z < left.length && open.signum() > 0; z++) {
                    Ratio part = open.min(left[z]);
                    if (part.signum() > 0) {
                        take(need, z, part);
                        open = open.minus(part);
                    }
                }
                isEnough &= open.isZero();
            }
            return isEnough;
        }

        /** Tries the lots in order for each line in turn, and goes back where a later line finds none. */
        boolean oneEach(int number) {
            if (number == needs.size()) {
                return true;
            }
            if (++tried > MOST_TRIED) {
                throw new IllegalArgumentException(
                        "picking takes each line from one lot, and there are too many ways to deal "
                                + needs.size() + " lines of "
                                + Excerpt.of(needs.get(0).line().name()) + " to " + lots.size()
                                + " lots: let lots be mixed, or leave lots out");
            }
            Need need = needs.get(number);
            for (int z = 0; z < left.length; z++) {
                if (left[z].compareTo(need.mass().canonical()) >= 0) {
                    take(need, z, need.mass().canonical());
                    if (oneEach(number + 1)) {
                        return true;
                    }
                    uses.remove(uses.size() - 1);
                    left[z] = left[z].plus(need.mass().canonical());
                }
            }
            return false;
        }

        private void take(Need need, int z, Ratio grams) {
            left[z] = left[z].minus(grams);
            uses.add(new Use(need.line(), lots.get(z), Amount.grams(grams).inUnitOf(need.mass())));
        }

        LargestBatch.Shortage shortage(boolean mixes) {
            Ratio all = needs.stream().map(need -> need.mass().canonical()).reduce(Ratio.ZERO, Ratio::plus);
            Ratio stock = lots.stream().map(lot -> lot.left().canonical()).reduce(Ratio.ZERO, Ratio::plus);
            Amount<Mass> missing = Amount.grams(mixes ? all.minus(stock) : all);
            return new LargestBatch.Shortage(
                    needs.get(0).line().name(), missing.inUnitOf(needs.get(0).mass()));
        }
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
     * Whether the shelf gives all of it.
     *
     * @return true if nothing is short
     */
    public boolean isEnough() {
        return shortages.isEmpty();
    }

    /**
     * What is short.
     *
     * @return an unmodifiable list, one entry for an ingredient; where each line is to come from one lot, a further lot of what is told would do
     */
    public List<LargestBatch.Shortage> shortages() {
        return shortages;
    }

    /**
     * What goes where.
     *
     * @return an unmodifiable list in the order of the lines, and within a line in the order of use
     */
    public List<Use> uses() {
        return uses;
    }

    /**
     * The lots that go into a line.
     *
     * @param line the line
     * @return an unmodifiable list; empty if it needs nothing, or nothing was there
     */
    public List<Lot> lotsOf(FormulaLine line) {
        Objects.requireNonNull(line, "line");
        return uses.stream()
                .filter(use -> use.line().equals(line))
                .map(Use::lot)
                .toList();
    }

    /**
     * The readings with the lots that went into each line, and how much of each: so they stay in the record. A reading with which a lot is
     * noted already keeps what was noted.
     *
     * @param readings what was read of just what was taken here
     * @return the readings with their lots; of what is short no lot is noted
     * @throws IllegalArgumentException if something else was read than was taken: take from the shelf by these readings
     */
    public Readings notedIn(Readings readings) {
        List<Need> read = Need.of(Objects.requireNonNull(readings, "readings"));
        if (!read.equals(needs)) {
            throw new IllegalArgumentException("readings are " + Excerpt.of(readings)
                    + ", which is not what was taken here, " + Excerpt.of(needs)
                    + ": take from the shelf what was read, shelf.take(readings, picking)");
        }
        List<Reading> noted = readings.taken().stream().map(this::noted).toList();
        return readings.isOpen()
                ? Readings.begun(readings.plan(), readings.method(), noted)
                : Readings.of(readings.plan(), readings.method(), noted);
    }

    private Reading noted(Reading reading) {
        Reading noted = reading;
        if (reading.lots().isEmpty()) {
            for (Use use : uses) {
                noted = use.line().equals(reading.line())
                        ? noted.from(UsedLot.of(use.lot().code(), use.mass()))
                        : noted;
            }
        }
        return noted;
    }

    /**
     * What the lots used cost.
     *
     * @return the exact cost, with its working
     * @throws IllegalStateException if something is short, or a lot that is used has no price
     */
    public Money cost() {
        if (!isEnough()) {
            throw new IllegalStateException(
                    "the shelf is short of " + Excerpt.of(shortages) + ": what is not there has no cost");
        }
        for (Use use : uses) {
            if (use.lot().bought().isEmpty()) {
                throw new IllegalStateException("lot " + Excerpt.of(use.lot().code()) + " of "
                        + Excerpt.of(use.lot().ingredientName())
                        + " has no price: say what it was bought for with Lot.boughtAt, 0 if nothing");
            }
        }
        return Money.of(cost(Reckoning.plain()), shelf.currency().orElseThrow())
                .withWorking(taking -> Phrase.of("question.lots-cost"), this, Taking::cost);
    }

    private <V> V cost(Reckoning<V> r) {
        List<V> costs = new ArrayList<>();
        for (Use use : uses) {
            Offer offer = use.lot().bought().orElseThrow();
            int number = shelf.lots().indexOf(use.lot()) + 1;
            Subject lot = Subject.of(
                    Integer.toString(number),
                    use.lot().ingredientName() + " " + use.lot().code());
            Subject there = Subject.of(use.line().subscript() + "," + number, lot.name());
            V mass = r.given(TAKEN, there, use.mass(), Source.user());
            V price = r.given(
                    PRICE,
                    lot,
                    offer.price().number(),
                    Source.written(offer.price().toString()));
            V contents = r.given(
                    CONTENTS,
                    lot,
                    offer.packSize(),
                    Source.written(offer.packSize().toString()));
            costs.add(r.quotient(r.product(mass, price), contents));
        }
        return r.named(COST, r.sum(costs));
    }

    /** As {@link #cost()}. */
    @Override
    public Origin origin() {
        return cost().origin();
    }

    /**
     * The shelf afterwards.
     *
     * @return the same lots, with what is left of each
     */
    public Shelf left() {
        Shelf after = shelf;
        Map<Lot, Ratio> used = new LinkedHashMap<>();
        uses.forEach(use -> used.merge(use.lot(), use.mass().canonical(), Ratio::plus));
        for (Map.Entry<Lot, Ratio> entry : used.entrySet()) {
            Amount<Mass> left = Amount.grams(entry.getKey().left().canonical().minus(entry.getValue()));
            after = after.withLeft(entry.getKey(), left.inUnitOf(entry.getKey().left()));
        }
        return after;
    }

    /** The lots line by line, as a record or a label's file copy names them: {@code Glycerin: 12 g of G-17 and 3 g of G-21}. */
    @Override
    public String toString() {
        Map<FormulaLine, List<Use>> byLine = new LinkedHashMap<>();
        uses.forEach(use ->
                byLine.computeIfAbsent(use.line(), none -> new ArrayList<>()).add(use));
        String taken = byLine.entrySet().stream()
                .map(entry -> entry.getKey().name() + ": "
                        + entry.getValue().stream().map(Use::toString).collect(Collectors.joining(" and ")))
                .collect(Collectors.joining("; "));
        return taken + (isEnough() ? "" : "; short of " + shortages);
    }
}
