package io.github.formulationmath.planning;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.PartsFormulaBuilder;
import java.util.Random;

/** Formulas of a few lines in whole parts, from a fixed seed. */
final class RandomFormulas {

    private final Random random;

    RandomFormulas(long seed) {
        this.random = new Random(seed);
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    /** Two to six lines; parts from 1 up to a largest. */
    long[] parts(int largest) {
        long[] parts = new long[2 + random.nextInt(5)];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = 1 + random.nextInt(largest);
        }
        return parts;
    }

    static Formula formula(long... parts) {
        PartsFormulaBuilder builder = Formula.inParts("random");
        for (int i = 0; i < parts.length; i++) {
            builder.line("material " + (i + 1), Long.toString(parts[i]));
        }
        return builder.build();
    }
}
