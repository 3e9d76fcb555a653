package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Names in ASCII, Greek letters and apostrophes are normalised without the tables of Unicode, and to the same. */
class SimpleNamesPropertiesTest {

    private static final String LETTERS =
            "abcXYZ019 -,()[]'./\u0391\u0392\u03a3\u03a9\u03b1\u03b2\u03b3\u03c2\u03c3\u03c9\u2019\u2032";

    @Property(tries = 300)
    void the_short_way_and_the_long_way_come_to_the_same(@ForAll long seed) {
        Random random = new Random(seed);
        StringBuilder name = new StringBuilder();
        for (int i = random.nextInt(20); i >= 0; i--) {
            name.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        assertThat(SubstanceName.normalise(name.toString())).isEqualTo(SubstanceName.normaliseAny(name.toString()));
    }

    /** The claim on which it rests, letter by letter, asked of the JDK. */
    @Test
    void no_greek_letter_without_accents_is_composed_of_anything() {
        for (char c = '\u0391'; c <= '\u03c9'; c++) {
            if (c <= '\u03a9' && c != '\u03a2' || c >= '\u03b1') {
                String letter = String.valueOf(c);
                for (Normalizer.Form form : Normalizer.Form.values()) {
                    assertThat(Normalizer.normalize(letter, form)).isEqualTo(letter);
                }
                assertThat(SubstanceName.normalise(letter)).isEqualTo(SubstanceName.normaliseAny(letter));
            }
        }
    }
}
