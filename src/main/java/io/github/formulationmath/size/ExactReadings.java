package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import java.util.Objects;

/** Every line a whole number of divisions: the batch is a multiple of d·L. */
record ExactReadings() implements OfWeighings {

    @Override
    public Sizes on(Formula formula, Bench bench) {
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(bench, "bench");
        Ratio period = SizeSearch.Multiples.commonPeriod(
                formula.lines().stream().map(FormulaLine::fraction).toList());
        Balance balance = bench.balance();
        return Sizes.of(
                formula,
                bench,
                new Part(
                        () -> Phrase.of("criterion.exact-readings"),
                        new SizeSearch.Multiples(
                                period.times(balance.readability().canonical())),
                        new Whole(formula, balance, period)));
    }

    /** Every line is whole at L; that their whole numbers have no common divisor shows that no smaller L does it. */
    private record Whole(Formula formula, Balance balance, Ratio period) implements Part.Proof {

        private static final Symbol PERIOD = Symbol.of("L", "common-period", Kind.NUMBER);
        private static final Symbol WHOLE = Symbol.of("n", "whole-divisions", Kind.NUMBER);

        @Override
        public <V> V smallest(Reckoning<V> r, Landing smallest) {
            V l = r.named(PERIOD, r.literal(period));
            for (FormulaLine line : formula.lines()) {
                V whole = r.named(WHOLE, line, r.product(r.known(line), l));
                r.holds(whole, Comparison.EQUAL, r.rounded(whole, Rounding.toDecimalPlaces(0)));
            }
            r.note(() -> Phrase.of("note.no-common-divisor"));
            return r.named(LEAST, MIN, r.product(l, Divisions.readability(r, balance)));
        }

        @Override
        public <V> V edge(Reckoning<V> r, Landing at, boolean fromBelow) {
            Ratio smallest = period.times(balance.readability().canonical());
            return r.product(r.literal(at.at().dividedBy(smallest)), smallest(r, at));
        }
    }

    @Override
    public String toString() {
        return "every line a whole number of divisions";
    }
}
