package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.support.Workings;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** In which units a working is told: those of the style, of the display, of what was given; and how units are written. */
class UnitChoiceTest {

    private static final Ratio GRAMS_IN_A_KILOGRAM = Ratio.of(1000);
    private static final Symbol ALCOHOL = Symbol.of("V", "volume-to-fill", Kind.VOLUME);
    private static final Phrase QUESTION = Phrase.of("question.line-mass", "Wax");

    /** A quantity as somebody wrote it. */
    private record Written(String number, String symbol, Ratio unitSize) implements InUnit {

        static Written grams(String number) {
            return new Written(number, "g", Ratio.ONE);
        }

        static Written kilograms(String number) {
            return new Written(number, "kg", GRAMS_IN_A_KILOGRAM);
        }

        static Written litres(String number) {
            return new Written(number, "L", Ratio.of(1000));
        }

        @Override
        public Ratio canonical() {
            return Ratio.parse(number).times(unitSize);
        }
    }

    private static String text(Working working, Style style) {
        return working.document(style).print(Format.TEXT);
    }

    @Test
    void a_unit_chosen_for_one_kind_leaves_the_others_as_they_are() {
        UnitChoice canonical = UnitChoice.canonical();
        UnitChoice ounces = canonical.with(Kind.MASS, "oz", Ratio.parse("28.349523125"));
        assertThat(ounces.of(Kind.MASS)).isEqualTo(new Measure("oz", Ratio.parse("28.349523125")));
        assertThat(ounces.of(Kind.VOLUME)).isEqualTo(new Measure("mL", Ratio.ONE));
        assertThat(canonical.of(Kind.MASS)).isEqualTo(new Measure("g", Ratio.ONE));
    }

    /** 1 kg² is 10^6 g²; 1 EUR/kg is 1/1000 of one per gram. */
    @Test
    void squares_and_prices_follow_the_unit_of_mass_unless_chosen_themselves() {
        UnitChoice kilograms = UnitChoice.canonical().with(Kind.MASS, "kg", GRAMS_IN_A_KILOGRAM);
        assertThat(UnitChoice.canonical().of(Kind.MASS_SQUARED)).isEqualTo(new Measure("g²", Ratio.ONE));
        assertThat(kilograms.of(Kind.MASS_SQUARED)).isEqualTo(new Measure("kg²", Ratio.of(1_000_000)));
        assertThat(kilograms.of(Kind.MONEY_PER_MASS)).isEqualTo(new Measure("/kg", Ratio.of(1, 1000)));
        assertThat(kilograms.with(Kind.MASS_SQUARED, "t²", Ratio.parse("1e12")).of(Kind.MASS_SQUARED))
                .isEqualTo(new Measure("t²", Ratio.parse("1e12")));
    }

    /** 2 kg · 3 L = 6 kg·L; 6 kg² / 3 L = 2 kg²/L; 6 / (2 kg · 3 L) = 1 kg⁻¹·L⁻¹. */
    @Test
    void a_unit_without_a_name_is_made_up_of_those_chosen() {
        UnitChoice large =
                UnitChoice.canonical().with(Kind.MASS, "kg", Ratio.of(1000)).with(Kind.VOLUME, "L", Ratio.of(500));
        assertThat(Measure.composed(new Dimension(1, 1, 0, 0, 0), large))
                .isEqualTo(new Measure("kg·L", Ratio.of(500_000)));
        assertThat(Measure.composed(new Dimension(2, -1, 0, 0, 0), large))
                .isEqualTo(new Measure("kg²/L", Ratio.of(2000)));
        assertThat(Measure.composed(new Dimension(-1, -1, 0, 0, 0), large))
                .isEqualTo(new Measure("kg⁻¹·L⁻¹", Ratio.of(1, 500_000)));
        assertThat(Measure.composed(new Dimension(0, 0, 1, 0, -1), large)).isEqualTo(new Measure("mol/°C", Ratio.ONE));
    }

