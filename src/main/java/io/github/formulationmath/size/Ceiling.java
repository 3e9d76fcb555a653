package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.PlannedLoad;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** Something that keeps a batch from being larger. */
sealed interface Ceiling extends WindowBound {

    /** The largest batch in grams. */
    <V> V most(Reckoning<V> r);

    /** A mass above which no batch is within it. */
    Ratio bound();

    /** Whether a batch of so many grams is within it. */
    boolean allows(Ratio grams);

    /** The relation that shows a batch at which the ceiling ends a window: {@link #most}, or one beyond that it allows. */
    <V> V shown(Reckoning<V> r, Ratio grams);

    @Override
    default <V> V shown(Reckoning<V> r, Landing at, boolean lower) {
        return shown(r, at.at());
    }

    @Override
    default Optional<FormulaLine> line(Formula formula, Landing at) {
        return Optional.empty();
    }

    /** What would let a batch of so many grams be made, each by itself, as far as this ceiling goes. */
    List<WindowOpening> openingsFor(Ratio grams);

    /** The ceilings of a formula on a bench with a stock; what is weighed may be a formula with dilutions in it. */
    static List<Ceiling> of(Formula formula, Formula weighed, Bench bench, BatchConstraints constraints) {
        Amount<Mass> step = constraints.step().orElse(null);
        PlannedLoad load = new PlannedLoad(weighed, constraints.benches(bench), step);
        List<Ceiling> all = new ArrayList<>();
        all.add(new Capacity(bench, load));
        bench.vessel()
                .workingVolume()
                .ifPresent(volume ->
                        bench.productDensity().ifPresent(density -> all.add(new Room(bench, volume, density, load))));
        constraints.stock().forEach((name, inStock) -> {
            BatchConstraints.requireLine(formula, name);
            // Of a dilution the readings are of other lines than those of the stock: there the exact masses count.
            List<Bench> planned = weighed.equals(formula) ? constraints.benches(bench) : List.of();
            all.add(new Stock(new StockLimit(formula, name, planned), inStock));
        });
        return all;
    }

    /** There is so much room for what the plan of a batch brings. */
    sealed interface OfLoad extends Ceiling {

        /**
         * How the room is held against a batch.
         *
         * @return the limit of the load
         */
        PlannedLoad limit();

        /**
         * The room.
         *
         * @param r what is reckoned with
         * @param <V> what stands for a number there
         * @return the largest load in grams
         */
        <V> V room(Reckoning<V> r);

        @Override
        default Ratio bound() {
            return room(Reckoning.plain());
        }

        @Override
        default <V> V most(Reckoning<V> r) {
            return limit().most(r, room(r));
        }

        @Override
        default boolean allows(Ratio grams) {
            return limit().allows(Amount.grams(room(Reckoning.plain())), Amount.grams(grams));
        }

        @Override
        default <V> V shown(Reckoning<V> r, Ratio grams) {
            return limit().shown(r, room(r), Amount.grams(grams));
        }
    }

    /** The balance carries vessel and batch together, the batch as its plan reads. */
    record Capacity(Bench bench, PlannedLoad limit) implements OfLoad {

        private static final Symbol CAPACITY = Symbol.of("C", "capacity", Kind.MASS);
        private static final Symbol VESSEL = Symbol.of("V", "vessel-mass", Kind.MASS);

        @Override
        public <V> V room(Reckoning<V> r) {
            return r.difference(
                    r.given(CAPACITY, bench.balance().capacity(), Source.user()),
                    r.given(VESSEL, bench.vessel().mass(), Source.user()));
        }

        @Override
        public Phrase name() {
            return Phrase.of(
                    "ceiling.capacity",
                    bench.balance().capacity().toString(),
                    bench.vessel().toString());
        }

        @Override
        public List<WindowOpening> openingsFor(Ratio grams) {
            Amount<Mass> load = limit.forBatch(Amount.grams(grams));
            Amount<Mass> vessel = bench.vessel().mass();
            Amount<Mass> left = bench.balance().capacity().minus(load).inUnitOf(load);
            List<WindowOpening> openings = new ArrayList<>();
            openings.add(new WindowOpening.HigherCapacity(load.plus(vessel)));
            if (left.signum() > 0 && vessel.signum() > 0) {
                openings.add(new WindowOpening.LighterVessel(left));
            }
            return openings;
        }
    }

    /** The vessel holds the batch, as its plan reads. */
    record Room(Bench bench, Amount<Volume> volume, Density density, PlannedLoad limit) implements OfLoad {

        private static final Symbol VOLUME = Symbol.of("v", "working-volume", Kind.VOLUME);
        private static final Symbol DENSITY = Symbol.of("ρ", "product-density", Kind.DENSITY);

        @Override
        public <V> V room(Reckoning<V> r) {
            return r.product(
                    r.given(VOLUME, volume, Source.user()),
                    r.given(DENSITY, density.gramsPerMillilitre(), Source.user()));
        }

        @Override
        public Phrase name() {
            return Phrase.of("ceiling.volume", volume.toString(), bench.vessel().name());
        }

        @Override
        public List<WindowOpening> openingsFor(Ratio grams) {
            return List.of(new WindowOpening.LargerVessel(density.volumeOf(limit.forBatch(Amount.grams(grams)))));
        }
    }

    /** There is so much of an ingredient, of which the readings of the plan must not need more. */
    record Stock(StockLimit limit, Amount<Mass> inStock) implements Ceiling {

        private static final Symbol STOCK = Symbol.of("q", "stock", Kind.MASS);

        @Override
        public Ratio bound() {
            return exact(Reckoning.plain());
        }

        private <V> V stock(Reckoning<V> r) {
            return r.given(STOCK, limit.lines().get(0), inStock, Source.user());
        }

        private <V> V exact(Reckoning<V> r) {
            return r.quotient(stock(r), share(r));
        }

        private <V> V share(Reckoning<V> r) {
            List<V> shares = limit.lines().stream().map(line -> r.known(line)).toList();
            return r.sum(shares);
        }

        @Override
        public <V> V most(Reckoning<V> r) {
            Ratio most = limit.most(inStock.canonical());
            return most.equals(bound()) ? exact(r) : shown(r, most);
        }

        @Override
        public boolean allows(Ratio grams) {
            return limit.needed(grams).compareTo(inStock.canonical()) <= 0;
        }

        @Override
        public <V> V shown(Reckoning<V> r, Ratio grams) {
            if (grams.equals(bound())) {
                return exact(r);
            }
            // Less than all of it goes in because of the readings, so there is a display.
            V size = WindowBound.inDivisions(r, grams, limit.benches().get(0).balance());
            r.holds(r.product(size, share(r)), Comparison.AT_MOST, stock(r));
            return size;
        }

        @Override
        public Phrase name() {
            return Phrase.of("ceiling.stock", limit.name(), inStock.toString());
        }

        @Override
        public Optional<FormulaLine> line(Formula formula, Landing at) {
            return Optional.of(limit.lines().get(0));
        }

        @Override
        public List<WindowOpening> openingsFor(Ratio grams) {
            Amount<Mass> needed = Amount.grams(limit.needed(grams));
            return List.of(new WindowOpening.MoreStock(limit.name(), needed.inUnitOf(inStock)));
        }
    }
}
