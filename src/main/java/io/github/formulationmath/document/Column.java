package io.github.formulationmath.document;

import java.util.Objects;

/**
 * A column of a table.
 *
 * @param name the name at its head
 * @param isNumber whether it holds numbers, which are set flush right
 * @param namesRow whether what stands in it names the row
 */
public record Column(String name, boolean isNumber, boolean namesRow) {

    /**
     * Cleans the name.
     *
     * @param name the name at its head
     * @param isNumber whether it holds numbers
     * @param namesRow whether what stands in it names the row
     */
    public Column {
        name = Clean.text(Objects.requireNonNull(name, "name"));
    }

    /**
     * A column of words.
     *
     * @param name its name
     * @return the column
     */
    public static Column text(String name) {
        return new Column(name, false, false);
    }

    /**
     * The column that names the rows.
     *
     * @param name its name
     * @return the column
     */
    public static Column name(String name) {
        return new Column(name, false, true);
    }

    /**
     * A column of numbers.
     *
     * @param name its name
     * @return the column
     */
    public static Column number(String name) {
        return new Column(name, true, false);
    }
}
