package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MagnitudeTest {

    @ParameterizedTest
    @CsvSource({
        "1, 0",
        "9.99, 0",
        "10, 1",
        "99, 1",
        "-100, 2",
        "0.1, -1",
        "0.01, -2",
        "0.00999, -3",
        "1e-1000, -1000",
        "1e1000, 1000",
        "1/3, -1",
        "1001/1000, 0",
        "999/1000, -1",
    })
    void the_first_digit_stands_at_the_largest_power_of_ten_not_above_the_number(String number, int expected) {
        assertThat(Ratio.parse(number).magnitude()).isEqualTo(expected);
    }
}
