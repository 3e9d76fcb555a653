package io.github.formulationmath.verification;

import java.io.Serial;

/** A text that is no claim. The message and the accessors say where. */
public final class ClaimFormatException extends IllegalArgumentException {

    @Serial
    private static final long serialVersionUID = 1L;

    private final int line;
    private final int column;

    ClaimFormatException(int line, int column, String message) {
        super("line " + line + ", column " + column + ": " + message);
        this.line = line;
        this.column = column;
    }

    /**
     * The line of the text.
     *
     * @return counted from 1
     */
    public int line() {
        return line;
    }

    /**
     * The column in the line.
     *
     * @return counted from 1
     */
    public int column() {
        return column;
    }
}
