package io.github.formulationmath.weighing;

import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reference.ReferenceTable;
import io.github.formulationmath.reference.ReferenceTable.Row;
import io.github.formulationmath.simulation.CoverageFactor;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.unit.Units;

/** The published rules of weighing against their published numbers; the sources are named in the tables. */
class PublishedRulesTest {

    static List<Row> rows(String table) {
        return ReferenceTable.read("shared/reference/" + table + ".csv").rows();
    }

    static Stream<Row> permissibleErrors() {
        return rows("r76-maximum-permissible-errors").stream();
    }

    /** OIML R 76-1:2006, table 6: both ends of every band, and just outside. */
    @ParameterizedTest
    @MethodSource("permissibleErrors")
    void permissible_error_by_band(Row row) {
        AccuracyClass accuracyClass = AccuracyClass.valueOf(row.text("class"));
        Amount<Mass> e = Amount.mass("0.5 g");
        Amount<Mass> expected = e.times(Ratio.of(row.decimal("error_e")));
        Ratio from = Ratio.of(row.decimal("load_above_e"));
        // Between 0 and 1 e a load is refused, as exchanged with the interval; the first band is tried from 1 e.
        Ratio justAbove = from.isZero() ? Ratio.ONE : from.plus(Ratio.parse("0.001"));
        assertThat(accuracyClass.permissibleError(e.times(justAbove), e)).isEqualTo(expected);
        assertThat(accuracyClass.permissibleErrorInService(e.times(justAbove), e))
                .isEqualTo(expected.times(2));
        if (row.text("includes_lower_end").equals("yes")) {
            assertThat(accuracyClass.permissibleError(e.times(from), e)).isEqualTo(expected);
        } else {
            assertThat(accuracyClass.permissibleError(e.times(from), e)).isNotEqualTo(expected);
        }
        if (!row.text("load_up_to_e").isEmpty()) {
            Ratio upTo = Ratio.of(row.decimal("load_up_to_e"));
            assertThat(accuracyClass.permissibleError(e.times(upTo), e)).isEqualTo(expected);
        }
    }

    static Stream<Row> verificationCases() {
        return rows("r76-cases").stream();
    }

    /** Cases worked out from the tables of OIML R 76-1:2006. */
    @ParameterizedTest
    @MethodSource("verificationCases")
    void verification_case(Row row) {
        AccuracyClass accuracyClass = AccuracyClass.valueOf(row.text("class"));
        Amount<Mass> e = grams(row.decimal("e_g"));
        Amount<Mass> answer = row.text("question").equals("error")
                ? accuracyClass.permissibleError(grams(row.decimal("load_g")), e)
                : accuracyClass.minimumCapacity(e);
        assertThat(answer.in(FormulationUnits.GRAM)).isEqualTo(Ratio.of(row.decimal("expected_g")));
    }

    static Stream<Row> classLimits() {
        return rows("r76-classes").stream();
    }

    /** OIML R 76-1:2006, table 3. */
    @ParameterizedTest
    @MethodSource("classLimits")
    void class_limit(Row row) {
        AccuracyClass accuracyClass = AccuracyClass.valueOf(row.text("class"));
        Amount<Mass> e = grams(row.decimal("e_from_g"));
        Ratio least = Ratio.of(row.decimal("n_min"));
        assertThat(accuracyClass.minimumCapacity(e)).isEqualTo(e.times(Ratio.of(row.decimal("minimum_capacity_e"))));
        assertThat(accuracyClass.allows(e.times(least), e)).isTrue();
        assertThat(accuracyClass.allows(e.times(least.minus(Ratio.ONE)), e)).isFalse();
        if (!row.text("n_max").isEmpty()) {
            Ratio most = Ratio.of(row.decimal("n_max"));
            assertThat(accuracyClass.allows(e.times(most), e)).isTrue();
            assertThat(accuracyClass.allows(e.times(most.plus(Ratio.ONE)), e)).isFalse();
        }
        if (!row.text("e_to_g").isEmpty()) {
            Amount<Mass> coarsest = grams(row.decimal("e_to_g"));
            assertThat(accuracyClass.allows(coarsest.times(least), coarsest)).isTrue();
            assertThat(accuracyClass.minimumCapacity(coarsest))
                    .isEqualTo(coarsest.times(Ratio.of(row.decimal("minimum_capacity_e"))));
        }
    }

