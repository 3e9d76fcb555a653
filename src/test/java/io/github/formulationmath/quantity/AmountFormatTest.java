package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.support.NullTester;
import io.github.formulationmath.support.ValueContract;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmountFormatTest implements ValueContract<AmountFormat> {

    private static final AmountFormat STANDARD = AmountFormat.standard();

    @Override
    public List<AmountFormat> different() {
        return List.of(STANDARD, AmountFormat.forLocale(Locale.GERMANY));
    }

    @Override
    public List<AmountFormat> same() {
        return List.of(AmountFormat.forLocale(Locale.ROOT), AmountFormat.forLocale(Locale.FRANCE));
    }

    @ParameterizedTest
    @CsvSource({
        "12.5 g, 12.5 g",
        "12.5g, 12.5 g",
        "' 12.50   g ', 12.5 g",
        "1 3/4 oz, 1.75 oz",
        "3/4 oz, 0.75 oz",
        "1e-3 g, 0.001 g",
        "2E3 mg, 2000 mg",
        "-.5 kg, -0.5 kg",
        ".5 g, 0.5 g",
        "1\u20442 oz, 0.5 oz",
        "'1,000,000 g', 1000000 g",
        "5 ug, 5 µg",
        "5 mcg, 5 µg",
        "5 \u00b5g, 5 µg",
        "5 \u03bcg, 5 µg",
        "1 oz t, 1 oz t",
        "1 grain, 1 grain",
        "30 ml, 30 mL",
        "1 l, 1 L",
        "3 cm3, 3 cm³",
        "1 US fl oz, 1 US fl oz",
        "2 metric tsp, 2 metric tsp",
        "75 °C, 75 °C",
        "0.5 %, 0.5 %",
        "200 ppm, 200 ppm",
        "1/3 %, 1/3 %",
        "½ oz, 0.5 oz",
        "1½ oz, 1.5 oz",
        "1-1/2 oz, 1.5 oz",
        "5 grams, 5 g",
        "12.5\u00a0g, 12.5 g",
        "１２.5 g, 12.5 g",
        "١٢ g, 12 g",
        "−5 g, -5 g",
        "8 oz., 8 oz",
        "1 KG, 1 kg",
        "2 cl, 2 cL",
        "3 dl, 3 dL",
        "1.000.000 g, 1000000 g",
        "1\u202f000 g, 1000 g",
        "1'000.5 g, 1000.5 g",
        "2 lb 3 oz, 2.1875 lb",
        "1 lb 3 1/2 oz, 1.21875 lb",
        "-2 lb 3 oz, -2.1875 lb",
        "－2 lb 3 oz, -2.1875 lb",
        "\u200e-2 lb 3 oz, -2.1875 lb",
        "−0 lb 3 oz, -0.1875 lb",
        "1 kg 200 g, 1.2 kg",
    })
    void amounts_are_read_and_printed(String text, String printed) {
        assertThat(STANDARD.format(STANDARD.parse(text))).isEqualTo(printed);
        assertThat(STANDARD.parse(printed)).isEqualTo(STANDARD.parse(text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12.5 g garbage | not a unit",
                "12.5 | unit is missing",
                "g | a number and a unit are needed",
                "'' | a number and a unit are needed",
                "12,5 g | the decimal mark here is \".\"",
                "0,01 g | could mean either; write 0.01 g",
                "0,010 g | could mean either; write 0.010 g",
                "1,000 g | could mean either; write 1.000 g or 1000 g",
                "1,00.5 g | the decimal mark here is \".\"",
                "1.000.00 g | not one number before the unit",
                "1.234.567.8 g | not one number before the unit",
                "1 2 g | not one number",
                "5. g | not one number before the unit",
                ",5 g | the decimal mark here is \".\"",
                "1,000\u00a0g | could mean either; write 1.000 g or 1000 g",
                "1/2/3 g | not one number",
                "1/0 g | below the line is 0",
                "1e9999 g | power of ten",
                "NaN g | a number and a unit are needed",
                "5–6 g | not a unit",
                "2 lb 16 oz | oz are less than one lb",
                "1.5 lb 3 oz | the number of lb is whole",
                "2 lb 3 g | do not make one amount",
                "1 fl oz | US fl oz (29.57 mL), imp fl oz (28.41 mL)",
                "1 oz fl | US fl oz",
                "1 cup | metric cup (250 mL)",
                "1 tbsp | metric tbsp (15 mL)",
                "1 tsp | US tsp (4.93 mL)",
                "1 Mg | not a unit",
                "12.5\u200bg | U+200B",
                "1 mL | not a unit of mass",
            })
    void everything_else_is_refused_with_the_reason(String text, String reason) {
        assertThatThrownBy(() -> STANDARD.parseMass(text))
                .isInstanceOf(NumberTextException.class)
                .hasMessageContaining(reason)
                .hasMessageContaining(text.isEmpty() ? "\"\"" : text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"12.5", "g", "9", " ", "1/", "1 ", "e"})
    void a_text_of_a_million_characters_is_refused_at_once(String part) {
        assertThatThrownBy(() -> STANDARD.parse(part.repeat(1_000_000)))
                .isInstanceOf(NumberTextException.class)
                .satisfies(e -> assertThat(e.getMessage().length()).isLessThan(1000));
    }

    @Test
    void a_text_has_at_most_a_thousand_characters() {
        String longest = "5" + " ".repeat(998) + "g";
        assertThat(STANDARD.parse(longest)).hasToString("5 g");
        assertThatThrownBy(() -> STANDARD.parse(longest + "\n")).hasMessageContaining("longer than 1000 characters");
    }

    @Test
    void only_units_of_what_is_asked_for_are_offered() {
        assertThatThrownBy(() -> STANDARD.parseVolume("1 stone"))
                .hasMessageContaining("not a unit that is read here: mL, cm³, cL")
                .satisfies(e -> assertThat(e.getMessage()).doesNotContain("kg", "°C"));
        assertThatThrownBy(() -> STANDARD.parse("1 stone"))
                .hasMessageContaining("oz t, mL")
                .hasMessageContaining("°C");
    }

    @Test
    void the_name_of_a_unit_is_quoted_whole_up_to_30_characters() {
        String name = "x".repeat(30);
        assertThatThrownBy(() -> STANDARD.parse("5 " + name)).hasMessageContaining(": \"" + name + "\" is not");
        assertThatThrownBy(() -> STANDARD.parse("5 " + name + "x"))
                .hasMessageContaining(": \"" + "x".repeat(27) + "...\" (31 characters) is not");
    }

    @Test
    void a_volume_where_a_mass_should_be_is_recognized() {
        assertThat(AmountFormat.volumeIn("30 mL")).contains(Amount.volume("30 mL"));
        assertThat(AmountFormat.volumeIn("30 g")).isEmpty();
        assertThat(AmountFormat.volumeIn("30")).isEmpty();
    }

    @Test
    void each_kind_has_its_own_reader() {
        assertThat(STANDARD.parseVolume("30 mL")).isEqualTo(Amount.millilitres(Ratio.of(30)));
        assertThat(STANDARD.parseShare("0.5 %").in(FormulationUnits.ONE)).isEqualTo(Ratio.of(1, 200));
        assertThatThrownBy(() -> STANDARD.parseVolume("30 g")).hasMessageContaining("\"g\" is not a unit of volume");
        assertThatThrownBy(() -> STANDARD.parseTemperature("30 g")).hasMessageContaining("unit of temperature");
        assertThatThrownBy(() -> STANDARD.parseShare("30 g")).hasMessageContaining("unit of share");
    }

    @Test
    void every_symbol_reads_as_its_own_unit() {
        for (UnitScale scale : List.of(KnownUnit.values())) {
            if (!scale.symbol().isEmpty()) {
                assertThat(STANDARD.parse("2 " + scale.symbol()).getUnit()).isSameAs(scale.unit());
            }
        }
        assertThat(List.of(KnownUnit.values())).hasSize(28);
    }

    @Test
    void printing_rounds_as_told() {
        Amount<?> third = Amount.mass("100/3 g");
        assertThat(STANDARD.format(third)).isEqualTo("100/3 g");
        assertThat(STANDARD.format(third, Rounding.toDecimalPlaces(2))).isEqualTo("33.33 g");
        assertThat(AmountFormat.forLocale(Locale.GERMANY).format(third, Rounding.toDecimalPlaces(2)))
                .isEqualTo("33,33 g");
        assertThat(STANDARD.format(Amount.of("0.5", FormulationUnits.ONE))).isEqualTo("0.5");
    }

    @Test
    void a_locale_brings_its_decimal_mark_and_nothing_else() {
        AmountFormat german = AmountFormat.forLocale(Locale.GERMANY);
        assertThat(german.decimalMark()).isEqualTo(',');
        assertThat(german.parseMass("12,5 g")).isEqualTo(Amount.mass("12.5 g"));
        assertThat(german.parseMass("1 3/4 oz")).isEqualTo(Amount.mass("1.75 oz"));
        assertThatThrownBy(() -> german.parseMass("12.5 g"))
                .hasMessageContaining("decimal mark here is \",\"")
                .hasMessageEndingWith("write 12,5 g");
        assertThat(german.parseMass("1.000,5 g")).isEqualTo(Amount.mass("1000.5 g"));
        assertThatThrownBy(() -> german.parseMass("1.000 g")).hasMessageEndingWith("write 1,000 g or 1000 g");
        assertThatThrownBy(() -> german.parseMass("5. g")).hasMessageContaining("the decimal mark here is \",\"");
        assertThatThrownBy(() -> german.parseMass("1.234,")).isInstanceOf(NumberTextException.class);
        assertThat(german.parseNumber("1'234")).isEqualTo(Ratio.of(1234));
        AmountFormat hindi = AmountFormat.forLocale(Locale.forLanguageTag("hi-IN-u-nu-deva"));
        assertThat(hindi.parseMass("12.5 g")).isEqualTo(Amount.mass("12.5 g"));
        AmountFormat arabic = AmountFormat.forLocale(Locale.forLanguageTag("ar-EG"));
        assertThat(arabic.parseMass(arabic.format(Amount.mass("12.5 g")))).isEqualTo(Amount.mass("12.5 g"));
    }

    /** A full stop behind an abbreviation is no decimal mark, and none is made of it. */
    @Test
    void the_full_stop_of_an_abbreviation_stays_one_where_the_decimal_mark_is_a_comma() {
        AmountFormat german = AmountFormat.forLocale(Locale.GERMANY);
        assertThat(german.parseMass("8,5 oz.")).isEqualTo(Amount.mass("8.5 oz"));
        assertThat(german.parseMass("2 lb. 3,5 oz.")).isEqualTo(Amount.mass("2 lb 3.5 oz"));
        assertThatThrownBy(() -> german.parseMass("8,5 gr."))
                .hasMessageContaining("\"gr.\" stands for several units")
                .hasMessageEndingWith("write 8,5 g or 8,5 grain");
        assertThatThrownBy(() -> german.parseMass("8,5 st.")).hasMessageContaining("\"st.\" is not a unit");
    }

    @Test
    void null_is_refused_by_name() throws IllegalAccessException {
        NullTester tester = new NullTester(Map.of(
                String.class,
                "1 g",
                Locale.class,
                Locale.ROOT,
                Amount.class,
                Amount.mass("1 g"),
                Rounding.class,
                Rounding.none()));
        assertThat(tester.test(AmountFormat.class, STANDARD)).isGreaterThan(7);
    }
}
