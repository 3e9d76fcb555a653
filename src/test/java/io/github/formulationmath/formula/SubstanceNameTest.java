package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SubstanceNameTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Glycerin",
                "GLYCERIN",
                "gLyCeRiN",
                " Glycerin\t",
                "\u00a0Glycerin\u2003",
                "Gly\u200bcerin",
                "\ufeffGlycerin",
                "\u202eGlycerin\u202c",
                "gly\u00adcerin",
                "Gly\u2060cer\u200din",
                "\uff27\uff4c\uff59\uff43\uff45\uff52\uff49\uff4e",
                "GLYCER\u0130N",
                "glycer\u0131n",
                "Glycerin\ufe0f",
                "Glycerin\udb40\udc01"
            })
    @Tag("locale")
    void these_are_glycerin(String disguise) {
        assertThat(SubstanceName.normalise(disguise)).isEqualTo("GLYCERIN");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Glycerine", "Glycero", "Gly cerin", "Glycerin 1", "Glyc\u00e9rin", "Glycer\u00edn", "Glycerin'"
            })
    void these_are_not(String other) {
        assertThat(SubstanceName.areAlike(other, "Glycerin")).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PEG-40 Castor Oil | peg \u2011 40  castor\u00a0oil",
                "1,2-Hexanediol | 1, 2\u2013\u0048EXANEDIOL",
                "Zea Mays Kernel Extrait \u00e9t\u00e9 | ZEA MAYS KERNEL EXTRAIT E\u0301TE\u0301",
                "St. John's Wort | ST. JOHN\u2019S WORT",
                "N,N'-Bis | n, n\u2032-bis",
                "Stra\u00dfe | STRASSE",
                "\u039f\u03b4\u03cc\u03c2 | \u039f\u0394\u038c\u03a3",
                "H\u2082O | h2o",
                "\u00b5-Oil | \u03bc-OIL",
                "Sodium (Lauryl) Sulfate | sodium(lauryl)sulfate",
                "CI 77891 | ci\u202f77891"
            })
    void pairs(String one, String other) {
        assertThat(SubstanceName.normalise(other)).isEqualTo(SubstanceName.normalise(one));
    }

    /** Every assigned code point in every case and form that the platform's tables know. */
    @Test
    void case_and_form_never_matter() {
        for (int c = 0; c <= Character.MAX_CODE_POINT; c++) {
            int type = Character.getType(c);
            if (type == Character.UNASSIGNED || type == Character.SURROGATE || type == Character.PRIVATE_USE) {
                continue;
            }
            String text = "x" + Character.toString(c) + "y";
            String normal = SubstanceName.normalise(text);
            assertThat(SubstanceName.normalise(normal)).as("U+%04X twice", c).isEqualTo(normal);
            for (String same : List.of(
                    text.toUpperCase(Locale.ROOT),
                    text.toLowerCase(Locale.ROOT),
                    "x" + Character.toString(Character.toTitleCase(c)) + "y",
                    Normalizer.normalize(text, Normalizer.Form.NFC),
                    Normalizer.normalize(text, Normalizer.Form.NFD),
                    Normalizer.normalize(text, Normalizer.Form.NFKC),
                    Normalizer.normalize(text, Normalizer.Form.NFKD))) {
                assertThat(SubstanceName.normalise(same))
                        .as("U+%04X as %s", c, same)
                        .isEqualTo(normal);
            }
        }
    }

    /** What the platform's regular expressions match ignoring case is one name, and of plain letters nothing else is. */
    @Test
    void letters_are_merged_only_with_their_own_case() {
        for (char a = '!'; a <= '~'; a++) {
            Pattern pattern = Pattern.compile(Pattern.quote(String.valueOf(a)), Pattern.CASE_INSENSITIVE);
            for (char b = '!'; b <= '~'; b++) {
                boolean same = pattern.matcher(String.valueOf(b)).matches();
                assertThat(SubstanceName.areAlike("x" + a, "x" + b))
                        .as("%s %s", a, b)
                        .isEqualTo(same);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "\u00a0",
                "\u200b",
                "\u200b\u00a0\u2003",
                "\ufeff",
                "\u00ad",
                "\u202e",
                "\u3164",
                "\u2800",
                "\t"
            })
    void names_of_nothing_visible_are_refused(String name) {
        assertThat(SubstanceName.normalise(name)).isEmpty();
        assertThatThrownBy(() -> Substance.of(name)).hasMessageContaining("inciName is blank: give a name");
        assertThatThrownBy(() -> Ingredient.of(name, Substance.of("Aqua"))).hasMessageContaining("blank");
        assertThatThrownBy(() -> Formula.inPercent(name)).hasMessageContaining("blank");
        assertThatThrownBy(() -> Substance.of("Aqua").withSynonyms(name)).hasMessageContaining("blank");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r", "\r\n", "\u000b", "\f", "\u0085", "\u2028", "\u2029"})
    void names_with_line_breaks_are_refused(String mark) {
        assertThatThrownBy(() -> Substance.of("Aqua" + mark + "Rosae"))
                .hasMessageContaining("line break after \"Aqua\"")
                .hasMessageContaining("on one line");
        assertThatThrownBy(() -> Ingredient.of("Aqua" + mark)).hasMessageContaining("line break");
    }
}
