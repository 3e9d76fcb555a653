package io.github.formulationmath.figures;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.Sizes;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.annotations.XYBoxAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The largest relative rounding error of any line against the batch size: a saw-tooth, with its windows. */
final class SawTooth {

    private static final Formula FORMULA = Formulas.sawTooth("six lines");
    private static final Balance BALANCE = Balance.of("0.1 g", "5 kg");
    private static final int LARGEST = 250;
    private static final int STEPS_PER_GRAM = 4;
    private static final double TOP = 36;
    private static final Rounding FOUR = Rounding.toDecimalPlaces(4);

    private static final Grammar.Place X = Grammar.Place.number("x", "from g");
    private static final Grammar.Place Y = Grammar.Place.number("y", "to g or %");

    private SawTooth() {}

    static Figure draw() {
        XYSeries worst = new XYSeries("worst line");
        List<String> rows = new ArrayList<>();
        for (int i = 15 * STEPS_PER_GRAM; i <= LARGEST * STEPS_PER_GRAM; i++) {
            Ratio grams = Ratio.of(i, STEPS_PER_GRAM);
            Ratio percent = worst(grams).times(100);
            worst.add(grams.doubleValue(), percent.doubleValue());
            rows.add("error," + FOUR.format(grams) + "," + FOUR.format(percent));
        }
        NumberAxis domain = Ink.axis("batch mass in g");
        domain.setRange(15, LARGEST);
        domain.setTickUnit(new NumberTickUnit(20));
        NumberAxis range = Ink.axis("largest relative rounding error of any line in %");
        range.setRange(0, TOP);
        XYLineAndShapeRenderer line = new XYLineAndShapeRenderer(true, false);
        line.setDrawSeriesLineAsPath(true);
        line.setSeriesPaint(0, Ink.DARK);
        line.setSeriesStroke(0, Ink.SOLID);
        XYPlot plot = new XYPlot(new XYSeriesCollection(worst), domain, range, line);
        Ink.grid(plot);
        windows(plot, rows);
        notes(plot);
        return new Figure(
                "error-against-batch-size",
                "kind,from g,to g or %",
                rows,
                Ink.chart(
                        "A larger batch is not always better (display 0.1 g)",
                        plot,
                        "Aqua 70, oil 20, emulsifier 5, glycerin 3, thickener 1.5, preservative 0.5 %; ties to even"),
                1000,
                600,
                "Saw-tooth: the largest relative rounding error of any line, in per cent, against batch masses from 15 to 250 g."
                        + " It peaks at 33 % at 15 g and again at 30 g, where the smallest line of 0.15 g is shown as 0.1 or 0.2 g,"
                        + " and falls in teeth. Batches within 5 % lie in islands, 20 g and some from 38 g on; 190 g fails;"
                        + " from 190.48 g on every batch passes.",
                Grammar.NOTHING
                        .with("line", "datum.kind === 'error'", X, Y)
                        .with("rule", "datum.kind === 'passes'", X, Grammar.Place.end("x2", "to g or %")));
    }

    private static Ratio worst(Ratio grams) {
        Batch batch = Batch.of(FORMULA, BatchSize.ofMass(Amount.grams(grams)));
        return WeighingPlan.of(batch, BALANCE).lines().stream()
                .map(line -> line.relativeRoundingError().canonical())
                .reduce(Ratio::max)
                .orElseThrow();
    }

    private static void windows(XYPlot plot, List<String> rows) {
        Sizes sizes = Criterion.roundingWithin(Tolerances.of("5 %")).on(FORMULA, Bench.of(BALANCE));
        sizes.islands().forEach(island -> {
            Ratio low = island.least().canonical();
            Ratio high = island.greatest().canonical();
            rows.add("passes," + FOUR.format(low) + "," + FOUR.format(high));
            passes(plot, low, high);
        });
        Ratio ray = sizes.allFrom().orElseThrow().canonical();
        rows.add("passes," + FOUR.format(ray) + ",no end");
        passes(plot, ray, Ratio.of(LARGEST));
    }

    private static void passes(XYPlot plot, Ratio low, Ratio high) {
        plot.addAnnotation(new XYBoxAnnotation(
                low.doubleValue(), 0, high.doubleValue(), 5, Ink.THIN, Ink.BLACK, new Color(0, 0, 0, 60)));
    }

    private static void notes(XYPlot plot) {
        ValueMarker tolerance = new ValueMarker(5, Ink.BLACK, Ink.DASHED);
        plot.addRangeMarker(tolerance);
        ValueMarker from = new ValueMarker(4000d / 21, Ink.BLACK, Ink.DOTTED);
        plot.addDomainMarker(from);
        Ink.write(plot, "peak: 0.15 g is shown as 0.1 or 0.2 g, 33 % off", 32, 33.4, TextAnchor.CENTER_LEFT);
        Ink.write(plot, "tolerance 5 %", LARGEST - 1, 5.5, TextAnchor.BOTTOM_RIGHT);
        Ink.write(plot, "grey boxes: sizes that pass", 120, 20, TextAnchor.BOTTOM_LEFT);
        Ink.write(plot, "20 g passes, 22 to 38 g fail", 36, 29.5, TextAnchor.BOTTOM_LEFT);
        Ink.write(plot, "190 g fails", 188.5, 11, TextAnchor.BOTTOM_RIGHT);
        Ink.write(plot, "from 190.48 g on", 192, 13.4, TextAnchor.BOTTOM_LEFT);
        Ink.write(plot, "every batch passes", 192, 11, TextAnchor.BOTTOM_LEFT);
    }
}
