package io.github.formulationmath.csv;

import java.util.List;

/**
 * What was read.
 *
 * @param comments the lines at the head that begin with {@code #}, without it and without blanks around
 * @param rows the rows below the header, in the order of the text
 * @param last the first field of the last line, which is the header if there is no row: the place of what is missing
 */
public record CsvTable(List<String> comments, List<CsvRow> rows, CsvField last) {

    /**
     * Copies the lists, so that nothing changes them.
     *
     * @param comments the lines at the head
     * @param rows the rows
     * @param last the place of what is missing
     */
    public CsvTable {
        comments = List.copyOf(comments);
        rows = List.copyOf(rows);
    }
}
