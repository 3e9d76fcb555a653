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
 */
record Figure(String name, String columns, List<String> rows, JFreeChart chart, int width, int height) {

    String csv() {
        return columns + "\n" + String.join("\n", rows) + "\n";
    }
}
