package io.github.formulationmath.solution;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;

/**
 * How an acid divides itself among its forms at a pH: the form that lost j protons stands to the whole acid as {@code 10^(j·pH −
 * pK₁ − … − pK_j)} to 1. Both ends of every ratio are carried along, for powers of ten are irrational.
 *
 * @param ratios of each form to the one with all its protons
 */
record Species(List<Enclosure> ratios) {

    /** What does not change with the pH: {@code 10^(−pK₁ − … − pK_j)}. */
    static List<Enclosure> powers(List<Ratio> pks) {
        List<Enclosure> powers = new ArrayList<>();
        Ratio sum = Ratio.ZERO;
        powers.add(Enclosure.ONE);
        for (Ratio pk : pks) {
            sum = sum.plus(pk);
            powers.add(Enclosure.tenTo(sum.unaryMinus()));
        }
        return powers;
    }

    /** Exact where a form stands to the whole acid as a whole power of ten, as at a pH equal to the pK. */
    static Species at(Ratio ph, List<Ratio> pks) {
        List<Enclosure> ratios = new ArrayList<>();
        Ratio exponent = Ratio.ZERO;
        ratios.add(Enclosure.ONE);
        for (Ratio pk : pks) {
            exponent = exponent.plus(ph).minus(pk);
            ratios.add(Enclosure.tenTo(exponent));
        }
        return new Species(ratios);
    }

    /** With 10^pH and the powers of the constants: for many values of the pH one after another. */
    static Species at(Enclosure tenToPh, List<Enclosure> powers) {
        List<Enclosure> ratios = new ArrayList<>();
        Enclosure factor = Enclosure.ONE;
        for (Enclosure power : powers) {
            ratios.add(power.times(factor));
            factor = factor.times(tenToPh);
        }
        return new Species(ratios);
    }

    /** The share of the acid that has all its protons. */
    Enclosure undissociated() {
        return Enclosure.ONE.dividedBy(sum());
    }

    /** The share of the acid that has lost all its protons. */
    Enclosure bare() {
        return ratios.get(ratios.size() - 1).dividedBy(sum());
    }

    private Enclosure sum() {
        return ratios.stream().reduce(Enclosure.ZERO, Enclosure::plus);
    }

    /**
     * How many protons are lost on average: {@code Σ j·r_j / Σ r_j}. Nothing is negative, so that the sums at their far ends bound it;
     * they stand in 38 digits or more.
     */
    Enclosure lostProtons() {
        Enclosure lost = Enclosure.ZERO;
        for (int j = 1; j < ratios.size(); j++) {
            lost = lost.plus(ratios.get(j).times(Enclosure.of(j)));
        }
        return lost.dividedBy(sum());
    }
}
