package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Divisions;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Every line has a whole number of divisions within its tolerance, {@code |n − x| ≤ τ·x}; see {@link Bands}. */
record RoundingWithin(Tolerances tolerances) implements OfWeighings.EachLine {

    static final Symbol LEAST_DIVISIONS = Symbol.of("l", "least-divisions", Kind.NUMBER);
    static final Symbol MOST_DIVISIONS = Symbol.of("u", "most-divisions", Kind.NUMBER);

    /** To the next whole number, up. */
    static final Rounding UP = Rounding.toDecimalPlaces(0).with(RoundingMode.CEILING);

    /** To the next whole number, down. */
    static final Rounding DOWN = Rounding.toDecimalPlaces(0).with(RoundingMode.FLOOR);

    @Override
    public Sizes on(Formula formula, Bench bench, List<FormulaLine> lines, Optional<WeighingMethod> own) {
        tolerances.checkedFor(formula);
        List<Ratio> shares = new ArrayList<>(lines.size());
        List<Ratio> allowed = new ArrayList<>(lines.size());
        for (FormulaLine line : lines) {
            shares.add(line.fraction());
            allowed.add(tolerances.fraction(line));
        }
        Ratio d = bench.balance().readability().canonical();
        return Sizes.of(
                formula,
                bench,
                new Part(
                        () -> Phrase.of("criterion.rounding-within", tolerances.toString()),
                        Bands.of(lines.get(0).index(), shares, allowed, d),
                        new Certificate(formula, lines, bench.balance(), tolerances)));
    }

    @Override
    public Optional<Bench> showing(Bench bench) {
        return Optional.of(bench.closing(Closure.INDEPENDENT));
    }

