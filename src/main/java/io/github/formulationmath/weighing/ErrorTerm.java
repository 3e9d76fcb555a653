package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Operation;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.simulation.InputQuantity.Law;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * One independent error q and the lines it enters: mass of line i = reading of i + Σ load · q.
 *
 * @param source where it comes from
 * @param law how it is spread about its middle
 * @param middle its middle: 0 for most
 * @param scale half-width or standard deviation
 * @param origin the figures behind middle and scale, to be named in a working
 * @param loads the lines, each once
 * @param isHalf whether the figures are of a net weighing, of whose two indications this is one: it has half the variance.
 *     Its reach is half as well, for then any two indications together reach as far as the net weighing, and no further
 */
record ErrorTerm(
        ErrorSource source, Law law, Ratio middle, Ratio scale, Figures origin, List<Load> loads, boolean isHalf) {

    /** How a term enters a line. */
    record Load(int line, Ratio factor) {}

    /** The figures from which a term is made. */
    interface Figures {

        /** What the figures are about: a balance, or a line. */
        Subject subject();

        /** The scale, as a relation of given figures. */
        <V> V scale(Reckoning<V> r);

        /** The middle, as a relation of given figures; only asked for if it is not 0. */
        default <V> V middle(Reckoning<V> r) {
            return r.literal(0);
        }
    }

    ErrorTerm {
        loads = List.copyOf(loads);
    }

    static ErrorTerm of(ErrorSource source, Law law, Figures figures, List<Load> loads, boolean isHalf) {
        Reckoning<Ratio> plain = Reckoning.plain();
        return new ErrorTerm(source, law, figures.middle(plain), figures.scale(plain), figures, loads, isHalf);
    }

    /** The same error as it enters some of the lines, under their new numbers. */
    ErrorTerm part(Map<Integer, Integer> places) {
        List<Load> kept = loads.stream()
                .filter(load -> places.containsKey(load.line()))
                .map(load -> new Load(Objects.requireNonNull(places.get(load.line())), load.factor()))
                .toList();
        return new ErrorTerm(source, law, middle, scale, origin, kept, isHalf);
    }

    /** The sum of the loads: how the term enters the sum of all masses. */
    Ratio totalLoad() {
        Ratio sum = Ratio.ZERO;
        for (Load load : loads) {
            sum = sum.plus(load.factor());
        }
        return sum;
    }

    Ratio variance() {
        return isHalf ? law.variance(scale).dividedBy(2) : law.variance(scale);
    }

    /** The scale that gives the law its variance; of half a net weighing, s/√2. */
    Ratio lawScale() {
        return isHalf ? scale.times(scale).dividedBy(2).sqrt(Operation.Root.DIGITS) : scale;
    }

    /** How far it may go from its middle: the half-width, or k times the standard deviation. */
    Ratio reach(@Nullable CoverageFactor coverage) {
        Ratio whole = law.isBounded() || coverage == null ? scale : scale.times(coverage.factor());
        return isHalf ? whole.dividedBy(2) : whole;
    }

    /** Whether it enters a line in proportion to what the display read, and not just with a sign. */
    boolean isProportional() {
        return source == ErrorSource.CALIBRATION || source == ErrorSource.BUOYANCY;
    }

    boolean isNothing() {
        return (scale.isZero() && middle.isZero()) || areNothing(loads);
    }

    private static boolean areNothing(List<Load> loads) {
        for (Load load : loads) {
            if (!load.factor().isZero()) {
                return false;
            }
        }
        return true;
    }

    /** One given figure, taken as it is or halved. */
    record Figure(Symbol symbol, Subject subject, Ratio value) implements Figures {

        @Override
        public <V> V scale(Reckoning<V> r) {
            return r.given(symbol, subject, value, Source.user());
        }
    }

    /** Half of what a display changes by; a working is told in the unit of the display. */
    record HalfStep(Symbol symbol, Subject subject, Amount<Mass> step) implements Figures {

        @Override
        public <V> V scale(Reckoning<V> r) {
            return r.quotient(r.displayStep(symbol, subject, step, Source.user()), r.literal(2));
        }
    }

    /** A figure known to lie between two ends. */
    record Range(Symbol low, Symbol high, Subject subject, Ratio lower, Ratio upper) implements Figures {

        @Override
        public <V> V scale(Reckoning<V> r) {
            return r.quotient(r.difference(upper(r), lower(r)), r.literal(2));
        }

        @Override
        public <V> V middle(Reckoning<V> r) {
            return r.quotient(r.sum(upper(r), lower(r)), r.literal(2));
        }

        <V> V lower(Reckoning<V> r) {
            return r.given(low, subject, lower, Source.user());
        }

        <V> V upper(Reckoning<V> r) {
            return r.given(high, subject, upper, Source.user());
        }
    }

    static final Symbol READABILITY = Symbol.of("d", "readability", Kind.MASS);
    static final Symbol TARE_STEP = Symbol.of("z", "tare-resolution", Kind.MASS);
    static final Symbol LINEARITY = Symbol.of("a", "linearity", Kind.MASS);
    static final Symbol REPEATABILITY = Symbol.of("s", "repeatability", Kind.MASS);
    static final Symbol CALIBRATION = Symbol.of("q", "calibration", Kind.SHARE);
    static final Symbol LEAST_RESIDUE = Symbol.of("g_lo", "least-residue", Kind.MASS);
    static final Symbol MOST_RESIDUE = Symbol.of("g_hi", "most-residue", Kind.MASS);
    static final Symbol LEAST_BUOYANCY = Symbol.of("b_lo", "least-buoyancy", Kind.SHARE);
    static final Symbol MOST_BUOYANCY = Symbol.of("b_hi", "most-buoyancy", Kind.SHARE);
}
