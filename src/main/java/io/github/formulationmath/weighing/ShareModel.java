package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.simulation.InputQuantity;
import io.github.formulationmath.weighing.MassRelations.Entry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import javax.measure.Quantity;

/** A share as a model of its independent errors: both its numerator and its denominator are affine in them. */
final class ShareModel implements ToDoubleFunction<double[]> {

    private final List<InputQuantity<?>> inputs = new ArrayList<>();
    private final Affine numerator;
    private final Affine denominator;

    ShareModel(MadeMasses whole, Weights weights) {
        MassRelations relations = whole.relations();
        // Law by law, which draws them fastest.
        List<Entry> terms = relations.felt(Weights.TOTAL).values().stream()
                .sorted(Comparator.comparing(entry -> entry.term().law()))
                .toList();
        for (Entry entry : terms) {
            inputs.add(input(entry.term()));
        }
        Ratio part = relations.weighted(
                Reckoning.plain(),
                weights,
                line -> whole.additions().get(line).estimate().canonical());
        this.numerator = new Affine(part, terms, relations.felt(weights));
        this.denominator = new Affine(whole.total().canonical(), terms, relations.felt(Weights.TOTAL));
    }

    /** Centred at 0: the middles are in the estimates already. */
    private static InputQuantity<?> input(ErrorTerm term) {
        Ratio scale = term.lawScale();
        return term.isProportional()
                ? about(term, Amount.of(scale, FormulationUnits.ONE))
                : about(term, Amount.grams(scale));
    }

    private static <Q extends Quantity<Q>> InputQuantity<Q> about(ErrorTerm term, Amount<Q> scale) {
        return new InputQuantity<>(term.law(), scale.minus(scale), scale);
    }

    List<InputQuantity<?>> inputs() {
        return inputs;
    }

    @Override
    public double applyAsDouble(double[] errors) {
        return numerator.valueAt(errors) / denominator.valueAt(errors);
    }

    /** A constant and a factor for each of the errors that matter. */
    private static final class Affine {

        private final double constant;
        private final int[] places;
        private final double[] factors;

        Affine(Ratio constant, List<Entry> terms, Map<Integer, Entry> felt) {
            List<Ratio> all = terms.stream()
                    .map(entry -> felt.get(entry.place()))
                    .map(entry -> entry == null ? Ratio.ZERO : entry.factor())
                    .toList();
            this.constant = constant.doubleValue();
            this.places = IntStream.range(0, all.size())
                    .filter(i -> !all.get(i).isZero())
                    .toArray();
            this.factors = IntStream.of(places)
                    .mapToDouble(i -> all.get(i).doubleValue())
                    .toArray();
        }

        /** Four sums side by side, because an addition waits for the one before it in its sum. */
        double valueAt(double[] errors) {
            double a = constant;
            double b = 0;
            double c = 0;
            double d = 0;
            int i = 0;
            for (; i < places.length - 3; i += 4) {
                a += factors[i] * errors[places[i]];
                b += factors[i + 1] * errors[places[i + 1]];
                c += factors[i + 2] * errors[places[i + 2]];
                d += factors[i + 3] * errors[places[i + 3]];
            }
            for (; i < places.length; i++) {
                a += factors[i] * errors[places[i]];
            }
            return a + b + (c + d);
        }
    }
}
