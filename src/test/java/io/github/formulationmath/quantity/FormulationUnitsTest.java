package io.github.formulationmath.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reference.ReferenceTable;
import java.util.Map;
import java.util.Objects;
import javax.measure.Prefix;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.function.LogConverter;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

class FormulationUnitsTest {

    private static final Map<String, Unit<?>> BY_NAME_IN_TABLE = Map.ofEntries(
            Map.entry("avoirdupois ounce", FormulationUnits.OUNCE),
            Map.entry("avoirdupois pound", FormulationUnits.POUND),
            Map.entry("grain", FormulationUnits.GRAIN),
            Map.entry("US fluid ounce", FormulationUnits.US_FLUID_OUNCE),
            Map.entry("imperial fluid ounce", FormulationUnits.IMPERIAL_FLUID_OUNCE),
            Map.entry("US cup", FormulationUnits.US_CUP),
            Map.entry("US tablespoon", FormulationUnits.US_TABLESPOON),
            Map.entry("US teaspoon", FormulationUnits.US_TEASPOON),
            Map.entry("household teaspoon", FormulationUnits.METRIC_TEASPOON),
            Map.entry("household tablespoon", FormulationUnits.METRIC_TABLESPOON),
            Map.entry("metric cup", FormulationUnits.METRIC_CUP));

    /** NIST Handbook 44, Appendix C; NIST SP 430: shared/reference/units.csv. */
    @Test
    void factors_are_those_of_the_published_table() {
        int seen = 0;
        for (ReferenceTable.Row row :
                ReferenceTable.read("shared/reference/units.csv").rows()) {
            Unit<?> unit = BY_NAME_IN_TABLE.get(row.text("unit"));
            if (unit != null) {
                Ratio factor = Ratio.of(row.decimal("value")).times(siUnit(row.text("si_unit")));
                assertThat(FormulationUnits.factorOf(unit)).as(row.text("unit")).isEqualTo(factor);
                seen++;
            }
        }
        assertThat(seen).isEqualTo(BY_NAME_IN_TABLE.size());
    }

    private static Ratio siUnit(String symbol) {
        return Objects.requireNonNull(
                Map.of("g", Ratio.ONE, "mg", Ratio.of(1, 1000), "mL", Ratio.ONE, "L", Ratio.of(1000))
                        .get(symbol));
    }

    /** Relations that define the customary units: NIST Handbook 44, Appendix C (from memory). */
    @Test
    void customary_units_hold_together() {
        Ratio inch = Ratio.parse("2.54");
        Ratio gallon = inch.times(inch).times(inch).times(231);
        assertThat(FormulationUnits.factorOf(FormulationUnits.US_FLUID_OUNCE)).isEqualTo(gallon.dividedBy(128));
        assertThat(FormulationUnits.factorOf(FormulationUnits.US_CUP)).isEqualTo(gallon.dividedBy(16));
        assertThat(FormulationUnits.factorOf(FormulationUnits.US_TABLESPOON)).isEqualTo(gallon.dividedBy(256));
        assertThat(FormulationUnits.factorOf(FormulationUnits.US_TEASPOON)).isEqualTo(gallon.dividedBy(768));
        assertThat(FormulationUnits.factorOf(FormulationUnits.IMPERIAL_FLUID_OUNCE))
                .isEqualTo(Ratio.parse("4546.09").dividedBy(160));
        Ratio pound = FormulationUnits.factorOf(FormulationUnits.POUND);
        assertThat(FormulationUnits.factorOf(FormulationUnits.OUNCE).times(16)).isEqualTo(pound);
        assertThat(FormulationUnits.factorOf(FormulationUnits.GRAIN).times(7000))
                .isEqualTo(pound);
        assertThat(FormulationUnits.factorOf(FormulationUnits.TROY_OUNCE))
                .isEqualTo(FormulationUnits.factorOf(FormulationUnits.GRAIN).times(480));
    }

    @ParameterizedTest
    @CsvSource({
        "kg, 1000",
        "g, 1",
        "mg, 0.001",
        "µg, 0.000001",
        "L, 1000",
        "mL, 1",
        "cm³, 1",
        "%, 0.01",
        "‰, 0.001",
        "ppm, 0.000001",
        "K, 1",
    })
    void metric_factors_are_powers_of_ten(String symbol, String factor) {
        UnitScale scale = KnownUnit.bySymbol(symbol);
        assertThat(FormulationUnits.factorOf(scale.unit())).isEqualTo(Ratio.parse(factor));
        assertThat(FormulationUnits.symbolOf(scale.unit())).isEqualTo(symbol);
    }

