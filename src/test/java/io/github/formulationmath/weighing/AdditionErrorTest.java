package io.github.formulationmath.weighing;

import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.support.Made;
import io.github.formulationmath.support.WorkingAssertions;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** One addition by itself: tare and reading of a display of 0.1 g hide 0.05 g each, with a variance of 0.05²/3 g². */
class AdditionErrorTest {

    private static final Balance TENTH = MadeMassesTest.TENTH;

    private static AdditionError error(Balance balance, String grams) {
        Amount<javax.measure.quantity.Mass> mass = Amount.mass(grams + " g");
        return AdditionError.of(Addition.of("Glycerin", mass, mass, balance));
    }

    private static boolean isCutOff(Explained bound) {
        return bound.working().toString().contains("A mass is not negative");
    }

    @Test
    void uncertainties_as_floating_point_numbers() {
        AdditionError error = error(TENTH, "12.3");
        assertThat(error.uncertainty().canonical().doubleValue()).isCloseTo(0.1 / Math.sqrt(6), within(1e-16));
    }

    @Test
    void derived_numbers_print_as_numbers() {
        assertThat(error(TENTH, "12.3").variance()).hasToString("1/600");
    }

    @Test
    void it_names_what_it_is_about() {
        AdditionError error = error(TENTH, "12.3");
        for (Explained answer : new Explained[] {
            error,
            error.roundingError(),
            error.estimate(),
            error.lowest(),
            error.highest(),
            error.variance(),
            error.uncertainty(),
            error.addition().target(),
            error.addition().reading()
        }) {
            assertThat(answer.origin().question().toString())
                    .contains("Glycerin")
                    .endsWith("?");
        }
        assertThat(error).hasToString("Glycerin 12.3 g on balance d = 0.1 g, capacity 2 kg, TARE_EACH: [12.2, 12.4] g");
    }

    @Test
    void a_mass_that_could_be_negative_is_cut_off_and_the_working_says_so() {
        AdditionError error = error(TENTH, "0.05");
        assertThat(Made.bounds(error.bounds())).isEqualTo(Bounds.closed(Ratio.ZERO, Ratio.parse("0.15")));
        assertThat(isCutOff(error.lowest())).isTrue();
        assertThat(isCutOff(error.highest())).isFalse();
        assertSelfChecking(error.lowest());
    }

    @Test
    void a_mass_that_could_just_be_0_is_not_cut_off() {
        AdditionError error = error(TENTH, "0.1");
        assertThat(Made.bounds(error.bounds())).isEqualTo(Bounds.closed(Ratio.ZERO, Ratio.parse("0.2")));
        assertThat(isCutOff(error.lowest())).isFalse();
    }

    /** A zero set to 0.02 g hides 0.01 g, beside the 0.05 g of the reading. */
    @Test
    void a_tare_finer_than_the_display() {
        AdditionError error =
                error(TENTH.withErrors(ErrorModel.readabilityOnly().withTareResolution(Amount.mass("0.02 g"))), "12.3");
        assertThat(Made.bounds(error.bounds())).isEqualTo(Bounds.closed(Ratio.parse("12.24"), Ratio.parse("12.36")));
        // 0.0001/3 + 0.0025/3
        assertThat(error.variance().origin().number())
                .isEqualTo(Ratio.parse("0.0026").dividedBy(3));
        Map<String, String> values = WorkingAssertions.values(error.lowest().working());
        assertThat(values).containsEntry("z", "0.02").containsEntry("d", "0.1");
        assertSelfChecking(error.variance());
    }

    /** 100 g of a known density, b = 0.001: the display reads too little by 0.1 g. */
    @Test
    void an_addition_may_have_a_buoyancy_of_its_own() {
        Amount<javax.measure.quantity.Mass> mass = Amount.mass("100 g");
        Addition light = Addition.of("Oil", mass, mass, TENTH).withBuoyancy(Bounds.point(Ratio.of(1, 1000)));
        assertThat(light.buoyancy()).isEqualTo(Bounds.point(Ratio.of(1, 1000)));
        AdditionError error = AdditionError.of(light);
        assertThat(error.estimate().canonical()).isEqualTo(Ratio.parse("100.1"));
        assertThat(Made.bounds(error.bounds())).isEqualTo(Bounds.closed(Ratio.parse("100"), Ratio.parse("100.2")));
        assertThatThrownBy(() -> light.withBuoyancy(Bounds.atLeast(Ratio.ZERO)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("relativeCorrection");
    }
}
