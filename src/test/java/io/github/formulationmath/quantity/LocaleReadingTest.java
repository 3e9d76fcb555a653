package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.LocalDigits;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What people of a locale write, read; and what is printed for them, read again. */
class LocaleReadingTest {

    private static final AmountFormat GERMAN = AmountFormat.forLocale(Locale.GERMAN);

    @Test
    void shares_densities_money_and_parts_have_the_comma() {
        assertThat(GERMAN.parseMassFraction("3,33 %")).isEqualTo(MassFraction.parse("3.33 %"));
        assertThat(GERMAN.parseMassFraction("200 ppm")).isEqualTo(MassFraction.parse("200 ppm"));
        assertThat(GERMAN.parseVolumeFraction("95,6 % v/v")).isEqualTo(VolumeFraction.parse("95.6 % v/v"));
        assertThat(GERMAN.parseMassConcentration("0,9 % w/v")).isEqualTo(MassConcentration.parse("0.9 % w/v"));
        assertThat(GERMAN.parseDensity("0,92 g/mL")).isEqualTo(Density.parse("0.92 g/mL"));
        assertThat(GERMAN.parseDensity("0,9982 g/cm³ at 20,5 °C")).isEqualTo(Density.parse("0.9982 g/cm³ at 20.5 °C"));
        assertThat(GERMAN.parseMoney("12,50 EUR")).isEqualTo(Money.parse("12.50 EUR"));
        assertThat(GERMAN.parseNumber("2,5")).isEqualTo(Ratio.of(5, 2));
        assertThat(GERMAN.parseNumber("1 3/4")).isEqualTo(Ratio.of(7, 4));
    }

    /** The digits go into data, where there is a decimal point. */
    @Test
    void a_share_keeps_its_digits_with_a_point() {
        assertThat(GERMAN.parseMassFraction("2,50 %").asWritten()).contains("2.50 %");
        assertThat(MassFraction.parse(
                        GERMAN.parseMassFraction("2,50 %").asWritten().orElseThrow()))
                .isEqualTo(GERMAN.parseMassFraction("2,50 %"));
    }

    @Test
    void a_point_is_refused_and_what_is_proposed_is_read() {
        List<Reader> readers = List.of(
                new Reader("3.33 %", GERMAN::parseMassFraction),
                new Reader("0.92 g/mL", GERMAN::parseDensity),
                new Reader("12.50 EUR", GERMAN::parseMoney),
                new Reader("2.5", GERMAN::parseNumber));
        for (Reader reader : readers) {
            assertThatThrownBy(() -> reader.read.apply(reader.text))
                    .isInstanceOfSatisfying(NumberTextException.class, e -> {
                        for (String remedy : e.remedies()) {
                            assertThat(remedy).contains(",");
                        }
                    })
                    .hasMessageContaining("the decimal mark here is");
        }
        assertThatThrownBy(() -> GERMAN.parseMassFraction("3.33 %")).hasMessageContaining("3,33 %");
        assertThatThrownBy(() -> GERMAN.parseDensity("0.92 g/mL")).hasMessageContaining("0,92 g/mL");
        assertThatThrownBy(() -> GERMAN.parseNumber("2.5")).hasMessageContaining("2,5");
    }

    private record Reader(String text, java.util.function.Function<String, ?> read) {}

    /** In every locale of the machine: 0.125 to 99.875 as printed there are read there as the same number. */
    @Test
    void what_is_printed_for_a_locale_is_read_in_it() {
        List<Locale> locales = Stream.of(Locale.getAvailableLocales())
                .filter(locale ->
                        "٫.,".indexOf(DecimalFormatSymbols.getInstance(locale).getDecimalSeparator()) >= 0)
                .toList();
        assertThat(locales).hasSizeGreaterThan(100);
        for (Locale locale : locales) {
            AmountFormat format = AmountFormat.forLocale(locale);
            LocalDigits digits = LocalDigits.of(locale);
            for (int eighths = 1; eighths < 800; eighths += 133) {
                String plain = Ratio.of(eighths, 8).toString();
                String here = digits.text(plain + " %");
                assertThat(format.parseMassFraction(here).percent())
                        .as(locale + " " + here)
                        .isEqualTo(Ratio.of(eighths, 8));
                assertThat(format.parseMass(digits.text(plain + " g"))).isEqualTo(Amount.mass(plain + " g"));
            }
        }
    }
}
