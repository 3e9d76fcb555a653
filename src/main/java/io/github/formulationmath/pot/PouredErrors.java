package io.github.formulationmath.pot;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** Everything in the pot was weighed in, one addition after another: the errors are those of the weighings together. */
final class PouredErrors implements PotErrors {

    private record Pour(FormulaLine line, Ratio grams, Balance balance, WeighingMethod method) {

        Addition addition() {
            Amount<Mass> mass = Amount.grams(grams).inUnitOf(balance.readability());
            return Addition.of(line, mass, mass, balance).by(method);
        }
    }

    private final int size;
    private final List<Pour> pours;
    private final List<List<Integer>> byLine;
    private volatile @Nullable MadeMasses masses;

    private PouredErrors(int size, List<Pour> pours) {
        this.size = size;
        this.pours = List.copyOf(pours);
        this.byLine = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            byLine.add(new ArrayList<>(1));
        }
        for (int k = 0; k < pours.size(); k++) {
            byLine.get(pours.get(k).line().index()).add(k);
        }
    }

    /**
     * What the displays showed. A reading that follows on lines not written down is put down to its own line; it is of all of
     * them together.
     */
    static PouredErrors of(Readings readings) {
        List<Pour> pours = new ArrayList<>();
        Ratio before = Ratio.ZERO;
        for (Reading reading : readings.taken()) {
            if (reading.kind() == Reading.Kind.SHOWN) {
                Ratio shown = reading.shown().orElseThrow().canonical();
                WeighingMethod method = readings.methodOf(reading);
                boolean goesOn = method == WeighingMethod.CUMULATIVE;
                Ratio own = goesOn ? shown.minus(before) : shown;
                pours.add(new Pour(reading.line(), own, readings.balanceOf(reading), method));
                before = goesOn ? shown : Ratio.ZERO;
            }
        }
        return new PouredErrors(readings.plan().lines().size(), pours);
    }

    @Override
    public Bounds massBounds(int line) {
        Bounds sum = Bounds.point(Ratio.ZERO);
        for (int k : byLine.get(line)) {
            Interval<Amount<Mass>> pour = masses().additions().get(k).bounds();
            sum = BoxErrors.sum(
                    sum, Bounds.closed(pour.least().canonical(), pour.greatest().canonical()));
        }
        return sum;
    }

    @Override
    public Spread spread(int line) {
        Spread sum = Spread.NONE;
        for (int k : byLine.get(line)) {
            sum = sum.plus(Spread.of(masses().additions().get(k)));
        }
        return sum;
    }

    @Override
    public Bounds shareBounds(int line) {
        Map<Integer, Ratio> ones = new HashMap<>();
        byLine.get(line).forEach(k -> ones.put(k, Ratio.ONE));
        Interval<Amount<Dimensionless>> share =
                masses().madeShare(Subject.none(), ones).bounds();
        return Bounds.closed(share.least().canonical(), share.greatest().canonical());
    }

    @Override
    public PotErrors plus(List<LineAddition> additions, WeighingPlan plan) {
        List<Pour> more = new ArrayList<>(pours);
        for (LineAddition addition : additions) {
            more.add(new Pour(addition.line(), addition.grams(), addition.balanceIn(plan), addition.methodIn(plan)));
        }
        return new PouredErrors(size, more);
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public MadeMasses masses(List<MadeLine> lines) {
        boolean lineByLine = pours.size() == size
                && IntStream.range(0, size).allMatch(k -> pours.get(k).line().index() == k);
        return lineByLine ? masses() : PotErrors.super.masses(lines);
    }

    private MadeMasses masses() {
        MadeMasses known = masses;
        if (known == null) {
            known = MadeMasses.of(IntStream.range(0, pours.size())
                    .mapToObj(k -> pours.get(k).addition())
                    .toList());
            masses = known;
        }
        return known;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PouredErrors that && size == that.size && pours.equals(that.pours);
    }

    @Override
    public int hashCode() {
        return Objects.hash(size, pours);
    }
}
