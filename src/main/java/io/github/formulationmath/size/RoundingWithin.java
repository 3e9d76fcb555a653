package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Every line has a whole number of divisions within its tolerance, {@code |n − x| ≤ τ·x}; see {@link Bands}. */
record RoundingWithin(Tolerances tolerances) implements OfWeighings {

    @Override
    public Sizes on(Formula formula, Bench bench) {
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(bench, "bench");
        tolerances.checkedFor(formula);
        Ratio d = bench.balance().readability().canonical();
        List<FormulaLine> lines = formula.lines();
        List<Ratio> shares = new ArrayList<>(lines.size());
        List<Ratio> allowed = new ArrayList<>(lines.size());
        for (FormulaLine line : lines) {
            shares.add(line.fraction());
            allowed.add(tolerances.fraction(line));
        }
        Bands bands = Bands.of(shares, allowed, d);
        return sizes(formula, bench, bands, formula.lines());
    }

    @Override
    public Optional<Sizes> forLine(FormulaLine line, Formula formula, Bench bench, WeighingMethod method) {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(bench, "bench");
        Objects.requireNonNull(method, "method");
        tolerances.checkedFor(formula);
        Ratio d = bench.balance().readability().canonical();
        Bands band = Bands.ofLine(line.index(), line.fraction(), tolerances.fraction(line), d);
        return Optional.of(sizes(formula, bench, band, List.of(line)));
    }

    private Sizes sizes(Formula formula, Bench bench, Bands bands, List<FormulaLine> lines) {
        return Sizes.of(
                formula,
                bench,
                new Part(
                        Phrase.of("criterion.rounding-within", tolerances.toString()),
                        bands,
                        new RoundingCertificate(formula, lines, bench.balance(), tolerances)));
    }

    @Override
    public Optional<Bench> showing(Bench bench) {
        return Optional.of(bench.closing(Closure.INDEPENDENT));
    }

    @Override
    public String toString() {
        return "rounding of each line within " + tolerances;
    }
}
