package io.github.formulationmath.support;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.MadeShare;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Made masses and shares as the plain numbers that tests reckon with: grams, and fractions of one. */
public final class Made {

    private Made() {}

    /** The number of anything that has a working. */
    public static Ratio number(Explained value) {
        return value.origin().number();
    }

    /** The same as a double. */
    public static double real(Amount<?> value) {
        return value.canonical().doubleValue();
    }

    /** Both ends. */
    public static Bounds bounds(Interval<? extends Amount<?>> interval) {
        return Bounds.closed(interval.least().canonical(), interval.greatest().canonical());
    }

    /** Where the mass of a line is sure to lie, in grams. */
    public static Bounds massBounds(MadeMasses made, int line) {
        return bounds(made.additions().get(line).bounds());
    }

    /** The mass of a line that is most likely there, in grams. */
    public static Ratio estimate(MadeMasses made, int line) {
        return made.additions().get(line).estimate().canonical();
    }

    /** The covariance of two lines. */
    public static Ratio covariance(MadeMasses made, int line, int other) {
        return covariance(made, Map.of(line, Ratio.ONE), Map.of(other, Ratio.ONE));
    }

    /** The covariance of two weighted sums, in g². */
    public static Ratio covariance(MadeMasses made, Map<Integer, Ratio> weights, Map<Integer, Ratio> others) {
        Ratio total = made.total().canonical();
        return made.relativeCovariance(weights, others).times(total).times(total);
    }

    /** The share of something that every line contains in a strength of its own. */
    public static MadeShare madeShare(MadeMasses made, Subject subject, List<Ratio> strengths) {
        Map<Integer, Ratio> byLine = new HashMap<>();
        strengths.forEach(strength -> byLine.put(byLine.size(), strength));
        return made.madeShare(subject, byLine);
    }

    /** Where the share of a line is sure to lie. */
    public static Bounds shareBounds(MadeMasses made, int line) {
        return bounds(made.madeShare(line).bounds());
    }

    /** Where the share of something is sure to lie. */
    public static Bounds shareBounds(MadeMasses made, List<Ratio> strengths) {
        return bounds(madeShare(made, Subject.of("", ""), strengths).bounds());
    }

    /** u² of the share of a line. */
    public static Ratio shareVariance(MadeMasses made, int line) {
        return number(made.madeShare(line).variance());
    }

    /** u² of the share of something. */
    public static Ratio shareVariance(MadeMasses made, List<Ratio> strengths) {
        return number(madeShare(made, Subject.of("", ""), strengths).variance());
    }
}
