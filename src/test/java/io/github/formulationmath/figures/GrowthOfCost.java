package io.github.formulationmath.figures;

import java.awt.BasicStroke;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The time a smallest batch takes as lines and 1/τ grow, from the measured figures in {@code docs/benchmarks.md}. */
final class GrowthOfCost {

    private static final Pattern ROW = Pattern.compile(
            "\\| (roundingWithin|madeWithin|madeWithinWithReadingError) \\| lines=(\\d+), oneOverTolerance=(\\d+) \\| ([0-9.,]+) .*");

    private static final Map<String, BasicStroke> STROKES =
            Map.of("roundingWithin", Ink.SOLID, "madeWithin", Ink.DASHED, "madeWithinWithReadingError", Ink.DOTTED);

    private static final Map<String, Paint> SHADES = Map.of("20", Ink.MIDDLE, "100", Ink.DARK, "1000", Ink.BLACK);

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
                Ink.chart("What a smallest batch costs as lines and 1/τ grow", plot(series)),
                1000,
                600);
    }

    private static XYPlot plot(Map<String, XYSeries> series) {
        LogAxis domain = Ink.logAxis("lines of the formula");
        domain.setRange(4, 200);
        LogAxis range = Ink.logAxis("microseconds");
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        XYPlot plot = new XYPlot(data, domain, range, renderer);
        Ink.grid(plot);
        series.forEach((name, points) -> {
            String[] parts = name.split(" ");
            renderer.setSeriesStroke(data.getSeriesCount(), STROKES.get(parts[0]));
            renderer.setSeriesPaint(data.getSeriesCount(), SHADES.get(parts[1]));
            data.addSeries(points);
            if (parts[1].equals("100")) {
                int last = points.getItemCount() - 1;
                Ink.write(
                        plot,
                        label(parts[0]),
                        points.getX(last).doubleValue() * 1.05,
                        points.getY(last).doubleValue() * shift(parts[0]),
                        TextAnchor.CENTER_LEFT);
            }
        });
        Ink.write(plot, "shade: pale 1/τ = 20, dark 100, black 1000", 4.4, topOf(series), TextAnchor.TOP_LEFT);
        return plot;
    }

    /** Keeps the labels of neighbouring lines apart. */
    private static double shift(String search) {
        return switch (search) {
            case "madeWithin" -> 0.86;
            case "madeWithinWithReadingError" -> 1.16;
            default -> 1;
        };
    }

    private static double topOf(Map<String, XYSeries> series) {
        return series.values().stream().mapToDouble(XYSeries::getMaxY).max().orElse(1);
    }

    private static String label(String search) {
        return switch (search) {
            case "roundingWithin" -> "each line rounded";
            case "madeWithin" -> "closed total";
            default -> "closed, reading ± d";
        };
    }
}
