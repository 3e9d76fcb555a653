package io.github.formulationmath.weighing;

import io.github.formulationmath.working.Reckoning;
import java.util.List;

/** Sums that read well however many terms there are. */
final class Sums {

    private Sums() {}

    static <V> V of(Reckoning<V> r, List<V> terms) {
        return switch (terms.size()) {
            case 0 -> r.literal(0);
            case 1 -> terms.get(0);
            default -> r.sum(terms);
        };
    }
}
