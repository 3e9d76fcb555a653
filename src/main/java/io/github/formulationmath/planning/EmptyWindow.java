package io.github.formulationmath.planning;

import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.working.Phrase;
import java.io.Serial;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * No batch can be made: what is large enough for the balance is too much for the bench, or nothing is ever large enough.
 *
 * <p>Immutable and thread-safe.
 */
public final class EmptyWindow extends WindowAnswer implements BatchWindow {

    @Serial
    private static final long serialVersionUID = 1L;

    private final @Nullable WindowEnd needed;
    private final List<WindowOpening> openings;

    EmptyWindow(WindowQuestion question, @Nullable WindowEnd needed, List<WindowOpening> openings) {
        super(question);
        this.needed = needed;
        this.openings = List.copyOf(openings);
    }

    /**
     * The smallest batch that would be large enough, and what forbids less; the bench allows less than that.
     *
     * @return the end; empty if no size would do, or none within a million times the capacity
     */
    public Optional<WindowEnd> smallestNeeded() {
        return Optional.ofNullable(needed);
    }

    /**
     * The ceiling that is lowest.
     *
     * @return the upper end as it would be
     */
    public WindowEnd largestAllowed() {
        return question().upperEnd();
    }

    /**
     * What would open the window, each by itself and each tried: applied to this question, it leaves a batch. Other ways
     * may open it too.
     *
     * @return an unmodifiable list; empty if nothing here would, see {@link #obstacle()}
     */
    public List<WindowOpening> openings() {
        return openings;
    }

    /**
     * Why no batch of whatever size would do.
     *
     * @return the reason in words; empty if some size would
     */
    public Optional<Phrase> obstacle() {
        return question().requirements().obstacle();
    }

    /**
     * None.
     *
     * @return empty; what would be large enough is {@link #smallestNeeded()}
     */
    @Override
    public Optional<WindowEnd> smallest() {
        return Optional.empty();
    }

    /**
     * None.
     *
     * @return empty; what the bench would carry is {@link #largestAllowed()}
     */
    @Override
    public Optional<WindowEnd> largest() {
        return Optional.empty();
    }

    /**
     * No size lies in an empty window.
     *
     * @param size a batch mass
     * @return false
     */
    @Override
    public boolean contains(Amount<Mass> size) {
        Objects.requireNonNull(size, "size");
        return false;
    }

    /**
     * No size lies in an empty window.
     *
     * @param wish the batch mass wished for
     * @return empty
     */
    @Override
    public Optional<Amount<Mass>> nearest(Amount<Mass> wish) {
        Objects.requireNonNull(wish, "wish");
        return Optional.empty();
    }

    /** What would open it, and what was not considered. */
    @Override
    public String toString() {
        return formula().name() + ": no batch; " + openings + unconsidered();
    }
}
