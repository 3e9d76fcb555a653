package io.github.formulationmath.size;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;

/** Passing sizes as intervals of bare numbers of grams, in ascending order. */
final class Listed {

    private Listed() {}

    /** The islands and the ray. */
    static List<Bounds> all(Sizes sizes) {
        Stream<Bounds> ray = sizes.allFrom().map(from -> Bounds.atLeast(from.canonical())).stream();
        return Stream.concat(sizes.islands().map(Listed::bounds), ray).toList();
    }

    static List<Bounds> parts(Sizes sizes, Ratio from, Ratio to) {
        return sizes.within(Interval.of(Amount.grams(from), Amount.grams(to))).stream()
                .map(Listed::bounds)
                .toList();
    }

    private static Bounds bounds(Interval<Amount<Mass>> island) {
        return Bounds.closed(island.least().canonical(), island.greatest().canonical());
    }
}
