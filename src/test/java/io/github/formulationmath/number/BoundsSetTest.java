package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.support.NullTester;
import io.github.formulationmath.support.ValueContract;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BoundsSetTest implements ValueContract<BoundsSet> {

    private static Bounds closed(long lower, long upper) {
        return Bounds.closed(Ratio.of(lower), Ratio.of(upper));
    }

    private static BoundsSet islands() {
        return BoundsSet.of(List.of(closed(19, 21), closed(38, 42), Bounds.atLeast(Ratio.of(57))));
    }

    @Override
    public List<BoundsSet> different() {
        return List.of(
                islands(),
                BoundsSet.of(List.of()),
                BoundsSet.of(List.of(closed(1, 5))),
                BoundsSet.of(List.of(Bounds.all())));
    }

    @Override
    public List<BoundsSet> same() {
        return List.of(
                BoundsSet.of(List.of(Bounds.atLeast(Ratio.of(57)), closed(40, 42), closed(19, 21), closed(38, 40))),
                islands().intersection(BoundsSet.of(List.of(closed(1, 2)))),
                BoundsSet.of(List.of(closed(1, 3), closed(2, 5), closed(2, 3))),
                BoundsSet.of(List.of(Bounds.atMost(Ratio.of(5)), Bounds.atLeast(Ratio.of(5)))));
    }

    @Test
    void the_example_of_the_class_prints() {
        assertThat(islands()).hasToString("[19, 21] ∪ [38, 42] ∪ [57, ∞)");
        assertThat(BoundsSet.of(List.of())).hasToString("∅");
        assertThat(BoundsSet.of(List.of()).isEmpty()).isTrue();
        assertThat(islands().isEmpty()).isFalse();
        assertThat(islands().parts()).hasSize(3);
    }

    @Test
    void sets_agree_with_their_intervals_number_by_number() {
        Hard hard = new Hard(23);
        for (int round = 0; round < 500; round++) {
            List<Bounds> one = random(hard);
            List<Bounds> two = random(hard);
            BoundsSet a = BoundsSet.of(one);
            BoundsSet both = a.intersection(BoundsSet.of(two));
            for (int x = -2; x < 64; x++) {
                Ratio value = Ratio.of(x, 2);
                boolean in = one.stream().anyMatch(b -> b.contains(value));
                assertThat(a.contains(value)).isEqualTo(in);
                assertThat(both.contains(value)).isEqualTo(in && two.stream().anyMatch(b -> b.contains(value)));
            }
            for (int i = 1; i < a.parts().size(); i++) {
                assertThat(a.parts().get(i - 1).intersection(a.parts().get(i))).isEmpty();
            }
        }
    }

    private static List<Bounds> random(Hard hard) {
        List<Bounds> bounds = new ArrayList<>();
        for (int i = hard.below(5); i > 0; i--) {
            int low = hard.below(28);
            bounds.add(
                    switch (hard.below(8)) {
                        case 0 -> Bounds.atMost(Ratio.of(low));
                        case 1 -> Bounds.atLeast(Ratio.of(low));
                        default -> closed(low, low + hard.below(4));
                    });
        }
        return bounds;
    }

    @Test
    void the_smallest_multiple_is_the_first_that_lies_inside() {
        assertThat(islands().smallestMultipleOf(Ratio.of(25))).contains(Ratio.of(75));
        assertThat(islands().smallestMultipleOf(Ratio.of(20))).contains(Ratio.of(20));
        assertThat(BoundsSet.of(List.of(closed(19, 21))).smallestMultipleOf(Ratio.of(25)))
                .isEmpty();
        assertThat(BoundsSet.of(List.of()).smallestMultipleOf(Ratio.ONE)).isEmpty();
        assertThat(islands().smallest()).contains(Ratio.of(19));
    }

    @Test
    void a_set_without_lower_end_has_no_smallest_multiple_even_if_another_part_starts() {
        BoundsSet down = BoundsSet.of(List.of(Bounds.atMost(Ratio.of(5)), Bounds.atLeast(Ratio.of(7))));
        assertThat(down.smallestMultipleOf(Ratio.ONE)).isEmpty();
        assertThat(down.smallest()).isEmpty();
    }

    @Test
    void the_nearest_number_is_the_smaller_of_two_equally_near() {
        assertThat(islands().nearest(Ratio.of(20))).contains(Ratio.of(20));
        assertThat(islands().nearest(Ratio.of(1))).contains(Ratio.of(19));
        assertThat(islands().nearest(Ratio.of(59, 2))).contains(Ratio.of(21));
        assertThat(islands().nearest(Ratio.of(50))).contains(Ratio.of(57));
        assertThat(BoundsSet.of(List.of()).nearest(Ratio.ONE)).isEqualTo(Optional.empty());
        assertThatThrownBy(() -> islands().smallestMultipleOf(Ratio.ZERO)).hasMessageContaining("step is 0");
    }

    @Test
    void null_is_refused_by_name() throws IllegalAccessException {
        NullTester tester =
                new NullTester(Map.of(Ratio.class, Ratio.ONE, List.class, List.of(), BoundsSet.class, islands()));
        assertThat(tester.test(BoundsSet.class, islands())).isGreaterThan(4);
    }
}
