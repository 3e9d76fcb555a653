package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.working.Subject;
import java.io.Serial;
import java.io.Serializable;
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

    @Serial
    private static final long serialVersionUID = 2L;

    private record Pour(FormulaLine line, Ratio grams, Balance balance, WeighingMethod method) implements Serializable {

        /** The place of the line in the formula, from 0. */
        int index() {
            return line.index();
        }

        Addition addition() {
            return Addition.of(line, Amount.grams(grams), Amount.grams(grams), balance)
                    .by(method);
        }
    }

    private final int size;
    private final List<Pour> pours;
    private transient volatile @Nullable MadeMasses masses;
    private transient volatile @Nullable List<List<Integer>> byLine;

    private PouredErrors(int size, List<Pour> pours) {
        this.size = size;
        this.pours = List.copyOf(pours);
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
                Ratio shown = reading.shown().orElseThrow().in(FormulationUnits.GRAM);
                pours.add(
                        new Pour(reading.line(), shown.minus(before), readings.balanceOf(reading), readings.method()));
                before = readings.method() == WeighingMethod.CUMULATIVE ? shown : Ratio.ZERO;
            }
        }
        return new PouredErrors(readings.plan().lines().size(), pours);
    }

    @Override
    public Bounds massBounds(int line) {
        Bounds sum = Bounds.point(Ratio.ZERO);
        for (int k : poursOf(line)) {
            Interval<Amount<Mass>> pour = masses().additions().get(k).bounds();
            sum = BoxErrors.sum(
                    sum, Bounds.closed(pour.least().canonical(), pour.greatest().canonical()));
        }
        return sum;
    }

    @Override
    public Spread spread(int line) {
        Spread sum = Spread.NONE;
        for (int k : poursOf(line)) {
            sum = sum.plus(Spread.of(masses().additions().get(k)));
        }
        return sum;
    }

    @Override
    public Bounds shareBounds(int line) {
        Map<Integer, Ratio> ones = new HashMap<>();
        poursOf(line).forEach(k -> ones.put(k, Ratio.ONE));
        Interval<Amount<Dimensionless>> share =
                masses().madeShare(Subject.of("", ""), ones).bounds();
        return Bounds.closed(share.least().canonical(), share.greatest().canonical());
    }

    /** Which of the pours are of a line. */
    private List<Integer> poursOf(int line) {
        List<List<Integer>> known = byLine;
        if (known == null) {
            known = new ArrayList<>(size);
            for (int i = 0; i < size; i++) {
                known.add(new ArrayList<>(1));
            }
            for (int k = 0; k < pours.size(); k++) {
                known.get(pours.get(k).index()).add(k);
            }
            byLine = known;
        }
        return known.get(line);
    }

    @Override
    public PotErrors plus(List<LineAddition> additions, Balance bench) {
        List<Pour> more = new ArrayList<>(pours);
        for (LineAddition addition : additions) {
            Balance balance = addition.balance().orElse(bench);
            more.add(new Pour(addition.line(), addition.grams(), balance, WeighingMethod.TARE_EACH));
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
                && IntStream.range(0, size).allMatch(k -> pours.get(k).index() == k);
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
