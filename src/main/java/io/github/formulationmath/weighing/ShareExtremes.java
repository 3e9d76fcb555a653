package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.ErrorTerm.Load;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

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
 * <p>For independent masses and one line this gives the closed form: m_i at one end, all others at the other. For one
 * line the variables that do not enter its mass matter through their sum alone, and are taken together as one variable.
 */
final class ShareExtremes {

    private final List<Integer> chosen;
    private final List<BoxVariable> variables;
    private final Ratio[] numerator;
    private final Ratio[] denominator;
    private final Ratio fixedNumerator;
    private final Ratio fixedDenominator;
    private final TotalRange totals;

    /** A corner of the box and the share there. */
    final class Corner {
        private final Ratio share;
        private final boolean[] high;

        private Corner(boolean[] high) {
            this.high = high;
            this.share = sum(numerator, fixedNumerator, high).dividedBy(sum(denominator, fixedDenominator, high));
        }

        Ratio share() {
            return share;
        }

        /** Whether a variable of the box is at its upper end. */
        boolean isHigh(int variable) {
            int place = chosen.indexOf(variable);
            return place >= 0 ? high[place] : totals.isHigh(variable, high[high.length - 1]);
        }
    }

    ShareExtremes(MassBox box, TotalRange totals, Weights weights) {
        boolean one = weights instanceof Weights.OneLine;
        this.totals = totals;
        this.chosen = weights instanceof Weights.OneLine line
                ? box.variablesOf(line.line())
                : IntStream.range(0, box.variables().size()).boxed().toList();
        this.variables =
                new ArrayList<>(chosen.stream().map(box.variables()::get).toList());
        List<Ratio> n = new ArrayList<>(
                variables.stream().map(v -> v.sensitivity(weights)).toList());
        List<Ratio> d = new ArrayList<>(chosen.stream().map(totals::sensitivity).toList());
        if (one) {
            variables.add(others());
            n.add(Ratio.ZERO);
            d.add(Ratio.ONE);
        }
        this.numerator = n.toArray(Ratio[]::new);
        this.denominator = d.toArray(Ratio[]::new);
        this.fixedNumerator = box.fixed(weights);
        this.fixedDenominator = one ? Ratio.ZERO : totals.fixed();
    }

    /** What all other variables together, and the fixed parts, add to the total. */
    private BoxVariable others() {
        Ratio least = totals.least();
        Ratio most = totals.most();
        for (int place = 0; place < chosen.size(); place++) {
            least = least.minus(totals.contribution(variables.get(place), chosen.get(place), false));
            most = most.minus(totals.contribution(variables.get(place), chosen.get(place), true));
        }
        return new BoxVariable(least, most, List.<Load>of());
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
            Ratio gain = sum(numerator, fixedNumerator, next)
                    .minus(best.share.times(sum(denominator, fixedDenominator, next)));
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
