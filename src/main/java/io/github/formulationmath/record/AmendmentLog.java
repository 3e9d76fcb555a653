package io.github.formulationmath.record;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Amendments one after another, in chunks: a log with one amendment more shares the full chunks of the one before, so that
 * adding the hundred-thousandth copies a few hundred references, not all.
 */
record AmendmentLog(List<List<Amendment>> chunks) implements Serializable {

    static final AmendmentLog EMPTY = new AmendmentLog(List.of());

    private static final int CHUNK = 256;

    AmendmentLog {
        chunks = List.copyOf(chunks);
    }

    AmendmentLog plus(Amendment amendment) {
        List<List<Amendment>> all = new ArrayList<>(chunks);
        boolean begins = isEmpty() || last().size() == CHUNK;
        List<Amendment> open = begins ? new ArrayList<>() : new ArrayList<>(all.remove(all.size() - 1));
        open.add(amendment);
        all.add(List.copyOf(open));
        return new AmendmentLog(all);
    }

    boolean isEmpty() {
        return chunks.isEmpty();
    }

    private List<Amendment> last() {
        return chunks.get(chunks.size() - 1);
    }

    /** The time of the last amendment, or another if there is none. */
    Instant lastTimeOr(Instant other) {
        return isEmpty() ? other : last().get(last().size() - 1).time();
    }

    List<Amendment> list() {
        return chunks.stream().flatMap(List::stream).toList();
    }
}
