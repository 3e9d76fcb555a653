package io.github.formulationmath.solution;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.PowerOfTen;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;

/**
 * How an acid divides itself among its forms at a pH: the form that lost j protons stands to the whole acid as {@code 10^(j·pH −
 * pK₁ − … − pK_j)} to 1. Both ends of every ratio are carried along, for powers of ten are irrational.
 */
record Species(List<Bounds> ratios) {

    static Species at(Ratio ph, List<Ratio> pks) {
        List<Bounds> ratios = new ArrayList<>();
        ratios.add(Bounds.point(Ratio.ONE));
        Ratio exponent = Ratio.ZERO;
        for (Ratio pk : pks) {
            exponent = exponent.plus(ph).minus(pk);
            ratios.add(PowerOfTen.of(exponent));
        }
        return new Species(ratios);
    }

    /** The share of the acid that has all its protons. */
    Bounds undissociated() {
        Ratio least = Ratio.ZERO;
        Ratio most = Ratio.ZERO;
        for (Bounds ratio : ratios) {
            least = least.plus(lower(ratio));
            most = most.plus(upper(ratio));
        }
        return Bounds.closed(most.reciprocal(), least.reciprocal());
    }

    /**
     * How many protons are lost on average: Σ j·r_j / Σ r_j. It rises with every ratio of a form that lost more than the average,
     * so that both sums at their far ends bound it.
     */
    Bounds lostProtons() {
        Ratio leastUpper = Ratio.ZERO;
        Ratio mostUpper = Ratio.ZERO;
        Ratio leastSum = Ratio.ZERO;
        Ratio mostSum = Ratio.ZERO;
        for (int j = 0; j < ratios.size(); j++) {
            Ratio low = lower(ratios.get(j));
            Ratio high = upper(ratios.get(j));
            leastUpper = leastUpper.plus(low.times(j));
            mostUpper = mostUpper.plus(high.times(j));
            leastSum = leastSum.plus(low);
            mostSum = mostSum.plus(high);
        }
        return Bounds.closed(leastUpper.dividedBy(mostSum), mostUpper.dividedBy(leastSum));
    }

    private static Ratio lower(Bounds bounds) {
        return bounds.lower().orElseThrow();
    }

    private static Ratio upper(Bounds bounds) {
        return bounds.upper().orElseThrow();
    }
}
