package io.github.formulationmath.figures;

import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.title.TextTitle;

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
 * @param grammar the picture as data
 */
record Figure(
        String name,
        String columns,
        List<String> rows,
        JFreeChart chart,
        int width,
        int height,
        String description,
        Grammar grammar) {

    String title() {
        return chart.getTitle().getText();
    }

    /** What is drawn, of what and on what. */
    List<String> subtitles() {
        return chart.getSubtitles().stream()
                .filter(TextTitle.class::isInstance)
                .map(each -> ((TextTitle) each).getText())
                .toList();
    }

    String csv() {
        return columns + "\n" + String.join("\n", rows) + "\n";
    }
}
