package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A phase is the same phase in every spelling that is one name. */
class PhaseSpellingsPropertiesTest {

    private static final String OIL = "Ph\u00e9-oil phase";

    /** Letter case, Unicode form, what is not seen, and the kind of space: drawn here, forgiven there. */
    private static String spelt(Random random) {
        String text = random.nextBoolean() ? OIL : Normalizer.normalize(OIL, Normalizer.Form.NFD);
        text = random.nextBoolean() ? text.toUpperCase(Locale.ROOT) : text;
        text = text.replace(" ", random.nextBoolean() ? " " : "\u00a0 ");
        text = text.replace("-", random.nextBoolean() ? "-" : "\u2011");
        return (random.nextBoolean() ? "" : "\u200b") + text + (random.nextBoolean() ? "" : " ");
    }

    @Property(tries = 200)
    void no_second_phase_in_disguise(@ForAll long seed) {
        Random random = new Random(seed);
        String first = spelt(random);
        String second = spelt(random);
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
