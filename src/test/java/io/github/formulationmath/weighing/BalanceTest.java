package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import org.junit.jupiter.api.Test;

/** What a balance says of itself, in the units it was given in, and where its limits lie. */
class BalanceTest {

    private static final Balance KITCHEN = Balance.of("0.1 g", "2 kg");

    @Test
    void figures_keep_their_units() {
        Balance balance = Balance.of("0.05 oz", "5 lb").withMinimumLoad(Amount.mass("2 oz"));
        assertThat(balance.readability()).isEqualTo(Amount.mass("0.05 oz"));
        assertThat(balance.capacity()).isEqualTo(Amount.mass("5 lb"));
        assertThat(balance.minimumLoad()).isEqualTo(Amount.mass("2 oz"));
        assertThat(KITCHEN.minimumLoad().isZero()).isTrue();
        // The international avoirdupois ounce is 28.349523125 g exactly (NIST Handbook 44, appendix C), 16 make a
        // pound.
        assertThat(balance.readability().canonical()).isEqualTo(Ratio.parse("1.41747615625"));
        assertThat(balance.capacity().canonical()).isEqualTo(Ratio.parse("2267.96185"));
        assertThat(balance.divisions(Amount.mass("1 oz"))).isEqualTo(Ratio.of(20));
    }

    @Test
    void a_mass_between_two_steps_is_no_whole_number_of_divisions() {
        assertThat(KITCHEN.divisions(Amount.mass("12.34 g"))).isEqualTo(Ratio.parse("123.4"));
    }

    @Test
    void the_vessel_takes_its_part_of_the_capacity() {
        Amount<javax.measure.quantity.Mass> left = KITCHEN.capacityUnder(Vessel.of("beaker", "214 g"));
        assertThat(left).hasToString("1786 g");
        assertThat(KITCHEN.capacityUnder(Vessel.none())).hasToString("2000 g");
        assertThat(KITCHEN.capacityUnder(Vessel.of("pot", "2 kg")).isZero()).isTrue();
        assertThatThrownBy(() -> KITCHEN.capacityUnder(Vessel.of("cauldron", "2000.1 g")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2000.1 g")
                .hasMessageContaining("by 0.1 g")
                .hasMessageContaining("lighter vessel");
    }

    @Test
    void a_display_of_one_step_is_the_smallest() {
        assertThat(Balance.of("1 g", "1 g").capacity().canonical()).isEqualTo(Ratio.ONE);
        assertThatThrownBy(() -> Balance.of("1 g", "0.9 g"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("capacity is 0.9 g")
                .hasMessageContaining("exchanged");
    }

    @Test
    void a_minimum_load_lies_from_0_to_the_capacity() {
        assertThat(KITCHEN.withMinimumLoad(Amount.mass("0 g"))).isEqualTo(KITCHEN);
        assertThat(KITCHEN.withMinimumLoad(Amount.mass("2 kg")).minimumLoad()).isEqualTo(KITCHEN.capacity());
        for (String bad : new String[] {"-0.1 g", "2000.1 g"}) {
            assertThatThrownBy(() -> KITCHEN.withMinimumLoad(Amount.mass(bad)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("minimumLoad is " + bad)
                    .hasMessageContaining("2 kg");
        }
    }

    @Test
    void the_text_says_what_was_given_and_no_more() {
        assertThat(KITCHEN).hasToString("balance d = 0.1 g, capacity 2 kg");
        assertThat(KITCHEN.named("fine")).hasToString("balance fine d = 0.1 g, capacity 2 kg");
        assertThat(KITCHEN.withMinimumLoad(Amount.mass("5 g")))
                .hasToString("balance d = 0.1 g, capacity 2 kg, minimum load 5 g");
        assertThat(KITCHEN.withErrors(ErrorModel.readabilityOnly().withLinearityOfNetReading("0.2 g"))
                        .toString())
                .startsWith("balance d = 0.1 g, capacity 2 kg, repeatability ")
                .contains("linearity 0.2 g");
    }

    @Test
    void it_carries_its_capacity_and_not_a_step_more() {
        assertThat(KITCHEN.carries(Amount.mass("1999.9 g"))).isTrue();
        assertThat(KITCHEN.carries(Amount.mass("2000 g"))).isTrue();
        assertThat(KITCHEN.carries(Amount.mass("2000.1 g"))).isFalse();
        assertThat(KITCHEN.excess(Amount.mass("2.0001 kg"))).hasToString("0.1 g");
    }
}
