package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.MetricPrefix;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.function.Calculus;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * No setting of the JVM moves a result: neither the default locale, nor the arithmetic precision that the reference
 * implementation of JSR 385 keeps in a public field.
 */
@Tag("locale")
@Isolated
class SettingsOfTheJvmTest {

    private static final String[] EXPECTED_END = {
        "12.3456789 g",
        "12.3457 g",
        "1/30 g",
        "0.123456789",
        "1/7000000",
        "30.86419725 g",
        "0.5 %",
        // 29.5735295625 times 0.9167
        "27.11005454994375 g",
        "1234567,5 g"
    };

    private static List<String> results() {
        List<String> results = new ArrayList<>();
        for (UnitScale scale : List.of(KnownUnit.values())) {
            ForeignUnit again = ForeignUnit.of(scale.unit());
            results.add(scale.symbol() + " " + again.factor() + " " + again.offset());
        }
        results.add(Amount.mass("12.5 g").to(FormulationUnits.OUNCE).toString());
        results.add(Amount.temperature("20.123456 °C")
                .to(FormulationUnits.FAHRENHEIT)
                .toString());
        results.add(Amount.from(Quantities.getQuantity(12.3456789, Units.GRAM)).toString());
        results.add(Amount.mass("12.3456 g")
                .add(Quantities.getQuantity(0.0001, Units.GRAM))
                .toString());
        results.add(Amount.mass("1 g").divide(3).multiply(0.1).toString());
        results.add(FormulationUnits.factorOf(Units.GRAM.multiply(0.123456789)).toString());
        results.add(FormulationUnits.factorOf(MetricPrefix.MICRO(Units.GRAM).divide(7))
                .toString());
        results.add(Amount.of(25, FormulationUnits.PERCENT)
                .multiply(Amount.mass("123.456789 g"))
                .asType(Mass.class)
                .to(FormulationUnits.GRAM)
                .toString());
        results.add(MassFraction.parse("0.50 % w/w").toString());
        results.add(Density.parse("0.9167 g/mL at 20 °C")
                .massOf(Amount.volume("1 US fl oz"))
                .toString());
        results.add(AmountFormat.forLocale(Locale.GERMANY).format(Amount.mass("1234567.5 g")));
        return results;
    }

    @Test
    void results_are_the_same_under_the_locale_of_this_run() {
        assertThat(results()).endsWith(EXPECTED_END);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de", "fr", "ar-EG", "hi-IN-u-nu-deva", "tr", "th-TH-u-nu-thai"})
    void the_default_locale_moves_nothing(String tag) {
        List<String> before = results();
        Locale locale = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(results()).isEqualTo(before);
        } finally {
            Locale.setDefault(locale);
        }
    }

    @Test
    void the_precision_of_the_reference_implementation_moves_nothing() {
        List<String> before = results();
        MathContext context = Calculus.MATH_CONTEXT;
        try {
            Calculus.MATH_CONTEXT = new MathContext(3);
            assertThat(results()).isEqualTo(before);
            assertThat(Amount.of("0.123456789", FormulationUnits.OUNCE).in(FormulationUnits.GRAM))
                    .isEqualTo(Ratio.parse("0.123456789").times(Ratio.parse("28.349523125")));
        } finally {
            Calculus.MATH_CONTEXT = context;
        }
    }
}
