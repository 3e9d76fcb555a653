package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Blends worked out by hand: the cross of alligation with two parts, corners of the bounds with values that are not sure. */
class BlendProgramTest {

    private static final Ratio TEN = Ratio.of(10);
    private static final BlendProgram.Part STRONG = part("50", "50");
    private static final BlendProgram.Part PLAIN = part("0", "0");

    @Test
    void ten_of_a_value_of_30_are_6_of_50_and_4_of_0() {
        LinearProgram.Answer answer = blend("30", "30", STRONG, PLAIN).cheapest(numbers("1", "1"));
        assertThat(optimal(answer).values()).isEqualTo(numbers("6", "4"));
        assertThat(optimal(answer).cost()).isEqualTo(TEN);
    }

    @Test
    void the_cheapest_blend_lies_at_the_end_of_the_target_where_less_of_the_dear_part_is_needed() {
        BlendProgram blend = blend("20", "40", STRONG, PLAIN);
        LinearProgram.Answer.Optimal dearStrong = optimal(blend.cheapest(numbers("3", "1")));
        assertThat(dearStrong.values()).isEqualTo(numbers("4", "6"));
        assertThat(dearStrong.cost()).isEqualTo(Ratio.of(18));
        LinearProgram.Answer.Optimal dearPlain = optimal(blend.cheapest(numbers("1", "3")));
        assertThat(dearPlain.values()).isEqualTo(numbers("8", "2"));
        assertThat(dearPlain.cost()).isEqualTo(Ratio.of(14));
    }

    @Test
    void the_least_and_the_most_of_a_part_follow_from_the_target_and_from_every_bound() {
        BlendProgram free = blend("20", "40", STRONG, PLAIN);
        assertThat(free.range(0)).contains(bounds("4", "8"));
        assertThat(free.range(1)).contains(bounds("2", "6"));
        BlendProgram capped = blend("20", "40", taken(STRONG, Bounds.atMost(Ratio.of(7))), PLAIN);
        assertThat(capped.range(0)).contains(bounds("4", "7"));
        assertThat(capped.range(1)).contains(bounds("3", "6"));
        BlendProgram wanted = blend("20", "40", STRONG, taken(PLAIN, Bounds.atLeast(Ratio.of(5))));
        assertThat(wanted.range(0)).contains(bounds("4", "5"));
        assertThat(wanted.range(1)).contains(bounds("5", "6"));
        assertThat(blend("51", "60", STRONG, PLAIN).range(0)).isEmpty();
    }

    /** 48 x ≥ 280 whatever happens, and 52 x ≤ 320: 35/6 ≤ x ≤ 80/13. Of the middle: 280 ≤ 50 x ≤ 320. */
    @Test
    void a_value_that_is_not_sure_must_keep_the_target_at_both_of_its_ends() {
        BlendProgram blend = blend("28", "32", part("48", "52"), taken(PLAIN, Bounds.atMost(TEN)));
        assertThat(blend.range(0)).contains(bounds("35/6", "80/13"));
        assertThat(blend.valueOf(numbers("6", "4"))).isEqualTo(bounds("28.8", "31.2"));
        assertThat(blend.withMiddles()).isEqualTo(blend("28", "32", STRONG, taken(PLAIN, Bounds.atMost(TEN))));
        assertThat(blend.withMiddles().range(0)).contains(bounds("5.6", "6.4"));
    }

    @Test
    void the_value_of_a_blend_is_the_mean_by_amount_at_either_end() {
        BlendProgram blend = blend("0", "100", part("10", "12"), part("40", "44"), part("5", "5"));
        // (2·10 + 3·40 + 5·5)/10 and (2·12 + 3·44 + 5·5)/10.
        assertThat(blend.valueOf(numbers("2", "3", "5"))).isEqualTo(bounds("16.5", "18.1"));
    }

    @Test
    void what_can_be_reached_does_not_ask_for_the_target() {
        BlendProgram.Part weak = part("10", "12");
        BlendProgram.Part strong = part("40", "44");
        assertThat(blend("99", "99", weak, strong).reachable()).contains(bounds("10", "44"));
        // 8 of 10 and 2 of 40 at least; 4 of 44 and 6 of 12 at most.
        BlendProgram limited =
                blend("99", "99", taken(weak, Bounds.atMost(Ratio.of(8))), taken(strong, Bounds.atMost(Ratio.of(4))));
        assertThat(limited.reachable()).contains(bounds("16", "24.8"));
        BlendProgram tooLittle =
                blend("20", "20", taken(weak, Bounds.atMost(Ratio.of(5))), taken(strong, Bounds.atMost(Ratio.of(4))));
        assertThat(tooLittle.reachable()).isEmpty();
    }

