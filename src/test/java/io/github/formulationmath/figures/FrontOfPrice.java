package io.github.formulationmath.figures;

import io.github.formulationmath.choice.Demand;
import io.github.formulationmath.choice.Equipment;
import io.github.formulationmath.choice.EquipmentAnswer;
import io.github.formulationmath.choice.EquipmentChoice;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** What the smallest test batches of two formulas come to, for every price that makes them smaller. */
final class FrontOfPrice {

    private static final Rounding THREE = Rounding.toSignificantDigits(3);
    private static final double DEAREST = 60;

    private static final Grammar.Place PRICE = Grammar.Place.number("x", "price EUR");
    private static final Grammar.Place GRAMS = Grammar.Place.logarithmic("y", "smallest batches together g");

    private FrontOfPrice() {}

    /** The bench of the page: one balance, one pot and one boat are there. */
    static EquipmentChoice choice() {
        Formula lotion = Formulas.thickenedLotion("Oat lotion");
        Formula balm = Formulas.sunflowerBalm("Balm");
        List<Equipment> candidates = List.of(
                Equipment.balance(Balance.of("1 g", "5 kg").named("kitchen"), "0 EUR"),
                Equipment.balance(Balance.of("0.1 g", "500 g").named("small"), "14.90 EUR"),
                Equipment.balance(Balance.of("0.01 g", "200 g").named("pocket"), "24.50 EUR"),
                Equipment.balance(Balance.of("0.01 g", "600 g").named("bench"), "68 EUR"),
                Equipment.balance(Balance.of("0.05 g", "1 kg").named("school"), "21 EUR"),
                Equipment.balance(Balance.of("0.001 g", "50 g").named("fine"), "119 EUR"),
                Equipment.pot(Vessel.of("beaker", "214 g"), "0 EUR"),
                Equipment.pot(Vessel.of("cup", "12 g"), "3.20 EUR"),
                Equipment.boat(Vessel.of("boat", "2 g"), "0.80 EUR"));
        return EquipmentChoice.of(
                candidates, List.of(Demand.of(lotion, "10 g", "2 kg", "2 %"), Demand.of(balm, "10 g", "2 kg", "2 %")));
    }

    static Figure draw() {
        List<String> rows = new ArrayList<>();
        XYSeries line = new XYSeries("total");
        List<EquipmentAnswer> front = choice().front();
        for (EquipmentAnswer answer : front) {
            double price = answer.price().number().doubleValue();
            double grams = answer.totalSize().canonical().doubleValue();
            rows.add(answer.price().number() + ","
                    + THREE.format(answer.totalSize().canonical()) + ","
                    + bought(answer));
            line.add(price, grams);
        }
        line.add(DEAREST, line.getY(line.getItemCount() - 1));
        return new Figure(
                "front-of-price",
                "price EUR,smallest batches together g,to buy",
                rows,
                Ink.chart(
                        "What a price buys: the smallest batches of two formulas together",
                        plot(line, front),
                        "oat lotion and balm, each line within 2 %, batches of 10 g to 2 kg; masses logarithmic"),
                1000,
                560,
                "Stairs falling from left to right: the smallest test batches of a lotion and a balm together, in grams and"
                        + " logarithmic, against what is bought for them. Each step down is named by what is bought.",
                Grammar.NOTHING
                        .with("point", "", PRICE, GRAMS)
                        .with("text", "", PRICE, GRAMS, Grammar.Place.name("text", "to buy")));
    }

    private static String bought(EquipmentAnswer answer) {
        return answer.toBuy().isEmpty()
                ? "nothing"
                : answer.toBuy().stream().map(Equipment::name).collect(Collectors.joining(" and "));
    }

    private static XYPlot plot(XYSeries line, List<EquipmentAnswer> front) {
        NumberAxis domain = Ink.axis("price in euros");
        domain.setRange(0, DEAREST);
        domain.setTickUnit(new NumberTickUnit(10));
        LogAxis range = Ink.logAxis("smallest batches together in g");
        range.setRange(10, 2000);
        XYStepRenderer renderer = new XYStepRenderer();
        renderer.setSeriesPaint(0, Ink.BLACK);
        renderer.setSeriesStroke(0, Ink.SOLID);
        XYPlot plot = new XYPlot(new XYSeriesCollection(line), domain, range, renderer);
        Ink.grid(plot);
        for (EquipmentAnswer answer : front) {
            double grams = answer.totalSize().canonical().doubleValue();
            Ink.write(
                    plot,
                    bought(answer) + ", " + THREE.format(answer.totalSize().canonical()) + " g",
                    answer.price().number().doubleValue() + 1,
                    grams * 1.06,
                    TextAnchor.BOTTOM_LEFT);
        }
        return plot;
    }
}
