package io.github.formulationmath.figures;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.plot.CombinedRangeXYPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.util.ShapeUtils;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The time a smallest batch takes as lines and 1/τ grow, from the measured figures in {@code docs/benchmarks.md}. */
final class GrowthOfCost {

    private static final Pattern ROW = Pattern.compile(
            "\\| (roundingWithin|madeWithin|madeWithinWithReadingError) \\| lines=(\\d+), oneOverTolerance=(\\d+) \\| ([0-9.,]+) .*");

    private static final Map<String, BasicStroke> STROKES =
            Map.of("roundingWithin", Ink.SOLID, "madeWithin", Ink.DASHED, "madeWithinWithReadingError", Ink.DOTTED);

    private static final Map<String, Shape> SHAPES = Map.of(
            "roundingWithin", new Ellipse2D.Double(-4, -4, 8, 8),
            "madeWithin", new Rectangle2D.Double(-4, -4, 8, 8),
            "madeWithinWithReadingError", ShapeUtils.createUpTriangle(5f));

    private GrowthOfCost() {}

    static Figure draw() {
        List<String> rows = new ArrayList<>();
        Map<String, XYSeries> series = new LinkedHashMap<>();
        for (String line : Measured.lines()) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                double micros = Double.parseDouble(row.group(4).replace(",", "")) / 1000;
                String name = row.group(1) + " " + row.group(3);
                rows.add(row.group(1) + "," + row.group(2) + "," + row.group(3) + "," + micros);
                series.computeIfAbsent(name, XYSeries::new).add(Double.parseDouble(row.group(2)), micros);
            }
        }
        return new Figure(
                "growth-of-cost",
                "search,lines,one over tolerance,microseconds",
                rows,
                Ink.chart(
                        "What a smallest batch costs as lines and 1/τ grow",
                        plot(series),
                        "display 0.1 g, smallest line 0.05 %; one formula for each number of lines (markers)",
                        "circles: each line rounded; squares: closed total; triangles: closed, readings ± d"),
                1000,
                600,
                "Three panels, 1/τ = 20, 100 and 1000: microseconds against 5, 20 and 80 lines, both logarithmic. Rounding each"
                        + " line takes 0.2 to 5 µs, a closed total 0.7 to 10 µs, one with reading errors 0.9 to 11 µs; each grows"
                        + " about as the number of lines, whatever τ.",
                Grammar.NOTHING.with(
                        "line",
                        "",
                        Grammar.Place.logarithmic("x", "lines"),
                        Grammar.Place.logarithmic("y", "microseconds"),
                        Grammar.Place.name("strokeDash", "search"),
                        Grammar.Place.name("color", "one over tolerance")));
    }

    private static Plot plot(Map<String, XYSeries> series) {
        LogAxis range = Ink.logAxis("microseconds (logarithmic)");
        range.setRange(0.2, 20);
        CombinedRangeXYPlot all = new CombinedRangeXYPlot(range);
        all.setGap(18);
        for (String tolerance : List.of("20", "100", "1000")) {
            all.add(panel(series, tolerance));
        }
        return all;
    }

    private static XYPlot panel(Map<String, XYSeries> series, String tolerance) {
        LogAxis domain = Ink.logAxis("lines, 1/τ = " + tolerance);
        domain.setRange(4, 110);
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
        XYPlot plot = new XYPlot(data, domain, null, renderer);
        Ink.grid(plot);
        series.forEach((name, points) -> {
            String[] parts = name.split(" ");
            if (parts[1].equals(tolerance)) {
                int i = data.getSeriesCount();
                renderer.setSeriesStroke(i, STROKES.get(parts[0]));
                renderer.setSeriesShape(i, SHAPES.get(parts[0]));
                renderer.setSeriesPaint(i, Ink.BLACK);
                data.addSeries(points);
            }
        });
        return plot;
    }
}
