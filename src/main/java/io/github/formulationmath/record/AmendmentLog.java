package io.github.formulationmath.record;

import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serial;
import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Amendments one after another. Adding one takes the same time however many there are, for a log shares what went before;
 * so ten thousand times ten make no more work than they have to.
 */
final class AmendmentLog implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    static final AmendmentLog EMPTY = new AmendmentLog(null, null, 0);

    private final @Nullable AmendmentLog before;
    private final @Nullable Amendment last;
    private final int size;

    private AmendmentLog(@Nullable AmendmentLog before, @Nullable Amendment last, int size) {
        this.before = before;
        this.last = last;
        this.size = size;
    }

    AmendmentLog plus(Amendment amendment) {
        return new AmendmentLog(this, amendment, size + 1);
    }

    int size() {
        return size;
    }

    /** The time of the last amendment, or another if there is none. */
    Instant lastTimeOr(Instant other) {
        return last == null ? other : last.time();
    }

    List<Amendment> list() {
        Amendment[] all = new Amendment[size];
        AmendmentLog log = this;
        while (log.last != null && log.before != null) {
            all[log.size - 1] = log.last;
            log = log.before;
        }
        return List.of(all);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof AmendmentLog that && size == that.size && list().equals(that.list());
    }

    @Override
    public int hashCode() {
        return list().hashCode();
    }

    @Override
    public String toString() {
        return list().toString();
    }

    /** A chain of objects would be written by as many calls one in another. */
    private record Flat(ArrayList<Amendment> amendments) implements Serializable {

        @Serial
        private Object readResolve() throws InvalidObjectException {
            AmendmentLog log = EMPTY;
            try {
                for (Amendment amendment : amendments) {
                    log = log.plus(Amendment.of(amendment.who(), amendment.time(), amendment.text()));
                }
            } catch (IllegalArgumentException | NullPointerException e) {
                throw (InvalidObjectException)
                        new InvalidObjectException("no amendment: " + e.getMessage()).initCause(e);
            }
            return log;
        }
    }

    @Serial
    private Object writeReplace() {
        return new Flat(new ArrayList<>(list()));
    }

    @Serial
    private void readObject(ObjectInputStream in) throws InvalidObjectException {
        throw new InvalidObjectException("a log is read through its serialized form only");
    }
}
