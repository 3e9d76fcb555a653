package io.github.formulationmath.figures;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliBalance;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.Evidence;
import io.github.formulationmath.soap.Fat;
import io.github.formulationmath.soap.FatTable;
import io.github.formulationmath.soap.InertMatter;
import io.github.formulationmath.soap.LyeCalculation;
import io.github.formulationmath.soap.LyeWater;
import io.github.formulationmath.soap.Reckoned;
import io.github.formulationmath.soap.Unsaponified;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.awt.BasicStroke;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Between which ends the fat that stays unsaponified lies, for the bar of the soap page in batches of every size, on two balances. */
final class ShortfallAgainstBatch {

    private static final Rounding DOWN = Rounding.toDecimalPlaces(3).with(RoundingMode.FLOOR);
    private static final Rounding UP = Rounding.toDecimalPlaces(3).with(RoundingMode.CEILING);
    private static final LyeCalculation BAR = bar();
    private static final Formula FORMULA = BAR.formula();
    private static final int POINTS = 160;
    private static final double SMALLEST = 40;
    private static final double LARGEST = 5000;
    private static final double BOTTOM = -12;
    private static final double TOP = 22;

    private static final Grammar.Place FATS = Grammar.Place.logarithmic("x", "fats g");
    private static final Grammar.Place BALANCE = Grammar.Place.name("strokeDash", "balance");

    private ShortfallAgainstBatch() {}

    private static LyeCalculation bar() {
        FatTable table = FatTable.bundled();
        InertMatter moist = InertMatter.atMost("0.1 %");
        Fat shea = table.of("Shea butter, unrefined").get(0).fat(moist);
        AlkaliGrade flakes = AlkaliGrade.assay(Alkali.SODIUM_HYDROXIDE, "97 %", "99 %", AlkaliGrade.Stated.TOTAL_ALKALI)
                .carbonate("0 %", "1 %", Evidence.MAXIMUM_ERROR, Source.published("label of the drum", ""));
        return LyeCalculation.named("Kitchen bar")
                .fat(table.entry("Sunflower oil", "Codex CXS 210").fat(moist), "600 g")
                .fat(table.entry("Coconut oil", "Codex CXS 210").fat(moist), "300 g")
                .fat(shea, "100 g")
                .alkali(flakes)
                .leaving(Unsaponified.alkaliShortfall("5 %"), Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.perAlkali("2", LyeWater.Of.ALKALI_AS_WEIGHED))
                .build();
    }

    private static Interval<Amount<Dimensionless>> shortfall(Ratio fats, String step) {
        Amount<javax.measure.quantity.Mass> first = Amount.grams(fats.times(Ratio.parse("0.6")));
        Batch batch = Batch.of(FORMULA, BatchSize.ofStock(FORMULA.lines().get(0), first));
        WeighingPlan plan = WeighingPlan.of(batch, Balance.of(step, "10 kg"));
        return AlkaliBalance.of(BAR.soap(), ExpectedProduct.of(plan, WeighingMethod.TARE_EACH))
                .shortfall();
    }

    static Figure draw() {
        List<String> rows = new ArrayList<>();
        XYSeriesCollection data = new XYSeriesCollection();
        addBalance(data, rows, "0.1 g");
        addBalance(data, rows, "1 g");
        Interval<Amount<Dimensionless>> ranges = shortfall(Ratio.of(1000), "0.000001 g");
        row(rows, "ranges alone", "any", ranges);
        return new Figure(
                "shortfall-against-batch-size",
                "balance,fats g,least unsaponified %,most unsaponified %",
                rows,
                Ink.chart(
                        "Five per cent planned: what may come of it, by batch and balance",
                        plot(data, ranges),
                        "kitchen bar: sunflower 600, coconut 300, shea 100 g per kg of fats; mass of fats logarithmic"),
                1000,
                560,
                "Interval of the fat that stays unsaponified against the mass of fats, 40 g to 5 kg, logarithmic. On a balance of 0.1 g"
                        + " (solid) it comes near what the ranges of fats and alkali leave by themselves (dotted) from about"
                        + " 500 g on, and reaches below 0, where hydroxide may be left, for some batches under 280 g; on"
                        + " one of 1 g (dashed) for some under 2.8 kg.",
                Grammar.NOTHING
                        .with(
                                "line",
                                "datum['fats g'] !== 'any'",
                                FATS,
                                Grammar.Place.number("y", "least unsaponified %"),
                                BALANCE)
                        .with(
                                "line",
                                "datum['fats g'] !== 'any'",
                                FATS,
                                Grammar.Place.number("y", "most unsaponified %"),
                                BALANCE));
    }

    private static void addBalance(XYSeriesCollection data, List<String> rows, String step) {
        XYSeries least = new XYSeries(step + " least");
        XYSeries most = new XYSeries(step + " most");
        Rounding three = Rounding.toSignificantDigits(3);
        for (int i = 0; i <= POINTS; i++) {
            double grams = SMALLEST * Math.pow(LARGEST / SMALLEST, i / (double) POINTS);
            Ratio fats = three.apply(Ratio.from(grams));
            Interval<Amount<Dimensionless>> shortfall = shortfall(fats, step);
            row(rows, step, fats.toString(), shortfall);
            least.add(fats.doubleValue(), percent(shortfall.least()));
            most.add(fats.doubleValue(), percent(shortfall.greatest()));
        }
        data.addSeries(least);
        data.addSeries(most);
    }

    private static double percent(Amount<Dimensionless> share) {
        return share.canonical().times(100).doubleValue();
    }

    private static void row(List<String> rows, String balance, String fats, Interval<Amount<Dimensionless>> shortfall) {
        rows.add(balance + "," + fats + ","
                + DOWN.format(shortfall.least().canonical().times(100)) + ","
                + UP.format(shortfall.greatest().canonical().times(100)));
    }

    private static XYPlot plot(XYSeriesCollection data, Interval<Amount<Dimensionless>> ranges) {
        LogAxis domain = Ink.logAxis("mass of the fats in g");
        domain.setRange(SMALLEST, LARGEST);
        NumberAxis range = Ink.axis("unsaponified fat (alkali shortfall) in %");
        range.setRange(BOTTOM, TOP);
        range.setTickUnit(new NumberTickUnit(4));
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        for (int i = 0; i < data.getSeriesCount(); i++) {
            renderer.setSeriesPaint(i, i < 2 ? Ink.BLACK : Ink.DARK);
            renderer.setSeriesStroke(i, i < 2 ? Ink.SOLID : Ink.DASHED);
        }
        XYPlot plot = new XYPlot(data, domain, range, renderer);
        Ink.grid(plot);
        plot.addRangeMarker(new ValueMarker(0, Ink.BLACK, new BasicStroke(2.4f)));
        plot.addRangeMarker(new ValueMarker(percent(ranges.least()), Ink.BLACK, Ink.DOTTED));
        plot.addRangeMarker(new ValueMarker(percent(ranges.greatest()), Ink.BLACK, Ink.DOTTED));
        Ink.write(plot, "dashed: balance of 1 g", 560, 16.5, TextAnchor.BOTTOM_LEFT);
        Ink.write(plot, "solid: balance of 0.1 g", 62, 5.2, TextAnchor.CENTER_LEFT);
        Ink.write(
                plot,
                "dotted: what the ranges of fats and alkali leave by themselves",
                190,
                5.2,
                TextAnchor.CENTER_LEFT);
        Ink.write(plot, "below 0: for some lot, hydroxide is left", 1000, -6.4, TextAnchor.TOP_LEFT);
        return plot;
    }
}
