package io.github.formulationmath.choice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** The cheapest sets with something of every clause, held against all sets there are, in whole cents. */
class CheapestHitTest {

    private static long price(long set, int[] cents) {
        return IntStream.range(0, cents.length)
                .filter(item -> (set >> item & 1) != 0)
                .mapToLong(item -> cents[item])
                .sum();
    }

    private static List<Ratio> prices(int[] cents) {
        return IntStream.of(cents).mapToObj(each -> Ratio.of(each, 100)).toList();
    }

    private static int[] each(int count, int cents) {
        return IntStream.range(0, count).map(item -> cents).toArray();
    }

    /** Clauses that share nothing, each of so many things in a row. */
    private static List<Long> apart(int... widths) {
        List<Long> clauses = new ArrayList<>();
        int first = 0;
        for (int width : widths) {
            clauses.add(((1L << width) - 1) << first);
            first += width;
        }
        return clauses;
    }

    @Test
    void all_the_cheapest_sets_and_no_others_are_found() {
        Random dice = new Random(717);
        int ties = 0;
        for (int run = 0; run < 400; run++) {
            int[] cents = dice.ints(3 + dice.nextInt(6), 1, 5).toArray();
            long everything = (1L << cents.length) - 1;
            List<Long> clauses =
                    dice.longs(dice.nextInt(9), 1, everything + 1).boxed().collect(Collectors.toList());
            List<Long> hitting = LongStream.rangeClosed(0, everything)
                    .filter(set -> clauses.stream().allMatch(clause -> (clause & set) != 0))
                    .boxed()
                    .toList();
            long least =
                    hitting.stream().mapToLong(set -> price(set, cents)).min().orElseThrow();
            Long[] cheapest =
                    hitting.stream().filter(set -> price(set, cents) == least).toArray(Long[]::new);
            ties += cheapest.length > 1 ? 1 : 0;

            CheapestHit.Answer answer = CheapestHit.of(prices(cents), clauses, null);
            assertThat(answer.sets()).as("run %d", run).containsExactlyInAnyOrder(cheapest);
            assertThat(answer.isCertain()).isTrue();
            assertThat(CheapestHit.of(prices(cents), clauses, Ratio.of(least, 100)))
                    .as("just enough money in run %d", run)
                    .isEqualTo(answer);
            assertThat(CheapestHit.of(prices(cents), clauses, Ratio.of(least - 1, 100)))
                    .as("a cent too little in run %d", run)
                    .isEqualTo(new CheapestHit.Answer(List.of(), true));
        }
        assertThat(ties).isGreaterThan(50);
    }

    /** Of 2 to the 28th combinations none but the cheapest is tried: what is still needed costs its least at least. */
    @Test
    void needs_that_share_nothing_are_not_tried_in_every_combination() {
        int[] cents = IntStream.range(0, 56).map(item -> 1 + item % 2).toArray();
        int[] pairs = each(28, 2);
        long cheaper = IntStream.range(0, 28).mapToLong(pair -> 1L << 2 * pair).sum();
        assertThat(CheapestHit.of(prices(cents), apart(pairs), null))
                .isEqualTo(new CheapestHit.Answer(List.of(cheaper), true));
    }

    @Test
    void so_many_equally_cheap_sets_that_the_list_is_broken_off_are_no_proof() {
        CheapestHit.Answer whole = CheapestHit.of(prices(each(49, 100)), apart(3, 9, 37), null);
        assertThat(whole.sets()).hasSize(3 * 9 * 37).doesNotHaveDuplicates();
        assertThat(whole.isCertain()).isTrue();
        CheapestHit.Answer broken = CheapestHit.of(prices(each(33, 100)), apart(11, 11, 11), null);
        assertThat(broken.sets()).hasSize(1000).doesNotHaveDuplicates();
        assertThat(broken.isCertain()).isFalse();
    }
}
