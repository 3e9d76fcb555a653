package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;

/** Whole readings that add up to N keep every share within tolerance; see {@link ClosedSearch}. */
final class MadeRequirement implements Requirement {

    private final Formula formula;
    private final Balance balance;
    private final Tolerances tolerances;
    private final Ratio d;
    private final Amount<Mass> readingError;
    private final Ratio error;
    private final ClosedSearch search;

    MadeRequirement(Formula formula, Balance balance, Tolerances tolerances, Amount<Mass> readingError) {
        this.formula = formula;
        this.balance = balance;
        this.tolerances = tolerances;
        this.d = balance.readability().canonical();
        this.readingError = readingError;
        this.error = readingError.in(FormulationUnits.GRAM).dividedBy(d);
        List<FormulaLine> lines = formula.lines();
        this.search = new ClosedSearch(
                lines.stream().map(FormulaLine::fraction).toList(),
                lines.stream().map(tolerances::fraction).toList(),
                error);
    }

    @Override
    public Optional<Phrase> obstacle() {
        return search.hopelessLine()
                .map(line -> Phrase.of(
                        "obstacle.exact-line-inexact-reading",
                        formula.lines().get(line).name()));
    }

    @Override
    public Landing smallest(SearchMeter meter) {
        return inGrams(search.atLeast(Ratio.ONE, meter));
    }

    @Override
    public Landing atLeast(Ratio grams, SearchMeter meter) {
        return inGrams(search.atLeast(grams.dividedBy(d), meter));
    }

    @Override
    public Optional<Landing> atMost(Ratio grams, SearchMeter meter) {
        return search.atMost(grams.dividedBy(d), meter).map(this::inGrams);
    }

    @Override
    public Optional<Ratio> grid() {
        return Optional.of(search.period().times(d));
    }

    @Override
    public Ratio unbrokenFrom(Ratio passing) {
        return passing;
    }

    @Override
    public Optional<Ratio> passesFrom() {
        return search.allFrom().map(total -> total.times(d));
    }

    /** Whole readings that add up to the batch and keep every share within tolerance: those of the closure. */
    List<Ratio> readings(Ratio grams) {
        return new ClosingGoal(tolerances, readingError).readings(formula, grams.dividedBy(d), d);
    }

    private Landing inGrams(Landing total) {
        return new Landing(total.at().times(d), total.line());
    }

    @Override
    public <V> V derive(Reckoning<V> r, Landing smallest) {
        return new MadeCertificate(formula, balance, tolerances, error, readings(smallest.at())).derive(r, search);
    }

    @Override
    public <V> V edge(Reckoning<V> r, Landing at, boolean fromBelow) {
        MadeCertificate certificate = new MadeCertificate(formula, balance, tolerances, error, readings(at.at()));
        return r.product(certificate.total(r), BatchSymbols.readability(r, balance));
    }
}
