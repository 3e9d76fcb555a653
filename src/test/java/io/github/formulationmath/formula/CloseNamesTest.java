package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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

    @Test
    void neighbours_that_changed_places_are_one_step_if_nothing_else_is_wrong() {
        CloseNames names = new CloseNames(List.of("Tretinoin", "Chloroform"));
        assertThat(names.slips("Tretinion", 3)).containsExactly("Tretinoin");
        assertThat(names.slips("Cholroform", 3)).containsExactly("Chloroform");
        assertThat(names.slips("Cholrofrom", 3)).isEmpty();
        assertThat(CloseNames.areSwapped("AB", "BA")).isTrue();
        assertThat(CloseNames.areSwapped("AB", "AB")).isFalse();
        assertThat(CloseNames.areSwapped("ABC", "BA")).isFalse();
        assertThat(CloseNames.areSwapped("", "")).isFalse();
    }
}
