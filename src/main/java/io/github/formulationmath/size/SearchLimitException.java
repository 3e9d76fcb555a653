package io.github.formulationmath.size;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.number.Sentence;
import java.io.Serial;

/**
 * A search reached the limit its caller set before it could decide. Nothing was guessed; what was shown up to then is in
 * the message.
 */
public final class SearchLimitException extends RuntimeException implements Refusal {

    @Serial
    private static final long serialVersionUID = 2L;

    private final Sentence said;
    private final long limit;
    private final Ratio reached;

    private SearchLimitException(Sentence said, long limit, Ratio reached) {
        super(said.getMessage());
        this.said = said;
        this.limit = limit;
        this.reached = reached;
    }

    static SearchLimitException undecided(long checks, Ratio reached) {
        return new SearchLimitException(
                Sentence.of(
                        "refusal.search-undecided",
                        "the search was not decided after {limit} checks: the limit of {limit} was reached; allow more"
                                + " with SearchEffort.ofChecks, or ask for less",
                        "limit",
                        String.valueOf(checks)),
                checks,
                reached);
    }

    static SearchLimitException tooManyIntervals(long most) {
        return new SearchLimitException(
                Sentence.of(
                        "refusal.too-many-intervals",
                        "there are too many intervals of passing sizes to list: the limit of {limit} was reached; allow"
                                + " more with SearchEffort.ofChecks, or ask for less",
                        "limit",
                        String.valueOf(most)),
                most,
                Ratio.ZERO);
    }

    @Override
    public Sentence said() {
        return said;
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
