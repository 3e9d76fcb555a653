package io.github.formulationmath.limit;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.MadeMasses;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The furthest share y* that is still within a limit T under a rule, if the whole keeps its mass S, what is counted is
 * scaled, and the errors e of the lines stay what they are.
 *
 * <p>Worst case: y + Σ (c_i − y)·e_i/S is largest at y*, hence {@code y* = T − Σ max((c_i − T)·e_i)/S}, each line's error
 * at the end that does the most harm. Errors that lines share are not set off against each other, so that y* may be a
 * little too careful for a batch that is weighed cumulatively.
 *
 * <p>Guard band: {@code y + k·u(y) = T} with {@code u²(y) = A − 2·B·y + C·y²}, the variance of JCGM 100:2008, 5.2.2, as a
 * function of y: {@code p·y² − 2·q·y + s = 0} with p = 1 − k²C, q = T − k²B, s = T² − k²A; rounded to the safe side.
 */
record AcceptableTarget(Tally tally, MadeMasses masses, DecisionRule rule) {

    private static final Symbol TARGET = Symbol.of("y_t", "acceptable-target", Kind.SHARE);
    private static final Symbol OWN = Symbol.of("A_v", "own-relative-variance", Kind.NUMBER);
    private static final Symbol COMMON = Symbol.of("B_v", "common-relative-variance", Kind.NUMBER);
    private static final Symbol WHOLE = Symbol.of("C_v", "whole-relative-variance", Kind.NUMBER);
    private static final Symbol FACTOR = Symbol.of("k_G", "guard-band-factor", Kind.NUMBER);
    private static final Symbol STRENGTH = Symbol.of("C", "counted-per-line", Kind.SHARE);

    /** As fine as a {@code double} can tell near 1. */
    private static final Rounding FINE = Rounding.toDecimalPlaces(15);

    private UsageLimit limit() {
        return tally.limit();
    }

    Phrase question() {
        return Phrase.of("question.acceptable-target", tally.name(), limit().id());
    }

    /** Negative, or above 1, if no target is within. */
    <V> V derive(Reckoning<V> r) {
        V t = tally.cap(r);
        return r.named(TARGET, rule.isWorstCase() ? worstCase(r, t) : guarded(r, t));
    }

    private <V> V worstCase(Reckoning<V> r, V t) {
        List<FormulaLine> lines = tally.whole().lines();
        List<Ratio> strengths = tally.strengths(lines);
        List<V> harms = new ArrayList<>();
        List<V> masses = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            AdditionError error = this.masses.additions().get(i);
            V strength = r.given(STRENGTH, lines.get(i), strengths.get(i), Source.user());
            harms.add(harm(r, r.difference(strength, t), error));
            masses.add(r.known(error.estimate()));
        }
        V band = r.quotient(r.sum(harms), r.sum(masses));
        return limit().kind().isUpper() ? r.difference(t, band) : r.sum(t, band);
    }

    /** How much the errors of one line can move the share towards the limit and beyond, times the whole mass. */
    private <V> V harm(Reckoning<V> r, V weight, AdditionError error) {
        boolean tooMuchHarms = r.number(weight).signum() > 0 == limit().kind().isUpper();
        V reach = tooMuchHarms
                ? r.difference(r.known(error.bounds().greatest()), r.known(error.estimate()))
                : r.difference(r.known(error.estimate()), r.known(error.bounds().least()));
        return r.product(r.absolute(weight), reach);
    }

    private <V> V guarded(Reckoning<V> r, V t) {
        Map<Integer, Ratio> strengths = tally.counted();
        Map<Integer, Ratio> ones = ones();
        V k = r.given(FACTOR, rule.factor(), Source.user());
        V k2 = r.product(k, k);
        V a = r.given(OWN, relative(strengths, strengths), Source.user());
        V b = r.given(COMMON, relative(strengths, ones), Source.user());
        V c = r.given(WHOLE, relative(ones, ones), Source.user());
        V p = r.difference(r.literal(1), r.product(k2, c));
        V q = r.difference(t, r.product(k2, b));
        V s = r.difference(r.product(t, t), r.product(k2, a));
        V root = r.root(r.difference(r.product(q, q), r.product(p, s)));
        boolean upper = limit().kind().isUpper();
        V exact = r.quotient(upper ? r.difference(q, root) : r.sum(q, root), p);
        return r.rounded(exact, FINE.with(upper ? RoundingMode.FLOOR : RoundingMode.CEILING));
    }

    /** Whether the uncertainty of the whole is small enough for a guard band to mean anything. */
    boolean isReachable() {
        Ratio k2 = rule.factor().times(rule.factor());
        return rule.isWorstCase() || k2.times(relative(ones(), ones())).compareTo(Ratio.ONE) < 0;
    }

    /** The weights of the whole. */
    private Map<Integer, Ratio> ones() {
        return IntStream.range(0, masses.size()).boxed().collect(Collectors.toMap(i -> i, i -> Ratio.ONE));
    }

    /** A covariance of two weighted sums of masses against the square of the whole. */
    private Ratio relative(Map<Integer, Ratio> one, Map<Integer, Ratio> other) {
        return masses.relativeCovariance(one, other);
    }
}
