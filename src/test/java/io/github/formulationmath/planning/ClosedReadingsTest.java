package io.github.formulationmath.planning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Shares of 50, 30 and 20 % of 20 divisions: 10, 6 and 4. */
class ClosedReadingsTest {

    private static final List<Ratio> WEIGHTS = List.of(Ratio.of(1, 2), Ratio.of(3, 10), Ratio.of(1, 5));

    private static List<Ratio> whole(long... numbers) {
        return Arrays.stream(numbers).mapToObj(Ratio::of).toList();
    }

    private static List<Ratio> nearest(List<Ratio> least, List<Ratio> most) {
        return ClosedReadings.nearest(WEIGHTS, least, most, Ratio.of(20));
    }

    @Test
    void targets_that_add_up_are_taken_as_they_are() {
        assertThat(nearest(whole(0, 0, 0), whole(20, 20, 20))).isEqualTo(whole(10, 6, 4));
    }

    /** The first stops at 5; the others take turns: 6 + 1, 4 + 1, 7 + 1 (1/6 over, the other 1/4), 5 + 1, 8 + 1. */
    @Test
    void what_one_line_may_not_take_goes_to_the_others_in_turn() {
        assertThat(nearest(whole(0, 0, 0), whole(5, 20, 20))).isEqualTo(whole(5, 9, 6));
        assertThat(nearest(whole(0, 0, 0), whole(5, 7, 20))).isEqualTo(whole(5, 7, 8));
    }

    @Test
    void what_one_line_must_take_comes_from_the_others_in_turn() {
        assertThat(nearest(whole(15, 0, 0), whole(20, 20, 20))).isEqualTo(whole(15, 3, 2));
        assertThat(nearest(whole(15, 5, 0), whole(20, 20, 20))).isEqualTo(whole(15, 5, 0));
    }
}
