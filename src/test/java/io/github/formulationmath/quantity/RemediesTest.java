package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a message tells somebody to write is typed back into the reader that said it, and must be taken. */
class RemediesTest {

    private static final List<String> NUMBERS = List.of(
            "12.5",
            "12,5",
            "0,01",
            "1 234,5",
            "1'234,5",
            "1’234.5",
            "1\u202f234,5",
            "1\u00a0234.5",
            "1.234,5",
            "1,234.5",
            "1,000",
            "1.000",
            "1.000.000",
            "1,000,000",
            "5.",
            "5,",
            ".5",
            ",5",
            "½",
            "1½",
            "1 ½",
            "1-1/2",
            "1 3/4",
            "3/4",
            "12٫5",
            "١٢٫٥",
            "१२.५",
            "12.5",
            "−5",
            "–5",
            "- 5",
            "+5",
            "1e3",
            "1,5e3",
            "1e-3",
            "1e9999",
            "1 2",
            "1/2/3",
            "1/0",
            "0x10",
            "12.5.5",
            "1,23,456",
            "1_000",
            "",
            "five",
            "NaN",
            "ca. 5",
            "~5",
            "<5",
            "5-6",
            "5±1");

    private static final List<String> UNITS = List.of(
            "g",
            " g",
            " g ",
            "\u00a0g",
            "\u202fg",
            "\tg",
            " gr",
            " gr.",
            " Gr",
            " GR",
            " grs",
            " grain",
            " grains",
            " gm",
            " Gramm",
            " grams",
            " G",
            " Kg",
            " KG",
            " kgs",
            " mg",
            " Mg",
            " MG",
            " mcg",
            " µg",
            " oz",
            " oz.",
            " Oz",
            "oz t",
            " lb",
            " lbs",
            " lb.",
            " fl oz",
            " fl. oz.",
            " FL OZ",
            " cup",
            " Cups",
            " tsp",
            " tbsp.",
            " Tbsp",
            " mL",
            " ml",
            " ML",
            " cc",
            " cm3",
            " l",
            " litre",
            " %",
            "%",
            " percent",
            " ％",
            " ‰",
            " ppm",
            " % w/w",
            " % w/v",
            " % v/v",
            " °C",
            " ℃",
            " C",
            " F",
            " K",
            " k",
            " deg",
            " g/mL",
            " g / ml",
            " g/cc",
            " kg/m3",
            " g/mL at 20 °C",
            " g/mL at 20 C",
            " g/mL at 20,5 °C",
            " stone",
            " garbage",
            "",
            " ",
            ".",
            ",",
            " g g",
            " \u200bg");

    /** No divisor of the number of units, so that numbers and units meet in another order for each reader. */
    private static final int STRIDE = 11;

    /** After "write": whole texts; after "write it like": examples of them. */
    private static final Pattern REMEDIES = Pattern.compile("; write (?:it like )?(.*)$", Pattern.DOTALL);

    private static Map<String, Function<String, Object>> readers(AmountFormat format) {
        Map<String, Function<String, Object>> readers = new TreeMap<>(Map.of(
                "amount", format::parse,
                "mass", format::parseMass,
                "volume", format::parseVolume,
                "temperature", format::parseTemperature,
                "share", format::parseShare));
        if (format.equals(AmountFormat.standard())) {
            readers.putAll(Map.of(
                    "number", Ratio::parse,
                    "mass fraction", MassFraction::parse,
                    "percentage", MassFraction::ofPercent,
                    "volume fraction", VolumeFraction::parse,
                    "concentration", MassConcentration::parse,
                    "density", Density::parse));
        }
        return readers;
    }

    private static Stream<AmountFormat> formatsOfAllLocales() {
        return Stream.of(DecimalFormatSymbols.getAvailableLocales())
                .map(AmountFormat::forLocale)
                .distinct();
    }

