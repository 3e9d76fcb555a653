package io.github.formulationmath.limit;

import java.io.Serial;

/** A table of limits that cannot be read, with the place. */
public final class LimitTableException extends IllegalArgumentException {

    @Serial
    private static final long serialVersionUID = 1L;

    private final int line;
    private final int column;

    LimitTableException(String message, int line, int column) {
        super("line " + line + ", column " + column + ": " + message);
        this.line = line;
        this.column = column;
    }

    /**
     * The line.
     *
     * @return the number of the line in the file, counted from 1, comment lines included
     */
    public int line() {
        return line;
    }

    /**
     * The column.
     *
     * @return the number of the character in the line, counted from 1
     */
    public int column() {
        return column;
    }
}
