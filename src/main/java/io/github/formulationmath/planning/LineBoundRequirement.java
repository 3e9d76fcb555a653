package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The largest of the lines' least batch masses. */
record LineBoundRequirement(LineBoundCriterion criterion, Formula formula, Balance balance) implements Requirement {

    @Override
    public Optional<Phrase> obstacle() {
        return criterion.obstacle(formula, balance);
    }

    @Override
    public Landing smallest(SearchMeter meter) {
        Landing largest = new Landing(Ratio.ZERO, Landing.NO_LINE);
        for (FormulaLine line : criterion.lines(formula)) {
            Ratio bound = criterion.bound(Reckoning.plain(), formula, balance, line);
            if (largest.line() == Landing.NO_LINE || bound.compareTo(largest.at()) > 0) {
                largest = new Landing(bound, line.index());
            }
        }
        return largest;
    }

    @Override
    public Landing atLeast(Ratio grams, SearchMeter meter) {
        Landing least = smallest(meter);
        return grams.compareTo(least.at()) >= 0 ? new Landing(grams, Landing.NO_LINE) : least;
    }

    @Override
    public Optional<Landing> atMost(Ratio grams, SearchMeter meter) {
        return grams.compareTo(smallest(meter).at()) >= 0
                ? Optional.of(new Landing(grams, Landing.NO_LINE))
                : Optional.empty();
    }

    @Override
    public Ratio unbrokenFrom(Ratio passing) {
        return smallest(new SearchMeter(SearchEffort.standard())).at();
    }

    @Override
    public Optional<Ratio> passesFrom() {
        return Optional.of(smallest(new SearchMeter(SearchEffort.standard())).at());
    }

    @Override
    public <V> V derive(Reckoning<V> r, Landing smallest) {
        List<V> bounds = new ArrayList<>();
        for (FormulaLine line : criterion.lines(formula)) {
            bounds.add(r.named(BatchSymbols.LEAST_FOR, line, criterion.bound(r, formula, balance, line)));
        }
        return r.named(BatchSymbols.LEAST, BatchSymbols.MIN, r.maximum(bounds));
    }

    @Override
    public <V> V edge(Reckoning<V> r, Landing at, boolean fromBelow) {
        return derive(r, at);
    }
}
