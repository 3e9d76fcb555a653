package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.number.Ratio;
import org.junit.jupiter.api.Test;

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
