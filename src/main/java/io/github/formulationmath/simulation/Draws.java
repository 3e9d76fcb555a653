package io.github.formulationmath.simulation;

import io.github.formulationmath.simulation.InputQuantity.Law;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Draws of all input quantities, in their order; neighbours of one law are drawn together, in one loop without branches.
 * Immutable; the state is in the generator that is passed in.
 */
final class Draws {

    /** Inputs of one law that stand next to each other. */
    private record Stretch(Law law, int from, int to) {}

    private final Stretch[] stretches;
    private final double[] middles;
    private final double[] scales;

    Draws(List<? extends InputQuantity<?>> inputs) {
        List<Stretch> all = new ArrayList<>();
        int from = 0;
        for (int to = 1; to <= inputs.size(); to++) {
            Law law = inputs.get(from).law();
            if (to == inputs.size() || inputs.get(to).law() != law) {
                all.add(new Stretch(law, from, to));
                from = to;
            }
        }
        this.stretches = all.toArray(Stretch[]::new);
        this.middles = inputs.stream().mapToDouble(InputQuantity::middleNumber).toArray();
        this.scales = inputs.stream().mapToDouble(InputQuantity::scaleNumber).toArray();
    }

    int size() {
        return middles.length;
    }

    /** Fills an array with one value per input. */
    void fill(double[] values, SplittableRandom random) {
        for (Stretch stretch : stretches) {
            switch (stretch.law()) {
                case RECTANGULAR -> fillRectangular(values, random, stretch.from(), stretch.to());
                case TRIANGULAR -> fillTriangular(values, random, stretch.from(), stretch.to());
                case NORMAL -> fillNormal(values, random, stretch.from(), stretch.to());
            }
        }
        for (int i = 0; i < values.length; i++) {
            values[i] = middles[i] + scales[i] * values[i];
        }
    }

    private static void fillRectangular(double[] values, SplittableRandom random, int from, int to) {
        for (int i = from; i < to; i++) {
            values[i] = (random.nextLong() >> 11) * 0x1p-52;
        }
    }

    private static void fillTriangular(double[] values, SplittableRandom random, int from, int to) {
        for (int i = from; i < to; i++) {
            double first = NormalDraws.uniform(random);
            values[i] = first - NormalDraws.uniform(random);
        }
    }

    private static void fillNormal(double[] values, SplittableRandom random, int from, int to) {
        for (int i = from; i < to; i++) {
            values[i] = NormalDraws.next(random);
        }
    }
}
