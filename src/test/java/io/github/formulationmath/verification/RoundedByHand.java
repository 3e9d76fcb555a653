package io.github.formulationmath.verification;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;

/**
 * What a set of numbers may be rounded to, by trying out every rule for ties and every order, in whole numbers and apart
 * from the library. Targets and batch are numerators over one denominator, and count steps.
 */
final class RoundedByHand {

    private static final BigInteger TWO = BigInteger.TWO;

    private final List<BigInteger> targets;
    private final BigInteger below;
    private final BigInteger batch;

    RoundedByHand(List<BigInteger> targets, BigInteger below) {
        this.targets = List.copyOf(targets);
        this.below = below;
        this.batch = targets.stream().reduce(BigInteger.ZERO, BigInteger::add);
    }

    /** A rule says, of a tie between a number and the next, given the lower one, whether it goes up. */
    enum Ties {
        UP,
        DOWN,
        EVEN,
        ODD;

        boolean goesUp(BigInteger lower) {
            return switch (this) {
                case UP -> true;
                case DOWN -> false;
                case EVEN -> lower.testBit(0);
                case ODD -> !lower.testBit(0);
            };
        }
    }

    private BigInteger floor(BigInteger exact) {
        return exact.divide(below);
    }

    private BigInteger nearest(BigInteger exact, Ties ties) {
        BigInteger lower = floor(exact);
        int half = exact.subtract(lower.multiply(below)).multiply(TWO).compareTo(below);
        boolean up = half > 0 || half == 0 && ties.goesUp(lower);
        return up ? lower.add(BigInteger.ONE) : lower;
    }

    /** Both ways at a tie, else one. */
    Set<BigInteger> nearest(BigInteger exact) {
        return Set.copyOf(new HashSet<>(List.of(nearest(exact, Ties.UP), nearest(exact, Ties.DOWN))));
    }

    BigInteger target(int i) {
        return targets.get(i);
    }

    boolean eachFree(List<BigInteger> shown) {
        return all(shown, -1, (exact, figure) -> nearest(exact).contains(figure));
    }

    private boolean all(List<BigInteger> shown, int except, BiPredicate<BigInteger, BigInteger> fits) {
        for (int i = 0; i < targets.size(); i++) {
            if (i != except && !fits.test(targets.get(i), shown.get(i))) {
                return false;
            }
        }
        return true;
    }

    private BigInteger left(List<BigInteger> shown, BigInteger whole, int place) {
        BigInteger left = whole;
        for (int i = 0; i < shown.size(); i++) {
            left = i == place ? left : left.subtract(shown.get(i));
        }
        return left;
    }

    /** All others to the nearest, this one what they leave of the rounded batch. */
    boolean restFree(List<BigInteger> shown, int place) {
        return all(shown, place, (exact, figure) -> nearest(exact).contains(figure)) && isRest(shown, place);
    }

    private boolean isRest(List<BigInteger> shown, int place) {
        return nearest(batch).stream()
                .anyMatch(whole -> left(shown, whole, place).equals(shown.get(place)));
    }

    /** Every set that the largest remainders lead to, whichever of equal remainders comes first. */
    Set<List<BigInteger>> byLargestRemainders() {
        Set<List<BigInteger>> sets = new HashSet<>();
        for (BigInteger whole : nearest(batch)) {
            List<BigInteger> floors = targets.stream().map(this::floor).toList();
            int left = whole.subtract(floors.stream().reduce(BigInteger.ZERO, BigInteger::add))
                    .intValueExact();
            give(new ArrayList<>(floors), new HashSet<>(), left, sets);
        }
        return sets;
    }

    /** One more step to each line of those that have the largest remainder now, in turn. */
    private void give(List<BigInteger> now, Set<Integer> given, int left, Set<List<BigInteger>> sets) {
        if (left == 0) {
            sets.add(List.copyOf(now));
            return;
        }
        BigInteger largest = BigInteger.valueOf(-1);
        for (int i = 0; i < targets.size(); i++) {
            largest = given.contains(i) ? largest : largest.max(targets.get(i).mod(below));
        }
        for (int i = 0; i < targets.size(); i++) {
            // Taken in rising order among equals, so that each choice is met once.
            if (!given.contains(i) && targets.get(i).mod(below).equals(largest) && isLastOfEquals(i, largest, given)) {
                given.add(i);
                now.set(i, now.get(i).add(BigInteger.ONE));
                give(now, given, left - 1, sets);
                now.set(i, now.get(i).subtract(BigInteger.ONE));
                given.remove(i);
            }
        }
    }

    private boolean isLastOfEquals(int i, BigInteger remainder, Set<Integer> given) {
        return given.stream()
                .noneMatch(other -> other > i && targets.get(other).mod(below).equals(remainder));
    }

    /** By (A), (B) if there is a q.s. line, or (C). */
    boolean isLegitimate(List<BigInteger> shown, int rest) {
        return eachFree(shown)
                || rest >= 0 && restFree(shown, rest)
                || byLargestRemainders().contains(shown);
    }

    /** Whether one rule for ties gives the set, each line by itself or with the q.s. line taking the rest. */
    boolean isByOneRule(List<BigInteger> shown, int rest) {
        for (Ties ties : Ties.values()) {
            BiPredicate<BigInteger, BigInteger> ruled =
                    (exact, figure) -> nearest(exact, ties).equals(figure);
            if (all(shown, -1, ruled) || rest >= 0 && all(shown, rest, ruled) && isRest(shown, rest)) {
                return true;
            }
        }
        return byLargestRemainders().contains(shown);
    }
}
