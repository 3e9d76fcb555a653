package io.github.formulationmath.limit;

import io.github.formulationmath.reckoning.Source;
import java.io.Serial;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where a limit stands, and of which day it is. A limit is never more current than its snapshot.
 *
 * <p>Immutable and thread-safe.
 */
public final class Citation implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String text;
    private final String amendingAct;
    private final @Nullable LocalDate entryUpdated;
    private final @Nullable LocalDate snapshot;
    /** Worked out when first asked for: a check asks for it again and again. */
    private transient volatile @Nullable Source source;

    private Citation(String text, String amendingAct, @Nullable LocalDate entryUpdated, @Nullable LocalDate snapshot) {
        this.text = text;
        this.amendingAct = amendingAct;
        this.entryUpdated = entryUpdated;
        this.snapshot = snapshot;
    }

    /**
     * A citation.
     *
     * @param text the source with edition, annex, entry or page
     * @param snapshot the day of which the limit is
     * @return the citation
     * @throws IllegalArgumentException if the text is blank
     */
    public static Citation of(String text, LocalDate snapshot) {
        return of(text, "", null, Objects.requireNonNull(snapshot, "snapshot"));
    }

    static Citation of(
            String text, String amendingAct, @Nullable LocalDate entryUpdated, @Nullable LocalDate snapshot) {
        if (Objects.requireNonNull(text, "text").isBlank()) {
            throw new IllegalArgumentException(
                    "text is blank: a limit without a source is an opinion, and must say so");
        }
        return new Citation(text, amendingAct, entryUpdated, snapshot);
    }

    /** The citation of a limit that names no source. */
    static Citation none() {
        return new Citation("own limit, no source given", "", null, null);
    }

    /**
     * The source.
     *
     * @return title, annex and entry
     */
    public String text() {
        return text;
    }

    /**
     * The act that last changed the entry.
     *
     * @return its number; empty if none is known
     */
    public String amendingAct() {
        return amendingAct;
    }

    /**
     * The day on which the source last changed the entry.
     *
     * @return the day, if known
     */
    public Optional<LocalDate> entryUpdated() {
        return Optional.ofNullable(entryUpdated);
    }

    /**
     * The day of which the limit is.
     *
     * @return the day, if known
     */
    public Optional<LocalDate> snapshot() {
        return Optional.ofNullable(snapshot);
    }

    Source source() {
        Source known = source;
        if (known == null) {
            known = Source.published(text, snapshot == null ? "" : "snapshot of " + snapshot);
            source = known;
        }
        return known;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Citation that
                && text.equals(that.text)
                && amendingAct.equals(that.amendingAct)
                && Objects.equals(entryUpdated, that.entryUpdated)
                && Objects.equals(snapshot, that.snapshot);
    }

    @Override
    public int hashCode() {
        return Objects.hash(text, amendingAct, entryUpdated, snapshot);
    }

    @Override
    public String toString() {
        return snapshot == null ? text : text + " (snapshot of " + snapshot + ")";
    }
}