    @Test
    void verification_refusals() {
        Amount<Mass> e = Amount.mass("1 g");
        assertThatThrownBy(() -> AccuracyClass.III.permissibleError(Amount.mass("10001 g"), e))
                .hasMessageContaining("ends at 10000 e");
        assertThatThrownBy(() -> AccuracyClass.III.permissibleError(Amount.mass("-1 g"), e))
                .hasMessageContaining("load");
        assertThatThrownBy(() -> AccuracyClass.III.minimumCapacity(Amount.mass("0 g")))
                .hasMessageContaining("interval");
        assertThat(AccuracyClass.III.allows(Amount.mass("100 g"), Amount.mass("0.01 g")))
                .isFalse();
        assertThat(AccuracyClass.III.errors(Amount.mass("501 g"), e, true).linearity())
                .isEqualTo(Amount.mass("2 g"));
    }

    static Stream<Row> minimumWeights() {
        return rows("minimum-weight").stream();
    }

    @ParameterizedTest
    @MethodSource("minimumWeights")
    void minimum_weight(Row row) {
        BigDecimal step = row.text("d_g").isEmpty() ? new BigDecimal("0.00001") : row.decimal("d_g");
        Balance balance = Balance.of(grams(step), Amount.mass("200 g"))
                .withErrors(ErrorModel.readabilityOnly().withRepeatability(grams(row.decimal("s_g"))));
        Amount<Mass> least = MinimumWeight.byRepeatability(
                balance, Ratio.of(row.decimal("tolerance")), CoverageFactor.of(Ratio.of(row.decimal("k"))));
        assertThat(least.canonical()).isEqualTo(Ratio.of(row.decimal("expected_g")));
        if (row.text("tolerance").equals("0.001")) {
            assertThat(MinimumWeight.pharmacopoeial(balance)).isEqualTo(least);
        }
        assertSelfChecking(least);
    }

    static Stream<Row> weighableQuantities() {
        return rows("minimum-weighable-quantity").stream();
    }

    @ParameterizedTest
    @MethodSource("weighableQuantities")
    void minimum_weighable_quantity(Row row) {
        Amount<Mass> least = MinimumWeight.bySensitivity(
                Amount.of(Ratio.of(row.decimal("sensitivity_mg")), FormulationUnits.MILLIGRAM),
                Ratio.of(row.decimal("error_percent")).dividedBy(100));
        BigDecimal expected = row.decimal("expected_mg");
        assertThat(least.in(FormulationUnits.MILLIGRAM).rounded(Rounding.toDecimalPlaces(expected.scale())))
                .isEqualTo(Ratio.of(expected));
        assertSelfChecking(least);
    }

    /** α · SF / (τ − β · SF), EURAMET cg-18 from memory; by hand: 0.01 · 2 / (0.01 − 0.0005 · 2) = 20/9 g. */
    @Test
    void minimum_weight_from_an_uncertainty_function() {
        Ratio beta = Ratio.parse("0.0005");
        Ratio tolerance = Ratio.parse("0.01");
        Amount<Mass> least = MinimumWeight.byUncertainty(Amount.mass("0.01 g"), beta, tolerance, Ratio.of(2));
        assertThat(least.canonical()).isEqualTo(Ratio.of(20, 9));
        assertSelfChecking(least);
        assertThatThrownBy(() ->
                        MinimumWeight.byUncertainty(Amount.mass("0.01 g"), beta, Ratio.parse("0.001"), Ratio.of(2)))
                .hasMessageContaining("no mass is large enough");
        assertThatThrownBy(() -> MinimumWeight.byUncertainty(Amount.mass("0 g"), beta, tolerance, Ratio.ONE))
                .hasMessageContaining("constant");
        assertThatThrownBy(() -> MinimumWeight.byUncertainty(Amount.mass("1 g"), beta, tolerance, Ratio.ZERO))
                .hasMessageContaining("safetyFactor");
        assertThatThrownBy(() -> MinimumWeight.bySensitivity(Amount.mass("6 mg"), Ratio.of(5)))
                .hasMessageContaining("permittedError");
        assertThatThrownBy(() -> MinimumWeight.bySensitivity(Amount.mass("0 mg"), Ratio.ONE))
                .hasMessageContaining("sensitivityRequirement");
    }

    /** The floor of the pharmacopoeias is the uncertainty of a net weighing of readability alone, d/√6, rounded. */
    @Test
    void the_floor_is_the_uncertainty_of_two_readings() {
        AdditionError error = AdditionError.of(
                Addition.of("x", Amount.mass("10 g"), Amount.mass("10 g"), Balance.of("1 g", "100 g")));
        assertThat(error.variance().origin().number()).isEqualTo(Ratio.of(1, 6));
        assertThat(error.uncertainty().canonical().rounded(Rounding.toDecimalPlaces(2)))
                .isEqualTo(Ratio.parse("0.41"));
    }

