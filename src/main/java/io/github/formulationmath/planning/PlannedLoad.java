package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.io.Serializable;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * What a batch brings onto the pan by its targets and by the readings of its plan, whichever is more. Rounded lines may add
 * up to more than the batch, so a bench that carries the batch may not carry its readings. The load never falls as the
 * batch grows, for no rounding does.
 *
 * @param formula as it is weighed
 * @param benches the closures under which the batch is to be planned
 */
record PlannedLoad(Formula formula, List<Bench> benches) implements Serializable {

    private static final Symbol LOAD = Symbol.of("P", "planned-load", Kind.MASS);
    private static final Rounding NEAREST = Rounding.toDecimalPlaces(0);

    static PlannedLoad of(Formula formula, Bench bench) {
        return new PlannedLoad(formula, List.of(bench));
    }

    /** The load of a batch in grams. */
    Ratio of(Ratio grams) {
        return load(Reckoning.plain(), grams);
    }

    <V> V derive(Reckoning<V> r, V grams, Subject subject) {
        return r.named(LOAD, subject, load(r, grams));
    }

    private <V> V load(Reckoning<V> r, V grams) {
        List<V> all = new ArrayList<>();
        all.add(grams);
        benches.forEach(bench -> all.add(total(r, grams, bench)));
        return r.maximum(all);
    }

    private <V> V total(Reckoning<V> r, V grams, Bench bench) {
        V d = BatchSymbols.readability(r, bench.balance());
        if (bench.closure() != Closure.INDEPENDENT) {
            return r.product(r.rounded(r.quotient(grams, d), NEAREST), d);
        }
        List<V> divisions = new ArrayList<>(formula.lines().size());
        for (FormulaLine line : formula.lines()) {
            divisions.add(r.rounded(r.quotient(r.product(r.known(line), grams), d), NEAREST));
        }
        return r.product(r.sum(divisions), d);
    }

    /** The largest batch that is a whole multiple of a unit and loads no more than there is room for; 0 if none. */
    Ratio mostMultiples(Ratio room, Ratio unit) {
        BigInteger fits = BigInteger.ZERO;
        BigInteger high = room.dividedBy(unit).floor().numerator();
        Ratio span = bench().balance()
                .readability()
                .canonical()
                .times(formula.lines().size() + 1L);
        BigInteger low = room.minus(span).dividedBy(unit).floor().numerator();
        if (low.signum() > 0) {
            // A rounded line is at most half a division too much, so this one fits.
            fits = low;
        }
        while (fits.compareTo(high) < 0) {
            BigInteger middle = fits.add(high).add(BigInteger.ONE).shiftRight(1);
            if (of(unit.times(Ratio.of(middle))).compareTo(room) <= 0) {
                fits = middle;
            } else {
                high = middle.subtract(BigInteger.ONE);
            }
        }
        return Ratio.of(fits);
    }

    private Bench bench() {
        return benches.get(0);
    }
}
