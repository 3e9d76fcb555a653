package io.github.formulationmath.figures;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.size.BatchConstraints;
import io.github.formulationmath.size.BatchWindow;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYDifferenceRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.chart.util.ShapeUtils;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The smallest batch under three criteria, and the largest that the bench allows, against the step of the display. */
final class WindowAgainstReadability {

    private static final Formula FORMULA = Formulas.sawTooth("cream");
    private static final List<String> STEPS =
            List.of("0.001", "0.002", "0.005", "0.01", "0.02", "0.05", "0.1", "0.2", "0.5", "1", "2", "5");
    private static final int LARGEST = 1786;
    private static final Tolerances FIVE = Tolerances.of("5 %");
    private static final Rounding FOUR = Rounding.toDecimalPlaces(4);

    private WindowAgainstReadability() {}

    static Figure draw() {
        List<String> rows = new ArrayList<>();
        XYSeries errors = new XYSeries("worst error");
        XYSeries rounding = new XYSeries("rounding");
        XYSeries division = new XYSeries("one division");
        for (String step : STEPS) {
            double d = Ratio.parse(step).doubleValue();
            Criterion bound = Criterion.errorBound(FIVE, WeighingMethod.TARE_EACH);
            errors.add(d, row(rows, "worst error within 5 %", step, smallest(step, bound)));
            rounding.add(d, row(rows, "every batch rounds within 5 %", step, allFrom(step)));
            division.add(d, row(rows, "one division", step, smallest(step, Criterion.oneDivision())));
        }
        return new Figure(
                "window-against-readability",
                "criterion,readability g,smallest batch g,window",
                rows,
                Ink.chart(
                        "The finer the display, the smaller the batch",
                        plot(List.of(errors, rounding, division)),
                        "Aqua 70, oil 20, emulsifier 5, glycerin 3, thickener 1.5, preservative 0.5 %",
                        "balance of 2 kg, beaker of 214 g; both axes logarithmic"),
                1000,
                660,
                "Batch mass against readability, 0.001 g to 5 g, both logarithmic: three straight rising lines. The highest is the"
                        + " smallest batch whose worst error is within 5 % (6 g at 0.001 g, 600 g at 0.1 g), then the size from"
                        + " which on every batch rounds within 5 %, then one division for every line. A level line at 1786 g is the"
                        + " largest batch; the window between it and the highest line closes at about 0.3 g.",
                Grammar.NOTHING.with(
                        "line",
                        "",
                        Grammar.Place.logarithmic("x", "readability g"),
                        Grammar.Place.logarithmic("y", "smallest batch g"),
                        Grammar.Place.name("strokeDash", "criterion")));
    }

    private static double row(List<String> rows, String name, String step, Ratio smallest) {
        String window = smallest.compareTo(Ratio.of(LARGEST)) <= 0 ? "open" : "empty";
        rows.add(name + "," + step + "," + FOUR.format(smallest) + "," + window);
        return smallest.doubleValue();
    }

    private static Ratio smallest(String step, Criterion criterion) {
        Bench bench = Bench.of(Balance.of(step + " g", "2000 g")).with(Vessel.of("beaker", "214 g"));
        BatchWindow window = BatchWindow.of(FORMULA, bench, BatchConstraints.of(criterion));
        BatchWindow.End end = window instanceof BatchWindow.Feasible found
                ? found.lowerEnd()
                : ((BatchWindow.Empty) window).smallestNeeded().orElseThrow();
        return end.mass().canonical();
    }

    private static Ratio allFrom(String step) {
        return Criterion.roundingWithin(FIVE)
                .on(FORMULA, Bench.of(Balance.of(step + " g", "2000 g")))
                .allFrom()
                .orElseThrow()
                .in(FormulationUnits.GRAM);
    }

    private static XYPlot plot(List<XYSeries> lines) {
        LogAxis domain = Ink.logAxis("readability d in g");
        domain.setRange(0.0009, 110);
        LogAxis range = Ink.logAxis("batch mass in g");
        range.setRange(0.15, 60_000);
        XYPlot plot = new XYPlot(null, domain, range, null);
        Ink.grid(plot);
        addLines(plot, lines);
        addArea(plot, lines.get(0));
        plot.addRangeMarker(new ValueMarker(LARGEST, Ink.BLACK, new BasicStroke(2.4f)));
        Ink.write(plot, "largest batch 1786 g: capacity less beaker", 0.001, 2100, TextAnchor.BOTTOM_LEFT);
        Ink.write(plot, "grey: window when every addition's", 0.0011, 700, TextAnchor.BOTTOM_LEFT);
        Ink.write(plot, "worst error must be within 5 %", 0.0011, 410, TextAnchor.BOTTOM_LEFT);
        Ink.write(plot, "worst error within 5 %", 6, 30_000, TextAnchor.CENTER_LEFT);
        Ink.write(plot, "from here on all round", 6, 9524, TextAnchor.CENTER_LEFT);
        Ink.write(plot, "within 5 %", 6, 5600, TextAnchor.CENTER_LEFT);
        Ink.write(plot, "one division for every line", 6, 1000, TextAnchor.CENTER_LEFT);
        return plot;
    }

    private static void addLines(XYPlot plot, List<XYSeries> lines) {
        XYSeriesCollection data = new XYSeriesCollection();
        lines.forEach(data::addSeries);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
        List<BasicStroke> strokes = List.of(Ink.SOLID, Ink.DASHED, Ink.DOTTED);
        List<Shape> shapes = List.of(
                new Ellipse2D.Double(-4.5, -4.5, 9, 9),
                new Rectangle2D.Double(-4, -4, 8, 8),
                ShapeUtils.createUpTriangle(5f));
        for (int i = 0; i < lines.size(); i++) {
            renderer.setSeriesPaint(i, Ink.BLACK);
            renderer.setSeriesStroke(i, strokes.get(i));
            renderer.setSeriesShape(i, shapes.get(i));
            renderer.setSeriesFillPaint(i, Color.WHITE);
        }
        renderer.setUseFillPaint(true);
        renderer.setDrawOutlines(true);
        plot.setDataset(0, data);
        plot.setRenderer(0, renderer);
    }

    /** From the smallest batch by the worst error up to the largest the bench allows. */
    private static void addArea(XYPlot plot, XYSeries smallest) {
        XYSeries top = new XYSeries("top");
        XYSeries bottom = new XYSeries("bottom");
        for (int i = 0; i < smallest.getItemCount(); i++) {
            double d = smallest.getX(i).doubleValue();
            if (smallest.getY(i).doubleValue() < LARGEST) {
                top.add(d, LARGEST);
                bottom.add(d, smallest.getY(i).doubleValue());
            }
        }
        double end = LARGEST / 6000d;
        top.add(end, LARGEST);
        bottom.add(end, LARGEST);
        XYSeriesCollection data = new XYSeriesCollection();
        data.addSeries(top);
        data.addSeries(bottom);
        XYDifferenceRenderer area = new XYDifferenceRenderer(new Color(225, 225, 225), Color.WHITE, false);
        area.setSeriesPaint(0, new Color(0, 0, 0, 0));
        area.setSeriesPaint(1, new Color(0, 0, 0, 0));
        plot.setDataset(1, data);
        plot.setRenderer(1, area);
    }
}
