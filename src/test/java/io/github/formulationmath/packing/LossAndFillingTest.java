package io.github.formulationmath.packing;

import static io.github.formulationmath.pot.Lotion.g;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.support.WorkingAssertions;
import java.util.List;
import javax.measure.quantity.Mass;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

final class LossAndFillingTest {

    @Test
    void packs_are_filled_and_the_last_gets_the_rest() {
        Filling filling = Filling.of(g("391"), g("8"), PackFill.ofMass("50 g"));
        assertThat(filling.fullPacks()).isEqualTo(7);
        assertThat(filling.lastPack()).isEqualTo(g("33"));
        assertThat(filling.overage(8))
                .isEqualTo(Amount.percent(Ratio.of(-17, 400).times(100)));
        assertThat(filling.fill().mass().times(7).plus(filling.lastPack()).plus(filling.residue()))
                .isEqualTo(filling.made());
        WorkingAssertions.assertSelfChecking(filling);
        WorkingAssertions.assertSelfChecking(filling.lastPack().working());
        WorkingAssertions.assertSelfChecking(filling.overage(8).working());
        assertThatThrownBy(() -> filling.overage(0)).hasMessageContaining("0");
        assertThatThrownBy(() -> Filling.of(g("10"), g("11"), PackFill.ofMass("1 g")))
                .hasMessageContaining("11 g");
        assertThatThrownBy(() -> Filling.of(g("-1"), g("0"), PackFill.ofMass("1 g")))
                .hasMessageContaining("-1 g");
        assertThatThrownBy(() -> Filling.of(Amount.mass("1e9 kg"), g("0"), PackFill.ofMass("1 µg")))
                .hasMessageContaining("slip");
    }

    /** MD0802, Example problem 89: 240 mL at a specific gravity of 0.81 weigh 194.4 g. */
    @Test
    void a_fill_by_volume_goes_through_the_density() {
        PackFill fill = PackFill.ofVolume(Amount.volume("240 mL"), Density.ofGramsPerMillilitre("0.81"));
        assertThat(fill.mass()).isEqualTo(g("194.4"));
        WorkingAssertions.assertSelfChecking(fill.mass());
        assertThatThrownBy(() -> PackFill.ofMass("0 g")).hasMessageContaining("above 0");
    }

    @Test
    void an_expected_loss_is_planned_for() {
        ExpectedLoss loss = ExpectedLoss.of(g("8"), g("2"));
        Amount<Mass> batch = loss.toFill(8, PackFill.ofMass("50 g"), CoverageFactor.of(2));
        assertThat(batch).isEqualTo(g("412"));
        WorkingAssertions.assertSelfChecking(batch);
        Amount<Mass> steam =
                loss.withShare(MassFraction.parse("3 %")).toFill(8, PackFill.ofMass("50 g"), CoverageFactor.of(2));
        assertThat(steam.rounded(Rounding.toDecimalPlaces(2))).isEqualTo(g("424.74"));
        assertThat(steam.times(Ratio.parse("0.97"))).isEqualTo(g("412"));
        WorkingAssertions.assertSelfChecking(steam);
        assertThat(Batch.of(Lotion.FORMULA, BatchSize.ofMass(batch)).mass()).isEqualTo(g("412"));
    }

    /** Mean and standard deviation against Commons Math; the spread of the next one is s·√(1 + 1/k). */
    @Test
    void past_losses_give_mean_and_spread() {
        double[] past = {6, 8.5, 10, 7.25};
        ExpectedLoss loss = ExpectedLoss.ofPast(List.of(g("6"), g("8.5"), g("10"), g("7.25")));
        DescriptiveStatistics statistics = new DescriptiveStatistics(past);
        assertThat(loss.mean().exactValue().doubleValue()).isEqualTo(statistics.getMean());
        assertThat(loss.spread().exactValue().doubleValue())
                .isCloseTo(
                        statistics.getStandardDeviation() * Math.sqrt(1.25),
                        org.assertj.core.data.Offset.offset(1e-12));
        WorkingAssertions.assertSelfChecking(loss.toFill(3, PackFill.ofMass("50 g"), CoverageFactor.of(2)));
        assertThatThrownBy(() -> ExpectedLoss.ofPast(List.of(g("6")))).hasMessageContaining("at least two");
        assertThatThrownBy(() -> ExpectedLoss.of(g("-1"), g("0"))).hasMessageContaining("-1 g");
        assertThatThrownBy(() -> loss.withShare(MassFraction.WHOLE)).hasMessageContaining("nothing would be left");
    }
}
