package io.github.formulationmath.oracle;

/** A printed line that cannot be read, or that is not true. */
public final class OracleException extends AssertionError {

    private static final long serialVersionUID = 1L;

    OracleException(String message) {
        super(message);
    }

    OracleException(String message, Throwable cause) {
        super(message, cause);
    }
}