    /** The number of remedies that were typed. */
    private static int typeBack(String reader, Function<String, Object> read, String wrong) {
        Throwable refused = catchThrowable(() -> read.apply(wrong));
        if (refused != null) {
            assertThat(refused).as("%s, typed \"%s\"", reader, wrong).isInstanceOf(IllegalArgumentException.class);
        }
        if (!(refused instanceof NumberTextException e)) {
            return 0;
        }
        assertThat(e.getMessage()).as(reader).doesNotContain("null").hasSizeLessThan(600);
        Matcher m = REMEDIES.matcher(e.getMessage());
        if (!m.find()) {
            // A pure number is refused for its size or its 0 below the line: the rule is all there is to say.
            assertThat(e.getMessage()).as(reader).doesNotContain("write").matches(".*(and 1000|is 0|1000 characters)$");
            return 0;
        }
        List<String> told = List.of(m.group(1).split(" or |, "));
        assertThat(told).isEqualTo(e.remedies()).isNotEmpty();
        for (String remedy : told) {
            assertThatCode(() -> read.apply(remedy))
                    .as("%s, typed \"%s\", was told: %s", reader, wrong, e.getMessage())
                    .doesNotThrowAnyException();
        }
        return told.size();
    }

    /** Each number meets each unit in one of the forms and readers at least; every combination in the long run. */
    @Test
    void every_remedy_is_taken_when_typed_in_the_decimal_mark_of_every_locale() {
        assertThat(typeAllBack(STRIDE)).isGreaterThan(5_000);
    }

    @Test
    @Tag("many")
    void every_remedy_is_taken_for_all_combinations() {
        assertThat(typeAllBack(1)).isGreaterThan(50_000);
    }

    private static int typeAllBack(int stride) {
        int typed = 0;
        int turn = 0;
        for (AmountFormat format : formatsOfAllLocales().toList()) {
            for (Map.Entry<String, Function<String, Object>> reader :
                    readers(format).entrySet()) {
                for (int i = turn++ % stride; i < NUMBERS.size() * UNITS.size(); i += stride) {
                    String text = NUMBERS.get(i / UNITS.size()) + UNITS.get(i % UNITS.size());
                    typed += typeBack(format + ", " + reader.getKey(), reader.getValue(), text);
                }
            }
        }
        return typed;
    }

