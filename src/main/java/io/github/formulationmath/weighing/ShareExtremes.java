package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The true extremes of a share y = Σ c·m / Σ m over everything the masses may be.
 *
 * <p>Masses are affine in independent variables x, each with an interval of its own. With N(x) = Σ c·m, D(x) = Σ m &gt; 0:
 * some x has y(x) &gt; t exactly if max (N − tD) &gt; 0, and N − tD, being affine in x, takes its maximum at the corner that
 * takes for each variable the end its sign asks for. Begin with any corner and its t; while that maximum is above 0, go
 * on to the corner where it is taken: its y is strictly larger. There are finitely many corners, so this ends, with a
 * corner that no x beats (W. Dinkelbach, On nonlinear fractional programming, Management Science 13 (1967) 492-498; from
 * memory). All of it in exact arithmetic. The least value is minus the largest of −y.
 *
 * <p>For independent masses and one line this gives the closed form: m_i at one end, all others at the other. The variables
 * that do not enter the lines with a strength matter through their sum alone, and are taken together as one variable: a
 * share costs as much as the lines that it is of, not as the whole has.
 */
final class ShareExtremes {

    private final Map<Integer, Integer> places = new HashMap<>();
    private final List<BoxVariable> variables = new ArrayList<>();
    private final Ratio[] numerator;
    private final Ratio[] denominator;
    private final Ratio fixedNumerator;
    private final TotalRange totals;

    /** A corner of the box and the share there. */
    final class Corner {
        private final Ratio share;
        private final boolean[] high;

        private Corner(boolean[] high) {
            this.high = high;
            this.share = sum(numerator, fixedNumerator, high).dividedBy(sum(denominator, Ratio.ZERO, high));
        }

        Ratio share() {
            return share;
        }

        /** Whether a variable of the box is at its upper end. */
        boolean isHigh(int variable) {
            Integer place = places.get(variable);
            return place != null ? high[place] : totals.isHigh(variable, high[high.length - 1]);
        }
    }

    ShareExtremes(MassBox box, TotalRange totals, Weights weights) {
        this.totals = totals;
        this.fixedNumerator = box.fixed(weights);
        List<Ratio> n = new ArrayList<>();
        List<Ratio> d = new ArrayList<>();
        Ratio least = totals.least();
        Ratio most = totals.most();
        for (Map.Entry<Integer, Ratio> entry : box.sensitivities(weights).entrySet()) {
            int index = entry.getKey();
            BoxVariable variable = box.variables().get(index);
            places.put(index, variables.size());
            variables.add(variable);
            n.add(entry.getValue());
            d.add(totals.sensitivity(index));
            least = least.minus(totals.contribution(variable, index, false));
            most = most.minus(totals.contribution(variable, index, true));
        }
        // What all other variables together, and the fixed parts, add to the total.
        variables.add(new BoxVariable(least, most, List.of()));
        n.add(Ratio.ZERO);
        d.add(Ratio.ONE);
        this.numerator = n.toArray(Ratio[]::new);
        this.denominator = d.toArray(Ratio[]::new);
    }

    /** The corner where the share is largest, or least. */
    Corner extreme(boolean largest) {
        int direction = largest ? 1 : -1;
        boolean[] high = new boolean[variables.size()];
        for (int i = 0; i < high.length; i++) {
            high[i] = denominator[i].signum() > 0;
        }
        Corner best = new Corner(high);
        while (true) {
            boolean[] next = cornerFor(best.share, direction);
            Ratio gain =
                    sum(numerator, fixedNumerator, next).minus(best.share.times(sum(denominator, Ratio.ZERO, next)));
            if (gain.signum() * direction <= 0) {
                return best;
            }
            best = new Corner(next);
        }
    }

    private boolean[] cornerFor(Ratio share, int direction) {
        boolean[] high = new boolean[variables.size()];
        for (int i = 0; i < high.length; i++) {
            high[i] = numerator[i].minus(share.times(denominator[i])).signum() * direction > 0;
        }
        return high;
    }

    private Ratio sum(Ratio[] sensitivities, Ratio fixed, boolean[] high) {
        Ratio sum = fixed;
        for (int i = 0; i < high.length; i++) {
            if (!sensitivities[i].isZero()) {
                sum = sum.plus(sensitivities[i].times(variables.get(i).end(high[i])));
            }
        }
        return sum;
    }
}
