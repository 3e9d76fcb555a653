package io.github.formulationmath.number;

import static io.github.formulationmath.number.Programs.optimal;
import static io.github.formulationmath.number.Programs.program;
import static io.github.formulationmath.number.Programs.ratios;
import static io.github.formulationmath.number.Programs.row;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import org.junit.jupiter.api.Test;

/**
 * The rule by which rows leave and unknowns enter: it ends, and where many answers cost the same it names one, the same on every
 * machine. Unknowns are written x, y, z, w.
 */
class DualSimplexTest {

    /**
     * Found by trial among small numbers: always taking the row most violated goes round for ever here,
     * and so does taking the last row as long as the cost does not move. That (0, 0, 0, 4/5) keeps every row is seen at once.
     */
    @Test
    void a_program_on_which_the_most_violated_row_alone_goes_round_for_ever_ends() {
        LinearProgram.Answer.Optimal answer = optimal(free(
                row("-4", "3", "5", "5", "0"),
                row("-4", "-2", "5", "-3", "-1"),
                row("-1", "4", "5", "5", "5"),
                row("0", "-1", "-3", "-1", "0"),
                row("4", "-3", "2", "5", "5")));
        assertThat(answer.values()).isEqualTo(ratios("0", "0", "0", "4/5"));
        assertThat(answer.cost()).isEqualTo(Ratio.ZERO);
    }

    @Test
    void a_row_kept_exactly_is_not_mended() {
        assertThat(optimal(program(ratios("1"), row("0", "-1"))).values()).isEqualTo(ratios("0"));
        assertThat(optimal(free(row("0", "0", "0"), row("1", "0", "1"))).values())
                .as("as long as the cost does not move, too")
                .isEqualTo(ratios("0", "1"));
    }

    /** x + 2y ≥ 4 asks for more than x + y ≥ 3: x = 4 keeps both. The other way round x = 3 and then y = 1 would be needed. */
    @Test
    void the_row_most_violated_is_mended_first_wherever_it_stands() {
        LinearProgram.Row more = row("4", "1", "2");
        LinearProgram.Row less = row("3", "1", "1");
        assertThat(optimal(free(more, less)).values()).isEqualTo(ratios("4", "0"));
        assertThat(optimal(free(less, more)).values()).isEqualTo(ratios("4", "0"));
    }

    /** Both ask for 4. By x + y ≥ 4 first x is 4, and that is all; by 2x + y ≥ 4 first x would be 2, and y 4 in the end. */
    @Test
    void of_rows_as_much_violated_the_first_is_mended() {
        assertThat(optimal(free(row("4", "1", "1"), row("4", "2", "1"))).values())
                .isEqualTo(ratios("4", "0"));
        assertThat(optimal(free(row("4", "2", "1"), row("4", "1", "1"))).values())
                .isEqualTo(ratios("0", "4"));
    }

    /**
     * y is 1 first. Then both rows left are violated, the second of them more: x − 2z ≥ 1 and x − 2 + z ≥ 0. The cost has not
     * moved, so the first is mended: x = 1 + 2z; then z = 1/3.
     */
    @Test
    void as_long_as_the_cost_does_not_move_the_row_of_smallest_index_is_mended() {
        assertThat(optimal(free(row("1", "1", "0", "-2"), row("2", "0", "2", "0"), row("0", "1", "-2", "1")))
                        .values())
                .isEqualTo(ratios("5/3", "1", "1/3"));
    }

    @Test
    void of_unknowns_as_cheap_the_first_is_taken() {
        assertThat(optimal(program(ratios("1", "1", "1"), row("1", "1", "1", "1")))
                        .values())
                .isEqualTo(ratios("1", "0", "0"));
        assertThat(optimal(program(ratios("2", "1", "3"), row("6", "2", "1", "3")))
                        .values())
                .as("by cost per help")
                .isEqualTo(ratios("3", "0", "0"));
        assertThat(optimal(program(ratios("3", "1", "1"), row("6", "2", "1", "1")))
                        .values())
                .isEqualTo(ratios("0", "6", "0"));
    }

    /** Any answer will do: no unknown costs anything. */
    private static LinearProgram free(LinearProgram.Row... rows) {
        return program(Collections.nCopies(rows[0].coefficients().size(), Ratio.ZERO), rows);
    }
}