    @Test
    void one_choice_fills_the_gaps_of_another() {
        UnitChoice kilograms = UnitChoice.canonical().with(Kind.MASS, "kg", GRAMS_IN_A_KILOGRAM);
        UnitChoice others = UnitChoice.canonical()
                .with(Kind.MASS, "oz", Ratio.parse("28.349523125"))
                .with(Kind.VOLUME, "L", Ratio.of(1000));
        UnitChoice both = kilograms.orElse(others);
        assertThat(both.of(Kind.MASS).text()).isEqualTo("kg");
        assertThat(both.of(Kind.VOLUME).text()).isEqualTo("L");
        assertThat(kilograms.orElse(UnitChoice.canonical()).of(Kind.MASS).text())
                .isEqualTo("kg");
        assertThat(UnitChoice.canonical().orElse(others).of(Kind.MASS).text()).isEqualTo("oz");
    }

    @Test
    void the_unit_of_an_amount_counts_for_masses_and_volumes_that_have_none() {
        UnitChoice none = UnitChoice.canonical();
        Written kilogram = Written.kilograms("1");
        assertThat(none.orElse(Kind.MASS, kilogram).of(Kind.MASS)).isEqualTo(new Measure("kg", GRAMS_IN_A_KILOGRAM));
        assertThat(none.orElse(Kind.VOLUME, Written.litres("1")).of(Kind.VOLUME).text())
                .isEqualTo("L");
        assertThat(none.orElse(Kind.DENSITY, new Written("1", "kg/L", Ratio.ONE))
                        .of(Kind.DENSITY)
                        .text())
                .isEqualTo("g/mL");
        assertThat(none.orElse(Kind.MASS, kilogram)
                        .orElse(Kind.MASS, Written.grams("1"))
                        .of(Kind.MASS)
                        .text())
                .isEqualTo("kg");
    }

