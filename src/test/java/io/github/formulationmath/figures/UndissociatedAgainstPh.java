package io.github.formulationmath.figures;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.solution.AcidConstants;
import io.github.formulationmath.solution.AcidTable;
import io.github.formulationmath.solution.IonicStrength;
import io.github.formulationmath.solution.UndissociatedShare;
import java.awt.BasicStroke;
import java.awt.Color;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYDifferenceRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** How much of three preservative acids is undissociated, against the pH, with what salts may do to it. */
final class UndissociatedAgainstPh {

    private static final List<String> ACIDS = List.of("salicylic acid", "benzoic acid", "propionic acid");
    private static final List<BasicStroke> STROKES = List.of(Ink.DOTTED, Ink.SOLID, Ink.DASHED);
    private static final Rounding DOWN = Rounding.toDecimalPlaces(3).with(RoundingMode.FLOOR);
    private static final Rounding UP = Rounding.toDecimalPlaces(3).with(RoundingMode.CEILING);

    private static final Grammar.Place PH = Grammar.Place.number("x", "pH");
    private static final Grammar.Place ACID = Grammar.Place.name("strokeDash", "acid");

    private UndissociatedAgainstPh() {}

    static Figure draw() {
        List<String> rows = new ArrayList<>();
        List<XYSeriesCollection> bands = new ArrayList<>();
        XYSeriesCollection lines = new XYSeriesCollection();
        for (String acid : ACIDS) {
            addAcid(acid, rows, lines, bands);
        }
        return new Figure(
                "undissociated-share-against-ph",
                "acid,pH,least % ideal,most % ideal,least % up to 0.1 mol/L of ionic strength",
                rows,
                Ink.chart(
                        "How much of three acids has kept its proton (25 °C)",
                        plot(lines, bands),
                        "thermodynamic pK of the shipped table; lines: ideal, grey: with salts"),
                1000,
                560,
                "Undissociated share in per cent against pH from 2 to 7 for salicylic acid (dotted), benzoic acid (solid) and"
                        + " propionic acid (dashed), each falling in an S through one half at its pK; grey below each line: what"
                        + " an ionic strength of up to 0.1 mol/L may take away. At pH 5 they are about 1, 14 and 43 %.",
                Grammar.NOTHING
                        .with("line", "", PH, Grammar.Place.number("y", "most % ideal"), ACID)
                        .with(
                                "area",
                                "",
                                PH,
                                Grammar.Place.number("y", "least % up to 0.1 mol/L of ionic strength"),
                                Grammar.Place.end("y2", "most % ideal"),
                                Grammar.Place.name("detail", "acid")));
    }

    private static void addAcid(
            String name, List<String> rows, XYSeriesCollection lines, List<XYSeriesCollection> bands) {
        AcidConstants acid = AcidTable.shipped().constants(name, Amount.temperature("25 °C"), "0.005");
        XYSeries line = new XYSeries(name);
        XYSeries top = new XYSeries(name + " top");
        XYSeries bottom = new XYSeries(name + " bottom");
        for (int tenths = 20; tenths <= 70; tenths++) {
            Ratio ph = Ratio.of(tenths, 10);
            UndissociatedShare share = UndissociatedShare.of(acid, ph.toString(), "0");
            Interval<MassFraction> ideal = share.ideal();
            MassFraction salted =
                    share.upToIonicStrength(IonicStrength.parse("0.1 mol/L")).least();
            rows.add(name + "," + ph + "," + DOWN.format(ideal.least().percent()) + ","
                    + UP.format(ideal.greatest().percent()) + "," + DOWN.format(salted.percent()));
            line.add(ph.doubleValue(), share.atTheMiddles().percent().doubleValue());
            top.add(ph.doubleValue(), ideal.greatest().percent().doubleValue());
            bottom.add(ph.doubleValue(), salted.percent().doubleValue());
        }
        lines.addSeries(line);
        XYSeriesCollection band = new XYSeriesCollection();
        band.addSeries(top);
        band.addSeries(bottom);
        bands.add(band);
    }

    private static XYPlot plot(XYSeriesCollection lines, List<XYSeriesCollection> bands) {
        NumberAxis domain = Ink.axis("pH");
        domain.setRange(2, 7);
        domain.setTickUnit(new NumberTickUnit(0.5));
        NumberAxis range = Ink.axis("undissociated in %");
        range.setRange(0, 100);
        range.setTickUnit(new NumberTickUnit(10));
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        XYPlot plot = new XYPlot(lines, domain, range, renderer);
        Ink.grid(plot);
        for (int i = 0; i < STROKES.size(); i++) {
            renderer.setSeriesPaint(i, Ink.BLACK);
            renderer.setSeriesStroke(i, STROKES.get(i));
            XYDifferenceRenderer area = new XYDifferenceRenderer(new Color(222, 222, 222), Color.WHITE, false);
            area.setSeriesPaint(0, new Color(0, 0, 0, 0));
            area.setSeriesPaint(1, new Color(0, 0, 0, 0));
            plot.setDataset(i + 1, bands.get(i));
            plot.setRenderer(i + 1, area);
        }
        Ink.write(plot, "salicylic acid", 2.62, 52, TextAnchor.CENTER_RIGHT);
        Ink.write(plot, "benzoic acid", 3.72, 66, TextAnchor.CENTER_RIGHT);
        Ink.write(plot, "propionic acid", 5.0, 53, TextAnchor.CENTER_LEFT);
        Ink.write(plot, "grey: what salts may take away,", 5.25, 80, TextAnchor.BOTTOM_LEFT);
        Ink.write(plot, "up to an ionic strength of 0.1 mol/L", 5.25, 75.5, TextAnchor.BOTTOM_LEFT);
        return plot;
    }
}
