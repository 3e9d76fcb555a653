package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.support.PhaseSpellings;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A phase is the same phase in every spelling that is one name. */
class PhaseSpellingsPropertiesTest {

    @Property(tries = 200)
    void no_second_phase_in_disguise(@ForAll long seed) {
        Random random = new Random(seed);
        String first = PhaseSpellings.next(random);
        String second = PhaseSpellings.next(random);
        var draft = Formula.inPercent("F")
                .phase(first)
                .line("Oil", "12 %")
                .phase("water")
                .quantitySufficient("Aqua");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> draft.phase(second))
                .withMessageContaining("\"" + first + "\"")
                .withMessageContaining("give each its own name");
        assertThat(draft.phase(second + "s").line("Wax", "1 %").build().phases())
                .hasSize(3);
    }
}
