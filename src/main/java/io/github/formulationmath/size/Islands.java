package io.github.formulationmath.size;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import java.util.Optional;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Walks the intervals of passing sizes upwards, in grams; a ray is the last. */
final class Islands extends Spliterators.AbstractSpliterator<Bounds> {

    private final Sizes sizes;
    private final Supplier<SearchMeter> meters;
    private Optional<Ratio> next;

    /** From a size on, passing or not, or from the smallest; the interval around a passing size is entered at that size. */
    Islands(Sizes sizes, Optional<Ratio> from, Supplier<SearchMeter> meters) {
        super(Long.MAX_VALUE, Spliterator.ORDERED | Spliterator.NONNULL);
        this.sizes = sizes;
        this.meters = meters;
        this.next = from.map(size -> atLeast(size, meters.get()))
                .orElseGet(() -> sizes.smallest(meters.get()).map(Sizes.Rest::at));
    }

    private Optional<Ratio> atLeast(Ratio size, SearchMeter meter) {
        return sizes.atLeast(size, meter, Optional.empty()).map(Sizes.Rest::at);
    }

    @Override
    public boolean tryAdvance(Consumer<? super Bounds> action) {
        if (next.isEmpty()) {
            return false;
        }
        Ratio start = next.get();
        SearchMeter meter = meters.get();
        Optional<Ratio> end = sizes.parts().stream()
                .flatMap(part -> part.search().endAround(start, meter).stream())
                .reduce(Ratio::min);
        next = end.flatMap(last -> atLeast(after(last, meter), meter));
        action.accept(end.map(last -> Bounds.closed(start, last)).orElseGet(() -> Bounds.atLeast(start)));
        return true;
    }

    /** The parts that end there begin again later. */
    private Ratio after(Ratio end, SearchMeter meter) {
        Ratio next = end;
        for (Part part : sizes.parts()) {
            if (part.search().endAround(end, meter).equals(Optional.of(end))) {
                next = next.max(part.search().after(end, meter));
            }
        }
        return next;
    }
}