    static Stream<Row> buoyancies() {
        return rows("buoyancy").stream();
    }

    @ParameterizedTest
    @MethodSource("buoyancies")
    void buoyancy(Row row) {
        AirBuoyancy factor = AirBuoyancy.of(Density.ofGramsPerMillilitre(
                Ratio.of(row.decimal("density_kg_m3")).dividedBy(1000)));
        BigDecimal expected = row.decimal("factor");
        assertThat(factor.factor().rounded(Rounding.toDecimalPlaces(expected.scale())))
                .isEqualTo(Ratio.of(expected));
        assertSelfChecking(factor);
    }

    /** The printed number of a balance manual: 2 g of aluminium. */
    @Test
    void buoyancy_of_aluminium_as_printed() {
        for (Row row : rows("buoyancy-printed")) {
            AirBuoyancy factor = AirBuoyancy.of(Density.ofGramsPerMillilitre(Ratio.of(row.decimal("density_g_cm3"))));
            assertThat(factor.factor()
                            .times(Ratio.of(row.decimal("reading_mg")))
                            .rounded(Rounding.toDecimalPlaces(3)))
                    .isEqualTo(Ratio.of(row.decimal("expected_mg")));
        }
    }

    @Test
    void buoyancy_of_a_range() {
        Density light = Density.ofGramsPerMillilitre("0.8");
        Density heavy = Density.ofGramsPerMillilitre("10");
        Density thin = Density.ofGramsPerMillilitre("0.0011");
        Density thick = Density.ofGramsPerMillilitre("0.0013");
        Bounds bounds = AirBuoyancy.corrections(light, heavy, thin, thick);
        assertThat(bounds.upper())
                .contains(new AirBuoyancy(light, thick, AirBuoyancy.CONVENTIONAL_WEIGHTS).correction());
        // Denser than the weights, thicker air makes the correction more negative.
        assertThat(bounds.lower())
                .contains(new AirBuoyancy(heavy, thick, AirBuoyancy.CONVENTIONAL_WEIGHTS).correction());
        assertThatThrownBy(() -> AirBuoyancy.of(thin)).hasMessageContaining("matter");
        assertThatThrownBy(() -> new AirBuoyancy(heavy, light, light)).hasMessageContaining("weights");
    }

    /** OIML D 28:2004: 1.2 kg/m³ and 8000 kg/m³ are conventions; other densities are the user's. */
    @Test
    void conventional_densities_name_their_source() {
        Density matter = Density.ofGramsPerMillilitre("0.9");
        AirBuoyancy usual = AirBuoyancy.of(matter);
        AirBuoyancy onHigh =
                new AirBuoyancy(matter, Density.ofGramsPerMillilitre("0.0011"), Density.ofGramsPerMillilitre("8.4"));
        assertThat(usual.working().document(Style.everything()).print(Format.TEXT))
                .contains("OIML D 28:2004");
        assertThat(onHigh.working().document(Style.everything()).print(Format.TEXT))
                .doesNotContain("OIML D 28:2004");
        assertThat(onHigh.toString()).contains("0.9 g/mL").contains("0.0011 g/mL");
    }

    static Stream<Row> waters() {
        return rows("water-density").stream();
    }

    @ParameterizedTest
    @MethodSource("waters")
    void water_density(Row row) {
        Amount<Temperature> temperature = Amount.temperature(row.text("t_c") + " °C");
        if (row.text("formula_kg_m3").isEmpty()) {
            assertThatThrownBy(() -> WaterDensity.at(temperature)).hasMessageContaining("0 °C to 40 °C");
            return;
        }
        WaterDensity water = WaterDensity.at(temperature);
        Ratio kilograms = water.density().gramsPerMillilitre().times(1000);
        assertThat(kilograms.rounded(Rounding.toDecimalPlaces(4))).isEqualTo(Ratio.of(row.decimal("formula_kg_m3")));
        assertThat(kilograms.minus(Ratio.of(row.decimal("table_kg_m3"))).abs())
                .isLessThanOrEqualTo(Ratio.of(row.decimal("table_tolerance")));
        assertThat(water.density().temperature()).contains(temperature);
        assertSelfChecking(water);
    }

    @Test
    void water_is_named_by_its_temperature() {
        assertThat(WaterDensity.at(Amount.temperature("20 °C"))).hasToString("water at 20 °C");
    }

