package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** JCGM 106:2012, 9.5.4; figures in shared/reference/jcgm106-risk.csv. */
class GlobalRiskReferenceTest {

    private static Amount<Mass> grams(String number) {
        return Amount.mass(number + " g");
    }

    /** Gamma(4, 4), of mean 1 and standard deviation 1/2, T = 2, u = 0.25 (half of U = 0.5; from memory), r = 0.65: A = 2 − 0.65 · 0.5 = 1.675 ≈ 1.7. */
    @Test
    void the_bearing_example_has_its_printed_risks() {
        Ratio acceptance = Ratio.of(2).minus(Ratio.parse("0.65").times(Ratio.parse("0.5")));
        GlobalRisk risk =
                GlobalRisk.ofGamma(grams("1"), grams("0.5"), grams("2"), Amount.grams(acceptance), grams("0.25"));
        assertThat(acceptance.doubleValue()).isEqualTo(1.7, within(0.05));
        assertThat(risk.nonConforming()).isEqualTo(0.042, within(5e-4));
        assertThat(risk.consumerRisk()).isEqualTo(0.001027, within(5e-7));
        assertThat(risk.producerRisk()).isEqualTo(0.07465, within(5e-6));
    }

    /** With the limit at the mean, no guard band and equal spreads, each error has probability arctan(1)/(2π) = 1/8. */
    @Test
    void equal_normal_spreads_leave_an_eighth_each() {
        GlobalRisk risk = GlobalRisk.ofNormal(grams("0"), grams("1"), grams("0"), grams("0"), grams("1"));
        assertThat(risk.nonConforming()).isEqualTo(0.5, within(1e-12));
        assertThat(risk.consumerRisk()).isEqualTo(0.125, within(1e-8));
        assertThat(risk.producerRisk()).isEqualTo(0.125, within(1e-8));
        assertThat(risk).hasToString("accepted up to 0 g under a limit of 0 g");
    }

    @Test
    void a_limit_far_above_leaves_no_consumer_risk() {
        GlobalRisk risk = GlobalRisk.ofNormal(grams("0"), grams("1"), grams("100"), grams("99"), grams("1"));
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
        GlobalRisk risk = GlobalRisk.ofNormal(grams(mean), grams(spread), grams(limit), grams(acceptance), grams(u));
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
                grams("1"), Amount.grams(Ratio.from(Math.sqrt(2))), grams("2"), grams("1.7"), grams("0.25"));
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
        GlobalRisk risk = GlobalRisk.ofGamma(grams("1"), grams("7"), grams("100"), grams("25"), grams("12.5"));
        assertThatThrownBy(risk::producerRisk)
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("standard deviation");
    }

    /** The unit does not matter, as long as it is said. */
    @Test
    void units_may_be_mixed() {
        GlobalRisk grams = GlobalRisk.ofNormal(grams("10"), grams("0.1"), grams("10.2"), grams("10.1"), grams("0.05"));
        GlobalRisk mixed = GlobalRisk.ofNormal(
                Amount.mass("0.01 kg"), Amount.mass("100 mg"), grams("10.2"), Amount.mass("10100 mg"), grams("0.05"));
        assertThat(mixed.consumerRisk()).isEqualTo(grams.consumerRisk());
        assertThat(mixed.producerRisk()).isEqualTo(grams.producerRisk());
        assertThat(mixed).hasToString("accepted up to 10100 mg under a limit of 10.2 g");
    }

    @Test
    void nonsense_is_refused() {
        Amount<Mass> one = grams("1");
        Amount<Mass> none = grams("0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GlobalRisk.ofNormal(none, none, one, one, one))
                .withMessageContaining("standardDeviation is 0 g");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GlobalRisk.ofGamma(none, one, one, one, one))
                .withMessageContaining("mean is 0 g");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GlobalRisk.ofGamma(one, none, one, one, one))
                .withMessageContaining("standardDeviation is 0 g");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GlobalRisk.ofGamma(one, one, one, one, none))
                .withMessageContaining("standardUncertainty is 0 g");
        Amount<Temperature> warm = Amount.temperature("20 °C");
        Amount<Temperature> kelvin = Amount.of(1, FormulationUnits.KELVIN);
        assertThat(GlobalRisk.ofNormal(warm, kelvin, warm, warm, kelvin).nonConforming())
                .isEqualTo(0.5, within(1e-12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GlobalRisk.ofNormal(warm, kelvin, warm, warm, warm))
                .withMessageContaining("give the difference in K");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GlobalRisk.ofGamma(warm, kelvin, warm, warm, kelvin))
                .withMessageContaining("convert it with to(KELVIN)");
    }
}
