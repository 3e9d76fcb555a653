package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.number.Ratio;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** JCGM 106:2012, 9.5.4; figures in shared/reference/jcgm106-risk.csv. */
class GlobalRiskReferenceTest {

    /** Gamma(4, 4), T = 2, u = 0.25 (half of U = 0.5; from memory), r = 0.65: A = 2 − 0.65 · 0.5 = 1.675 ≈ 1.7. */
    @Test
    void the_bearing_example_has_its_printed_risks() {
        Ratio acceptance = Ratio.of(2).minus(Ratio.parse("0.65").times(Ratio.parse("0.5")));
        GlobalRisk risk = GlobalRisk.ofGamma(Ratio.of(4), Ratio.of(4), Ratio.of(2), acceptance, Ratio.parse("0.25"));
        assertThat(acceptance.doubleValue()).isEqualTo(1.7, within(0.05));
        assertThat(risk.nonConforming()).isEqualTo(0.042, within(5e-4));
        assertThat(risk.consumerRisk()).isEqualTo(0.001027, within(5e-7));
        assertThat(risk.producerRisk()).isEqualTo(0.07465, within(5e-6));
    }

    /** With the limit at the mean, no guard band and equal spreads, each error has probability arctan(1)/(2π) = 1/8. */
    @Test
    void equal_normal_spreads_leave_an_eighth_each() {
        GlobalRisk risk = GlobalRisk.ofNormal(Ratio.ZERO, Ratio.ONE, Ratio.ZERO, Ratio.ZERO, Ratio.ONE);
        assertThat(risk.nonConforming()).isEqualTo(0.5, within(1e-12));
        assertThat(risk.consumerRisk()).isEqualTo(0.125, within(1e-8));
        assertThat(risk.producerRisk()).isEqualTo(0.125, within(1e-8));
        assertThat(risk).hasToString("accepted up to 0.0 under a limit of 0.0");
    }

    @Test
    void a_limit_far_above_leaves_no_consumer_risk() {
        GlobalRisk risk = GlobalRisk.ofNormal(Ratio.ZERO, Ratio.ONE, Ratio.of(100), Ratio.of(99), Ratio.ONE);
        assertThat(risk.consumerRisk()).isZero();
        assertThat(risk.producerRisk()).isEqualTo(0, within(1e-9));
    }

    /** Batches and errors of very different spreads: the narrow one is as good as a point, and the risk a normal tail. */
    @ParameterizedTest
    @CsvSource({
        // mean, spread, T, A, u, consumer's risk, producer's risk
        "1, 0.1, 100000, 1, 0.1, 0, 0.5",
        "1, 0.1, -100000, 1, 0.1, 0.5, 0",
        "1, 0.000001, 1.1, 1, 1, 0, 0.5",
        "1, 0.1, 1.2, 1.1, 0.000001, 0, 0.135905122",
        "1, 0.1, 1.1, 1.2, 0.000001, 0.135905122, 0"
    })
    void spreads_of_different_orders(
            String mean, String spread, String limit, String acceptance, String u, double consumer, double producer) {
        GlobalRisk risk = GlobalRisk.ofNormal(
                Ratio.parse(mean), Ratio.parse(spread), Ratio.parse(limit), Ratio.parse(acceptance), Ratio.parse(u));
        assertThat(risk.consumerRisk()).isEqualTo(consumer, within(1e-9));
        assertThat(risk.producerRisk()).isEqualTo(producer, within(1e-9));
    }

    /**
     * Gamma with shape 1/2 and rate 1/2 is χ² with one degree of freedom, and its density has a pole at 0: y = x², x
     * standard normal. The risks are then integrals over x, here by the midpoint rule.
     */
    @Test
    void a_law_with_a_pole() {
        GlobalRisk risk = GlobalRisk.ofGamma(
                Ratio.of(1, 2), Ratio.of(1, 2), Ratio.of(2), Ratio.parse("1.7"), Ratio.parse("0.25"));
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        double step = 1e-4;
        double consumer = 0;
        double producer = 0;
        for (double x = step / 2; x < 9; x += step) {
            double accepted = normal.cumulativeProbability((1.7 - x * x) / 0.25);
            double part = 2 * step * normal.density(x);
            consumer += x * x > 2 ? part * accepted : 0;
            producer += x * x > 2 ? 0 : part * (1 - accepted);
        }
        assertThat(risk.consumerRisk()).isEqualTo(consumer, within(1e-5));
        assertThat(risk.producerRisk()).isEqualTo(producer, within(1e-5));
    }

    @Test
    void a_law_too_steep_to_integrate_is_refused_in_words() {
        GlobalRisk risk =
                GlobalRisk.ofGamma(Ratio.of(1, 50), Ratio.ONE, Ratio.of(2), Ratio.parse("0.5"), Ratio.parse("0.25"));
        assertThatThrownBy(risk::producerRisk)
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("shape");
    }

    @Test
    void nonsense_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GlobalRisk.ofNormal(Ratio.ZERO, Ratio.ZERO, Ratio.ONE, Ratio.ONE, Ratio.ONE))
                .withMessageContaining("standardDeviation");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GlobalRisk.ofGamma(Ratio.ONE, Ratio.ZERO, Ratio.ONE, Ratio.ONE, Ratio.ONE))
                .withMessageContaining("rate");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GlobalRisk.ofGamma(Ratio.ONE, Ratio.ONE, Ratio.ONE, Ratio.ONE, Ratio.ZERO))
                .withMessageContaining("standardUncertainty");
    }
}
