package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.LinearityBasis;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * How far any one addition may be from its exact target before it is known what the target is: rounding it to the display
 * (half a division), the tare (half its step), the reading (half a division), linearity, k times the repeatability, and,
 * from a boat, what stays behind. A linearity of an indication counts at the tare too. Weighed cumulatively, both ends of
 * the addition are readings, but for the first, which begins at the tare; the worse of the two counts. By difference both
 * are readings. The repeatability is of the net weighing, and counts once.
 *
 * <p>What is too much is bounded apart from what is too little. The buoyancy of air changes a mass in proportion, by the
 * factor {@link #factor}; the rest is a constant.
 *
 * <p>Source: JCGM 100:2008 (GUM), F.2.2.1, for the half division that an indication hides.
 *
 * @param balance the balance with its errors
 * @param method how it is weighed
 * @param coverage k, by which repeatability is taken in; 0 leaves it out
 * @param rounding how far a reading may be from its target, in divisions
 * @param line the line whose closure sets that; null if all lines are rounded alike, each by itself
 */
record AdditionBound(
        Balance balance,
        WeighingMethod method,
        Ratio coverage,
        Ratio rounding,
        @Nullable Subject line) {

    /** Of a line of a formula, rounded as the bench closes its total. */
    static AdditionBound of(FormulaLine line, Formula formula, Bench bench, WeighingMethod method, Ratio coverage) {
        Ratio rounding = reach(bench.closure(), line, formula.lines().size());
        Subject own = bench.closure() == Closure.INDEPENDENT ? null : line;
        return new AdditionBound(bench.balance(), method, coverage, rounding, own);
    }

    /**
     * How far a reading may be from its target, in divisions, before any size is known. Rounded by itself: a half. Closed by the
     * largest remainder: one. Where a q.s. line takes the rest of k lines: a half, and k/2 for that line, a half from each of
     * the others and from the total. Within a tolerance: w/2 + max(1, (k − 1)/2). The w/2 is what rounding the total does to a
     * target; and a line that is more than one division too high only takes what others have less than half a division too
     * little of, for one of them would be better off with a division back.
     */
    static Ratio reach(Closure closure, FormulaLine line, int lines) {
        return switch (closure) {
            case INDEPENDENT -> Ratio.of(1, 2);
            case CLOSED -> Ratio.ONE;
            case QS_TAKES_REST -> Ratio.of(line.isQuantitySufficient() ? lines : 1, 2);
            case WITHIN_TOLERANCE -> line.fraction().dividedBy(2).plus(Ratio.ONE.max(Ratio.of(lines - 1L, 2)));
        };
    }

    private static final Symbol ERROR = Symbol.of("E", "addition-bound", Kind.MASS);
    private static final Symbol OVER = Symbol.of("E", "addition-bound-over", Kind.MASS);
    private static final Symbol SHORT = Symbol.of("E", "addition-bound-short", Kind.MASS);
    private static final Symbol TARE = Symbol.of("z", "tare-resolution", Kind.MASS);
    private static final Symbol LINEARITY = Symbol.of("a", "linearity", Kind.MASS);
    private static final Symbol REPEATABILITY = Symbol.of("s", "repeatability", Kind.MASS);
    private static final Symbol COVERAGE = Symbol.of("k", "coverage", Kind.NUMBER);
    private static final Symbol LEAST_RESIDUE = Symbol.of("ℓ", "least-residue-in-boat", Kind.MASS);
    private static final Symbol MOST_RESIDUE = Symbol.of("λ", "most-residue-in-boat", Kind.MASS);
    private static final Symbol FACTOR = Symbol.of("β", "buoyancy-factor", Kind.NUMBER);

    private static final Subject AT_MOST = Subject.of("over", "");
    private static final Subject AT_LEAST = Subject.of("short", "");

    /** Whether too much and too little have the same bound, and nothing is in proportion. */
    boolean isEven() {
        return hasNoBuoyancy()
                && (method != WeighingMethod.FROM_BOAT
                        || grams(balance.errors().residue().greatest()).isZero());
    }

    private boolean hasNoBuoyancy() {
        return factorNumber(true).equals(Ratio.ONE) && factorNumber(false).equals(Ratio.ONE);
    }

    /** By how many grams the mass may pass its target times {@link #factor} (over) or fall short of it. */
    <V> V constant(Reckoning<V> r, boolean over) {
        List<V> terms = new ArrayList<>();
        V half = r.quotient(Divisions.readability(r, balance), r.literal(2));
        V rounded = rounding.equals(Ratio.of(1, 2))
                ? half
                : r.product(r.literal(rounding), Divisions.readability(r, balance));
        terms.add(hasNoBuoyancy() ? rounded : r.product(factor(r, over), rounded));
        addIndications(r, terms, half);
        if (isEven()) {
            return line == null ? r.named(ERROR, r.sum(terms)) : r.named(ERROR, line, r.sum(terms));
        }
        V sum = r.sum(terms);
        if (method == WeighingMethod.FROM_BOAT) {
            sum = over
                    ? r.difference(
                            sum,
                            given(r, LEAST_RESIDUE, balance.errors().residue().least()))
                    : r.sum(
                            sum,
                            given(r, MOST_RESIDUE, balance.errors().residue().greatest()));
        }
        return over ? r.named(OVER, side(AT_MOST), sum) : r.named(SHORT, side(AT_LEAST), sum);
    }

    private Subject side(Subject side) {
        return line == null ? side : Subject.of(side.subscript() + line.subscript(), line.name());
    }

    private <V> void addIndications(Reckoning<V> r, List<V> terms, V half) {
        if (beginsAtReading()) {
            addReading(r, terms, half);
        } else {
            addTare(r, terms, half);
        }
        addReading(r, terms, half);
        if (!coverage.isZero() && !balance.errors().repeatability().isZero()) {
            V spread = given(r, REPEATABILITY, balance.errors().repeatability());
            terms.add(r.product(r.given(COVERAGE, coverage, Source.user()), spread));
        }
    }

    private boolean beginsAtReading() {
        return method == WeighingMethod.BY_DIFFERENCE || (method == WeighingMethod.CUMULATIVE && !isTareWorse());
    }

    /** Whether a cumulative sequence is worst at its first addition, which begins at a tare coarser than any reading. */
    private boolean isTareWorse() {
        Ratio tare = balance.errors().tareResolution().map(AdditionBound::grams).orElse(Ratio.ZERO);
        Ratio linearity = grams(balance.errors().linearity());
        Ratio atTare = tare.dividedBy(2).plus(isOfIndication() ? linearity : Ratio.ZERO);
        return atTare.compareTo(balance.readability().canonical().dividedBy(2).plus(linearity)) > 0;
    }

    private boolean isOfIndication() {
        return balance.errors().linearityBasis().equals(Optional.of(LinearityBasis.INDICATION));
    }

    private <V> void addTare(Reckoning<V> r, List<V> terms, V half) {
        terms.add(balance.errors()
                .tareResolution()
                .map(step -> r.quotient(given(r, TARE, step), r.literal(2)))
                .orElse(half));
        if (isOfIndication()) {
            addLinearity(r, terms);
        }
    }

    /** One reading: half a division and the linearity. */
    private <V> void addReading(Reckoning<V> r, List<V> terms, V half) {
        terms.add(half);
        addLinearity(r, terms);
    }

    private <V> void addLinearity(Reckoning<V> r, List<V> terms) {
        if (!balance.errors().linearity().isZero()) {
            terms.add(given(r, LINEARITY, balance.errors().linearity()));
        }
    }

    /** What the target is multiplied by at worst: 1 but for the buoyancy of air. */
    <V> V factor(Reckoning<V> r, boolean over) {
        Ratio factor = factorNumber(over);
        return hasNoBuoyancy() ? r.literal(1) : r.given(FACTOR, over ? AT_MOST : AT_LEAST, factor, Source.user());
    }

    private Ratio factorNumber(boolean over) {
        var air = balance.errors().buoyancy();
        return Ratio.ONE.plus((over ? air.upper() : air.lower()).orElseThrow());
    }

    private static <V> V given(Reckoning<V> r, Symbol symbol, Amount<Mass> amount) {
        return r.given(symbol, amount, Source.user());
    }

    private static Ratio grams(Amount<Mass> amount) {
        return amount.canonical();
    }
}
