package io.github.formulationmath.figures;

import java.util.List;
import org.jfree.chart.JFreeChart;

/**
 * A picture and the numbers it shows.
 *
 * @param name the name of its files
 * @param columns the head of the table of numbers
 * @param rows the numbers as text, in rows
 * @param chart the picture
 * @param width in pixels
 * @param height in pixels
 * @param description what somebody who does not see it is told
 */
record Figure(
        String name, String columns, List<String> rows, JFreeChart chart, int width, int height, String description) {

    /** A picture whose numbers are all there is to tell. */
    Figure(String name, String columns, List<String> rows, JFreeChart chart, int width, int height) {
        this(name, columns, rows, chart, width, height, "The numbers stand in " + name + ".csv: " + columns + ".");
    }

    String title() {
        return chart.getTitle().getText();
    }

    String csv() {
        return columns + "\n" + String.join("\n", rows) + "\n";
    }
}