    static Stream<Row> airs() {
        return rows("air-density").stream();
    }

    @ParameterizedTest
    @MethodSource("airs")
    void air_density(Row row) {
        Amount<Temperature> temperature = Amount.temperature(row.text("t_c") + " °C");
        Amount<Pressure> pressure = hectopascals(Ratio.of(row.decimal("p_hpa")));
        Ratio humidity = Ratio.of(row.decimal("humidity_percent")).dividedBy(100);
        double expected = row.decimal("density_kg_m3").doubleValue();
        double half = 0.5000001 * Math.pow(10, -row.decimal("density_kg_m3").scale());
        double cipm = kilograms(AirDensity.cipm2007(temperature, pressure, humidity));
        switch (row.text("formula")) {
            case "CIPM-2007" -> assertThat(cipm).isCloseTo(expected, within(half));
            case "OIML R 111 E.3" ->
                assertThat(kilograms(AirDensity.simplified(temperature, pressure, humidity)))
                        .isCloseTo(expected, within(half));
            // Other fits of the same air: they agree with ours to their own uncertainty, 2 parts in 10 000.
            default -> assertThat(cipm).isCloseTo(expected, within(Math.max(half, 2e-4 * expected)));
        }
    }

    @Test
    void air_density_out_of_range() {
        Amount<Temperature> room = Amount.temperature("20 °C");
        Amount<Pressure> usual = hectopascals(Ratio.of(1000));
        Ratio half = Ratio.of(1, 2);
        assertThatThrownBy(() -> AirDensity.cipm2007(Amount.temperature("14 °C"), usual, half))
                .hasMessageContaining("temperature is 14 °C")
                .hasMessageContaining("[15, 27] °C");
        assertThatThrownBy(() -> AirDensity.cipm2007(room, hectopascals(Ratio.of(100_000)), half))
                .hasMessageContaining("pressure is 100000")
                .hasMessageContaining("[60000, 110000] Pa");
        assertThatThrownBy(() -> AirDensity.simplified(room, usual, Ratio.of(50)))
                .hasMessageContaining("relativeHumidity is 50")
                .hasMessageContaining("[0, 0.8]");
        assertThatThrownBy(() -> AirDensity.cipm2007(room, usual, Ratio.of(50)))
                .hasMessageContaining("relativeHumidity");
        assertThatThrownBy(() -> AirDensity.simplified(Amount.temperature("28 °C"), usual, half))
                .hasMessageContaining("temperature");
        assertThatThrownBy(() -> AirDensity.simplified(room, hectopascals(Ratio.of(899)), half))
                .hasMessageContaining("pressure");
        // The ends of the ranges belong to them.
        Amount<Temperature> cold = Amount.temperature("15 °C");
        Amount<Temperature> warm = Amount.temperature("27 °C");
        Amount<Pressure> high = hectopascals(Ratio.of(1100));
        assertThat(AirDensity.cipm2007(cold, hectopascals(Ratio.of(600)), Ratio.ZERO))
                .isLessThan(AirDensity.cipm2007(cold, high, Ratio.ZERO));
        assertThat(AirDensity.simplified(warm, hectopascals(Ratio.of(900)), Ratio.of(4, 5)))
                .isLessThan(AirDensity.simplified(cold, high, Ratio.ZERO));
    }

    private static double kilograms(Density density) {
        return density.gramsPerMillilitre().times(1000).doubleValue();
    }

    private static Amount<Pressure> hectopascals(Ratio value) {
        return Amount.of(value, MetricPrefix.HECTO(Units.PASCAL));
    }

    private static Amount<Mass> grams(BigDecimal value) {
        return Amount.grams(Ratio.of(value));
    }

    /** Whoever exchanges load and interval is told so, whatever the two are. */
    @Test
    void an_exchanged_load_and_interval_are_refused() {
        for (AccuracyClass each : AccuracyClass.values()) {
            for (String load : List.of("1.1 g", "20 g", "500 g", "1 kg")) {
                Amount<Mass> one = Amount.mass("1 g");
                Amount<Mass> other = Amount.mass(load);
                assertThatThrownBy(() -> each.permissibleError(one, other)).hasMessageContaining("exchanged");
                assertThatThrownBy(() -> each.permissibleErrorInService(one, other))
                        .hasMessageContaining("exchanged");
                assertThatThrownBy(() -> each.allows(one, other)).hasMessageContaining("exchanged");
                assertThatThrownBy(() -> each.errors(one, other, true)).hasMessageContaining("exchanged");
            }
        }
    }
}
