package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import org.junit.jupiter.api.Test;

class VesselTest {

    @Test
    void it_says_what_it_was_told() {
        Vessel beaker = Vessel.of("beaker", "214 g").holding("600 mL", "450 mL");
        assertThat(beaker.name()).isEqualTo("beaker");
        assertThat(beaker.mass()).isEqualTo(Amount.mass("214 g"));
        assertThat(beaker.brimVolume()).contains(Amount.volume("600 mL"));
        assertThat(beaker.workingVolume()).contains(Amount.volume("450 mL"));
        assertThat(beaker).hasToString("beaker (214 g) for 450 mL of 600 mL");
    }

    @Test
    void what_is_not_known_is_empty() {
        assertThat(Vessel.of("pot", "1 kg").brimVolume()).isEmpty();
        assertThat(Vessel.of("pot", "1 kg").workingVolume()).isEmpty();
        assertThat(Vessel.none().mass().isZero()).isTrue();
        assertThat(Vessel.none()).hasToString("no vessel");
    }

    @Test
    void a_vessel_may_be_weightless_but_not_lighter() {
        assertThat(Vessel.of("paper", "0 g").mass().isZero()).isTrue();
        assertThatThrownBy(() -> Vessel.of("paper", "-0.1 g"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("mass is -0.1 g");
    }

    @Test
    void it_may_be_worked_in_up_to_the_brim_but_not_beyond() {
        Vessel jar = Vessel.of("jar", "80 g");
        assertThat(jar.holding("0.1 L", "100 mL").workingVolume()).contains(Amount.volume("100 mL"));
        assertThatThrownBy(() -> jar.holding("100 mL", "101 mL"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("workingVolume is 101 mL")
                .hasMessageContaining("exchanged");
    }

    @Test
    void one_volume_stands_for_both() {
        Vessel jar = Vessel.of("jar", "85 g");
        assertThat(jar.holding("120 mL")).isEqualTo(jar.holding("120 mL", "120 mL"));
        assertThatThrownBy(() -> jar.holding("0 mL")).hasMessageContaining("Volume is 0 mL");
        assertThatThrownBy(() -> jar.holding("120 g")).hasMessageContaining("not a unit of volume");
    }

    @Test
    void its_words_leave_out_what_is_not_known() {
        Wording english = Wording.english();
        assertThat(Vessel.none().text(english)).isEqualTo("no vessel");
        assertThat(Vessel.of("paper", "0 g").text(english)).isEqualTo("paper");
        assertThat(Vessel.of("beaker", "214 g").text(english)).isEqualTo("beaker (214 g)");
        assertThat(Vessel.of("paper", "0 g").holding("20 mL").text(english)).isEqualTo("paper for 20 mL of 20 mL");
        assertThat(Vessel.of("beaker", "214 g").holding("600 mL", "450 mL").text(english))
                .isEqualTo("beaker (214 g) for 450 mL of 600 mL");
    }
}
