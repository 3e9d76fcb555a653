package io.github.formulationmath.size;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.plan.ReadingEnds;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/** Whole readings that add up keep every made share within tolerance; see {@link ClosedBands}. */
record MadeWithin(Tolerances tolerances, Amount<Mass> readingError) implements OfWeighings {

    @Override
    public Sizes on(Formula formula, Bench bench) {
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(bench, "bench");
        tolerances.checkedFor(formula);
        Ratio d = bench.balance().readability().canonical();
        Ratio error = readingError.canonical().dividedBy(d);
        ClosedBands bands = ClosedBands.of(
                formula.lines().stream().map(FormulaLine::fraction).toList(),
                formula.lines().stream().map(tolerances::fraction).toList(),
                error,
                d);
        if (bands.hopelessLine().isPresent()) {
            FormulaLine line = formula.lines().get(bands.hopelessLine().getAsInt());
            return Sizes.none(formula, bench, Phrase.of("obstacle.exact-line-inexact-reading", line.name()));
        }
        ReadingEnds ends = new ReadingEnds(formula, tolerances, error);
        return Sizes.of(
                formula, bench, new Part(this::name, bands, new Certificate(closing(Bench.of(bench.balance())), ends)));
    }

    private Phrase name() {
        return readingError.isZero()
                ? Phrase.of("criterion.made-within", tolerances.toString())
                : Phrase.of("criterion.made-within-error", tolerances.toString(), readingError.toString());
    }

    @Override
    public Optional<Bench> showing(Bench bench) {
        return Optional.of(closing(bench));
    }

    private Bench closing(Bench bench) {
        return bench.closingWithin(tolerances, readingError);
    }

    /**
     * Shows that the readings of a bench that closes within tolerance keep every share within it, and what stands against one
     * division less. Smaller totals were excluded by the search in the same way; the working says so.
     */
    private record Certificate(Bench bench, ReadingEnds ends) implements Part.Proof {

        private static final Symbol SHOWN = Symbol.of("n", "chosen-divisions", Kind.NUMBER);
        private static final Symbol TOTAL = Symbol.of("N", "made-divisions", Kind.NUMBER);
        private static final Symbol LESS = Symbol.of("N", "one-division-less", Kind.NUMBER);
        private static final Symbol LEAST_OF_LESS = Symbol.of("a", "least-divisions-of-less", Kind.NUMBER);
        private static final Symbol MOST_OF_LESS = Symbol.of("b", "most-divisions-of-less", Kind.NUMBER);

        @Override
        public <V> V smallest(Reckoning<V> r, Landing smallest) {
            V total = total(r, smallest.at());
            oneLess(r, total);
            return r.named(LEAST, MIN, inGrams(r, total));
        }

        @Override
        public <V> V edge(Reckoning<V> r, Landing at, boolean fromBelow) {
            return inGrams(r, total(r, at.at()));
        }

        private <V> V inGrams(Reckoning<V> r, V total) {
            return r.product(total, Divisions.readability(r, bench.balance()));
        }

        /** The readings add up to N, and each lies between the ends that N sets it. */
        private <V> V total(Reckoning<V> r, Ratio grams) {
            Formula formula = ends.formula();
            List<Ratio> readings = Divisions.of(Batch.of(formula, BatchSize.ofMass(Amount.grams(grams))), bench);
            List<V> shown = new ArrayList<>(readings.size());
            for (int i = 0; i < readings.size(); i++) {
                shown.add(r.named(SHOWN, formula.lines().get(i), r.literal(readings.get(i))));
            }
            V total = r.named(TOTAL, r.sum(shown));
            ends.enclose(r, shown, total);
            return total;
        }

        /** One division less: a line whose band holds no whole number, or ends whose sums do not enclose the total. */
        private <V> void oneLess(Reckoning<V> r, V total) {
            Ratio number = r.number(total).minus(Ratio.ONE);
            if (number.signum() <= 0) {
                return;
            }
            r.note(() -> Phrase.of("note.smaller-totals-excluded"));
            V less = r.named(LESS, Subject.of("less", ""), r.difference(total, r.literal(1)));
            Reckoning<Ratio> plain = Reckoning.plain();
            Ratio least = Ratio.ZERO;
            for (FormulaLine line : ends.formula().lines()) {
                Ratio own = ends.least(plain, line, number);
                if (own.compareTo(ends.most(plain, line, number)) > 0) {
                    r.holds(leastOfLess(r, line, less), Comparison.GREATER, mostOfLess(r, line, less));
                    return;
                }
                least = least.plus(own);
            }
            boolean tooMuch = least.compareTo(number) > 0;
            List<V> sum = new ArrayList<>();
            ends.formula()
                    .lines()
                    .forEach(line -> sum.add(tooMuch ? leastOfLess(r, line, less) : mostOfLess(r, line, less)));
            r.holds(r.sum(sum), tooMuch ? Comparison.GREATER : Comparison.LESS, less);
        }

        private <V> V leastOfLess(Reckoning<V> r, FormulaLine line, V less) {
            return r.named(LEAST_OF_LESS, line, ends.least(r, line, less));
        }

        private <V> V mostOfLess(Reckoning<V> r, FormulaLine line, V less) {
            return r.named(MOST_OF_LESS, line, ends.most(r, line, less));
        }
    }

    @Override
    public String toString() {
        return "every share as made within " + tolerances
                + (readingError.isZero() ? "" : ", readings off by up to " + readingError);
    }
}
