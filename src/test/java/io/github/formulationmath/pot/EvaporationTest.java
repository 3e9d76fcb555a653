package io.github.formulationmath.pot;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A pot weighed again: what went off, and what that tells of the lines. */
final class EvaporationTest {

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
}
