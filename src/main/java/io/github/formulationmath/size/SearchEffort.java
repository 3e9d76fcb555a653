package io.github.formulationmath.size;

import io.github.formulationmath.simulation.ProgressListener;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How much work a search may do, and who hears of it. The unit is one check of one line at one batch size, some tens of
 * nanoseconds while the numbers fit 64 bits; beyond, one check counts as sixteen.
 *
 * <p>A search that reaches its limit says so and what it has shown up to then; it never guesses. A thread that is
 * interrupted while it searches stops with a {@link java.util.concurrent.CancellationException}, its interrupt still
 * set.
 *
 * <p>Example: {@code SearchEffort.ofChecks(1_000_000).reportingTo((done, limit) -> bar.set(done))}.
 *
 * <p>Immutable; as thread-safe as its listener.
 */
public final class SearchEffort {

    private static final SearchEffort STANDARD = new SearchEffort(20_000_000, null);

    private final long limit;
    private final @Nullable ProgressListener listener;

    private SearchEffort(long limit, @Nullable ProgressListener listener) {
        this.limit = limit;
        this.listener = listener;
    }

    /**
     * What is allowed unless something else is said.
     *
     * @return 20 million checks, heard by nobody
     */
    public static SearchEffort standard() {
        return STANDARD;
    }

    /**
     * A limit of one's own.
     *
     * @param checks how many line checks a search may make, at least 1
     * @return the effort
     * @throws IllegalArgumentException if the limit is below 1
     */
    public static SearchEffort ofChecks(long checks) {
        if (checks < 1) {
            throw new IllegalArgumentException("checks is " + checks + ": a search needs at least 1");
        }
        return new SearchEffort(checks, STANDARD.listener);
    }

    /**
     * The same limit, with a listener.
     *
     * @param newListener hears of the progress, every few thousand checks
     * @return the effort
     */
    public SearchEffort reportingTo(ProgressListener newListener) {
        return new SearchEffort(limit, Objects.requireNonNull(newListener, "newListener"));
    }

    /**
     * The limit.
     *
     * @return how many line checks a search may make
     */
    public long limit() {
        return limit;
    }

    /**
     * The listener.
     *
     * @return who hears of the progress
     */
    public ProgressListener listener() {
        return listener == null ? (checks, most) -> {} : listener;
    }

    @Override
    public String toString() {
        return "at most " + limit + " checks";
    }
}
