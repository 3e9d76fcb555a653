package io.github.formulationmath.figures;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.choice.BalanceAssignment;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.ErrorSource;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.MadeShare;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingStation;
import java.awt.Color;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.CategoryTextAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAnchor;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.labels.StandardCategorySeriesLabelGenerator;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;

/** What the uncertainty of each made share comes from: one bar a line, one grey a source, named inside. */
final class BudgetPerLine {

    private static final Map<ErrorSource, Paint> GREYS = Map.of(
            ErrorSource.TARE, new Color(250, 250, 250),
            ErrorSource.READING, new Color(228, 228, 228),
            ErrorSource.REPEATABILITY, new Color(198, 198, 198),
            ErrorSource.LINEARITY, new Color(160, 160, 160),
            ErrorSource.RESIDUE, new Color(80, 80, 80));
    private static final Rounding TWO = Rounding.toDecimalPlaces(2);
    private static final double NAMED_FROM = 10;

    private BudgetPerLine() {}

    private static MadeMasses made(List<BalanceAssignment.AssignedLine> lines) {
        return MadeMasses.of(
                lines.stream().map(BalanceAssignment.AssignedLine::addition).toList());
    }

    private static List<BalanceAssignment.AssignedLine> assigned() {
        Formula formula = Formula.inPercent("lotion")
                .line("Aqua", "74 %")
                .line("Oil", "20 %")
                .line("Emulsifier", "5 %")
                .line("Preservative", "0.9 %")
                .line("Colour", "0.1 %")
                .build();
        Balance kitchen = Balance.of("1 g", "5 kg")
                .named("kitchen")
                .withErrors(
                        ErrorModel.readabilityOnly().withRepeatability("0.4 g").withLinearityOfNetReading("1 g"));
        Balance pocket = Balance.of("0.01 g", "100 g")
                .named("pocket")
                .withErrors(ErrorModel.readabilityOnly()
                        .withRepeatability("0.008 g")
                        .withLinearityOfNetReading("0.01 g")
                        .withResidue(Amount.mass("0 g"), Amount.mass("0.04 g")));
        return BalanceAssignment.of(
                        Batch.of(formula, BatchSize.ofMass("600 g")),
                        List.of(
                                WeighingStation.inVessel(kitchen, Vessel.of("beaker", "214 g")),
                                WeighingStation.fromBoat(pocket, Vessel.of("boat", "2 g"))),
                        Tolerances.of("50 %"))
                .lines();
    }

    static Figure draw() {
        List<BalanceAssignment.AssignedLine> lines = assigned();
        MadeMasses made = made(lines);
        DefaultCategoryDataset data = new DefaultCategoryDataset();
        List<String> rows = new ArrayList<>();
        NumberAxis range = Ink.axis("part of the variance of the made share in %");
        range.setRange(0, 119);
        range.setTickUnit(new NumberTickUnit(20));
        CategoryAxis domain = new CategoryAxis();
        domain.setTickLabelFont(Ink.SMALL);
        CategoryPlot plot = new CategoryPlot(data, domain, range, new StackedBarRenderer());
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
        for (int i = 0; i < lines.size(); i++) {
            String name = lines.get(i).line().name() + " ("
                    + lines.get(i).station().balance().name() + ")";
            addLine(plot, data, rows, name, made.madeShare(i));
        }
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeGridlinesVisible(false);
        paint((StackedBarRenderer) plot.getRenderer(), data);
        return new Figure(
                "error-budget-per-line",
                "line,source,percent of variance",
                rows,
                withLegend(Ink.chart(
                        "Where the uncertainty of each share comes from (lotion, 600 g)",
                        plot,
                        "kitchen: d 1 g, repeatability 0.4 g, linearity 1 g; in the beaker",
                        "pocket: d 0.01 g, repeatability 0.008 g, linearity 0.01 g, residue up to 0.04 g; from a boat",
                        "u: standard uncertainty as a part of the share")),
                1000,
                600,
                "Five bars of 100 %, one a line, parted by source: tare, reading, repeatability, linearity, residue, each in a darker"
                        + " grey. For Aqua, oil and emulsifier linearity gives half; for preservative and colour, weighed from"
                        + " a boat, the residue gives a third to a half. The relative standard uncertainty is 0.14 % for"
                        + " Aqua and 2.7 % for the colour.",
                Grammar.NOTHING.with(
                        "bar",
                        "",
                        Grammar.Place.number("x", "percent of variance"),
                        Grammar.Place.name("y", "line"),
                        Grammar.Place.name("color", "source")));
    }

    /** The greys by their names, also of parts too narrow to be named inside. */
    private static JFreeChart withLegend(JFreeChart chart) {
        LegendTitle legend = new LegendTitle(chart.getPlot());
        legend.setItemFont(Ink.SMALL);
        legend.setPosition(RectangleEdge.BOTTOM);
        legend.setFrame(BlockBorder.NONE);
        chart.addLegend(legend);
        return chart;
    }

    private static void addLine(
            CategoryPlot plot, DefaultCategoryDataset data, List<String> rows, String name, MadeShare share) {
        double left = 0;
        for (ErrorSource source : GREYS.keySet().stream().sorted().toList()) {
            double percent = share.budget().share(source).times(100).doubleValue();
            data.addValue(percent, source, name);
            rows.add(name + "," + word(source) + ","
                    + TWO.format(share.budget().share(source).times(100)));
            if (percent >= NAMED_FROM) {
                write(plot, word(source), name, left + percent / 2, source, TextAnchor.CENTER);
            }
            left += percent;
        }
        double relative = share.uncertainty().canonical().doubleValue()
                / share.share().canonical().doubleValue()
                * 100;
        String text = String.format(Locale.ROOT, "u = %.2f %%", relative);
        write(plot, text, name, 101.5, ErrorSource.TARE, TextAnchor.CENTER_LEFT);
    }

    private static void write(
            CategoryPlot plot, String text, String category, double at, ErrorSource behind, TextAnchor anchor) {
        CategoryTextAnnotation note = new CategoryTextAnnotation(text, category, at);
        note.setFont(Ink.SMALL);
        note.setCategoryAnchor(CategoryAnchor.MIDDLE);
        note.setTextAnchor(anchor);
        note.setPaint(behind == ErrorSource.RESIDUE ? Color.WHITE : Ink.BLACK);
        plot.addAnnotation(note);
    }

    private static void paint(StackedBarRenderer renderer, DefaultCategoryDataset data) {
        renderer.setBarPainter(new StandardBarPainter());
        renderer.setLegendItemLabelGenerator(new StandardCategorySeriesLabelGenerator() {
            @Override
            public String generateLabel(CategoryDataset all, int row) {
                return word((ErrorSource) all.getRowKey(row)) + "   ";
            }
        });
        renderer.setShadowVisible(false);
        renderer.setDrawBarOutline(true);
        renderer.setMaximumBarWidth(0.14);
        for (int row = 0; row < data.getRowCount(); row++) {
            renderer.setSeriesPaint(row, GREYS.get((ErrorSource) data.getRowKey(row)));
            renderer.setSeriesOutlinePaint(row, Ink.BLACK);
            renderer.setSeriesOutlineStroke(row, Ink.THIN);
        }
    }

    private static String word(ErrorSource source) {
        return source.name().toLowerCase(Locale.ROOT);
    }
}
