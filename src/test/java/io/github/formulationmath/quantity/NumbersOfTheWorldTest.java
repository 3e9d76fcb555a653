package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What the number formats of the JDK print for people is read where it can mean one thing: amounts, numbers, money, percentages. */
class NumbersOfTheWorldTest {

    private static final List<Locale> LOCALES = List.of(
                    "en-US",
                    "en-IN",
                    "de-DE",
                    "de-CH",
                    "fr-FR",
                    "fr-CH",
                    "es-ES",
                    "it-CH",
                    "pt-BR",
                    "nl-NL",
                    "sv-SE",
                    "fi-FI",
                    "pl-PL",
                    "ru-RU",
                    "tr-TR",
                    "ar-EG",
                    "fa-IR",
                    "hi-IN-u-nu-deva",
                    "bn-BD",
                    "th-TH-u-nu-thai",
                    "ja-JP",
                    "he-IL",
                    "ur-PK")
            .stream()
            .map(Locale::forLanguageTag)
            .toList();

    private static final int CASES = 20 * Integer.getInteger("formulationmath.cases", 1);

    @Test
    void numbers_and_money_are_read_as_amounts_are() {
        Random random = new Random(16);
        for (Locale locale : LOCALES) {
            NumberFormat printer = NumberFormat.getInstance(locale);
            printer.setMaximumFractionDigits(6);
            AmountFormat format = AmountFormat.forLocale(locale);
            for (int i = 0; i < CASES; i++) {
                // The last digit is not 0, so that there are decimals: one group alone could be the decimals of a
                // smaller number.
                BigDecimal value = BigDecimal.valueOf(random.nextInt(1_000_000_000) * 10L + 1, 1 + random.nextInt(6));
                String text = printer.format(value);
                assertThat(format.parseNumber(text)).as("%s %s", locale, text).isEqualTo(Ratio.of(value));
                assertThat(format.parseMoney(text + " EUR").number())
                        .as("%s %s", locale, text)
                        .isEqualTo(Ratio.of(value));
                assertThat(format.parseMass(text + "\u00A0g"))
                        .as("%s %s", locale, text)
                        .isEqualTo(Amount.grams(Ratio.of(value)));
            }
        }
    }

    @Test
    void percentages_are_read_with_the_sign_of_their_script_and_on_its_side() {
        Random random = new Random(17);
        for (Locale locale : LOCALES) {
            NumberFormat printer = NumberFormat.getPercentInstance(locale);
            printer.setMaximumFractionDigits(3);
            for (int i = 0; i < CASES; i++) {
                BigDecimal value = BigDecimal.valueOf(random.nextInt(100_000), 5);
                String text = printer.format(value);
                MassFraction read = AmountFormat.forLocale(locale).parseMassFraction(text);
                assertThat(read.fraction()).as("%s %s", locale, text).isEqualTo(Ratio.of(value));
                assertThat(MassFraction.parse(read.toString())).isEqualTo(read);
            }
        }
    }

    @Test
    void what_could_mean_two_things_is_still_refused() {
        for (String text : List.of("1,234", "12,5", "1,23,456.7,8", "1.234.5", "1'23")) {
            assertThatThrownBy(() -> AmountFormat.forLocale(Locale.US).parseNumber(text))
                    .as(text)
                    .isInstanceOf(NumberTextException.class);
        }
        for (String text : List.of("%", "%%5", "%5 %", "5 % 3", "% 5 g", "5 ٪٪")) {
            assertThatThrownBy(() -> MassFraction.parse(text)).as(text).isInstanceOf(NumberTextException.class);
        }
    }

    @Test
    void hyphens_of_typesetters_and_plurals_of_spoons_are_read() {
        Amount<?> oneAndAHalf = Amount.mass("1.5 oz");
        for (String text : List.of("1\u20111/2 oz", "1\u20101/2 oz", "1-½ oz", "1½ oz", "1-1/2 oz")) {
            assertThat(Amount.mass(text)).as(text).isEqualTo(oneAndAHalf);
        }
        assertThat(Amount.volume("2 US cups")).isEqualTo(Amount.volume("2 US cup"));
        assertThat(Amount.volume("1½ metric tbsps")).isEqualTo(Amount.volume("1.5 metric tbsp"));
        assertThat(Amount.mass("2 troy ounces")).isEqualTo(Amount.mass("2 oz t"));
    }
}