    @Test
    void a_unit_has_up_to_24_characters_and_may_hold_spaces_between() {
        String longest = "abcdefghijkl mnopqrstuvw";
        assertThat(UnitChoice.canonical()
                        .with(Kind.MASS, longest, Ratio.ONE)
                        .of(Kind.MASS)
                        .text())
                .isEqualTo(longest)
                .hasSize(24);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> UnitChoice.canonical().with(Kind.MASS, longest + "x", Ratio.ONE))
                .withMessage("unit is \"" + longest + "x\": it must be 1 to 24 characters long, without digits, control"
                        + " characters or spaces at its ends");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> UnitChoice.canonical().with(Kind.MASS, "oz", Ratio.of(-1)))
                .withMessage("size of the unit oz is -1: it must be above 0");
    }

    @Test
    void a_working_is_told_in_the_unit_of_what_was_given_first() {
        Working working = Working.of(QUESTION, r -> {
            Term jar = r.given(Workings.BATCH, Written.kilograms("1.5"), Source.user());
            Term more = r.given(Workings.LINE, Subject.none(), Written.grams("250"), Source.user());
            return r.named(Workings.READING, r.sum(jar, more));
        });
        assertThat(text(working, Style.steps())).contains("M = 1.5 kg", "m = 0.25 kg", "r = 1.75 kg");
        assertThat(text(working, Style.steps().in(Kind.MASS, Written.grams("1"))))
                .contains("M = 1500 g", "r = 1750 g");
    }

    @Test
    void the_step_of_the_display_decides_the_unit_of_the_masses() {
        Working working = Working.of(QUESTION, r -> {
            Term jar = r.given(Workings.BATCH, Written.kilograms("1.5"), Source.user());
            Term step = r.displayStep(Workings.STEP, Subject.none(), Written.grams("0.1"), Source.user());
            return r.named(Workings.READING, r.sum(jar, step));
        });
        assertThat(text(working, Style.steps())).contains("M = 1500 g", "d = 0.1 g", "r = 1500.1 g");
        assertThat(text(working.in(Kind.MASS, Written.kilograms("1")), Style.steps()))
                .contains("r = 1500.1 g");
    }

    @Test
    void a_working_is_told_in_the_unit_of_its_result_unless_a_display_has_another() {
        Working working = Working.of(QUESTION, r -> {
            Term volume = r.given(ALCOHOL, Subject.none(), Written.litres("2"), () -> Source.written("2 L"));
            Term jar = r.given(Workings.BATCH, Subject.none(), Ratio.of(2400), () -> Source.written("2.4 kg"));
            return r.named(Workings.DENSITY, r.quotient(jar, volume));
        });
        assertThat(text(working, Style.everything())).contains("M = 2400 g", "V = 2 L", "2.4 kg", "= 1.2 g/mL");
        assertThat(text(working.in(Kind.MASS, Written.kilograms("1")), Style.steps()))
                .contains("M = 2.4 kg", "V = 2 L");
    }

    /** 0.1 g are 800000/226796185 oz, which nobody looks for on a display. */
    @Test
    void the_step_of_a_rounding_is_told_in_grams_where_the_chosen_unit_makes_a_fraction_of_it() {
        Working working = Working.of(QUESTION, r -> {
            Term jar = r.given(Workings.BATCH, Ratio.parse("56.69904625"), Source.user());
            return r.named(Workings.READING, r.rounded(jar, Rounding.toMultipleOf(Ratio.parse("0.1"))));
        });
        assertThat(text(working, Style.steps().in(Kind.MASS, "oz", Ratio.parse("28.349523125"))))
                .contains("round(2 oz to a multiple of 0.1 g, ties to even)");
        assertThat(text(working, Style.steps().in(Kind.MASS, "kg", GRAMS_IN_A_KILOGRAM)))
                .contains("to a multiple of 0.0001 kg, ties to even)");
    }

    /** SI Brochure, 9th edition, 5.2: a solidus is not used twice, and several symbols below it stand in brackets. */
    @Test
    void a_product_of_units_is_written_with_one_solidus_and_brackets_below_it() {
        assertThat(InUnit.product(powers("g", 2, "mL", -1))).isEqualTo("g²/mL");
        assertThat(InUnit.product(powers("J", 1, "kg", -1, "K", -1))).isEqualTo("J/(kg·K)");
        assertThat(InUnit.product(powers("g", 1, "mol", 0, "mL", 1))).isEqualTo("g·mL");
        assertThat(InUnit.product(powers("mol", 0, "g", -1, "mL", -2))).isEqualTo("g⁻¹·mL⁻²");
        assertThat(InUnit.product(powers("g", 12, "mL", -10))).isEqualTo("g¹²/mL¹⁰");
        assertThat(InUnit.product(powers("g", 0))).isEmpty();
        assertThat(InUnit.product(Map.of())).isEmpty();
    }

    private static Map<String, Integer> powers(Object... unitsAndPowers) {
        Map<String, Integer> powers = new LinkedHashMap<>();
        for (int i = 0; i < unitsAndPowers.length; i += 2) {
            powers.put((String) unitsAndPowers[i], (Integer) unitsAndPowers[i + 1]);
        }
        return powers;
    }

    @ParameterizedTest
    @CsvSource({"⁰, 0", "¹, 1", "²³, 23", "⁴⁵⁶, 456", "⁻¹, -1", "⁻⁷⁸⁹, -789"})
    void a_superscript_says_a_power(String superscript, int power) {
        assertThat(InUnit.power(superscript)).isEqualTo(power);
        assertThat(Superscript.of(power)).isEqualTo(superscript);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "⁻", "x", "2", "-1", "²x", "x²", "1⁻", "²⁻", "⁻⁻¹"})
    void what_is_no_superscript_says_no_power(String text) {
        assertThatExceptionOfType(NumberFormatException.class).isThrownBy(() -> InUnit.power(text));
    }
}
