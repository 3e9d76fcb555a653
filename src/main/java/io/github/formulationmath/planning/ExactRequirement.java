package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Comparison;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Symbol;
import java.util.Optional;

/** The batch is a multiple of d·L. */
final class ExactRequirement implements Requirement {

    private static final Symbol PERIOD = Symbol.of("L", "common-period", Kind.NUMBER);
    private static final Symbol WHOLE = Symbol.of("n", "whole-divisions", Kind.NUMBER);

    private final Formula formula;
    private final Balance balance;
    private final Ratio period;
    private final StepRequirement multiples;

    ExactRequirement(Formula formula, Balance balance) {
        this.formula = formula;
        this.balance = balance;
        this.period = CommonPeriod.of(
                formula.lines().stream().map(FormulaLine::fraction).toList());
        this.multiples = new StepRequirement(period.times(balance.readability().canonical()));
    }

    @Override
    public Landing smallest(SearchMeter meter) {
        return multiples.smallest(meter);
    }

    @Override
    public Landing atLeast(Ratio grams, SearchMeter meter) {
        return multiples.atLeast(grams, meter);
    }

    @Override
    public Optional<Landing> atMost(Ratio grams, SearchMeter meter) {
        return multiples.atMost(grams, meter);
    }

    @Override
    public Optional<Ratio> grid() {
        return multiples.grid();
    }

    @Override
    public Ratio unbrokenFrom(Ratio passing) {
        return passing;
    }

    @Override
    public Optional<Ratio> passesFrom() {
        return Optional.empty();
    }

    /** Every line is whole at L; that their whole numbers have no common divisor shows that no smaller L does it. */
    @Override
    public <V> V derive(Reckoning<V> r, Landing smallest) {
        V l = r.named(PERIOD, r.literal(period));
        for (FormulaLine line : formula.lines()) {
            V whole = r.named(WHOLE, line, r.product(r.known(line), l));
            r.holds(whole, Comparison.EQUAL, r.rounded(whole, Rounding.toDecimalPlaces(0)));
        }
        r.note(() -> Phrase.of("note.no-common-divisor"));
        return r.named(BatchSymbols.LEAST, BatchSymbols.MIN, r.product(l, BatchSymbols.readability(r, balance)));
    }

    @Override
    public <V> V edge(Reckoning<V> r, Landing at, boolean fromBelow) {
        V multiple = r.literal(at.at().dividedBy(multiples.step()));
        return r.product(multiple, derive(r, new Landing(multiples.step(), Landing.NO_LINE)));
    }
}
