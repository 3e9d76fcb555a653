package io.github.formulationmath.planning;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Walks the intervals of passing sizes upwards, in divisions; the last is a ray. */
final class Islands implements Iterator<Bounds> {

    private final Bands bands;
    private final Optional<Ratio> allFrom;
    private final Supplier<SearchMeter> meters;
    private @Nullable Ratio next;

    /** From a size on, passing or not; the interval around a passing size is entered at that size. */
    Islands(Bands bands, Ratio from, Supplier<SearchMeter> meters) {
        this.bands = bands;
        this.allFrom = bands.allFrom();
        this.meters = meters;
        this.next = bands.atLeast(from, meters.get()).at();
    }

    @Override
    public boolean hasNext() {
        return next != null;
    }

    @Override
    public Bounds next() {
        Ratio start = next;
        if (start == null) {
            throw new NoSuchElementException("the ray was the last interval");
        }
        if (allFrom.isPresent() && start.compareTo(allFrom.get()) >= 0) {
            next = null;
            return Bounds.atLeast(start);
        }
        SearchMeter meter = meters.get();
        Ratio end = bands.endAround(start, meter);
        next = bands.after(end, meter).at();
        return Bounds.closed(start, end);
    }
}
