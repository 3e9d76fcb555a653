package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.support.CpuTime;
import java.time.Duration;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LocalDigitsTest {

    private static final LocalDigits GERMAN = LocalDigits.of(Locale.GERMAN);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12.5 g | 12,5 g",
                "≈ 0.666667 % | ≈ 0,666667 %",
                "−0.5 g | −0,5 g",
                "+0.5 g | +0,5 g",
                "± 2.5 % | ± 2,5 %",
                "2/3 g ≈ 0.666667 g | 2/3 g ≈ 0,666667 g",
                "[0.99, 1.01] % | [0,99, 1,01] %",
                "1.008 % | 1,008 %",
                "0.5 US fl oz | 0,5 US fl oz",
                "189.5 mg KOH/g | 189,5 mg KOH/g",
                "86.5 g I2/100 g | 86,5 g I2/100 g",
                "0.998 g/mL | 0,998 g/mL",
                "12.50 EUR | 12,50 EUR",
                "4.2 – 4.8 | 4,2 – 4,8",
                "2 lb 3.5 oz | 2 lb 3,5 oz",
                "2.5 lb | 2,5 lb",
                "4.2 J/(kg·K) | 4,2 J/(kg·K)",
                "0.08 g⁻¹ | 0,08 g⁻¹",
                "7 | 7"
            })
    void a_number_with_its_unit_has_the_comma(String plain, String german) {
        assertThat(GERMAN.text(plain)).isEqualTo(german);
        assertThat(LocalDigits.of(Locale.ENGLISH).text(plain)).isEqualTo(plain);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "Gel 2.5", "v1.2", "1.2.3", "2026-11-25T12:00:00.5Z", "2.5 g of Aqua", "a", "CI 77891.5x"})
    void anything_else_stays(String text) {
        assertThat(GERMAN.text(text)).isEqualTo(text);
    }

    @Test
    void digits_of_another_script_are_those_of_the_locale() {
        assertThat(LocalDigits.of(Locale.forLanguageTag("ar-EG-u-nu-arab")).text("12.5 g"))
                .isEqualTo("١٢٫٥ g");
        assertThat(LocalDigits.of(Locale.forLanguageTag("ar-EG-u-nu-arab")).text("0.9 g"))
                .isEqualTo("٠٫٩ g");
        assertThat(LocalDigits.of(Locale.forLanguageTag("th-TH-u-nu-thai")).text("12.5 g"))
                .as("with the decimal point")
                .isEqualTo("๑๒.๕ g");
    }

    @Test
    void they_show_themselves_by_one_and_a_half() {
        assertThat(GERMAN).hasToString("1,5");
        assertThat(LocalDigits.of(Locale.ENGLISH)).hasToString("1.5");
    }

    @Test
    void a_long_text_does_not_hang() {
        String hostile = "1.5 g, ".repeat(20_000) + "x!";
        CpuTime.assertWithin(
                Duration.ofSeconds(5), () -> assertThat(GERMAN.text(hostile)).isEqualTo(hostile));
    }
}
