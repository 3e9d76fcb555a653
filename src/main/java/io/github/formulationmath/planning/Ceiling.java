package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** Something that keeps a batch from being larger. */
sealed interface Ceiling extends Serializable {

    /** The largest batch in grams. */
    <V> V most(Reckoning<V> r);

    /** What it is, for the reader. */
    Phrase phrase();

    /** The line it concerns, if it is one line. */
    default Optional<FormulaLine> line() {
        return Optional.empty();
    }

    /** What would let a batch of so many grams be made. */
    List<WindowOpening> openingsFor(Ratio grams);

    /** The ceilings of a formula on a bench with a stock. */
    static List<Ceiling> of(Formula formula, Bench bench, BatchConstraints constraints) {
        List<Ceiling> all = new ArrayList<>();
        all.add(new Capacity(bench));
        bench.vessel()
                .workingVolume()
                .ifPresent(volume ->
                        bench.productDensity().ifPresent(density -> all.add(new Room(bench, volume, density))));
        constraints.stock().forEach((name, inStock) -> {
            BatchConstraints.requireLine(formula, name);
            all.add(new Stock(formula, name, inStock));
        });
        return all;
    }

    /** The balance carries vessel and batch together. */
    record Capacity(Bench bench) implements Ceiling {

        private static final Symbol CAPACITY = Symbol.of("C", "capacity", Kind.MASS);
        private static final Symbol VESSEL = Symbol.of("V", "vessel-mass", Kind.MASS);

        @Override
        public <V> V most(Reckoning<V> r) {
            return r.difference(
                    r.given(CAPACITY, bench.balance().capacity().in(FormulationUnits.GRAM), Source.user()),
                    r.given(VESSEL, bench.vessel().mass().in(FormulationUnits.GRAM), Source.user()));
        }

        @Override
        public Phrase phrase() {
            return Phrase.of(
                    "ceiling.capacity",
                    bench.balance().capacity().toString(),
                    bench.vessel().toString());
        }

        @Override
        public List<WindowOpening> openingsFor(Ratio grams) {
            Ratio vessel = bench.vessel().mass().in(FormulationUnits.GRAM);
            Ratio left = bench.balance().capacity().in(FormulationUnits.GRAM).minus(grams);
            List<WindowOpening> openings = new ArrayList<>();
            openings.add(new WindowOpening.HigherCapacity(BalanceUnit.amount(bench.balance(), grams.plus(vessel))));
            if (left.signum() >= 0 && vessel.signum() > 0) {
                openings.add(new WindowOpening.LighterVessel(BalanceUnit.amount(bench.balance(), left)));
            }
            return openings;
        }
    }

    /** The vessel holds the batch. */
    record Room(Bench bench, Amount<Volume> volume, Density density) implements Ceiling {

        private static final Symbol VOLUME = Symbol.of("v", "working-volume", Kind.VOLUME);
        private static final Symbol DENSITY = Symbol.of("ρ", "product-density", Kind.DENSITY);

        @Override
        public <V> V most(Reckoning<V> r) {
            return r.product(
                    r.given(VOLUME, volume.in(FormulationUnits.MILLILITRE), Source.user()),
                    r.given(DENSITY, density.gramsPerMillilitre(), Source.user()));
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("ceiling.volume", volume.toString(), bench.vessel().name());
        }

        @Override
        public List<WindowOpening> openingsFor(Ratio grams) {
            return List.of(new WindowOpening.LargerVessel(density.volumeOf(Amount.grams(grams))));
        }
    }

    /** There is so much of an ingredient. */
    record Stock(Formula formula, String name, Amount<Mass> inStock) implements Ceiling {

        private static final Symbol STOCK = Symbol.of("q", "stock", Kind.MASS);

        @Override
        public <V> V most(Reckoning<V> r) {
            List<V> shares = lines().stream().map(line -> r.known(line)).toList();
            V stock = r.given(STOCK, lines().get(0), inStock.in(FormulationUnits.GRAM), Source.user());
            return r.quotient(stock, shares.size() == 1 ? shares.get(0) : r.sum(shares));
        }

        private List<FormulaLine> lines() {
            return formula.lines().stream().filter(line -> line.isNamed(name)).toList();
        }

        @Override
        public Phrase phrase() {
            return Phrase.of("ceiling.stock", name, inStock.toString());
        }

        @Override
        public Optional<FormulaLine> line() {
            return Optional.of(lines().get(0));
        }

        @Override
        public List<WindowOpening> openingsFor(Ratio grams) {
            Amount<Mass> needed = Amount.grams(grams.times(BatchConstraints.shareOf(formula, name)));
            return List.of(new WindowOpening.MoreStock(name, needed.to(inStock.getUnit())));
        }
    }
}
