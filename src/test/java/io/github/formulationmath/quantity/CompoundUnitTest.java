package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.unit.BaseUnit;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

/** Products, quotients and powers of units are printed as such and read again as the same unit. */
class CompoundUnitTest {

    private static final List<Unit<?>> ATOMS = List.of(
            FormulationUnits.GRAM,
            FormulationUnits.KILOGRAM,
            FormulationUnits.MILLIGRAM,
            FormulationUnits.OUNCE,
            FormulationUnits.POUND,
            FormulationUnits.TROY_OUNCE,
            FormulationUnits.GRAIN,
            FormulationUnits.MILLILITRE,
            FormulationUnits.LITRE,
            FormulationUnits.US_FLUID_OUNCE,
            FormulationUnits.IMPERIAL_FLUID_OUNCE,
            FormulationUnits.METRIC_TEASPOON,
            FormulationUnits.PERCENT,
            FormulationUnits.KELVIN,
            Units.METRE,
            Units.SECOND,
            Units.MINUTE,
            Units.MOLE,
            Units.JOULE,
            Units.PASCAL,
            Units.NEWTON,
            Units.WATT,
            MetricPrefix.KILO(Units.JOULE),
            MetricPrefix.MILLI(Units.MOLE),
            MetricPrefix.CENTI(Units.METRE));

    private static final int CASES = 3_000 * Integer.getInteger("formulationmath.cases", 1);

    @Test
    void what_is_printed_is_read_again_as_the_same_amount() {
        Random random = new Random(16_385);
        for (int i = 0; i < CASES; i++) {
            Unit<?> unit = ATOMS.get(random.nextInt(ATOMS.size())).pow(power(random));
            for (int factor = random.nextInt(4); factor > 0; factor--) {
                unit = unit.multiply(ATOMS.get(random.nextInt(ATOMS.size())).pow(power(random)));
            }
            readsBack(Amount.of(Ratio.of(random.nextInt(2_000) - 1_000, 1 + random.nextInt(40)), unit));
        }
    }

    private static int power(Random random) {
        int power = random.nextInt(6) - 3;
        return power < 0 ? power : power + 1;
    }

    private static void readsBack(Amount<?> amount) {
        if (amount.symbol().isEmpty()) {
            return;
        }
        String text = amount.toString();
        assertThat(AmountFormat.standard().parse(text)).as(text).isEqualTo(amount);
        AmountFormat german = AmountFormat.forLocale(Locale.GERMANY);
        assertThat(german.parse(german.format(amount))).as(text).isEqualTo(amount);
        String unbroken = text.replace(' ', '\u00A0');
        assertThat(AmountFormat.standard().parse(unbroken)).as(unbroken).isEqualTo(amount);
    }

    @ParameterizedTest
    @CsvSource({
        "12.5 g, 2 mL, 6.25 g/mL, 25 g·mL",
        "5 g, 5 g, , 25 g²",
        "7 oz, 2 lb, , 14 lb·oz",
        "3 kg, 4 L, 0.75 kg/L, 12 kg·L",
    })
    void products_and_quotients_of_the_bench(String one, String other, String quotient, String product) {
        Amount<?> a = AmountFormat.standard().parse(one);
        Amount<?> b = AmountFormat.standard().parse(other);
        if (quotient != null) {
            assertThat(a.divide(b)).hasToString(quotient);
        }
        String text = a.multiply(b).toString();
        assertThat(text).isIn(product, product.replace("lb·oz", "oz·lb"));
        readsBack(a.multiply(b));
        readsBack(a.divide(b));
        readsBack(b.inverse());
    }

    /** A unit that nobody named is told by a power of ten before a symbol of the SI, or by how many of those it is. */
    @Test
    void a_unit_without_a_symbol_is_told_by_one_that_has_one() {
        Unit<?> kilojoule = Units.JOULE.multiply(1000);
        assertThat(FormulationUnits.symbolOf(kilojoule)).isEqualTo("kJ");
        assertThat(FormulationUnits.symbolOf(kilojoule.divide(Units.KELVIN))).isEqualTo("kJ/K");
        assertThat(FormulationUnits.symbolOf(Units.METRE.divide(100))).isEqualTo("cm");
        assertThat(FormulationUnits.symbolOf(Units.METRE.multiply(3))).isEqualTo("(× 3 m)");
        assertThat(FormulationUnits.symbolOf(Units.METRE.divide(2))).isEqualTo("(× 1/2 m)");
        assertThat(FormulationUnits.symbolOf(Units.GRAM.multiply(3))).isEqualTo("(× 3 g)");
        readsBack(Amount.of(Ratio.of(5), kilojoule));
        readsBack(Amount.of(Ratio.of(5), Units.METRE.multiply(3)));
    }

