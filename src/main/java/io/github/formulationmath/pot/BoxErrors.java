package io.github.formulationmath.pot;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Each mass lies in an interval of its own, and the total in another. A share rises with its own mass and falls with every
 * other, so its extremes lie in the corners: {@code hi_i / (hi_i + Σ lo_j)} and {@code lo_i / (lo_i + Σ hi_j)}.
 */
record BoxErrors(List<Bounds> masses, List<Spread> spreads, Bounds total, Bounds sum) implements PotErrors {

    private static BoxErrors of(List<Bounds> masses, List<Spread> spreads, Bounds total) {
        Bounds sum = masses.stream().reduce(Bounds.point(Ratio.ZERO), BoxErrors::sum);
        return new BoxErrors(List.copyOf(masses), List.copyOf(spreads), total, sum);
    }

    private static BoxErrors of(List<Bounds> masses, List<Spread> spreads) {
        return of(masses, spreads, Bounds.atLeast(Ratio.ZERO));
    }

    static BoxErrors of(PotErrors others) {
        return of(
                IntStream.range(0, others.size()).mapToObj(others::massBounds).toList(),
                IntStream.range(0, others.size()).mapToObj(others::spread).toList());
    }

    /** A line that nobody wrote down is anything up to what the readings around it, or the balance, leave room for. */
    static BoxErrors withGuesses(PouredErrors poured, Readings readings, List<PotMass> masses) {
        List<Bounds> bounds = new ArrayList<>();
        List<Spread> spreads = new ArrayList<>();
        Map<Integer, Reading> byLine = readings.byLine();
        int guesses = (int) masses.stream().filter(PotMass::isAssumed).count();
        for (int i = 0; i < masses.size(); i++) {
            PotMass mass = masses.get(i);
            Bounds there = mass.isAssumed()
                    ? Bounds.closed(Ratio.ZERO, high(room(poured, readings, mass, i, byLine.get(i))))
                    : poured.massBounds(i);
            bounds.add(there);
            // What one guess has too much another may have too little.
            Spread spread = poured.spread(i);
            spreads.add(
                    mass.isAssumed()
                            ? spread.withBounded(halfWidth(mass.grams(Reckoning.plain()), there), guesses)
                            : spread);
        }
        return of(bounds, spreads);
    }

    private static Bounds room(
            PouredErrors poured, Readings readings, PotMass mass, int line, @Nullable Reading reading) {
        return mass.sharedWith()
                .map(shared -> poured.massBounds(shared.index()))
                .orElseGet(
                        () -> readings.room(line, Optional.ofNullable(reading).flatMap(Reading::balance)));
    }

    /** The lossy line is what the others leave of the whole. */
    static BoxErrors weighedAgain(PotErrors before, int lossy, Bounds total, Spread ofTotal) {
        List<Bounds> masses = new ArrayList<>(of(before).masses);
        masses.set(lossy, Bounds.point(Ratio.ZERO));
        Bounds others = masses.stream().reduce(Bounds.point(Ratio.ZERO), BoxErrors::sum);
        masses.set(
                lossy,
                notBelow0(Bounds.closed(
                        low(total).minus(high(others)), high(total).minus(low(others)))));
        return of(masses, rest(of(before).spreads, lossy, ofTotal), total);
    }

    /** The errors of the others are in their own lines and in the one that is the rest. */
    private static List<Spread> rest(List<Spread> before, int lossy, Spread ofTotal) {
        List<Spread> spreads = new ArrayList<>(before.size());
        Spread rest = ofTotal;
        for (int i = 0; i < before.size(); i++) {
            spreads.add(before.get(i).twice());
            rest = i == lossy ? rest : rest.plus(spreads.get(i));
        }
        spreads.set(lossy, rest);
        return spreads;
    }

    @Override
    public Bounds massBounds(int line) {
        return masses.get(line);
    }

    @Override
    public Spread spread(int line) {
        return spreads.get(line);
    }

    @Override
    public Bounds shareBounds(int line) {
        Ratio low = low(masses.get(line));
        Ratio high = high(masses.get(line));
        // The others at their other end, and the whole no further out than it is known to be.
        Ratio most = total.upper()
                .map(high(sum).minus(high).plus(low)::min)
                .orElse(high(sum).minus(high).plus(low));
        Ratio least = low(sum).minus(low).plus(high).max(low(total)).max(high);
        return Bounds.closed(
                most.isZero() ? Ratio.ZERO : low.dividedBy(most.max(low)),
                least.isZero() ? Ratio.ONE : high.dividedBy(least));
    }

    @Override
    public PotErrors plus(List<LineAddition> additions, WeighingPlan plan) {
        List<Bounds> all = new ArrayList<>(masses);
        List<Spread> wider = new ArrayList<>(spreads);
        Bounds whole = total;
        for (LineAddition addition : additions) {
            FormulaLine line = addition.line();
            int place = line.index();
            Balance balance = addition.balanceIn(plan);
            WeighingMethod method = addition.methodIn(plan);
            Bounds more = SureMass.bounds(line, addition.grams(), balance, method);
            all.set(place, sum(all.get(place), more));
            wider.set(place, wider.get(place).plus(SureMass.spread(line, addition.grams(), balance, method)));
            whole = whole.upper().isPresent() ? sum(whole, more) : whole;
        }
        return of(all, wider, whole);
    }

    @Override
    public int size() {
        return masses.size();
    }

    /**
     * A line that stands by itself: its error reaches to the further end of where its mass is sure to lie, and its
     * repeatability makes up for what the weighings behind it had beyond that.
     */
    static Addition addition(MadeLine line, Spread spread, int calibrated) {
        Ratio reading = line.grams();
        Ratio error = halfWidth(reading, line.bounds());
        return Addition.within(
                line.line(),
                line.subscript(),
                line.mass(),
                Amount.grams(error).inUnitOf(line.mass()),
                Amount.grams(spread.beyond(error, calibrated)).inUnitOf(line.mass()));
    }

    private static Ratio halfWidth(Ratio middle, Bounds bounds) {
        return high(bounds).minus(middle).max(middle.minus(low(bounds))).max(Ratio.ZERO);
    }

    static Bounds sum(Bounds a, Bounds b) {
        return Bounds.closed(low(a).plus(low(b)), high(a).plus(high(b)));
    }

    static Bounds notBelow0(Bounds bounds) {
        return Bounds.closed(low(bounds).max(Ratio.ZERO), high(bounds).max(Ratio.ZERO));
    }

    private static Ratio low(Bounds bounds) {
        return bounds.lower().orElseThrow();
    }

    private static Ratio high(Bounds bounds) {
        return bounds.upper().orElseThrow();
    }
}
