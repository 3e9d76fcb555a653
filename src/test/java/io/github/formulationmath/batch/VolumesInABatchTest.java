package io.github.formulationmath.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import org.junit.jupiter.api.Test;

/** Volumes among masses. */
class VolumesInABatchTest {

    @Test
    void a_volume_among_masses_counts_by_the_density_and_is_refused_without() {
        Formula balm = Formula.inMasses("Balm")
                .line(Ingredient.of("Oil").withDensity("0.9 g/mL"), "100 mL")
                .line("Wax", "10 g")
                .build();
        assertThat(balm.line("Oil").share()).hasToString("90 %");
        assertThatThrownBy(() -> Formula.inMasses("Balm").line("Oil", "100 mL"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("the amount of Oil")
                .hasMessageContaining("withDensity(\"0.92 g/mL\")");
        assertThatThrownBy(() -> Formula.inMasses("Balm").line("Oil", "100 %")).hasMessageContaining("100 %");
        assertThatThrownBy(() -> BatchSize.ofMass("300 mL"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("BatchSize.ofVolume(\"300 mL\", \"0.97 g/mL\")");
    }
}