    @Test
    void units_of_other_makers_are_led_back_exactly() {
        assertThat(FormulationUnits.factorOf(KILO(Units.GRAM))).isEqualTo(Ratio.of(1000));
        assertThat(FormulationUnits.factorOf(MICRO(Units.LITRE))).isEqualTo(Ratio.of(1, 1000));
        assertThat(FormulationUnits.factorOf(Units.CUBIC_METRE)).isEqualTo(Ratio.of(1_000_000));
        assertThat(FormulationUnits.factorOf(Units.GRAM.divide(3))).isEqualTo(Ratio.of(1, 3));
        assertThat(FormulationUnits.factorOf(Units.GRAM.multiply(0.3))).isEqualTo(Ratio.of(3, 10));
        assertThat(FormulationUnits.factorOf(Units.METRE)).isEqualTo(Ratio.ONE);
        assertThat(FormulationUnits.factorOf(MILLI(Units.GRAM).divide(Units.LITRE)))
                .isEqualTo(Ratio.of(1, 1000));
        assertThat(FormulationUnits.symbolOf(KILO(Units.GRAM))).isEqualTo("kg");
        assertThat(FormulationUnits.symbolOf(Units.GRAM.divide(3))).isEqualTo("(× 1/3 g)");
        assertThat(FormulationUnits.symbolOf(Units.METRE)).isEqualTo("m");
        // Equal units are one, whoever made them; one that only measures the same is taken for the first.
        assertThat(FormulationUnits.symbolOf(CENTI(Units.METRE).pow(3))).isEqualTo("cm³");
        assertThat(FormulationUnits.symbolOf(Units.CUBIC_METRE.divide(1_000_000)))
                .isEqualTo("mL");
        assertThat(FormulationUnits.symbolOf(FormulationUnits.ONE)).isEmpty();
    }

    /** A prefix that somebody made. */
    private record PowerOfTen(int exponent) implements Prefix {

        @Override
        public Integer getValue() {
            return 10;
        }

        @Override
        public int getExponent() {
            return exponent;
        }

        @Override
        public String getName() {
            return "power";
        }

        @Override
        public String getSymbol() {
            return "p";
        }
    }

    @Test
    void a_prefix_has_at_most_a_thousand_noughts() {
        assertThat(FormulationUnits.factorOf(Units.METRE.prefix(new PowerOfTen(1000))))
                .isEqualTo(Ratio.parse("1e1000"));
        assertThat(FormulationUnits.factorOf(Units.METRE.prefix(new PowerOfTen(-1000))))
                .isEqualTo(Ratio.parse("1e-1000"));
        for (int exponent : new int[] {1001, -1001}) {
            assertThatThrownBy(() -> FormulationUnits.factorOf(Units.METRE.prefix(new PowerOfTen(exponent))))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("use a unit of FormulationUnits");
        }
    }

    @Test
    void a_refused_unit_is_called_by_its_name_or_else_by_what_it_is() {
        UnitConverter pi = MultiplyConverter.ofPiExponent(1);
        assertThatThrownBy(() -> FormulationUnits.factorOf(new TransformedUnit<>(null, "Ring", Units.METRE, pi)))
                .hasMessageStartingWith("unit Ring is not defined by a ratio of whole numbers");
        assertThatThrownBy(() -> FormulationUnits.factorOf(Units.METRE.transform(pi)))
                .hasMessageStartingWith("unit TransformedUnit is not defined by a ratio of whole numbers");
    }

    @Test
    void a_unit_that_no_factor_converts_is_refused() {
        assertThatThrownBy(() -> FormulationUnits.factorOf(FormulationUnits.CELSIUS))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("°C has a shifted zero");
        Unit<Mass> irrational = Units.GRAM.transform(MultiplyConverter.ofPiExponent(1));
        assertThatThrownBy(() -> FormulationUnits.factorOf(irrational))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("not defined by a ratio of whole numbers");
        assertThatThrownBy(() -> FormulationUnits.factorOf(Units.GRAM.transform(new LogConverter(10))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FormulationUnits.factorOf(Units.CELSIUS.multiply(Units.GRAM)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("cannot be led back");
        assertThatThrownBy(() -> FormulationUnits.factorOf(null)).hasMessage("unit");
        assertThatThrownBy(() -> FormulationUnits.symbolOf(null)).hasMessage("unit");
    }
}
