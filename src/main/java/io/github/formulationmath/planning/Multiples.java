package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import java.util.Optional;

/** The whole multiples of a step. */
record Multiples(Ratio step) implements SizeSearch {

    @Override
    public boolean passes(Ratio size) {
        return size.dividedBy(step).isInteger();
    }

    @Override
    public Landing smallest(SearchMeter meter) {
        return Landing.resting(step);
    }

    @Override
    public Landing atLeast(Ratio from, SearchMeter meter) {
        return Landing.resting(from.dividedBy(step).ceil().times(step));
    }

    @Override
    public Optional<Landing> atMost(Ratio from, SearchMeter meter) {
        Ratio multiple = from.dividedBy(step).floor();
        return multiple.isZero() ? Optional.empty() : Optional.of(Landing.resting(multiple.times(step)));
    }

    @Override
    public Optional<Ratio> allFrom() {
        return Optional.empty();
    }

    @Override
    public Optional<Ratio> period() {
        return Optional.of(step);
    }

    @Override
    public Ratio after(Ratio end, SearchMeter meter) {
        return end.plus(step);
    }
}
