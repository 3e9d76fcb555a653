package io.github.formulationmath.falsefine;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;

/** Chance with a seed: the same seed makes the same case again. */
final class Dice {

    private final SplittableRandom random;

    Dice(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** From the lowest to the highest, both included. */
    int between(int lowest, int highest) {
        return random.nextInt(lowest, highest + 1);
    }

    long between(long lowest, long highest) {
        return random.nextLong(lowest, highest + 1);
    }

    /** True in one of so many times. */
    boolean oneIn(int times) {
        return random.nextInt(times) == 0;
    }

    @SafeVarargs
    final <T> T of(T... choices) {
        return choices[random.nextInt(choices.length)];
    }

    <T> T of(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    <T> List<T> shuffled(List<T> list) {
        List<T> copy = new ArrayList<>(list);
        Collections.shuffle(copy, new Random(random.nextLong()));
        return copy;
    }
}
