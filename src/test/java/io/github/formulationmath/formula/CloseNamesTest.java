package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CloseNamesTest {

    @Test
    void neighbours_that_changed_places_are_one_step() {
        CloseNames names = new CloseNames(List.of("Tretinoin", "Chloroform"));
        assertThat(names.slips("Tretinion", 3)).containsExactly("Tretinoin");
        assertThat(names.slips("Cholroform", 3)).containsExactly("Chloroform");
        assertThat(names.slips("Cholrofrom", 3)).isEmpty();
        assertThat(new CloseNames(List.of("Phenoxyethanol")).slips("Phenoxyethnaal", 3))
                .containsExactly("Phenoxyethanol");
    }
}
