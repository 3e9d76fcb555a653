package io.github.formulationmath.size;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Mass;

/** The steps that displays have: 1, 2 or 5 times a power of ten (OIML R 76-1, 3.4.1; from memory). */
final class StepSeries {

    private static final int[] MANTISSAS = {5, 2, 1};
    private static final Ratio LAST = Ratio.of(1, 1_000_000);
    private static final Ratio TENTH = Ratio.of(1, 10);
    private static final Ratio TEN = Ratio.of(10);

    private StepSeries() {}

    /** The steps below a step, from coarse to fine, over six decades, in the unit of the step. */
    static List<Amount<Mass>> finerThan(Amount<Mass> step) {
        return descending(step.exactValue(), step.exactValue(), false).stream()
                .map(value -> step.times(value.dividedBy(step.exactValue())))
                .toList();
    }

    /** The steps that are at most a number, from coarse to fine, down to six decades below another that is no more. */
    static List<Ratio> between(Ratio most, Ratio least) {
        return descending(most, least, true);
    }

    private static List<Ratio> descending(Ratio top, Ratio bottom, boolean included) {
        Ratio decade = powerOfTenAtMost(top);
        Ratio last = powerOfTenAtMost(bottom).times(LAST);
        List<Ratio> steps = new ArrayList<>();
        while (decade.compareTo(last) >= 0) {
            for (int mantissa : MANTISSAS) {
                Ratio step = decade.times(mantissa);
                int order = step.compareTo(top);
                if (order < 0 || included && order == 0) {
                    steps.add(step);
                }
            }
            decade = decade.times(TENTH);
        }
        return steps;
    }

    private static Ratio powerOfTenAtMost(Ratio value) {
        Ratio power = Ratio.ONE;
        while (power.compareTo(value) > 0) {
            power = power.times(TENTH);
        }
        while (power.times(TEN).compareTo(value) <= 0) {
            power = power.times(TEN);
        }
        return power;
    }
}
