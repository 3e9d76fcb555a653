package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.util.Optional;

/** The size is a whole multiple of a step. */
record StepRequirement(Ratio step) implements Requirement {

    private static final Symbol STEP = Symbol.of("s", "size-step", Kind.MASS);

    @Override
    public Landing smallest(SearchMeter meter) {
        return new Landing(step, Landing.NO_LINE);
    }

    @Override
    public Landing atLeast(Ratio grams, SearchMeter meter) {
        return new Landing(grams.dividedBy(step).ceil().times(step), Landing.NO_LINE);
    }

    @Override
    public Optional<Landing> atMost(Ratio grams, SearchMeter meter) {
        Ratio multiple = grams.dividedBy(step).floor();
        return multiple.isZero() ? Optional.empty() : Optional.of(new Landing(multiple.times(step), Landing.NO_LINE));
    }

    @Override
    public Optional<Ratio> grid() {
        return Optional.of(step);
    }

    @Override
    public Ratio unbrokenFrom(Ratio passing) {
        return passing;
    }

    @Override
    public Optional<Ratio> passesFrom() {
        return Optional.empty();
    }

    @Override
    public <V> V derive(Reckoning<V> r, Landing smallest) {
        return r.given(STEP, step, Source.user());
    }

    @Override
    public <V> V edge(Reckoning<V> r, Landing at, boolean fromBelow) {
        return r.product(r.literal(at.at().dividedBy(step)), r.given(STEP, step, Source.user()));
    }
}