    @Test
    void a_unit_with_a_symbol_of_its_own_keeps_it_if_no_other_is_read_by_it() {
        assertThat(FormulationUnits.symbolOf(named("fur", "Furlong", "201.168")))
                .isEqualTo("fur");
        assertThat(FormulationUnits.symbolOf(named(null, "Ell", "0.6858"))).isEqualTo("Ell");
        assertThat(FormulationUnits.symbolOf(named(" ", "Ell", "0.6858"))).isEqualTo("Ell");
        // What is read under a symbol of the bench or of the SI must not be another unit.
        assertThat(FormulationUnits.symbolOf(named("oz", "Span", "0.2286"))).isEqualTo("(× 1143/5000 m)");
        assertThat(FormulationUnits.symbolOf(named("s", "Span", "0.2286"))).isEqualTo("(× 1143/5000 m)");
        assertThat(FormulationUnits.symbolOf(named("kilometre", "", "1000"))).isEqualTo("km");
    }

    private static Unit<Length> named(@Nullable String symbol, String name, String metres) {
        Ratio factor = Ratio.parse(metres);
        return new TransformedUnit<>(
                symbol, name, Units.METRE, MultiplyConverter.ofRational(factor.numerator(), factor.denominator()));
    }

    @Test
    void a_product_has_at_most_twelve_factors() {
        String twelve = "5 " + "g·".repeat(11) + "g";
        assertThat(AmountFormat.standard().parse(twelve)).hasToString("5 g¹²");
        assertThatThrownBy(() -> AmountFormat.standard().parse(twelve + "·g"))
                .isInstanceOf(NumberTextException.class)
                .hasMessageContaining("is no product of units that is read here");
    }

    @Test
    void one_over_a_mass_has_a_power_below_nought() {
        assertThat(Amount.mass("12.5 g").inverse()).hasToString("0.08 g⁻¹");
    }

    @ParameterizedTest
    @CsvSource({
        "4186 J/(kg·K), 4186 J/(kg*K)",
        "4186 J/(kg·K), 4.186 kJ/(kg·K)",
        "5 g², 5 g^2",
        "5 g², 5 g·g",
        "5 g², 5 g2",
        "2 m³, 2 m3",
        "2 g⁻¹, 2 g^-1",
        "2 mol/m³, 2 mmol/L",
        "3 kg/m³, 3 g/L",
        "1 cm³, 1 mL",
        "9.81 m/s², 9.81 N/kg",
    })
    void two_spellings_are_one_amount(String one, String other) {
        Amount<?> a = AmountFormat.standard().parse(one);
        Amount<?> b = AmountFormat.standard().parse(other);
        assertThat(a.divide(b).canonical()).isEqualTo(Ratio.ONE);
    }

    /** What could mean two things, a point on a scale, and what is no unit. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "5 J/kg·K",
                "5 J/kg/K",
                "5 J/(kg·°C)",
                "5 g/(mL",
                "5 g/()",
                "5 g·",
                "5 g··g",
                "5 g^0",
                "5 g^99999",
                "5 (× 2 g",
                "5 (× 1/0 g)",
                "5 g/cup",
                "5 °C²",
                "5 g·spoon"
            })
    void what_is_no_product_is_refused_with_a_way_to_write_it(String text) {
        assertThatThrownBy(() -> AmountFormat.standard().parse(text)).isInstanceOf(NumberTextException.class);
    }

    @Test
    void a_refused_product_says_how_products_are_written() {
        assertThatThrownBy(() -> AmountFormat.standard().parse("5 J/kg·K"))
                .hasMessageContaining("J/(kg·K)")
                .satisfies(e -> assertThat(Wording.german().text((NumberTextException) e))
                        .contains("J/(kg·K)", "kein Produkt"));
        assertThatThrownBy(() -> Amount.mass("5 g/mL")).hasMessageContaining("is not a unit of mass");
    }

    /** A unit that another maker calls g, and that is none, is not printed as one. */
    @Test
    void a_symbol_that_would_be_read_as_another_unit_is_not_printed() {
        List<Unit<?>> strange = new ArrayList<>();
        strange.add(new BaseUnit<>("g", "gee", tech.units.indriya.unit.UnitDimension.LENGTH));
        for (Unit<?> unit : strange) {
            String text = Amount.of(Ratio.of(5), unit).toString();
            assertThat(text).isNotEqualTo("5 g");
        }
        readsBack(Amount.of(Ratio.of(5), Units.JOULE.multiply(Units.JOULE).divide(3)));
    }
}
