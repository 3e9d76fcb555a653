package io.github.formulationmath.classroom;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * What chance decides for one exercise of one learner. The numbers are those of {@link Random}, whose algorithm its
 * documentation lays down, so that a sheet comes out the same on every Java; what it begins with is mixed from the seed of
 * the class, the learner and the exercise by the finalizer of SplitMix64 (Steele, Lea and Flood, "Fast splittable pseudorandom
 * number generators", OOPSLA 2014, figure 17), since neighbouring seeds make it begin alike.
 */
final class Draw {

    private static final long GAMMA = 0x9E3779B97F4A7C15L;

    private static final List<String> INGREDIENTS = List.of(
            "Glycerin",
            "Cetearyl Alcohol",
            "Panthenol",
            "Betaine",
            "Cera Alba",
            "Lanolin",
            "Cetyl Palmitate",
            "Sorbitan Oleate",
            "Squalane",
            "Glyceryl Stearate");

    private final Random random;

    private Draw(long seed) {
        this.random = new Random(seed);
    }

    static Draw of(long seed, long learner, long exercise, long attempt) {
        return new Draw(mixed(mixed(mixed(seed) + learner) + exercise) + attempt * GAMMA);
    }

    private static long mixed(long seed) {
        long z = seed + GAMMA;
        z = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
        z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
        return z ^ z >>> 31;
    }

    /** A whole number, ends included. */
    int between(int least, int greatest) {
        return least + random.nextInt(greatest - least + 1);
    }

    boolean oneIn(int count) {
        return random.nextInt(count) == 0;
    }

    /** A multiple of 1/parts, ends included and given in those parts. */
    Ratio multiple(int least, int greatest, int parts) {
        return Ratio.of(between(least, greatest), parts);
    }

    <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    /** Different ones, in an order that chance decides. */
    <T> List<T> some(int count, List<T> choices) {
        List<T> left = new ArrayList<>(choices);
        List<T> taken = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            taken.add(left.remove(random.nextInt(left.size())));
        }
        return taken;
    }

    List<String> ingredients(int count) {
        return some(count, INGREDIENTS);
    }
}
