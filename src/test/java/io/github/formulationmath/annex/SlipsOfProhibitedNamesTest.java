package io.github.formulationmath.annex;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.NameBook;
import io.github.formulationmath.formula.Substance;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A misspelt name of a prohibited substance has a suggestion: made wrong by hand and by lot. */
class SlipsOfProhibitedNamesTest {

    private static final long SEED = 20240225;

    private static final ProhibitedSubstances LIST = ProhibitedSubstances.eu2024February();

    /** What a name is taken for, or may be the slip of a pen for. */
    private static List<String> near(String written) {
        List<String> names = LIST.read(written)
                .map(NameBook.Reading::names)
                .orElseGet(() ->
                        LIST.hasCloseTo(written) ? NameBook.of(LIST.names()).suggest(written, 12) : List.of());
        return names.stream().map(KeyFile::keyOf).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "Hexachlorophen, HEXACHLOROPHENE",
        "Dimethylsulfoxide, DIMETHYL SULFOXIDE",
        "2-Chloroacetamide, 2-CHLORACETAMIDE",
        "Minoxydil, MINOXIDIL",
        "Tretionin, TRETINOIN",
    })
    void a_slip_has_the_name_that_was_meant(String written, String meant) {
        assertThat(near(written)).contains(meant);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Aqua", "Sodium Chloride", "Cetearyl Alcohol", "Disperse Blue 2", "", " ", "x"})
    void what_is_right_short_or_far_from_all_has_none(String written) {
        assertThat(near(written)).isEmpty();
    }

    /** One letter left out, put in, exchanged for another or with its neighbour, in names of the list taken by lot. */
    @Test
    void every_slip_of_one_letter_leads_back() {
        List<String> keys = new ArrayList<>(new TreeSet<>(ProhibitedSubstances.keys()));
        keys.removeIf(key -> !key.matches("[A-Z ]{8,40}") || key.contains("HCL"));
        Random dice = new Random(SEED);
        for (int i = 0; i < 400; i++) {
            String key = keys.get(dice.nextInt(keys.size()));
            int at = 1 + dice.nextInt(key.length() - 2);
            String slip = switch (dice.nextInt(4)) {
                case 0 -> key.substring(0, at) + key.substring(at + 1);
                case 1 -> key.substring(0, at) + letter(dice) + key.substring(at);
                case 2 -> key.substring(0, at) + letter(dice) + key.substring(at + 1);
                default -> key.substring(0, at) + key.charAt(at + 1) + key.charAt(at) + key.substring(at + 2);
            };
            if (!KeyFile.keyOf(slip).equals(key) && KeyFile.keyOf(slip).length() >= 6) {
                assertThat(LIST.hasCloseTo(slip)
                                || !LIST.find(Substance.of(slip)).isEmpty())
                        .as(slip + " for " + key)
                        .isTrue();
            }
        }
    }

    private static char letter(Random dice) {
        return (char) ('A' + dice.nextInt(26));
    }
}
