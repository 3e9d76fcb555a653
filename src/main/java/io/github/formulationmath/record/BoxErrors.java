package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.io.Serial;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Each mass lies in an interval of its own, and the total in another. A share rises with its own mass and falls with every
 * other, so its extremes lie in the corners: {@code hi_i / (hi_i + Σ lo_j)} and {@code lo_i / (lo_i + Σ hi_j)}.
 */
final class BoxErrors implements PotErrors {

    @Serial
    private static final long serialVersionUID = 2L;

    private final List<Bounds> masses;
    private final Bounds total;
    private final Bounds sum;

    private BoxErrors(List<Bounds> masses, Bounds total) {
        this.masses = List.copyOf(masses);
        this.total = total;
        this.sum = masses.stream().reduce(Bounds.point(Ratio.ZERO), BoxErrors::sum);
    }

    private static BoxErrors of(List<Bounds> masses) {
        return new BoxErrors(masses, Bounds.atLeast(Ratio.ZERO));
    }

    static BoxErrors of(PotErrors others) {
        return of(IntStream.range(0, others.size()).mapToObj(others::massBounds).toList());
    }

    /** A line that nobody wrote down is anything up to what the readings around it, or the balance, leave room for. */
    static BoxErrors withGuesses(PouredErrors poured, Readings readings, List<PotMass> masses) {
        List<Bounds> bounds = new ArrayList<>();
        for (int i = 0; i < masses.size(); i++) {
            bounds.add(
                    masses.get(i).isAssumed()
                            ? Bounds.closed(Ratio.ZERO, most(poured, readings, i, masses.get(i)))
                            : poured.massBounds(i));
        }
        return of(bounds);
    }

    private static Ratio most(PouredErrors poured, Readings readings, int line, PotMass mass) {
        return mass.sharedWith().isEmpty()
                ? high(readings.room(line))
                : high(poured.massBounds(mass.sharedWith().get().position() - 1));
    }

    /** The lossy line is what the others leave of the whole. */
    static BoxErrors weighedAgain(PotErrors before, int lossy, Bounds total) {
        List<Bounds> masses = new ArrayList<>(of(before).masses);
        masses.set(lossy, Bounds.point(Ratio.ZERO));
        Bounds others = masses.stream().reduce(Bounds.point(Ratio.ZERO), BoxErrors::sum);
        masses.set(
                lossy,
                notBelow0(Bounds.closed(
                        low(total).minus(high(others)), high(total).minus(low(others)))));
        return new BoxErrors(masses, total);
    }

    @Override
    public Bounds massBounds(int line) {
        return masses.get(line);
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
    public PotErrors plus(List<LineAddition> additions, Balance bench) {
        List<Bounds> all = new ArrayList<>(masses);
        Bounds whole = total;
        for (LineAddition addition : additions) {
            FormulaLine line = addition.line();
            Balance balance = addition.balance().orElse(bench);
            Bounds more = SureMass.bounds(line, addition.grams(), balance, WeighingMethod.TARE_EACH);
            all.set(line.position() - 1, sum(all.get(line.position() - 1), more));
            whole = whole.upper().isPresent() ? sum(whole, more) : whole;
        }
        return new BoxErrors(all, whole);
    }

    @Override
    public int size() {
        return masses.size();
    }

    /**
     * A line whose mass is only known to lie in an interval, as an addition on a display so fine that it adds nothing
     * worth counting (a microgram) and with a linearity that reaches to the further end.
     */
    static Addition addition(MadeLine line) {
        Ratio reading = line.result();
        Bounds bounds = line.massBounds();
        Ratio error =
                high(bounds).minus(reading).max(reading.minus(low(bounds))).max(Ratio.ZERO);
        Amount<Mass> step = Amount.of(1, FormulationUnits.MICROGRAM);
        Balance balance = Balance.of(step, Amount.grams(reading.plus(error).plus(Ratio.ONE)))
                .named("line " + line.subscript())
                .withErrors(ErrorModel.readabilityOnly().withLinearityOfNetReading(Amount.grams(error)));
        return Addition.of(line.line(), line.mass(), line.mass(), balance);
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

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BoxErrors that
                && masses.equals(that.masses)
                && total.equals(that.total)
                && sum.equals(that.sum);
    }

    @Override
    public int hashCode() {
        return Objects.hash(masses, total, sum);
    }
}
