package io.github.formulationmath.figures;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jfree.chart.ChartUtils;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.ViewBox;

/**
 * Draws the pictures of the documentation as SVG and PNG, each with a table of the numbers it shows. The build draws them
 * into its own folder and compares the numbers with those in {@code docs/figures}; run {@link #main} with that folder to
 * renew the pictures there.
 */
public final class Figures {

    private Figures() {}

    /** All pictures. */
    static List<Figure> all() {
        return List.of(
                SawTooth.draw(),
                BudgetPerLine.draw(),
                WindowAgainstReadability.draw(),
                ShortfallAgainstBatch.draw(),
                UndissociatedAgainstPh.draw(),
                FrontOfPrice.draw(),
                GrowthOfCost.draw(),
                GrowthOfBulk.draw());
    }

    /** Writes the numbers of a picture into a folder; needs no fonts. */
    static void writeNumbers(Figure figure, Path folder) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(figure.name() + ".csv"), figure.csv(), StandardCharsets.UTF_8);
        Files.writeString(
                folder.resolve(figure.name() + ".vl.json"), figure.grammar().json(figure), StandardCharsets.UTF_8);
    }

    /** Writes a picture and its numbers into a folder. */
    static void write(Figure figure, Path folder) throws IOException {
        writeNumbers(figure, folder);
        ChartUtils.saveChartAsPNG(
                folder.resolve(figure.name() + ".png").toFile(), figure.chart(), figure.width(), figure.height());
        SVGGraphics2D canvas = new SVGGraphics2D(figure.width(), figure.height());
        // Without a size of its own it takes the size of the place where it stands.
        ViewBox box = new ViewBox(0, 0, figure.width(), figure.height());
        canvas.setDefsKeyPrefix(figure.name());
        figure.chart().draw(canvas, new java.awt.geom.Rectangle2D.Double(0, 0, figure.width(), figure.height()));
        Files.writeString(
                folder.resolve(figure.name() + ".svg"),
                told(canvas.getSVGElement(null, false, box, null, null), figure) + "\n",
                StandardCharsets.UTF_8);
    }

    /** With its title and what it shows in words, for those who do not see it. */
    private static String told(String svg, Figure figure) {
        int inside = svg.indexOf('>', svg.indexOf("<svg")) + 1;
        return svg.substring(0, inside) + "<title>" + escaped(figure.title()) + "</title><desc>"
                + escaped(figure.description()) + "</desc>" + svg.substring(inside);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }

    /**
     * Draws all pictures.
     *
     * @param args the folder, {@code docs/figures} if none is given
     * @throws IOException if a file cannot be written
     */
    public static void main(String[] args) throws IOException {
        System.setProperty("java.awt.headless", "true");
        Path folder = Path.of(args.length > 0 ? args[0] : "docs/figures");
        for (Figure figure : all()) {
            write(figure, folder);
        }
    }
}
