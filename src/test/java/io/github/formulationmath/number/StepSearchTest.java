package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How few choices decide a total, counted by hand, and what is said when they run out. Unknowns are written x, y, z. */
class StepSearchTest {

    /**
     * 11 of steps 2, 3 and 5, the coarse ones first and each from the middle of what is left: 5; 3 leaves 3, which is odd; 6
     * leaves 0; 0.
     */
    private static final StepProgram ELEVEN = new StepProgram(List.of(), numbers(2, 3, 5));

    @Test
    void coarse_steps_are_chosen_before_fine_ones_from_the_middle_outwards() {
        StepSearch search = new StepSearch(ELEVEN, 4);
        assertThat(search.isExhausted()).isFalse();
        assertThat(search.withTotal(Ratio.of(11))).contains(numbers(0, 6, 5));
        assertThat(search.isExhausted()).as("all four are used").isTrue();
        assertThat(search.leftOpen()).as("and nothing was given up").isFalse();
    }

    @Test
    void a_total_given_up_for_want_of_choices_is_left_open() {
        for (int choices = 0; choices < 4; choices++) {
            StepSearch search = new StepSearch(ELEVEN, choices);
            assertThat(search.withTotal(Ratio.of(11))).isEmpty();
            assertThat(search.isExhausted()).isTrue();
            assertThat(search.leftOpen()).isTrue();
        }
    }

    @Test
    void a_total_that_no_steps_make_is_told_without_a_choice() {
        assertUnreachable(new StepProgram(List.of(), numbers(2, 4)), 5);
    }

    /**
     * With x + y + z = 3 the row 3x − 3y ≥ 4 says 6y + 3z ≤ 5. In steps of 2 there is at most 2 of x, so that y has to take what z
     * leaves of 1: too much whatever z is. Were x, which the row no longer asks for, fixed first, it would be tried in vain.
     */
    @Test
    void unknowns_that_no_row_asks_for_are_chosen_last() {
        assertUnreachable(new StepProgram(List.of(row(4, 3, -3, 0)), numbers(2, 1, 2)), 3);
    }

    /** With x + y + z = 2 the row z ≥ x says y + 2z ≥ 2. Of z it is 0, then y can only be 2, and x is 0. */
    @Test
    void only_what_still_lets_every_row_be_kept_is_chosen() {
        StepSearch search = new StepSearch(new StepProgram(List.of(row(0, -1, 0, 1)), numbers(1, 1, 2)), 3);
        assertThat(search.withTotal(Ratio.of(2))).contains(numbers(0, 2, 0));
    }

    /** Of x, the coarse one, it is 0 of 0 and 2; then y is 3. */
    @Test
    void a_row_that_is_a_bound_does_not_change_the_order() {
        StepSearch search = new StepSearch(new StepProgram(List.of(row(-4, 0, -1)), numbers(2, 1)), 2);
        assertThat(search.withTotal(Ratio.of(3))).contains(numbers(0, 3));
    }

    @Test
    void a_row_for_a_known_total_loses_its_most_common_coefficient() {
        // 2x + y + z ≥ 12 with x + y + z = 10 is x ≥ 2.
        StepBox.Row row = StepBox.Row.of(row(12, 2, 1, 1));
        assertThat(row.common()).isEqualTo(Ratio.ONE);
        assertThat(row.extra()).isEqualTo(numbers(1, 0, 0));
        assertThat(row.unknowns()).containsExactly(0);
        assertThat(row.wanted(Ratio.of(10))).isEqualTo(Ratio.of(2));
        assertThat(StepBox.Row.of(row(12, 3, 2)).common())
                .as("of equally common ones the first")
                .isEqualTo(Ratio.of(3));
    }

    private static void assertUnreachable(StepProgram program, long total) {
        StepSearch search = new StepSearch(program, 1);
        assertThat(search.withTotal(Ratio.of(total))).isEmpty();
        assertThat(search.leftOpen()).isFalse();
    }

    private static LinearProgram.Row row(long least, long... coefficients) {
        return new LinearProgram.Row(numbers(coefficients), Ratio.of(least));
    }

    private static List<Ratio> numbers(long... values) {
        return Arrays.stream(values).mapToObj(Ratio::of).toList();
    }
}
