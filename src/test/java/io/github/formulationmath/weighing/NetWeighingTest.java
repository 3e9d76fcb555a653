package io.github.formulationmath.weighing;

import static io.github.formulationmath.support.Made.covariance;
import static io.github.formulationmath.support.Made.estimate;
import static io.github.formulationmath.support.Made.massBounds;
import static io.github.formulationmath.support.Made.shareBounds;
import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.support.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A net weighing is the difference of two indications: what each of them carries, by method. Worked by hand. */
class NetWeighingTest {

    private static final ErrorModel NONE = ErrorModel.readabilityOnly();

    private static MadeMasses made(Balance balance, WeighingMethod method, String... grams) {
        List<Addition> additions = new ArrayList<>();
        for (String gram : grams) {
            Amount<Mass> mass = Amount.mass(gram + " g");
            additions.add(
                    Addition.of("L" + additions.size(), mass, mass, balance).by(method));
        }
        return MadeMasses.of(additions);
    }

    /** s = 0.5 g of net weighings: s² + 2 d²/12 each, by whatever method; tared once, neighbours share −s²/2 − d²/12. */
    @ParameterizedTest
    @EnumSource(WeighingMethod.class)
    void the_repeatability_of_net_weighings_is_that_of_every_net_weighing(WeighingMethod method) {
        Balance balance = Balance.of("0.1 g", "2 kg").withErrors(NONE.withRepeatability("0.5 g"));
        MadeMasses made = made(balance, method, "100", "50", "30");
        for (int i = 0; i < 3; i++) {
            assertThat(covariance(made, i, i)).isEqualTo(Ratio.of(1, 4).plus(Ratio.of(1, 600)));
            assertSelfChecking(made.additions().get(i).variance());
        }
        Ratio shared = method == WeighingMethod.CUMULATIVE ? Ratio.of(-1, 8).minus(Ratio.of(1, 1200)) : Ratio.ZERO;
        assertThat(covariance(made, 0, 1)).isEqualTo(shared);
        assertThat(covariance(made, 1, 2)).isEqualTo(shared);
        assertThat(covariance(made, 0, 2).isZero()).isTrue();
        // Everything together is one net weighing if it was tared once, and three if not.
        Ratio total = Ratio.ZERO;
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                total = total.plus(covariance(made, i, j));
            }
        }
        Ratio one = covariance(made, 0, 0);
        assertThat(total).isEqualTo(method == WeighingMethod.CUMULATIVE ? one : one.times(3));
    }

    /** k times s is taken in once for a net weighing: 0.1 g of display and 2 · 0.5 g, and no more for the total. */
    @ParameterizedTest
    @EnumSource(WeighingMethod.class)
    void coverage_takes_k_times_s_for_a_net_weighing(WeighingMethod method) {
        Balance balance = Balance.of("0.1 g", "2 kg").withErrors(NONE.withRepeatability("0.5 g"));
        MadeMasses covered = made(balance, method, "100", "50", "30").covering(CoverageFactor.of(2));
        assertThat(massBounds(covered, 0)).isEqualTo(bounds("98.9", "101.1"));
        assertThat(massBounds(covered, 1)).isEqualTo(bounds("48.9", "51.1"));
        assertThat(massBounds(covered, 2)).isEqualTo(bounds("28.9", "31.1"));
    }

    /**
     * EURACHEM/CITAC QUAM:2012, example A2, step 3, m(KHP): a linearity of ±0.15 mg, rectangular, "counted twice", is a
     * standard uncertainty of 0.12 mg; unrounded 0.12247. (Clause and figures from memory.)
     */
    @Test
    void a_linearity_of_an_indication_counts_twice_in_a_net_reading() {
        Balance balance = Balance.of("0.1 mg", "200 g").withErrors(NONE.withLinearityOfIndication("0.15 mg"));
        for (WeighingMethod method : WeighingMethod.values()) {
            AdditionError khp =
                    made(balance, method, "0.3888", "0.4").additions().get(0);
            Ratio variance = khp.budget().variance(ErrorSource.LINEARITY).exactValue();
            assertThat(variance).isEqualTo(Ratio.parse("0.000000015"));
            assertThat(Math.sqrt(variance.doubleValue()) * 1000).isCloseTo(0.12247, within(5e-6));
            // 0.3888 g ± (2 · 0.05 + 2 · 0.15) mg
            assertThat(Made.bounds(khp.bounds())).isEqualTo(bounds("0.3884", "0.3892"));
            assertSelfChecking(khp);
        }
    }

    /** Of a net reading it counts once; each of two readings that a mass is the difference of is a net reading. */
    @Test
    void a_linearity_of_a_net_reading_counts_once_for_each_reading() {
        Balance balance = Balance.of("0.1 g", "2 kg").withErrors(NONE.withLinearityOfNetReading("0.3 g"));
        assertThat(massBounds(made(balance, WeighingMethod.TARE_EACH, "10"), 0)).isEqualTo(bounds("9.6", "10.4"));
        assertThat(massBounds(made(balance, WeighingMethod.FROM_BOAT, "10"), 0)).isEqualTo(bounds("9.6", "10.4"));
        MadeMasses once = made(balance, WeighingMethod.CUMULATIVE, "10", "10");
        assertThat(massBounds(once, 0)).isEqualTo(bounds("9.6", "10.4"));
        assertThat(massBounds(once, 1)).isEqualTo(bounds("9.3", "10.7"));
        assertThat(massBounds(made(balance, WeighingMethod.BY_DIFFERENCE, "10"), 0))
                .isEqualTo(bounds("9.3", "10.7"));
    }

    /** What stays in the boat is missing from what was poured out of it, and weighed back by difference; so is the tare. */
    @Test
    void by_difference_nothing_stays_behind() {
        Balance balance = Balance.of("0.1 g", "2 kg")
                .withErrors(NONE.withResidue(Amount.mass("0.5 g"), Amount.mass("1.5 g"))
                        .withTareResolution(Amount.mass("1 g")));
        MadeMasses poured = made(balance, WeighingMethod.FROM_BOAT, "10");
        assertThat(estimate(poured, 0)).isEqualTo(Ratio.of(9));
        assertThat(massBounds(poured, 0)).isEqualTo(bounds("7.95", "10.05"));
        MadeMasses difference = made(balance, WeighingMethod.BY_DIFFERENCE, "10");
        assertThat(estimate(difference, 0)).isEqualTo(Ratio.of(10));
        assertThat(massBounds(difference, 0)).isEqualTo(bounds("9.9", "10.1"));
        assertThat(difference.additions().get(0).budget().variances()).containsOnlyKeys(ErrorSource.READING);
    }

    /** Bounds are no wider than the worst that can happen: all corners of all indications of three lines. */
    @ParameterizedTest
    @EnumSource(WeighingMethod.class)
    void share_bounds_are_the_extremes_over_all_corners(WeighingMethod method) {
        SplittableRandom random = new SplittableRandom(20);
        for (int round = 0; round < 60; round++) {
            Ratio linearity = Ratio.of(random.nextInt(4), 100);
            Ratio tare = Ratio.of(random.nextInt(20), 100);
            boolean ofIndication = random.nextBoolean();
            ErrorModel zero = NONE.withTareResolution(Amount.grams(tare));
            Balance balance = Balance.of("0.1 g", "2 kg")
                    .withErrors(
                            ofIndication
                                    ? zero.withLinearityOfIndication(Amount.grams(linearity))
                                    : zero.withLinearityOfNetReading(Amount.grams(linearity)));
            Ratio read = Ratio.of(5, 100).plus(linearity);
            Ratio set = method == WeighingMethod.BY_DIFFERENCE
                    ? read
                    : tare.dividedBy(2).plus(ofIndication ? linearity : Ratio.ZERO);
            String[] readings = new String[3];
            for (int i = 0; i < 3; i++) {
                readings[i] = Ratio.of(6 + random.nextInt(100), 10).toString();
            }
            MadeMasses made = made(balance, method, readings);
            Ratio least = Ratio.ONE;
            Ratio most = Ratio.ZERO;
            for (int corner = 0; corner < 64; corner++) {
                Ratio total = Ratio.ZERO;
                Ratio second = Ratio.ZERO;
                for (int i = 0; i < 3; i++) {
                    boolean goesOn = method == WeighingMethod.CUMULATIVE && i > 0;
                    Ratio begin = goesOn ? end(corner, 2 * i - 1, read) : end(corner, 2 * i, set);
                    Ratio mass = Ratio.parse(readings[i])
                            .plus(end(corner, 2 * i + 1, read))
                            .minus(begin);
                    total = total.plus(mass);
                    second = i == 1 ? mass : second;
                }
                least = least.min(second.dividedBy(total));
                most = most.max(second.dividedBy(total));
            }
            assertThat(shareBounds(made, 1)).isEqualTo(Bounds.closed(least, most));
        }
    }

    private static Ratio end(int corner, int bit, Ratio size) {
        return (corner >> bit & 1) == 0 ? size : size.unaryMinus();
    }

    private static Bounds bounds(String lower, String upper) {
        return Bounds.closed(Ratio.parse(lower), Ratio.parse(upper));
    }
}
