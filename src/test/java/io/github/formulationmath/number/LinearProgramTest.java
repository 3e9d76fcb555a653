package io.github.formulationmath.number;

import static io.github.formulationmath.number.Programs.optimal;
import static io.github.formulationmath.number.Programs.program;
import static io.github.formulationmath.number.Programs.ratios;
import static io.github.formulationmath.number.Programs.row;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

final class LinearProgramTest {

    @Test
    void a_program_solved_by_hand() {
        // Smallest 2x + 3y with x + y ≥ 4 and x + 3y ≥ 6: both kept exactly at (3, 1), cost 9; multipliers 3/2 and 1/2.
        LinearProgram.Answer.Optimal answer =
                optimal(program(ratios("2", "3"), row("4", "1", "1"), row("6", "1", "3")));
        assertThat(answer.values()).isEqualTo(ratios("3", "1"));
        assertThat(answer.cost()).isEqualTo(Ratio.of(9));
        assertThat(answer.multipliers()).isEqualTo(ratios("3/2", "1/2"));
    }

    /** After the issue about scale in a widely used floating-point simplex, fixed under the number MATH-1549. */
    @Test
    void the_scale_of_the_numbers_does_not_matter() {
        for (String scale : List.of("1e-300", "1e-12", "1", "1e13", "1e300")) {
            Ratio s = Ratio.parse(scale);
            LinearProgram.Row row = new LinearProgram.Row(List.of(s, s), s.times(2));
            LinearProgram.Answer.Optimal answer = optimal(program(ratios("1", "2"), row));
            assertThat(answer.values()).isEqualTo(ratios("2", "0"));
        }
    }

    @Test
    void infeasible_by_half_a_millionth_is_infeasible() {
        LinearProgram program = program(ratios("1"), row("1.0000005", "1"), row("-1", "-1"));
        LinearProgram.Answer answer = program.solve();
        assertThat(answer).isInstanceOf(LinearProgram.Answer.Infeasible.class);
        assertThat(answer.multipliers()).allMatch(m -> m.signum() > 0);
    }

    /** The dual of E. M. L. Beale's example, on which a simplex method cycles; its optimum is 5/4 (from memory). */
    @Test
    void a_program_made_to_cycle_ends() {
        LinearProgram program = program(
                ratios("0", "0", "1"),
                row("3/4", "1/4", "1/2", "0"),
                row("-20", "-8", "-12", "0"),
                row("1/2", "-1", "-1/2", "1"),
                row("-6", "9", "3", "0"));
        assertThat(optimal(program).cost()).isEqualTo(Ratio.parse("5/4"));
    }

    @Test
    void costs_below_0_and_rows_of_another_length_are_refused() {
        assertThatThrownBy(() -> program(ratios("-1"), row("0", "1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-1");
        assertThatThrownBy(() -> program(ratios("1"), row("0", "1", "1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2");
    }

    @Test
    void a_wrong_answer_does_not_pass_for_a_proof() {
        LinearProgram program = program(ratios("2", "3"), row("4", "1", "1"), row("6", "1", "3"));
        LinearProgram.Answer.Optimal right = optimal(program);
        assertThatThrownBy(() -> new LinearProgram.Answer.Optimal(ratios("4", "1"), right.multipliers(), Ratio.of(11))
                        .requireProof(program))
                .isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> new LinearProgram.Answer.Optimal(ratios("2", "1"), right.multipliers(), Ratio.of(7))
                        .requireProof(program))
                .isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> new LinearProgram.Answer.Infeasible(right.multipliers()).requireProof(program))
                .isInstanceOf(IllegalStateException.class);
    }

    /** Smallest 2x + 3y with x + y ≥ 4 and x + 3y ≥ 6 is 9 at (3, 1), by the multipliers 3/2 and 1/2. */
    @Test
    void every_part_of_the_proof_of_an_optimum_is_asked_for() {
        LinearProgram program = program(ratios("2", "3"), row("4", "1", "1"), row("6", "1", "3"));
        assertProof(program, ratios("3", "1"), ratios("3/2", "1/2"), 9, null);
        assertProof(program, ratios("12", "-1"), ratios("3/2", "1/2"), 9, "an unknown is negative");
        assertProof(program, ratios("2", "1"), ratios("3/2", "1/2"), 7, "a row is not kept");
        assertProof(program, ratios("3", "1"), ratios("3/2", "1/2"), 10, "the cost is another");
        assertProof(program, ratios("3", "1"), ratios("15/4", "-1"), 9, "a multiplier is negative");
        assertProof(program, ratios("3", "1"), ratios("9/4", "0"), 9, "the multipliers pass a cost");
        assertProof(program, ratios("3", "1"), ratios("1", "1/2"), 9, "the multipliers do not reach the cost");
    }

    private static void assertProof(
            LinearProgram program, List<Ratio> values, List<Ratio> multipliers, long cost, @Nullable String objection) {
        LinearProgram.Answer answer = new LinearProgram.Answer.Optimal(values, multipliers, Ratio.of(cost));
        assertProof(program, answer, objection);
    }

    private static void assertProof(LinearProgram program, LinearProgram.Answer answer, @Nullable String objection) {
        if (objection == null) {
            assertThatCode(() -> answer.requireProof(program)).doesNotThrowAnyException();
        } else {
            assertThatThrownBy(() -> answer.requireProof(program))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessage("the linear program was solved wrongly: " + objection);
        }
    }

    /** x ≥ 3 and −x ≥ −1: added they say 0 ≥ 2. */
    @Test
    void every_part_of_the_proof_that_nothing_keeps_all_rows_is_asked_for() {
        LinearProgram program = program(ratios("1"), row("3", "1"), row("-1", "-1"));
        assertProof(program, new LinearProgram.Answer.Infeasible(ratios("1", "1")), null);
        assertProof(program, new LinearProgram.Answer.Infeasible(ratios("-1", "1")), "a multiplier is negative");
        assertProof(program, new LinearProgram.Answer.Infeasible(ratios("1", "0")), "the combined row can be kept");
        assertProof(
                program, new LinearProgram.Answer.Infeasible(ratios("0", "1")), "the combined row asks for nothing");
        assertProof(
                program, new LinearProgram.Answer.Infeasible(ratios("0", "0")), "the combined row asks for nothing");
    }

    @Test
    void the_rows_that_bind_are_those_that_the_cost_rests_on() {
        // Of x + y ≥ 1, x ≥ 3 and y ≥ 2 the first is kept with 4 to spare.
        LinearProgram program = program(ratios("1", "1"), row("1", "1", "1"), row("3", "1", "0"), row("2", "0", "1"));
        assertThat(program.solve().binding()).containsExactly(1, 2);
        assertThat(program(ratios("1"), row("3", "1"), row("2", "1"), row("-1", "-1"))
                        .solve()
                        .binding())
                .as("x ≥ 3 and x ≤ 1 cannot both be kept")
                .containsExactly(0, 2);
    }

    @Test
    void a_row_is_kept_up_to_exactly_its_least() {
        assertThat(row("4", "1", "1/2").isKeptBy(ratios("3", "2"))).isTrue();
        assertThat(row("4", "1", "1/2").isKeptBy(ratios("3", "1.999999"))).isFalse();
    }
}
