package io.github.formulationmath.weighing;

import static io.github.formulationmath.support.Made.covariance;
import static io.github.formulationmath.support.Made.madeShare;
import static io.github.formulationmath.support.Made.massBounds;
import static io.github.formulationmath.support.Made.shareBounds;
import static io.github.formulationmath.support.Made.shareVariance;
import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.support.Made;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Figures that can be checked by hand; the relations are in the class comments. */
class MadeMassesTest {

    static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    static final Balance KNOWN = TENTH.withErrors(ErrorModel.readabilityOnly()
            .withRepeatability("0.05 g")
            .withLinearityOfNetReading("0.1 g")
            .withCalibration(Ratio.of(1, 1000))
            .withResidue(Amount.mass("0 g"), Amount.mass("0.2 g"))
            .withBuoyancy(Bounds.closed(Ratio.parse("0.0009"), Ratio.parse("0.0012"))));

    static MadeMasses masses(Balance balance, WeighingMethod method, String... grams) {
        return MadeMasses.of(IntStream.range(0, grams.length)
                .mapToObj(i -> {
                    Amount<javax.measure.quantity.Mass> mass = Amount.mass(grams[i] + " g");
                    return Addition.of("L" + (i + 1), mass, mass, balance).by(method);
                })
                .toList());
    }

    @Test
    void an_addition_by_hand() {
        AdditionError error =
                AdditionError.of(Addition.of("Glycerin", Amount.mass("12.34 g"), Amount.mass("12.3 g"), TENTH));
        assertThat(error.roundingError().canonical()).isEqualTo(Ratio.parse("-0.04"));
        assertThat(Made.bounds(error.bounds())).isEqualTo(Bounds.closed(Ratio.parse("12.2"), Ratio.parse("12.4")));
        assertThat(error.largest().canonical()).isEqualTo(Ratio.parse("0.14"));
        assertThat(error.variance().origin().number()).isEqualTo(Ratio.of(1, 600));
        assertThat(error.budget().share(ErrorSource.TARE)).isEqualTo(Ratio.of(1, 2));
        assertSelfChecking(error);
        assertSelfChecking(error.uncertainty());
        assertSelfChecking(error.roundingError());
    }

    @Test
    void every_source_of_one_addition() {
        AdditionError error =
                masses(KNOWN, WeighingMethod.FROM_BOAT, "100").additions().get(0);
        // 100·(1 + 0.00105) − 0.1
        assertThat(error.estimate().canonical()).isEqualTo(Ratio.parse("100.005"));
        // 100 − 0.05 − 0.05 − 0.1 − 0.2 + 0.09, 100 + 0.2 + 0.12
        assertThat(Made.bounds(error.bounds())).isEqualTo(Bounds.closed(Ratio.parse("99.69"), Ratio.parse("100.32")));
        // 2·0.01/12 + 0.0025 + 0.01/3 + 0.1² + 0.1²/3 + 0.015²/3
        assertThat(error.variance().origin().number())
                .isEqualTo(Ratio.of(1, 600)
                        .plus(Ratio.parse("0.0025"))
                        .plus(Ratio.of(1, 300))
                        .plus(Ratio.parse("0.01"))
                        .plus(Ratio.of(1, 300))
                        .plus(Ratio.parse("0.000075")));
        assertThat(error.budget().variances()).containsOnlyKeys(ErrorSource.values());
        assertThat(error.budget().total().exactValue())
                .isEqualTo(error.variance().origin().number());
        assertSelfChecking(error);
        assertSelfChecking(error.estimate());
        assertSelfChecking(error.variance());
    }

    @Test
    void shares_by_hand() {
        MadeMasses made = masses(TENTH, WeighingMethod.TARE_EACH, "10", "30");
        assertThat(shareBounds(made, 0)).isEqualTo(Bounds.closed(Ratio.parse("0.2475"), Ratio.parse("0.2525")));
        Ratio v = Ratio.of(1, 600);
        Ratio expected = v.minus(v.dividedBy(2)).plus(v.dividedBy(8)).dividedBy(1600);
        assertThat(shareVariance(made, 0)).isEqualTo(expected);
        assertThat(made.madeShare(0).uncertainty().canonical().doubleValue()).isCloseTo(0.00081, within(0.000005));
        assertThat(made.madeShare(0).budget().total().exactValue()).isEqualTo(expected);
    }

    @Test
    void neighbours_of_a_cumulative_weighing_are_anti_correlated() {
        MadeMasses made = masses(TENTH, WeighingMethod.CUMULATIVE, "10", "20", "30");
        Ratio twelfth = Ratio.of(1, 1200);
        assertThat(covariance(made, 0, 0)).isEqualTo(twelfth.times(2));
        assertThat(covariance(made, 0, 1)).isEqualTo(twelfth.unaryMinus());
        assertThat(covariance(made, 0, 2)).isEqualTo(Ratio.ZERO);
        // The indications in between cancel from the total.
        Ratio total = Ratio.ZERO;
        for (int i = 0; i < made.size(); i++) {
            for (int j = 0; j < made.size(); j++) {
                total = total.plus(covariance(made, i, j));
            }
        }
        assertThat(total).isEqualTo(twelfth.times(2));
    }