    /** 50 x + 20 (10 − x) = 200 + 30 x: a value of exactly 30 is x = 10/3, one from 29 to 31 is 3 ≤ x ≤ 11/3. */
    @Test
    void a_blend_in_steps_of_the_display_keeps_the_target_or_there_is_none() {
        BlendProgram.Part weak = part("20", "20");
        assertThat(blend("29", "31", STRONG, weak).inSteps(Ratio.ONE))
                .isEqualTo(new StepProgram.Answer(Optional.of(numbers("3", "7")), true));
        assertThat(blend("30", "30", STRONG, weak).inSteps(Ratio.ONE))
                .isEqualTo(new StepProgram.Answer(Optional.empty(), true));
        assertThat(blend("30", "30", STRONG, weak).inSteps(Ratio.of(1, 3)).values())
                .contains(numbers("10/3", "20/3"));
    }

    @Test
    void amounts_are_held_to_the_whole_the_target_and_the_bounds_of_each_part() {
        BlendProgram blend = blend("20", "40", STRONG, PLAIN);
        assertThat(blend.isKeptBy(numbers("6", "4"))).isTrue();
        assertThat(blend.isKeptBy(numbers("6", "3.99"))).isFalse();
        assertThat(blend.isKeptBy(numbers("6", "4.01"))).isFalse();
        assertThat(blend.isKeptBy(numbers("8", "2"))).isTrue();
        assertThat(blend.isKeptBy(numbers("8.01", "1.99"))).isFalse();
        assertThat(blend.isKeptBy(numbers("4", "6"))).isTrue();
        assertThat(blend.isKeptBy(numbers("3.99", "6.01"))).isFalse();
        BlendProgram bounded = blend("20", "40", taken(STRONG, bounds("5", "7")), PLAIN);
        assertThat(bounded.isKeptBy(numbers("5", "5"))).isTrue();
        assertThat(bounded.isKeptBy(numbers("4.99", "5.01"))).isFalse();
        assertThat(bounded.isKeptBy(numbers("7", "3"))).isTrue();
        assertThat(bounded.isKeptBy(numbers("7.01", "2.99"))).isFalse();
    }

    /** (29 − 1)/(51 − 1) and (31 − 0)/(49 − 0). */
    @Test
    void the_share_of_the_stronger_of_two_lies_between_its_corners() {
        assertThat(BlendProgram.share(bounds("0", "1"), bounds("49", "51"), bounds("29", "31")))
                .contains(bounds("0.56", "31/49"));
    }

    @Test
    void a_share_is_told_as_long_as_no_target_passes_a_part() {
        Bounds strong = bounds("49", "51");
        assertThat(BlendProgram.share(bounds("0", "29"), strong, bounds("29", "49")))
                .contains(bounds("0", "1"));
        assertThat(BlendProgram.share(bounds("0", "29.01"), strong, bounds("29", "49")))
                .isEmpty();
        assertThat(BlendProgram.share(bounds("0", "29"), strong, bounds("29", "49.01")))
                .isEmpty();
        assertThat(BlendProgram.share(bounds("4", "5"), bounds("5", "6"), bounds("5", "5")))
                .as("both parts may be of one value")
                .isEmpty();
    }

    @Test
    void nothing_may_be_missing() {
        assertThatThrownBy(() -> new BlendProgram.Part(null, Bounds.all())).hasMessage("value");
        assertThatThrownBy(() -> new BlendProgram.Part(Bounds.all(), null)).hasMessage("taken");
        assertThatThrownBy(() -> new BlendProgram(null, List.of(), Bounds.all()))
                .hasMessage("whole");
        assertThatThrownBy(() -> new BlendProgram(TEN, null, Bounds.all())).hasMessage("parts");
        assertThatThrownBy(() -> new BlendProgram(TEN, List.of(), null)).hasMessage("target");
    }

    private static BlendProgram blend(String least, String most, BlendProgram.Part... parts) {
        return new BlendProgram(TEN, List.of(parts), bounds(least, most));
    }

    private static BlendProgram.Part part(String least, String most) {
        return new BlendProgram.Part(bounds(least, most), Bounds.all());
    }

    private static BlendProgram.Part taken(BlendProgram.Part part, Bounds taken) {
        return new BlendProgram.Part(part.value(), taken);
    }

    private static Bounds bounds(String lower, String upper) {
        return Bounds.closed(Ratio.parse(lower), Ratio.parse(upper));
    }

    private static List<Ratio> numbers(String... texts) {
        return Arrays.stream(texts).map(Ratio::parse).toList();
    }

    private static LinearProgram.Answer.Optimal optimal(LinearProgram.Answer answer) {
        return (LinearProgram.Answer.Optimal) answer;
    }
}
