package io.github.formulationmath.weighing;

import java.util.List;
import java.util.SplittableRandom;

/** Draws of all input quantities. Immutable; the state is in the generator that is passed in. */
final class Draws {

    private final Law[] laws;
    private final double[] middles;
    private final double[] scales;

    Draws(List<InputQuantity> inputs) {
        int size = inputs.size();
        this.laws = inputs.stream().map(InputQuantity::law).toArray(Law[]::new);
        this.middles = new double[size];
        this.scales = new double[size];
        for (int i = 0; i < size; i++) {
            middles[i] = inputs.get(i).middle();
            scales[i] = inputs.get(i).scale();
        }
    }

    int size() {
        return laws.length;
    }

    /** Fills an array with one value per input. */
    void fill(double[] values, SplittableRandom random) {
        for (int i = 0; i < values.length; i++) {
            values[i] = middles[i] + scales[i] * standard(laws[i], random);
        }
    }

    /** A number of the law about 0 with the scale 1. */
    private static double standard(Law law, SplittableRandom random) {
        return switch (law) {
            case RECTANGULAR -> (random.nextLong() >> 11) * 0x1p-52;
            case TRIANGULAR -> triangular(random);
            case NORMAL -> NormalDraws.next(random);
        };
    }

    private static double triangular(SplittableRandom random) {
        double first = NormalDraws.uniform(random);
        return first - NormalDraws.uniform(random);
    }
}