    @Test
    void every_remedy_is_taken_for_texts_put_together_at_random() {
        Random random = new Random(20_261_126);
        String alphabet = "0123456789 .,/-+eE'gkmoztlbLr%‰°CFµ³½\u00a0\u202f\u200b\u0660\uff11 w/v";
        List<AmountFormat> formats = formatsOfAllLocales().toList();
        int typed = 0;
        for (int i = 0; i < 500; i++) {
            StringBuilder text = new StringBuilder(random.nextInt(4) > 0 ? Integer.toString(random.nextInt(3000)) : "");
            for (int length = random.nextInt(12); length > 0; length--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            AmountFormat format = formats.get(random.nextInt(formats.size()));
            for (Map.Entry<String, Function<String, Object>> reader :
                    readers(format).entrySet()) {
                typed += typeBack(format + ", " + reader.getKey(), reader.getValue(), text.toString());
            }
        }
        assertThat(typed).isGreaterThan(2_000);
    }

    /** What the JDK prints for people of a locale is read as the same number. */
    @Test
    void the_number_as_the_jdk_prints_it_is_taken_in_every_locale() {
        for (Locale locale : DecimalFormatSymbols.getAvailableLocales()) {
            AmountFormat format = AmountFormat.forLocale(locale);
            String printed = NumberFormat.getNumberInstance(locale).format(new BigDecimal("1234567.5")) + " g";
            Amount<?> meant = Amount.mass("1234567.5 g");
            if (printed.matches("\\p{Nd}{1,2}(?:\\D\\p{Nd}{2})+\\D\\p{Nd}\\D+")) {
                // Groups of two to the end (tok in the newer data of the JDK) are nobody's number elsewhere: refused.
                assertThatThrownBy(() -> format.parseMass(printed)).isInstanceOf(NumberTextException.class);
                continue;
            }
            assertThat(format.parseMass(printed))
                    .as("%s in %s", printed, locale)
                    .isEqualTo(meant);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"500 gr", "500 gr.", "500 Gr", "500 GR", "500gr", "500 grs", "5e2 gr"})
    void gr_is_nobodys_unit(String text) {
        for (AmountFormat format : formatsOfAllLocales().toList()) {
            assertThatThrownBy(() -> format.parseMass(text))
                    .isInstanceOf(NumberTextException.class)
                    .hasMessageMatching("(?s).*; write \\S+ g or \\S+ grain$");
            assertThatThrownBy(() -> format.parse(text)).isInstanceOf(NumberTextException.class);
        }
        assertThatThrownBy(() -> Amount.mass(text))
                .hasMessageContaining("stands for several units: g, the gram, or grain (0.0648 g)");
    }

    @Test
    void no_name_that_is_not_a_symbol_of_ours_is_read_by_letter_case_alone() {
        for (UnitScale scale : List.of(KnownUnit.values())) {
            for (String other : List.of(
                    scale.symbol().toUpperCase(Locale.ROOT), scale.symbol().toLowerCase(Locale.ROOT))) {
                Throwable refused = catchThrowable(() -> Amount.mass("7 " + other));
                if (refused == null) {
                    assertThat(Amount.mass("7 " + other).getUnit()).isSameAs(scale.unit());
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en-US | 1 234,5 g | write 1234.5 g",
                "en-US | 1'234,5 g | write 1234.5 g",
                "de-DE | 12.5 Gramm | write 12,5 g",
                "de-DE | 12.5\u00a0g | write 12,5 g",
                "de-DE | 5. g | write 5 g",
                "de-DE | 1 234,5 g | write 1234,5 g",
                "de-DE | ca. 5 g | write it like 12,5 g or 1 3/4 oz",
                "en-US | ,5 gr | write .5 g or .5 grain",
                "en-US | 1-3/4 gr | write 1 3/4 g or 1 3/4 grain",
                "en-US | 5 \u200bg | write 5 g",
                "en-US | 12.5 | the unit is missing; write it like 12.5 g or 1 3/4 oz",
                "ar-EG | 12.5 g | write 12٫5 g",
            })
    void what_was_meant_is_proposed(String locale, String text, String told) {
        assertThatThrownBy(() ->
                        AmountFormat.forLocale(Locale.forLanguageTag(locale)).parseMass(text))
                .hasMessageEndingWith(told);
    }

    @Test
    void a_density_without_a_unit_is_told_its_unit() {
        assertThatThrownBy(() -> Density.parse("0.97")).hasMessage("\"0.97\": the unit is missing; write 0.97 g/mL");
        assertThatThrownBy(() -> Density.parse("0,97 at 20 C")).hasMessageEndingWith("; write 0.97 g/mL at 20 °C");
    }

    @Test
    void a_text_is_mended_up_to_60_characters() {
        String longest = "5" + " ".repeat(57) + "gr";
        assertThatThrownBy(() -> Amount.mass(longest)).hasMessageEndingWith("write 5 g or 5 grain");
        assertThatThrownBy(() -> Amount.mass(longest + ".")).hasMessageEndingWith("write it like 12.5 g or 1 3/4 oz");
    }

    @Test
    void a_density_in_another_unit_is_proposed_as_written_and_in_grams_per_millilitre() {
        assertThatThrownBy(() -> Density.parse("0,92 g/cc")).hasMessageEndingWith("write 0.92 g/cc or 0.92 g/mL");
    }

    @Test
    void long_texts_are_quoted_in_part_with_their_length() {
        for (Function<String, Object> reader : readers(AmountFormat.standard()).values()) {
            for (String part : List.of("9", "x", "5 ", "5 x", ",", "½", "5 g/mL at ")) {
                for (int times : List.of(70, 300, 300_000)) {
                    String text = part.repeat(times);
                    Throwable refused = catchThrowable(() -> reader.apply(text));
                    if (refused instanceof NumberTextException) {
                        assertThat(refused.getMessage()).hasSizeLessThan(400).contains(text.length() + " characters");
                    }
                }
            }
        }
    }
}
