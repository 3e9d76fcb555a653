package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import java.util.concurrent.CancellationException;

/** Counts the checks of one search. Used by one thread. */
final class SearchMeter {

    private static final int PAUSE = 1 << 12;
    private static final int BIG = 16;

    private final SearchEffort effort;
    private long checks;
    private long nextPause;

    SearchMeter(SearchEffort effort) {
        this.effort = effort;
        this.nextPause = Math.min(PAUSE, effort.limit());
    }

    /** One more check, heavier on numbers beyond 64 bits; true every few thousand, when {@link #pause} is due. */
    boolean isPauseDue(boolean fitsLongs) {
        checks += fitsLongs ? 1 : BIG;
        return checks > nextPause;
    }

    /** Looks up: was the thread interrupted, is the limit reached, does somebody want to hear? */
    void pause(Ratio reached) {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("interrupted after " + checks + " checks");
        }
        if (checks > effort.limit()) {
            throw SearchLimitException.undecided(effort.limit(), reached);
        }
        nextPause = Math.min(checks + PAUSE, effort.limit());
        effort.listener().progressed(checks, effort.limit());
    }

    long checks() {
        return checks;
    }
}
