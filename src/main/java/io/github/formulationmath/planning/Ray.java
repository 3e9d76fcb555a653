package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import java.util.Optional;

/** Every size from one on. */
record Ray(Landing start) implements SizeSearch {

    @Override
    public boolean passes(Ratio size) {
        return size.compareTo(start.at()) >= 0;
    }

    @Override
    public Landing smallest(SearchMeter meter) {
        return start;
    }

    @Override
    public Landing atLeast(Ratio from, SearchMeter meter) {
        return passes(from) ? Landing.resting(from) : start;
    }

    @Override
    public Optional<Landing> atMost(Ratio from, SearchMeter meter) {
        return passes(from) ? Optional.of(Landing.resting(from)) : Optional.empty();
    }

    @Override
    public Optional<Ratio> allFrom() {
        return Optional.of(start.at());
    }

    @Override
    public Ratio startAround(Ratio passing) {
        return start.at();
    }

    @Override
    public Optional<Ratio> endAround(Ratio passing, SearchMeter meter) {
        return Optional.empty();
    }
}
