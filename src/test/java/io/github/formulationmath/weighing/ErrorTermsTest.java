package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.Made;
import io.github.formulationmath.weighing.ErrorTerm.Load;
import java.util.List;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** Which independent errors a sequence of additions has, and with which sign each of them enters which line. */
class ErrorTermsTest {

    private static final Ratio MINUS_ONE = Ratio.of(-1);

    private static List<ErrorTerm> repeatabilities(WeighingMethod method) {
        Balance noisy =
                MadeMassesTest.TENTH.withErrors(ErrorModel.readabilityOnly().withRepeatability("0.05 g"));
        List<Addition> additions = MadeMassesTest.masses(noisy, method, "10", "20").additions().stream()
                .map(AdditionError::addition)
                .toList();
        return ErrorTerms.of(additions).stream()
                .filter(term -> term.source() == ErrorSource.REPEATABILITY)
                .toList();
    }

    private static AdditionError hundredGrams(Bounds air) {
        Amount<Mass> mass = Amount.mass("100 g");
        return AdditionError.of(
                Addition.of("Oil", mass, mass, MadeMassesTest.TENTH).withBuoyancy(air));
    }

    @Test
    void a_net_weighing_of_its_own_has_a_whole_repeatability_of_its_own() {
        assertThat(repeatabilities(WeighingMethod.TARE_EACH))
                .extracting(ErrorTerm::loads)
                .containsExactly(List.of(new Load(0, Ratio.ONE)), List.of(new Load(1, Ratio.ONE)));
        assertThat(repeatabilities(WeighingMethod.TARE_EACH)).noneMatch(ErrorTerm::isHalf);
    }

    /** The tare is lost by the first; its reading is won by it and lost by the second; the last is won by the second. */
    @Test
    void an_indication_in_common_has_half_a_repeatability_that_one_wins_and_the_other_loses() {
        assertThat(repeatabilities(WeighingMethod.CUMULATIVE))
                .extracting(ErrorTerm::loads)
                .containsExactly(
                        List.of(new Load(0, MINUS_ONE)),
                        List.of(new Load(0, Ratio.ONE), new Load(1, MINUS_ONE)),
                        List.of(new Load(1, Ratio.ONE)));
        assertThat(repeatabilities(WeighingMethod.CUMULATIVE)).allMatch(ErrorTerm::isHalf);
    }

    /** 100 g on a display that hides 0.1 g, and air for up to 0.1 g more, up to 0.1 g less, or exactly nothing. */
    @Test
    void air_counts_as_soon_as_one_end_of_its_correction_is_not_0() {
        Ratio thousandth = Ratio.of(1, 1000);
        assertThat(Made.bounds(
                        hundredGrams(Bounds.closed(Ratio.ZERO, thousandth)).bounds()))
                .isEqualTo(Bounds.closed(Ratio.parse("99.9"), Ratio.parse("100.2")));
        assertThat(Made.bounds(hundredGrams(Bounds.closed(thousandth.unaryMinus(), Ratio.ZERO))
                        .bounds()))
                .isEqualTo(Bounds.closed(Ratio.parse("99.8"), Ratio.parse("100.1")));
        AdditionError none = hundredGrams(Bounds.point(Ratio.ZERO));
        assertThat(Made.bounds(none.bounds())).isEqualTo(Bounds.closed(Ratio.parse("99.9"), Ratio.parse("100.1")));
        assertThat(none.budget().variances()).containsOnlyKeys(ErrorSource.TARE, ErrorSource.READING);
    }
}
