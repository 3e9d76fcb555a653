package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Comparison;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import org.jspecify.annotations.Nullable;

/**
 * The largest batch whose {@link PlannedLoad} there is room for: the room itself, if the readings of that batch fit, else
 * the largest whole number of divisions (or of the steps asked for) whose readings do. Sizes between that and the next may
 * fit too; where readings tie they may have no largest, so none is named.
 */
record LoadLimit(PlannedLoad load, @Nullable Ratio step) {

    private static final Symbol STEP = Symbol.of("s", "size-step", Kind.MASS);
    private static final Subject NEXT = Subject.of("next", "");

    boolean allows(Ratio room, Ratio grams) {
        return load.of(grams).compareTo(room) <= 0;
    }

    <V> V most(Reckoning<V> r, V room) {
        Ratio most = r.number(room);
        if (allows(most, most)) {
            return room;
        }
        V unit = unit(r);
        Ratio count = load.mostMultiples(most, r.number(unit));
        V size = r.product(r.literal(count), unit);
        V next = r.product(r.literal(count.plus(Ratio.ONE)), unit);
        fits(r, size, room);
        r.holds(load.derive(r, next, NEXT), Comparison.GREATER, room);
        return size;
    }

    /** Shows that a batch fits that {@link #most} does not name, lying between two whole numbers of divisions. */
    <V> V shown(Reckoning<V> r, V room, Ratio grams) {
        if (most(Reckoning.plain(), r.number(room)).equals(grams)) {
            return most(r, room);
        }
        V size = r.literal(grams);
        fits(r, size, room);
        return size;
    }

    private <V> void fits(Reckoning<V> r, V size, V room) {
        r.holds(load.derive(r, size, BatchSymbols.HIGH), Comparison.AT_MOST, room);
    }

    private <V> V unit(Reckoning<V> r) {
        return step == null
                ? BatchSymbols.readability(r, load.benches().get(0).balance())
                : r.given(STEP, step, Source.user());
    }
}
