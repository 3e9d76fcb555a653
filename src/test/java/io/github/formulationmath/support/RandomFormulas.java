package io.github.formulationmath.support;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.Random;

/** Formulas of a few lines in whole parts, from a fixed seed. */
public final class RandomFormulas {

    private final Random random;

    public RandomFormulas(long seed) {
        this.random = new Random(seed);
    }

    public int below(int bound) {
        return random.nextInt(bound);
    }

    /** Two to six lines; parts from 1 up to a largest. */
    public long[] parts(int largest) {
        long[] parts = new long[2 + random.nextInt(5)];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = 1 + random.nextInt(largest);
        }
        return parts;
    }

    /** What the lines of a batch come to, each rounded to whole units, half to even. */
    public static Ratio independentTotal(long[] parts, Ratio size) {
        long whole = java.util.Arrays.stream(parts).sum();
        java.math.BigInteger sum = java.math.BigInteger.ZERO;
        for (long part : parts) {
            sum = sum.add(nearest(
                    size.numerator().multiply(java.math.BigInteger.valueOf(part)),
                    size.denominator().multiply(java.math.BigInteger.valueOf(whole))));
        }
        return Ratio.of(sum);
    }

    private static java.math.BigInteger nearest(java.math.BigInteger a, java.math.BigInteger b) {
        java.math.BigInteger[] parts = a.divideAndRemainder(b);
        int half = parts[1].shiftLeft(1).compareTo(b);
        boolean up = half > 0 || half == 0 && parts[0].testBit(0);
        return up ? parts[0].add(java.math.BigInteger.ONE) : parts[0];
    }

    public static Formula formula(List<Integer> parts) {
        return formula(parts.stream().mapToLong(Integer::longValue).toArray());
    }

    public static Formula formula(long... parts) {
        FormulaBuilder builder = Formula.inParts("random");
        for (int i = 0; i < parts.length; i++) {
            builder.line("material " + (i + 1), Long.toString(parts[i]));
        }
        return builder.build();
    }
}
