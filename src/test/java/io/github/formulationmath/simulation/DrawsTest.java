package io.github.formulationmath.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A draw is the draw of its standard law, stretched by the scale and moved to the middle. */
class DrawsTest {

    private static double[] drawn(InputQuantity<?>... inputs) {
        double[] values = new double[inputs.length];
        new Draws(List.of(inputs)).fill(values, new SplittableRandom(17));
        return values;
    }

    @Test
    void middle_and_scale_move_and_stretch() {
        double standard = NormalDraws.next(new SplittableRandom(17));
        assertThat(drawn(Plain.normal(3, 2))).containsExactly(3 + 2 * standard);
        assertThat(drawn(Plain.normal(3, 0))).containsExactly(3);
    }

    @Test
    void each_input_gets_its_own_value_whatever_its_neighbours_are() {
        InputQuantity<?>[] mixed = {
            Plain.rectangular(0, 1),
            Plain.triangular(10, 11),
            Plain.triangular(20, 21),
            Plain.rectangular(30, 31),
            Plain.normal(40, 0.01)
        };
        double[] values = drawn(mixed);
        assertThat(values).hasSize(5);
        for (int i = 0; i < 5; i++) {
            assertThat(values[i]).isBetween(10.0 * i - (i == 4 ? 1 : 0), 10.0 * i + 1);
        }
        assertThat(values[0] % 1).isNotEqualTo(values[3] % 1);
    }
}
