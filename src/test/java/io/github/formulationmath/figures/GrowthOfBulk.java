package io.github.formulationmath.figures;

import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The time per formula as the number of formulas grows, from the measured figures in {@code docs/benchmarks.md}. */
final class GrowthOfBulk {

    private static final Pattern ROW =
            Pattern.compile("\\| (baselineDouble|bulk) \\| formulas=(\\d+) \\| ([0-9.,]+) .*");

    private static final Map<String, BasicStroke> STROKES = Map.of("bulk", Ink.SOLID, "baselineDouble", Ink.DASHED);

    private GrowthOfBulk() {}

    static Figure draw() {
        List<String> rows = new ArrayList<>();
        XYSeries exact = new XYSeries("bulk");
        XYSeries bare = new XYSeries("baselineDouble");
        for (String line : Measured.lines()) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                double formulas = Double.parseDouble(row.group(2));
                double nanos = Double.parseDouble(row.group(3).replace(",", "")) / formulas;
                rows.add(row.group(1) + "," + row.group(2) + "," + nanos);
                (row.group(1).equals("bulk") ? exact : bare).add(formulas, nanos);
            }
        }
        return new Figure(
                "growth-of-bulk",
                "path,formulas,nanoseconds per formula",
                rows,
                Ink.chart(
                        "What a plan of 20 lines costs as formulas grow in number",
                        plot(List.of(exact, bare)),
                        "markers: measured, from 100 to 100,000 formulas; one run of the benchmark each,",
                        "with the scatter that docs/benchmarks.md tells; the paths cross beyond 10,000"),
                1000,
                560,
                "Nanoseconds per formula against the number of formulas, 100 to 100,000, logarithmic, four measured points for the"
                        + " exact bulk path (solid, round markers) and for bare doubles (dashed, square markers). The exact path is the"
                        + " faster one up to 10,000 formulas, the bare one at 100,000. The figures stand in docs/benchmarks.md.",
                Grammar.NOTHING.with(
                        "line",
                        "",
                        Grammar.Place.logarithmic("x", "formulas"),
                        Grammar.Place.number("y", "nanoseconds per formula"),
                        Grammar.Place.name("strokeDash", "path")));
    }

    private static XYPlot plot(List<XYSeries> series) {
        LogAxis domain = Ink.logAxis("formulas planned one after the other (logarithmic)");
        domain.setRange(80, 900_000);
        NumberAxis range = Ink.axis("nanoseconds per formula");
        range.setAutoRangeIncludesZero(true);
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
        XYPlot plot = new XYPlot(data, domain, range, renderer);
        Ink.grid(plot);
        for (XYSeries points : series) {
            renderer.setSeriesStroke(data.getSeriesCount(), STROKES.get(points.getKey()));
            renderer.setSeriesPaint(data.getSeriesCount(), Ink.BLACK);
            data.addSeries(points);
            if (!points.isEmpty()) {
                int last = points.getItemCount() - 1;
                Ink.write(
                        plot,
                        points.getKey().equals("bulk") ? "bulk path, exact" : "bare doubles",
                        points.getX(last).doubleValue() * 1.1,
                        points.getY(last).doubleValue(),
                        TextAnchor.CENTER_LEFT);
            }
        }
        return plot;
    }
}
