package io.github.formulationmath.size;

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

    static SearchMeter standard() {
        return new SearchMeter(SearchEffort.standard());
    }

    /** One more check, at so many grams. */
    void count(Ratio reached) {
        count(1, reached, Ratio.ONE, true);
    }

    /** Some more checks, at so many units of grams; heavier on numbers beyond 64 bits. */
    void count(int more, Ratio reached, Ratio unit, boolean fitsLongs) {
        checks += (long) more * (fitsLongs && reached.fitsLongs() ? 1 : BIG);
        if (checks > nextPause) {
            pause(reached.times(unit));
        }
    }

    /** Every few thousand checks: was the thread interrupted, is the limit reached, does somebody want to hear? */
    private void pause(Ratio reached) {
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
