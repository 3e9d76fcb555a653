package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Values that can be put in order are ordered by their size, and zero is told from the rest. */
class OrderTest {

    private static <T extends Comparable<T>> void inOrder(List<T> rising) {
        for (int i = 0; i < rising.size(); i++) {
            for (int j = 0; j < rising.size(); j++) {
                assertThat(Integer.signum(rising.get(i).compareTo(rising.get(j))))
                        .as("%s and %s", rising.get(i), rising.get(j))
                        .isEqualTo(Integer.compare(i, j));
            }
        }
    }

    @Test
    void shares_concentrations_and_densities_are_ordered_by_size() {
        List<Ratio> shares = Stream.of("0", "1/3", "0.5", "1").map(Ratio::parse).toList();
        inOrder(shares.stream().map(MassFraction::of).toList());
        inOrder(shares.stream().map(VolumeFraction::of).toList());
        inOrder(Stream.of("0 % w/v", "3 % w/v", "30 % w/v")
                .map(MassConcentration::parse)
                .toList());
        inOrder(Stream.of("0.7 g/mL", "0.92 g/mL", "1 g/mL").map(Density::parse).toList());
        assertThat(VolumeFraction.of(Ratio.of(1, 3)).fraction()).isEqualTo(Ratio.of(1, 3));
    }

    @Test
    void zero_is_told_from_the_rest() {
        assertThat(Amount.mass("0.00 g").isZero()).isTrue();
        assertThat(Amount.mass("0.01 g").isZero()).isFalse();
        Amount<?> none = Amount.mass("0 g");
        assertThat(none.abs()).isSameAs(none);
    }

    @Test
    void a_character_that_nobody_sees_is_named() {
        assertThatThrownBy(() -> Amount.mass("1\u200bg"))
                .isInstanceOf(NumberTextException.class)
                .hasMessageContaining("U+200B");
    }

    @Test
    void an_unknown_unit_is_answered_with_the_units_there_are() {
        assertThatThrownBy(() -> Amount.mass("1 stone"))
                .isInstanceOf(NumberTextException.class)
                .hasMessageContaining("is not a unit that is read here: ")
                .hasMessageContaining("g, ")
                .hasMessageContaining("lb, grain")
                .satisfies(e -> assertThat(e.getMessage()).doesNotContain(", , "));
    }

    @Test
    void a_density_needs_a_unit_of_density() {
        for (String text : List.of("@ 20 °C", "0.9", "0.9 g", " at 20 °C")) {
            assertThatThrownBy(() -> Density.parse(text)).isInstanceOf(NumberTextException.class);
        }
    }
}
