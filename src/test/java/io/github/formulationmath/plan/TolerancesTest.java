package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.ValueContract;
import java.util.List;
import org.junit.jupiter.api.Test;

class TolerancesTest implements ValueContract<Tolerances> {

    @Override
    public List<Tolerances> different() {
        Tolerances five = Tolerances.of("5 %");
        return List.of(
                five,
                Tolerances.of("4 %"),
                five.withPhase("A", "3 %"),
                five.withPhase("A", "2 %"),
                five.withPhase("B", "3 %"),
                five.withLine("Wax", "3 %"),
                five.withLine("Wax", "2 %"),
                five.withPhase("A", "3 %").withLine("Wax", "2 %"));
    }

    @Override
    public List<Tolerances> same() {
        return different();
    }

    @Test
    void what_was_set_can_be_read() {
        Tolerances set = Tolerances.of("5 %")
                .withPhase("A", "3 %")
                .withLine("Wax", "2 %")
                .withLine("Oil", "1 %");
        assertThat(set.general()).isEqualTo(MassFraction.parse("5 %"));
        assertThat(set.byPhase()).containsExactly(entry("A", MassFraction.parse("3 %")));
        assertThat(set.byIngredient())
                .containsExactly(entry("Wax", MassFraction.parse("2 %")), entry("Oil", MassFraction.parse("1 %")));
        assertThat(set).hasToString("± 5 %, phase A ± 3 %, Wax ± 2 %, Oil ± 1 %");
    }

    @Test
    void a_tolerance_of_everything_is_refused() {
        assertThatThrownBy(() -> Tolerances.of("100 %"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("below 100 %");
        assertThatThrownBy(() -> Tolerances.of("5 %").withPhase("A", "120 %"))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
