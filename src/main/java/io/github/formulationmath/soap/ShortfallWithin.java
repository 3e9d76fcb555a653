package io.github.formulationmath.soap;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.Criterion.KeptSum;
import io.github.formulationmath.size.Sizes;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.Optional;

/** Both ends of a shortfall at once, each a sum that is kept. */
record ShortfallWithin(
        ShortfallEnd least, ShortfallEnd greatest, WeighingMethod method, Optional<CoverageFactor> coverage)
        implements Criterion {

    ShortfallWithin {
        if (least.end().compareTo(greatest.end()) > 0) {
            throw new IllegalArgumentException("least is " + Excerpt.of(least.end()) + ", greatest is "
                    + Excerpt.of(greatest.end()) + ": the two may have been exchanged");
        }
    }

    @Override
    public Sizes on(Formula formula, Bench bench) {
        return kept(least).on(formula, bench).and(kept(greatest).on(formula, bench));
    }

    private Criterion kept(KeptSum sum) {
        return coverage.map(factor -> Criterion.sumKept(sum, method, factor))
                .orElseGet(() -> Criterion.sumKept(sum, method));
    }

    @Override
    public String toString() {
        return "shortfall within " + least.end() + " to " + greatest.end();
    }
}
