package io.github.formulationmath.choice;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest sets that have something in common with every clause, by branch and bound: the clause with fewest choices left
 * is hit by each of them in turn, the earlier ones then being out; no branch is followed that costs, with the cheapest of clauses
 * that share nothing, more than what is known.
 */
final class CheapestHit {

    private static final long MOST_NODES = 2_000_000;
    private static final int MOST_SETS = 1_000;

    private final List<Ratio> prices;
    private final long[] clauses;
    private final @Nullable Ratio most;
    private final List<Long> found = new ArrayList<>();
    private @Nullable Ratio cost;
    private long nodes;

    private CheapestHit(List<Ratio> prices, List<Long> clauses, @Nullable Ratio most) {
        this.prices = prices;
        this.clauses = clauses.stream().mapToLong(Long::longValue).toArray();
        this.most = most;
    }

    /**
     * The cheapest sets, all of one price.
     *
     * @param sets the sets; empty if none costs as little as was asked
     * @param isCertain whether the search went to its end; else a cheaper one may be there
     */
    record Answer(List<Long> sets, boolean isCertain) {}

    /** All the cheapest sets that cost at most so much, or whatever they cost. */
    static Answer of(List<Ratio> prices, List<Long> clauses, @Nullable Ratio most) {
        CheapestHit search = new CheapestHit(prices, clauses, most);
        search.from(0, 0, Ratio.ZERO);
        return new Answer(List.copyOf(search.found), search.nodes < MOST_NODES && search.found.size() < MOST_SETS);
    }

    private void from(long in, long out, Ratio price) {
        if (++nodes >= MOST_NODES || found.size() >= MOST_SETS || isTooMuch(price.plus(atLeast(in, out)))) {
            return;
        }
        long open = narrowest(in, out);
        if (open == 0) {
            keep(in, price);
            return;
        }
        long choices = open & ~out;
        long tried = out;
        for (int item : cheapestFirst(choices)) {
            from(in | 1L << item, tried, price.plus(prices.get(item)));
            tried |= 1L << item;
        }
    }

    private boolean isTooMuch(Ratio price) {
        return (most != null && price.compareTo(most) > 0) || (cost != null && price.compareTo(cost) > 0);
    }

    private void keep(long set, Ratio price) {
        if (cost == null || price.compareTo(cost) < 0) {
            cost = price;
            found.clear();
        }
        if (!found.contains(set)) {
            found.add(set);
        }
    }

    /** The clause not hit that leaves fewest choices; 0 if all are hit. */
    private long narrowest(long in, long out) {
        long narrowest = 0;
        for (long clause : clauses) {
            if ((clause & in) == 0
                    && (narrowest == 0 || Long.bitCount(clause & ~out) < Long.bitCount(narrowest & ~out))) {
                narrowest = clause;
            }
        }
        return narrowest;
    }

    /** What clauses that are not hit and share no choice cost at the least. */
    private Ratio atLeast(long in, long out) {
        Ratio least = Ratio.ZERO;
        long used = 0;
        for (long clause : clauses) {
            long choices = clause & ~out;
            if ((clause & in) == 0 && (choices & used) == 0 && choices != 0) {
                least = least.plus(prices.get(cheapestFirst(choices).get(0)));
                used |= choices;
            }
        }
        return least;
    }

    private List<Integer> cheapestFirst(long choices) {
        return IntStream.range(0, prices.size())
                .filter(item -> (choices >> item & 1) != 0)
                .boxed()
                .sorted(Comparator.comparing(prices::get))
                .toList();
    }
}
