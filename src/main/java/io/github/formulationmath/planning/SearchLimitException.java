package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import java.io.Serial;

/**
 * A search reached the limit its caller set before it could decide. Nothing was guessed; what was shown up to then is in
 * the message.
 */
public final class SearchLimitException extends RuntimeException {

    @Serial
    private static final long serialVersionUID = 1L;

    private final long limit;

    private final Ratio reached;

    SearchLimitException(String what, long limit, Ratio reached) {
        super(what + ": the limit of " + limit
                + " was reached; allow more with SearchEffort.ofChecks, or ask for less");
        this.limit = limit;
        this.reached = reached;
    }

    /**
     * The limit that was reached.
     *
     * @return checks or intervals, as the message says
     */
    public long limit() {
        return limit;
    }

    /** How far the search had come, in its own variable. */
    Ratio reached() {
        return reached;
    }
}
