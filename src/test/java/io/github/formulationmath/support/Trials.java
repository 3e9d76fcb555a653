package io.github.formulationmath.support;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.series.SeriesPlan;
import io.github.formulationmath.series.TrialSeries;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import java.util.Optional;

/** Trials of one idea that differ in glycerin and perfume. */
public final class Trials {

    /** A display of 0.1 g, on which 0.2 % of perfume take 50 g for a division. */
    public static final Bench COARSE = Bench.of(Balance.of("0.1 g", "500 g"));

    public static final List<Formula> FIVE = List.of(
            lotion("Plain", "3 %", "0.2 %"),
            lotion("Richer", "5 %", "0.2 %"),
            lotion("Rich", "8 %", "0.2 %"),
            lotion("Scent", "3 %", "0.4 %"),
            lotion("More scent", "3 %", "0.6 %"));

    /** Without a preservative. */
    public static final List<Formula> THREE =
            List.of(plain("Plain", "3 %", "0.5 %"), plain("Richer", "5 %", "0.5 %"), plain("Scent", "3 %", "1 %"));

    private Trials() {}

    private static Formula lotion(String name, String glycerin, String perfume) {
        return Formula.inPercent(name)
                .phase("water")
                .quantitySufficient("Aqua")
                .line("Glycerin", glycerin)
                .phase("oil")
                .line("Avena Sativa Kernel Oil", "12 %")
                .line("Glyceryl Stearate SE", "5 %")
                .phase("cool-down")
                .line("Phenoxyethanol", "0.9 %")
                .line("Parfum", perfume)
                .build();
    }

    private static Formula plain(String name, String glycerin, String perfume) {
        return Formula.inPercent(name)
                .phase("water")
                .quantitySufficient("Aqua")
                .line("Glycerin", glycerin)
                .phase("oil")
                .line("Oil", "12 %")
                .line("Emulsifier", "5 %")
                .phase("cool-down")
                .line("Parfum", perfume)
                .build();
    }

    /** The plan by a way that the series must have. */
    public static SeriesPlan way(TrialSeries series, SeriesPlan.Way way) {
        return wayIfAny(series, way).orElseThrow();
    }

    public static Optional<SeriesPlan> wayIfAny(TrialSeries series, SeriesPlan.Way way) {
        return series.ways().stream().filter(plan -> plan.way() == way).findFirst();
    }
}