    /** A part keeps its errors: covariances are those of the whole, and the reading below it is as uncertain as before. */
    @Test
    void a_part_keeps_its_errors() {
        for (WeighingMethod method : WeighingMethod.values()) {
            MadeMasses made = masses(KNOWN, method, "10", "20", "30", "5");
            MadeMasses part = made.part(List.of(3, 1));
            assertThat(covariance(part, 0, 0)).isEqualTo(covariance(made, 3, 3));
            assertThat(covariance(part, 0, 1)).isEqualTo(covariance(made, 3, 1));
            assertThat(massBounds(part, 1)).isEqualTo(massBounds(made, 1));
            check(part.madeShare(0));
        }
        // 20 g and 30 g on top of 10 g: each reading hides 0.05 g and 0.08 g, the one below them too.
        Balance crooked = TENTH.withErrors(ErrorModel.readabilityOnly().withLinearityOfNetReading("0.08 g"));
        MadeMasses part =
                masses(crooked, WeighingMethod.CUMULATIVE, "10", "20", "30").part(List.of(1, 2));
        assertThat(shareBounds(part, 0).upper()).contains(Ratio.parse("20.26").dividedBy(50));
        assertThatThrownBy(() -> part.part(List.of(0, 0))).hasMessageContaining("name each line once");
    }

    @Test
    void a_common_scale_cancels_from_the_shares() {
        Balance plain = TENTH.withErrors(ErrorModel.readabilityOnly().withRepeatability("0.05 g"));
        Balance scaled = TENTH.withErrors(plain.errors().withCalibration(Ratio.of(1, 50)));
        for (WeighingMethod method : WeighingMethod.values()) {
            MadeMasses without = masses(plain, method, "1", "2", "3");
            MadeMasses with = masses(scaled, method, "1", "2", "3");
            assertThat(covariance(with, 0, 2)).isNotEqualTo(covariance(without, 0, 2));
            assertThat(shareVariance(with, 1)).isEqualTo(shareVariance(without, 1));
        }
    }

    @Tag("long")
    @Test
    void every_working_leads_to_its_result() {
        for (WeighingMethod method : WeighingMethod.values()) {
            for (MadeMasses made : List.of(
                    masses(KNOWN, method, "1", "20", "0.4", "0"),
                    masses(KNOWN, method, "1", "20", "0.4").covering(CoverageFactor.of(2)))) {
                for (int i = 0; i < made.size(); i++) {
                    check(made.madeShare(i));
                    assertSelfChecking(made.additions().get(i));
                }
                List<Ratio> strengths = IntStream.range(0, made.size())
                        .mapToObj(i -> Ratio.of(i, 7))
                        .toList();
                check(madeShare(made, Subject.of("Y", "something"), strengths));
            }
        }
    }

    private static void check(MadeShare share) {
        assertSelfChecking(share);
        assertSelfChecking(share.bounds().least());
        assertSelfChecking(share.bounds().greatest());
        assertSelfChecking(share.uncertainty());
        assertThat(share.budget().total().exactValue())
                .isEqualTo(share.variance().origin().number());
    }

    @Test
    void refusals() {
        assertThatThrownBy(() -> masses(TENTH, WeighingMethod.TARE_EACH, "0", "0"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no display reads anything");
        Amount<javax.measure.quantity.Mass> one = Amount.mass("1 g");
        assertThatThrownBy(() ->
                        MadeMasses.of(List.of(Addition.of("a", one, one, TENTH), Addition.of("b", one, one, KNOWN))))
                .hasMessageContaining("named");
        assertThatThrownBy(() -> Addition.of("a", one, Amount.mass("-1 g"), TENTH))
                .hasMessageContaining("reading");
        assertThatThrownBy(() -> masses(TENTH, WeighingMethod.TARE_EACH, "1")
                        .madeShare(Subject.of("", ""), Map.of(1, Ratio.ONE)))
                .isInstanceOf(IndexOutOfBoundsException.class);
        MadeMasses half = masses(TENTH, WeighingMethod.TARE_EACH, "1", "0", "0");
        assertThatThrownBy(() -> half.part(List.of(1, 2)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no display reads anything");
        // All of the only gram stays in its boat.
        Balance sticky = TENTH.withErrors(ErrorModel.readabilityOnly().withResidue(one, one));
        assertThatThrownBy(() -> masses(sticky, WeighingMethod.FROM_BOAT, "1"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0 g are left")
                .hasMessageContaining("residue");
    }

    @Test
    void its_text_says_where_each_mass_lies() {
        assertThat(masses(TENTH, WeighingMethod.CUMULATIVE, "10", "0.1"))
                .hasToString("[L1 10 g on balance d = 0.1 g, capacity 2 kg, CUMULATIVE: [9.9, 10.1] g, "
                        + "L2 0.1 g on balance d = 0.1 g, capacity 2 kg, CUMULATIVE: [0, 0.2] g]");
    }

    @Test
    void the_sum_of_all_and_its_variance_ask_what_they_answer() {
        MadeMasses made = masses(TENTH, WeighingMethod.TARE_EACH, "10", "30");
        assertThat(made.total()).hasToString("40 g");
        assertThat(made.total().origin().question()).hasToString("How much is everything together, as made?");
        assertSelfChecking(made.total());
        assertThat(made.variance().origin().question()).hasToString("What is the variance of the mass of everything?");
        assertThat(made.variance().number()).isEqualTo(Ratio.of(1, 300));
        assertSelfChecking(made.variance());
    }

    @Test
    void a_part_refuses_a_line_that_is_not_there() {
        MadeMasses made = masses(TENTH, WeighingMethod.TARE_EACH, "10", "30");
        assertThatThrownBy(() -> made.part(List.of(0, 2)))
                .isExactlyInstanceOf(IndexOutOfBoundsException.class)
                .hasMessageContaining("Index 2 out of bounds for length 2");
        assertThatThrownBy(() -> made.part(List.of(-1))).isExactlyInstanceOf(IndexOutOfBoundsException.class);
    }
}