    /**
     * Shows that a batch is the smallest whose rounding stays within tolerance: the jumps that lead there from the smallest
     * line's first window, if they are few, and for every line the whole number in its band.
     *
     * @param formula the formula
     * @param lines the lines that are asked about, all of the formula or one
     * @param balance the balance
     * @param tolerances how far each may be off
     */
    private record Certificate(Formula formula, List<FormulaLine> lines, Balance balance, Tolerances tolerances)
            implements Part.Proof {

        private static final int MOST_JUMPS = 40;

        private static final Symbol REACHED = Symbol.of("S", "size-reached", Kind.MASS);
        private static final Symbol EDGE = Symbol.of("M", "window-edge", Kind.MASS);
        private static final Names JUMP = new Names(
                Symbol.of("y", "divisions-reached", Kind.NUMBER),
                Symbol.of("a", "least-reached", Kind.NUMBER),
                Symbol.of("b", "most-reached", Kind.NUMBER));
        private static final Names LAST =
                new Names(Symbol.of("x", "target-divisions", Kind.NUMBER), LEAST_DIVISIONS, MOST_DIVISIONS);

        /** What the divisions of a line and the ends of its band are called, on the way and at the end. */
        private record Names(Symbol divisions, Symbol least, Symbol most) {}

        /** The whole numbers at the two ends of a band; the first is above the second if none lies in it. */
        private record Ends<V>(V least, V most) {}

        @Override
        public <V> V smallest(Reckoning<V> r, Landing smallest) {
            V size;
            if (canBeTraced(smallest.at())) {
                r.note(() -> Phrase.of("note.jumps-skip-nothing"));
                size = climb(r, smallest.at());
            } else {
                r.note(() -> Phrase.of("note.jumps-not-shown"));
                size = windowEdge(r, smallest, true);
            }
            return confirmed(r, r.named(LEAST, MIN, size));
        }

        /** A size at which one window begins or ends, and that every line passes there. */
        @Override
        public <V> V edge(Reckoning<V> r, Landing at, boolean fromBelow) {
            return confirmed(r, r.named(EDGE, windowEdge(r, at, fromBelow)));
        }

        private <V> V confirmed(Reckoning<V> r, V size) {
            for (FormulaLine line : lines) {
                Ends<V> ends = ends(r, line, size, LAST, line);
                r.holds(ends.least(), Comparison.AT_MOST, ends.most());
            }
            return size;
        }

        /** n·d / (w·(1 ± τ)) for the line that binds, and the n of its window. */
        private <V> V windowEdge(Reckoning<V> r, Landing at, boolean fromBelow) {
            FormulaLine binding =
                    at.line().isPresent() ? formula.lines().get(at.line().getAsInt()) : lines.get(0);
            Ends<Ratio> ends = ends(Reckoning.plain(), binding, at.at(), LAST, binding);
            return fromBelow
                    ? windowStart(r, binding, r.literal(ends.most()))
                    : windowEnd(r, binding, r.literal(ends.least()));
        }

        /** A dry run with bare numbers: are the jumps few enough to be read? */
        private boolean canBeTraced(Ratio goal) {
            Reckoning<Ratio> plain = Reckoning.plain();
            Ratio size = windowStart(plain, firstLine(), Ratio.ONE);
            for (int jumps = 0; jumps <= MOST_JUMPS; jumps++) {
                if (size.equals(goal)) {
                    return true;
                }
                FormulaLine out = firstOutside(size);
                size = windowStart(plain, out, ends(plain, out, size, JUMP, out).least());
            }
            return false;
        }

        private <V> V climb(Reckoning<V> r, Ratio goal) {
            V size = windowStart(r, firstLine(), r.literal(1));
            for (int jump = 0; !r.number(size).equals(goal); jump++) {
                FormulaLine out = firstOutside(r.number(size));
                Subject place = Subject.of(Integer.toString(jump), out.name());
                V reached = r.named(REACHED, Subject.of(Integer.toString(jump), ""), size);
                Ends<V> ends = ends(r, out, reached, JUMP, place);
                r.holds(ends.least(), Comparison.GREATER, ends.most());
                size = windowStart(r, out, ends.least());
            }
            return size;
        }

        private FormulaLine firstOutside(Ratio size) {
            for (FormulaLine line : lines) {
                Ends<Ratio> ends = ends(Reckoning.plain(), line, size, JUMP, line);
                if (ends.least().compareTo(ends.most()) > 0) {
                    return line;
                }
            }
            throw new IllegalStateException("every line passes at " + Excerpt.of(size) + " g already");
        }

        private FormulaLine firstLine() {
            return lines.stream()
                    .min(Comparator.comparing(line -> line.fraction().times(Ratio.ONE.plus(tolerances.fraction(line)))))
                    .orElseThrow();
        }

        /** n·d / (w·(1 + τ)): the size at which the band of a line reaches up to n. */
        private <V> V windowStart(Reckoning<V> r, FormulaLine line, V n) {
            V share = r.product(r.known(line), tolerances.most(r, line));
            return r.quotient(r.product(n, Divisions.readability(r, balance)), share);
        }

        /** n·d / (w·(1 − τ)): the size at which the band of a line leaves n behind. */
        private <V> V windowEnd(Reckoning<V> r, FormulaLine line, V n) {
            V share = r.product(r.known(line), tolerances.least(r, line));
            return r.quotient(r.product(n, Divisions.readability(r, balance)), share);
        }

        /** ⌈(1 − τ)·x⌉ and ⌊(1 + τ)·x⌋, with x = w·M/d. */
        private <V> Ends<V> ends(Reckoning<V> r, FormulaLine line, V size, Names names, Subject subject) {
            V under = tolerances.least(r, line);
            V over = tolerances.most(r, line);
            V divisions = r.quotient(r.product(r.known(line), size), Divisions.readability(r, balance));
            V x = r.named(names.divisions(), subject, divisions);
            V low = r.rounded(r.product(under, x), UP);
            V high = r.rounded(r.product(over, x), DOWN);
            return new Ends<>(r.named(names.least(), subject, low), r.named(names.most(), subject, high));
        }
    }

    @Override
    public String toString() {
        return "rounding of each line within " + tolerances;
    }
}
