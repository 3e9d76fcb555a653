package io.github.formulationmath.packing;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Evaporation;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import javax.measure.quantity.Mass;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

final class LossAndFillingTest {

    @Test
    void what_went_off_is_added_back_by_total_mass() {
        MadeBatch made = Lotion.made("316.0", "12.0", "48.0", "20.0", "4.0");
        Evaporation loss = Evaporation.of(made, g("391.2"), line("Aqua"));
        assertThat(loss.loss()).isEqualTo(g("8.8"));
        WorkingAssertions.assertSelfChecking(loss);
        MadeBatch left = loss.notAddedBack();
        assertThat(left.mass()).isEqualTo(g("391.2"));
        assertThat(left.line("Aqua").mass()).isEqualTo(g("307.2"));
        assertThat(left.line("Glycerin").share().fraction()).isEqualTo(Ratio.of(120, 3912));
        WorkingAssertions.assertSelfChecking(left);
        MadeBatch again = loss.addedBack(g("8.8"));
        again.lines()
                .forEach(each -> assertThat(each.share())
                        .isEqualTo(made.lines().get(each.line().index()).share()));
        WorkingAssertions.assertSelfChecking(again);
        WorkingAssertions.assertSelfChecking(again.line("Aqua").share().working());
    }

    /** Each weighing of the pot has letters of its own, so that several can meet in one working. */
    @Test
    void a_pot_weighed_again_and_again_explains_itself() {
        MadeBatch pot = Lotion.made("316.0", "12.0", "48.0", "20.0", "4.0");
        for (String content : List.of("399.0", "398.5", "397.0")) {
            pot = Evaporation.of(pot, Lotion.g(content), Lotion.line("Aqua")).notAddedBack();
            WorkingAssertions.assertSelfChecking(pot);
            WorkingAssertions.assertSelfChecking(pot.line("Aqua"));
        }
    }

    /** Weighed again, the whole is known to one step, and the water is what the others leave of it. */
    @Test
    void the_second_weighing_bounds_what_is_left() {
        MadeBatch made = Lotion.made("316.0", "12.0", "48.0", "20.0", "4.0");
        MadeBatch left = Evaporation.of(made, g("391.2"), line("Aqua")).notAddedBack();
        assertThat(left.line("Aqua").massBounds()).isEqualTo(Interval.of(g("306.7"), g("307.7")));
        Interval<MassFraction> glycerin = left.line("Glycerin").shareBounds();
        assertThat(glycerin.contains(MassFraction.of(Ratio.of(120, 3912)))).isTrue();
        Interval<MassFraction> wider =
                Interval.of(MassFraction.of(Ratio.of(119, 3913)), MassFraction.of(Ratio.of(121, 3911)));
        assertThat(wider.contains(glycerin.least())).isTrue();
        assertThat(wider.contains(glycerin.greatest())).isTrue();
    }

    /**
     * Evaporation is concentration by mass. US Army Medical Department, Subcourse MD0802, Pharmaceutical Calculations,
     * Example Problems 109, read the other way round: 648.57142 g at 14 % hold what 454 g at 20 % hold, so the former
     * evaporated to 454 g is the latter.
     */
    @Test
    void a_dilution_of_the_handbook_read_backwards_is_evaporation() {
        Formula weak = Formula.inPercent("Solution, 14 %")
                .line("Active", "14 %")
                .quantitySufficient("Aqua")
                .build();
        WeighingPlan plan =
                WeighingPlan.of(Batch.of(weak, BatchSize.ofMass("648.57142 g")), Balance.of("0.00001 g", "2 kg"));
        MadeBatch made = MadeBatch.of(Lotion.readings(plan, WeighingMethod.TARE_EACH, "90.80000", "557.77142"));
        MadeBatch left = Evaporation.of(made, g("454"), weak.line("Aqua")).notAddedBack();
        assertThat(left.line("Active").share()).isEqualTo(MassFraction.parse("20 %"));
    }

    @Test
    void losses_that_cannot_be_are_refused() {
        MadeBatch made = Lotion.made("316.0", "12.0", "48.0", "20.0", "4.0");
        assertThatThrownBy(() -> Evaporation.of(made, g("400.1"), line("Aqua"))).hasMessageContaining("vessel");
        assertThatThrownBy(() -> Evaporation.of(made, g("395"), line("Preservative blend")))
                .hasMessageContaining("more than the 4 g");
        assertThatThrownBy(() -> Evaporation.of(made, g("0"), line("Aqua"))).hasMessageContaining("above 0");
    }

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
