package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.util.Optional;

/** The size is at least what somebody wishes for. */
record SizeRequirement(Ratio least) implements Requirement {

    private static final Symbol WISHED = Symbol.of("W", "least-size-wished", Kind.MASS);

    @Override
    public Landing smallest(SearchMeter meter) {
        return new Landing(least, Landing.NO_LINE);
    }

    @Override
    public Landing atLeast(Ratio grams, SearchMeter meter) {
        return new Landing(grams.max(least), Landing.NO_LINE);
    }

    @Override
    public Optional<Landing> atMost(Ratio grams, SearchMeter meter) {
        return grams.compareTo(least) >= 0 ? Optional.of(new Landing(grams, Landing.NO_LINE)) : Optional.empty();
    }

    @Override
    public Ratio unbrokenFrom(Ratio passing) {
        return least;
    }

    @Override
    public Optional<Ratio> passesFrom() {
        return Optional.of(least);
    }

    @Override
    public <V> V derive(Reckoning<V> r, Landing smallest) {
        return r.given(WISHED, least, Source.user());
    }

    @Override
    public <V> V edge(Reckoning<V> r, Landing at, boolean fromBelow) {
        return derive(r, at);
    }
}
