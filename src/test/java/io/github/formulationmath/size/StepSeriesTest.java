package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 1, 2 or 5 times a power of ten (OIML R 76-1:2006, 3.4.1; from memory). */
class StepSeriesTest {

    @ParameterizedTest
    @CsvSource({
        "1 g, 0.5 g, 0.2 g",
        "0.5 g, 0.2 g, 0.1 g",
        "0.2 g, 0.1 g, 0.05 g",
        "0.1 g, 0.05 g, 0.02 g",
        "10 g, 5 g, 2 g",
        "0.3 g, 0.2 g, 0.1 g",
        "2 mg, 1 mg, 0.5 mg"
    })
    void finer_steps_follow_from_coarse_to_fine(String step, String first, String second) {
        List<Amount<javax.measure.quantity.Mass>> finer = CoarsestStep.StepSeries.finerThan(Amount.mass(step));
        assertThat(finer.get(0)).isEqualTo(Amount.mass(first));
        assertThat(finer.get(1)).isEqualTo(Amount.mass(second));
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "1.05, 1", "1.99, 1", "2, 2", "4.9, 2", "5, 5", "10, 10", "0.1, 0.1", "0.099, 0.05", "500, 500"
    })
    void the_coarsest_step_that_is_at_most_a_number(String most, String first) {
        assertThat(CoarsestStep.StepSeries.between(Ratio.parse(most), Ratio.parse(most))
                        .get(0))
                .isEqualTo(Ratio.parse(first));
    }

    @Test
    void six_decades_are_gone_through() {
        List<Ratio> steps = CoarsestStep.StepSeries.between(Ratio.ONE, Ratio.ONE);
        assertThat(steps.get(steps.size() - 1)).isEqualTo(Ratio.parse("0.000001"));
        assertThat(steps).hasSize(19);
        assertThat(CoarsestStep.StepSeries.between(Ratio.ONE, Ratio.parse("0.03")))
                .hasSize(25);
    }
}
