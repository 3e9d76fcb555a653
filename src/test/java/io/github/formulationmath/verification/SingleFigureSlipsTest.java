package io.github.formulationmath.verification;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.verification.Verification.Cause;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips that touch one figure. All figures by hand, of 400 g: 320, 12, 48 and 20 g; the oil phase is 68 g. */
class SingleFigureSlipsTest {

    private static final Formula LOTION = Formulas.lotion("Oat lotion");

    private static List<Cause> causes(String... figures) {
        String[] grams = Stream.of(figures).map(figure -> figure + " g").toArray(String[]::new);
        return Verification.of(Claims.of(LOTION, "400 g", grams)).causes();
    }

    private static void assertOnly(List<Cause> causes, Slip slip, String detail) {
        assertThat(causes).singleElement().satisfies(cause -> {
            assertThat(cause.slip()).isEqualTo(slip);
            assertThat(cause.detail()).isEqualTo(detail);
        });
    }

    /** 320 + 12 without the glycerin, + 48 without the oil, + 68 without the oil phase; the whole is 400. */
    @ParameterizedTest
    @CsvSource({
        "332.0, Aqua + Glycerin",
        "368.0, Aqua + Avena Sativa Kernel Oil",
        "340.0, Aqua + Glyceryl Stearate SE",
        "388.0, Aqua + oil",
        "400.0, Aqua"
    })
    void water_left_as_it_was(String water, String detail) {
        assertOnly(causes(water, "12.0", "48.0", "20.0"), Slip.REST_NOT_ADJUSTED, detail);
    }

    @Test
    void only_exactly_the_mass_of_a_line_explains_the_water() {
        assertThat(causes("332.1", "12.0", "48.0", "20.0")).isEmpty();
        assertThat(causes("331.9", "12.0", "48.0", "20.0")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"4.80, Avena Sativa Kernel Oil", "480.0, Avena Sativa Kernel Oil"})
    void decimal_point_moved(String oil, String detail) {
        assertOnly(causes("320.0", "12.0", oil, "20.0"), Slip.DECIMAL_POINT_MOVED, detail);
    }

    /** A tenth of 12 g is 1.2 g; a display in grams shows 1, and so it does for a quarter of all slips. */
    @Test
    void one_digit_is_no_evidence() {
        assertThat(causes("320", "1", "48", "20")).isEmpty();
        assertOnly(causes("320.0", "1.2", "48.0", "20.0"), Slip.DECIMAL_POINT_MOVED, "Glycerin");
    }

    @ParameterizedTest
    @CsvSource({"21.0, 48.0, Glycerin", "10.2, 48.0, Glycerin", "12.0, 84.0, Avena Sativa Kernel Oil"})
    void digits_exchanged(String glycerin, String oil, String detail) {
        assertOnly(causes("320.0", glycerin, oil, "20.0"), Slip.DIGITS_EXCHANGED, detail);
    }

    @Test
    void digits_that_are_not_neighbours_are_not_exchanged() {
        assertThat(causes("023.0", "12.0", "48.0", "20.0")).isEmpty();
        assertThat(causes("320.0", "02.1", "48.0", "20.0")).isEmpty();
    }

    /** 0.9 g shown as 9.0 g, of 100 g: the point has moved. */
    @Test
    void a_zero_in_front_is_no_digit_to_exchange() {
        Formula gel = Formulas.preservedWater("Gel");
        Claim claim = Claim.about(gel, BatchSize.ofMass("100 g"))
                .withFigure("Aqua", "99.1 g")
                .withFigure("Phenoxyethanol", "9.0 g");
        assertOnly(Verification.of(claim).causes(), Slip.DECIMAL_POINT_MOVED, "Phenoxyethanol");
    }

    /** 3 % of the 68 g of the oil phase are 2.04 g; 12 % of the 332 g of the water phase are 39.84 g. */
    @ParameterizedTest
    @CsvSource({"2.04, 48.00, Glycerin · oil", "12.00, 39.84, Avena Sativa Kernel Oil · water"})
    void share_of_another_phase(String glycerin, String oil, String detail) {
        assertOnly(causes("320.00", glycerin, oil, "20.00"), Slip.OTHER_PHASE, detail);
    }

    @Test
    void a_line_without_a_figure_is_not_blamed() {
        Claim claim = Claim.about(LOTION, BatchSize.ofMass(Amount.mass("400 g")))
                .withFigure("Avena Sativa Kernel Oil", "84.0 g");
        assertOnly(Verification.of(claim).causes(), Slip.DIGITS_EXCHANGED, "Avena Sativa Kernel Oil");
    }

    /** What was there to explain, when two figures are wrong in two ways, is explained by no single slip. */
    @Test
    void two_slips_are_not_one() {
        assertThat(causes("332.0", "21.0", "48.0", "20.0")).isEmpty();
    }
}
