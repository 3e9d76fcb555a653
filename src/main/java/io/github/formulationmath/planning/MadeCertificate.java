package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Comparison;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.util.ArrayList;
import java.util.List;

/**
 * Shows that whole readings keep every share within tolerance, and what stands against one division less. Smaller totals
 * were excluded by the search in the same way; the working says so.
 */
record MadeCertificate(Formula formula, Balance balance, Tolerances tolerances, Ratio error, List<Ratio> readings) {

    private static final Symbol SHOWN = Symbol.of("n", "chosen-divisions", Kind.NUMBER);
    private static final Symbol TOTAL = Symbol.of("N", "made-divisions", Kind.NUMBER);
    private static final Symbol LESS = Symbol.of("N", "one-division-less", Kind.NUMBER);
    private static final Symbol LEAST_OF_LESS = Symbol.of("a", "least-divisions-of-less", Kind.NUMBER);
    private static final Symbol MOST_OF_LESS = Symbol.of("b", "most-divisions-of-less", Kind.NUMBER);
    private static final Symbol ERROR = Symbol.of("e", "reading-error-divisions", Kind.NUMBER);

    <V> V derive(Reckoning<V> r, ClosedSearch search) {
        V total = total(r);
        oneLess(r, total, search);
        return r.named(BatchSymbols.LEAST, BatchSymbols.MIN, r.product(total, BatchSymbols.readability(r, balance)));
    }

    /** The readings add up to N, and each lies between the ends that N sets it. */
    <V> V total(Reckoning<V> r) {
        List<V> shown = new ArrayList<>(readings.size());
        for (int i = 0; i < readings.size(); i++) {
            shown.add(r.named(SHOWN, formula.lines().get(i), r.literal(readings.get(i))));
        }
        V total = r.named(TOTAL, r.sum(shown));
        enclose(r, shown, total);
        return total;
    }

    /** Each reading lies between the ends that N sets it. */
    <V> void enclose(Reckoning<V> r, List<V> shown, V total) {
        for (int i = 0; i < readings.size(); i++) {
            FormulaLine line = formula.lines().get(i);
            r.holds(
                    r.named(BatchSymbols.LEAST_DIVISIONS, line, least(r, line, total)),
                    Comparison.AT_MOST,
                    shown.get(i));
            r.holds(shown.get(i), Comparison.AT_MOST, r.named(BatchSymbols.MOST_DIVISIONS, line, most(r, line, total)));
        }
    }

    /** Whether each reading does. */
    boolean holdsAt(Ratio total) {
        Reckoning<Ratio> plain = Reckoning.plain();
        for (int i = 0; i < readings.size(); i++) {
            FormulaLine line = formula.lines().get(i);
            if (least(plain, line, total).compareTo(readings.get(i)) > 0
                    || most(plain, line, total).compareTo(readings.get(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    /** One division less: a line whose band holds no whole number, or ends whose sums do not enclose the total. */
    private <V> void oneLess(Reckoning<V> r, V total, ClosedSearch search) {
        Ratio number = r.number(total).minus(Ratio.ONE);
        if (number.signum() <= 0) {
            return;
        }
        r.note(() -> Phrase.of("note.smaller-totals-excluded"));
        V less = r.named(LESS, Subject.of("less", ""), r.difference(total, r.literal(1)));
        List<Ratio> least = search.ends(number, false);
        List<Ratio> most = search.ends(number, true);
        for (int i = 0; i < readings.size(); i++) {
            if (least.get(i).compareTo(most.get(i)) > 0) {
                FormulaLine line = formula.lines().get(i);
                r.holds(leastOfLess(r, line, less), Comparison.GREATER, mostOfLess(r, line, less));
                return;
            }
        }
        boolean tooMuch = least.stream().reduce(Ratio.ZERO, Ratio::plus).compareTo(number) > 0;
        List<V> ends = new ArrayList<>(readings.size());
        formula.lines().forEach(line -> ends.add(tooMuch ? leastOfLess(r, line, less) : mostOfLess(r, line, less)));
        r.holds(r.sum(ends), tooMuch ? Comparison.GREATER : Comparison.LESS, less);
    }

    private <V> V leastOfLess(Reckoning<V> r, FormulaLine line, V less) {
        return r.named(LEAST_OF_LESS, line, least(r, line, less));
    }

    private <V> V mostOfLess(Reckoning<V> r, FormulaLine line, V less) {
        return r.named(MOST_OF_LESS, line, most(r, line, less));
    }

    private <V> V least(Reckoning<V> r, FormulaLine line, V total) {
        V edge = r.product(r.known(line), tolerances.least(r, line));
        if (error.isZero()) {
            return r.rounded(r.product(edge, total), BatchSymbols.UP);
        }
        return r.rounded(r.sum(r.product(edge, r.sum(total, others(r))), e(r)), BatchSymbols.UP);
    }

    private <V> V most(Reckoning<V> r, FormulaLine line, V total) {
        V edge = r.product(r.known(line), tolerances.most(r, line));
        if (error.isZero()) {
            return r.rounded(r.product(edge, total), BatchSymbols.DOWN);
        }
        return r.rounded(r.difference(r.product(edge, r.difference(total, others(r))), e(r)), BatchSymbols.DOWN);
    }

    private <V> V others(Reckoning<V> r) {
        return r.product(r.literal(readings.size() - 2L), e(r));
    }

    private <V> V e(Reckoning<V> r) {
        return r.given(ERROR, error, Source.user());
    }
}
