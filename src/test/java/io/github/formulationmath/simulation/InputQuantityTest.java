package io.github.formulationmath.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.simulation.InputQuantity.Law;
import io.github.formulationmath.support.ValueContract;
import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.RealDistribution;
import org.apache.commons.math3.distribution.TriangularDistribution;
import org.apache.commons.math3.distribution.UniformRealDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;

/** The laws of the inputs as JCGM 101:2008, 6.4, defines them, and as Commons Math knows them. */
class InputQuantityTest implements ValueContract<InputQuantity<Dimensionless>> {

    private static final int DRAWN = 20_000;

    @Override
    public List<InputQuantity<Dimensionless>> different() {
        return List.of(
                Plain.rectangular(2, 6),
                Plain.triangular(2, 6),
                Plain.normal(4, 2),
                Plain.triangular(3, 7),
                Plain.triangular(1, 7));
    }

    @Override
    public List<InputQuantity<Dimensionless>> same() {
        return List.of(
                new InputQuantity<>(Law.RECTANGULAR, Plain.one(4), Plain.one(2)),
                new InputQuantity<>(Law.TRIANGULAR, Plain.one(4), Plain.one(2)),
                new InputQuantity<>(Law.NORMAL, Plain.one(4), Plain.one(2)),
                new InputQuantity<>(Law.TRIANGULAR, Plain.one(5), Plain.one(2)),
                new InputQuantity<>(Law.TRIANGULAR, Plain.one(4), Plain.one(3)));
    }

    @Test
    void bounds_become_a_middle_and_a_half_width() {
        InputQuantity<Dimensionless> quantity = Plain.triangular(2, 6);
        assertThat(quantity.law()).isEqualTo(Law.TRIANGULAR);
        assertThat(quantity.middle()).isEqualTo(Plain.one(4));
        assertThat(quantity.scale()).isEqualTo(Plain.one(2));
        assertThat(quantity).hasToString("TRIANGULAR 4 ± 2");
        // The largest bounds there are do not overflow.
        assertThat(Plain.triangular(-Double.MAX_VALUE, Double.MAX_VALUE).scaleNumber())
                .isEqualTo(Double.MAX_VALUE);
    }

    /** A model counts in the unit of the middle, whatever that of the scale. */
    @Test
    void numbers_are_those_of_the_unit_of_the_middle() {
        InputQuantity<Mass> mass = InputQuantity.normal(Amount.mass("250 mg"), Amount.mass("0.01 g"));
        assertThat(mass.middleNumber()).isEqualTo(250);
        assertThat(mass.scaleNumber()).isEqualTo(10);
        assertThat(mass).hasToString("NORMAL 250 mg ± 0.01 g");
        InputQuantity<Mass> between = InputQuantity.rectangular(Amount.mass("100 mg"), Amount.mass("0.4 g"));
        assertThat(between).hasToString("RECTANGULAR 250 mg ± 0.15 g");
        // 68 °F to 77 °F is 20 °C to 25 °C: 2.5 K are 4.5 of °F.
        InputQuantity<Temperature> warm =
                InputQuantity.rectangular(Amount.temperature("68 °F"), Amount.temperature("25 °C"));
        assertThat(warm).hasToString("RECTANGULAR 72.5 °F ± 2.5 K");
        assertThat(warm.middleNumber()).isEqualTo(72.5);
        assertThat(warm.scaleNumber()).isEqualTo(4.5);
    }

    @Test
    void what_cannot_be_drawn_is_refused() {
        Amount<Mass> gram = Amount.mass("1 g");
        assertThatThrownBy(() -> InputQuantity.normal(Amount.mass("1e400 g"), gram))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("middle is ")
                .hasMessageContaining("take a larger unit");
        assertThatThrownBy(() -> InputQuantity.normal(gram, Amount.mass("1e400 g")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("scale is ");
        assertThatThrownBy(() -> InputQuantity.normal(gram, gram.unaryMinus()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("scale is -1 g");
        Amount<Temperature> warm = Amount.temperature("20 °C");
        assertThatThrownBy(() -> InputQuantity.normal(warm, warm))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("give the difference in K");
    }

    /** JCGM 101:2008, 6.4.5: expectation (a + b)/2, variance (b − a)²/24. */
    @Test
    void a_triangular_quantity_follows_its_law() {
        follows(Plain.triangular(2, 6), new TriangularDistribution(null, 2, 4, 6), 4, 16.0 / 24);
    }

    /** JCGM 101:2008, 6.4.2: expectation (a + b)/2, variance (b − a)²/12. */
    @Test
    void a_rectangular_quantity_follows_its_law() {
        follows(Plain.rectangular(2, 6), new UniformRealDistribution(null, 2, 6), 4, 16.0 / 12);
    }

    /** JCGM 101:2008, 6.4.7: expectation x, variance u²(x). */
    @Test
    void a_normal_quantity_follows_its_law() {
        follows(Plain.normal(4, 2), new NormalDistribution(null, 4, 2), 4, 4);
    }

    /** Mean and variance within four standard deviations of such a sample; the seed is fixed. */
    private static void follows(InputQuantity<?> quantity, RealDistribution law, double mean, double variance) {
        double[] sample = new double[DRAWN];
        Draws draws = new Draws(List.of(quantity));
        SplittableRandom random = new SplittableRandom(645);
        double[] one = new double[1];
        for (int i = 0; i < DRAWN; i++) {
            draws.fill(one, random);
            sample[i] = one[0];
        }
        assertThat(StatUtils.mean(sample)).isCloseTo(mean, within(4 * Math.sqrt(variance / DRAWN)));
        // The normal law has the largest fourth moment of the three, 3 σ⁴.
        assertThat(StatUtils.variance(sample)).isCloseTo(variance, within(4 * variance * Math.sqrt(2.0 / DRAWN)));
        assertThat(new KolmogorovSmirnovTest().kolmogorovSmirnovTest(law, sample, false))
                .isGreaterThan(0.01);
    }
}
