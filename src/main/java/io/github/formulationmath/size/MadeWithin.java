package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.ReadingEnds;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Phrase;
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
                formula, bench, new Part(name(), bands, new MadeCertificate(closing(Bench.of(bench.balance())), ends)));
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

    @Override
    public String toString() {
        return "every share as made within " + tolerances
                + (readingError.isZero() ? "" : ", readings off by up to " + readingError);
    }
}
