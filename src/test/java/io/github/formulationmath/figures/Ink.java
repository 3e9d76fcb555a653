package io.github.formulationmath.figures;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Paint;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.TextAnchor;

/** Black, greys and line styles: the pictures must be legible printed in grey and to colour-blind readers. */
final class Ink {

    static final Font TITLE = new Font("DejaVu Sans", Font.BOLD, 20);
    static final Font LABEL = new Font("DejaVu Sans", Font.PLAIN, 17);
    static final Font SMALL = new Font("DejaVu Sans", Font.PLAIN, 16);

    static final BasicStroke SOLID = new BasicStroke(1.8f);
    static final BasicStroke THIN = new BasicStroke(0.8f);
    static final BasicStroke DASHED =
            new BasicStroke(1.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {9f, 5f}, 0f);
    static final BasicStroke DOTTED =
            new BasicStroke(2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1f, new float[] {1f, 5f}, 0f);

    static final Paint BLACK = Color.BLACK;
    static final Paint DARK = new Color(70, 70, 70);
    static final Paint MIDDLE = new Color(150, 150, 150);
    static final Paint PALE = new Color(205, 205, 205);
    static final Paint GRID = new Color(225, 225, 225);

    private Ink() {}

    static NumberAxis axis(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setStandardTickUnits(NumberAxis.createStandardTickUnits());
        dress(axis);
        return axis;
    }

    static LogAxis logAxis(String label) {
        LogAxis axis = new LogAxis(label);
        axis.setBase(10);
        axis.setTickUnit(new NumberTickUnit(1));
        axis.setNumberFormatOverride(new DecimalFormat("0.####", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        dress(axis);
        return axis;
    }

    static void dress(ValueAxis axis) {
        axis.setLabelFont(LABEL);
        axis.setTickLabelFont(SMALL);
    }

    static JFreeChart chart(String title, Plot plot, String... lines) {
        JFreeChart chart = new JFreeChart(title, TITLE, plot, false);
        chart.setBackgroundPaint(Color.WHITE);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setOutlineVisible(false);
        TextTitle heading = chart.getTitle();
        heading.setHorizontalAlignment(HorizontalAlignment.LEFT);
        heading.setPadding(8, 12, 2, 12);
        for (String line : lines) {
            TextTitle under = new TextTitle(line, SMALL);
            under.setHorizontalAlignment(HorizontalAlignment.LEFT);
            under.setPadding(2, 12, line.equals(lines[lines.length - 1]) ? 10 : 2, 12);
            chart.addSubtitle(under);
        }
        chart.setPadding(new org.jfree.chart.ui.RectangleInsets(4, 4, 4, 16));
        return chart;
    }

    static void grid(XYPlot plot) {
        plot.setDomainGridlinePaint(GRID);
        plot.setRangeGridlinePaint(GRID);
        plot.setDomainGridlineStroke(THIN);
        plot.setRangeGridlineStroke(THIN);
    }

    static void write(XYPlot plot, String text, double x, double y, TextAnchor anchor) {
        XYTextAnnotation note = new XYTextAnnotation(text, x, y);
        note.setFont(SMALL);
        note.setTextAnchor(anchor);
        note.setPaint(BLACK);
        note.setBackgroundPaint(new Color(255, 255, 255, 200));
        plot.addAnnotation(note);
    }
}
