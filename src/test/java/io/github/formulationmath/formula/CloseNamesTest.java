package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CloseNamesTest {

    @Test
    void spelling_distance_counts_steps() {
        assertThat(CloseNames.distance("KITTEN", "SITTING", 9)).isEqualTo(3);
        assertThat(CloseNames.distance("", "ABC", 9)).isEqualTo(3);
        assertThat(CloseNames.distance("ABC", "ABC", 9)).isZero();
        assertThat(CloseNames.distance("KITTEN", "SITTING", 3)).isEqualTo(3);
        assertThat(CloseNames.distance("KITTEN", "SITTING", 2)).isGreaterThan(2);
        assertThat(CloseNames.distance("ABC", "ABCDEF", 2)).isGreaterThan(2);
    }
}
