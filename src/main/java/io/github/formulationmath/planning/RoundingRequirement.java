package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Reckoning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Every line has a whole number of divisions within its tolerance; see {@link Bands}. */
final class RoundingRequirement implements Requirement {

    private final Formula formula;
    private final Balance balance;
    private final Tolerances tolerances;
    private final Ratio d;
    private final Bands bands;

    RoundingRequirement(Formula formula, Balance balance, Tolerances tolerances) {
        this.formula = formula;
        this.balance = balance;
        this.tolerances = tolerances;
        this.d = balance.readability().canonical();
        List<FormulaLine> lines = formula.lines();
        List<Ratio> weights = new ArrayList<>(lines.size());
        List<Ratio> taus = new ArrayList<>(lines.size());
        for (FormulaLine line : lines) {
            weights.add(line.fraction());
            taus.add(tolerances.fraction(line));
        }
        this.bands = Bands.of(weights, taus);
    }

    Bands bands() {
        return bands;
    }

    Ratio readability() {
        return d;
    }

    /** What is asked, in short. */
    String describe() {
        return formula.name() + " on d = " + balance.readability() + ", " + new RoundingWithin(tolerances);
    }

    @Override
    public Landing smallest(SearchMeter meter) {
        return inGrams(bands.smallest(meter));
    }

    @Override
    public Landing atLeast(Ratio grams, SearchMeter meter) {
        return inGrams(bands.atLeast(grams.dividedBy(d), meter));
    }

    @Override
    public Optional<Landing> atMost(Ratio grams, SearchMeter meter) {
        return bands.atMost(grams.dividedBy(d), meter).map(this::inGrams);
    }

    @Override
    public Optional<Ratio> grid() {
        return bands.period().map(period -> period.times(d));
    }

    @Override
    public Ratio unbrokenFrom(Ratio passing) {
        return bands.startAround(passing.dividedBy(d)).times(d);
    }

    @Override
    public Optional<Ratio> passesFrom() {
        return bands.allFrom().map(start -> start.times(d));
    }

    private Landing inGrams(Landing inDivisions) {
        return new Landing(inDivisions.at().times(d), inDivisions.line());
    }

    @Override
    public <V> V derive(Reckoning<V> r, Landing smallest) {
        return new RoundingCertificate(formula, balance, tolerances).derive(r, smallest);
    }

    @Override
    public <V> V edge(Reckoning<V> r, Landing at, boolean fromBelow) {
        return new RoundingCertificate(formula, balance, tolerances).edge(r, at, fromBelow);
    }
}
