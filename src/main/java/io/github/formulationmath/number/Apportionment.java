package io.github.formulationmath.number;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * Sharing out a whole total in whole parts, so that the parts add up to it exactly: the method of largest remainders.
 *
 * <p>Every part first gets the floor of its exact quota; the units left over go, one each, to the parts with the largest
 * remainders, ties to the earlier part. Known in the theory of apportionment as Hamilton's method (M. L. Balinski and H.
 * P. Young, Fair Representation, 1982; from memory).
 *
 * <p>Example: quotas 44.42, 36.38, 19.20 have floors 44, 36, 19, which leave one of 100; it goes to the first (.42), and
 * the parts are 45, 36, 19.
 */
public final class Apportionment {

    private Apportionment() {}

    /**
     * Rounds quotas to whole numbers that keep their sum.
     *
     * @param quotas the exact parts; their sum must be a whole number
     * @return one whole number per quota, each its floor or the next above, with the same sum
     * @throws IllegalArgumentException if the quotas do not add up to a whole number
     */
    public static List<Ratio> largestRemainder(List<Ratio> quotas) {
        Ratio total =
                List.copyOf(Objects.requireNonNull(quotas, "quotas")).stream().reduce(Ratio.ZERO, Ratio::plus);
        if (!total.isInteger()) {
            throw new IllegalArgumentException("the quotas add up to " + Excerpt.of(total)
                    + ", which is no whole number: scale them to the whole total that is to be shared out");
        }
        List<Ratio> parts = new ArrayList<>(quotas.stream().map(Ratio::floor).toList());
        Ratio given = parts.stream().reduce(Ratio.ZERO, Ratio::plus);
        int left = (int) total.minus(given).toLongExact();
        List<Ratio> remainders = quotas.stream().map(q -> q.minus(q.floor())).toList();
        for (int i : byRemainder(remainders).subList(0, left)) {
            parts.set(i, parts.get(i).plus(Ratio.ONE));
        }
        return List.copyOf(parts);
    }

    /**
     * In which order parts get one unit more: the largest remainder first, of equal ones the earlier part.
     *
     * @param remainders what each exact quota has above its floor
     * @return the indices of the parts, counted from 0
     */
    public static List<Integer> byRemainder(List<Ratio> remainders) {
        // The sort is stable, so equal remainders keep the order of the lines.
        return IntStream.range(
                        0, Objects.requireNonNull(remainders, "remainders").size())
                .boxed()
                .sorted(Comparator.comparing(remainders::get, Comparator.reverseOrder()))
                .toList();
    }
}
