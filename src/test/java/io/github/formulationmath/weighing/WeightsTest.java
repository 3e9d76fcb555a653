package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Weights of lines: all of them, one, or some in any order. */
class WeightsTest {

    private static Map<Integer, Ratio> visited(Weights weights, int lines) {
        Map<Integer, Ratio> visited = new LinkedHashMap<>();
        weights.forEach(lines, visited::put);
        return visited;
    }

    @Test
    void in_the_total_every_line_counts_once() {
        assertThat(Weights.TOTAL.isTotal()).isTrue();
        assertThat(Weights.TOTAL.areStrengths()).isFalse();
        assertThat(Weights.TOTAL.of(0)).isEqualTo(Ratio.ONE);
        assertThat(Weights.TOTAL.of(1_000_000)).isEqualTo(Ratio.ONE);
        assertThat(visited(Weights.TOTAL, 3))
                .containsExactly(Map.entry(0, Ratio.ONE), Map.entry(1, Ratio.ONE), Map.entry(2, Ratio.ONE));
    }

    @Test
    void of_one_line_the_others_do_not_count() {
        Weights third = Weights.line(2);
        assertThat(third.isTotal()).isFalse();
        assertThat(third.areStrengths()).isFalse();
        assertThat(third.size()).isEqualTo(1);
        assertThat(third.of(2)).isEqualTo(Ratio.ONE);
        assertThat(third.of(0)).isEqualTo(Ratio.ZERO);
        assertThat(third.of(3)).isEqualTo(Ratio.ZERO);
    }

    @Test
    void strengths_are_visited_in_the_order_of_the_lines_however_they_were_given() {
        Map<Integer, Ratio> downwards = new LinkedHashMap<>();
        downwards.put(5, Ratio.of(1, 5));
        downwards.put(3, Ratio.ZERO);
        downwards.put(1, Ratio.of(-1, 2));
        downwards.put(0, Ratio.of(7));
        Weights weights = Weights.strengths(downwards);
        assertThat(weights.areStrengths()).isTrue();
        assertThat(weights.size()).isEqualTo(3);
        assertThat(visited(weights, 6))
                .containsExactly(
                        Map.entry(0, Ratio.of(7)), Map.entry(1, Ratio.of(-1, 2)), Map.entry(5, Ratio.of(1, 5)));
        assertThat(weights.of(5)).isEqualTo(Ratio.of(1, 5));
        assertThat(weights.of(3)).isEqualTo(Ratio.ZERO);
    }
}
