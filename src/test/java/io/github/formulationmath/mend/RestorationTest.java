package io.github.formulationmath.mend;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class RestorationTest {

    private static final CorrectionRules RULES = CorrectionRules.within(Tolerances.of("2 %"));

    @Test
    void the_line_poured_over_sets_the_new_batch() {
        // 13.5 g of glycerin at 3 % make 450 g; the water then takes 79 % of it, 355.5 g.
        MadeBatch made = Lotion.made("316.0", "13.5", "48.0", "20.0", "4.0");
        Correction restoration = Correction.restoring(made, RULES);
        assertThat(restoration.newMass()).isEqualTo(g("450"));
        assertThat(restoration.bindingLine()).contains(line("Glycerin"));
        assertThat(restoration.addition(line("Aqua"))).isEqualTo(g("39.5"));
        assertThat(restoration.addition(line("Avena Sativa Kernel Oil"))).isEqualTo(g("6"));
        assertThat(restoration.additions()).hasSize(4);
        assertThat(restoration.outcome()).isEqualTo(Correction.Outcome.MENDED);
        WorkingAssertions.assertSelfChecking(restoration);
        WorkingAssertions.assertSelfChecking(restoration.addition(line("Aqua")).working());
        restoration
                .after()
                .lines()
                .forEach(each -> assertThat(each.share()).isEqualTo(each.line().share()));
        WorkingAssertions.assertSelfChecking(restoration.after());
        assertThat(restoration.onDisplay().quality()).isEqualTo(DisplayedAdditions.Quality.WITHIN);
    }

    @Test
    void what_stands_in_the_way_is_said_with_what_is_missing() {
        MadeBatch made = Lotion.made("316.0", "13.5", "48.0", "20.0", "4.0");
        Correction restoration = Correction.restoring(
                made,
                RULES.freezing(line("Glyceryl Stearate SE"))
                        .withStock(line("Avena Sativa Kernel Oil"), g("5"))
                        .withRoomFor(g("430")));
        assertThat(restoration.obstacles())
                .containsExactlyInAnyOrder(
                        new Obstacle(Obstacle.Kind.STOCK_OUT, "Avena Sativa Kernel Oil", Optional.of(g("1"))),
                        new Obstacle(Obstacle.Kind.LINE_FROZEN, "Glyceryl Stearate SE", Optional.of(g("2.5"))),
                        new Obstacle(Obstacle.Kind.VESSEL_FULL, "", Optional.of(g("20"))));
        assertThat(restoration.outcome()).isEqualTo(Correction.Outcome.OBSTRUCTED);
    }

    /**
     * Dilution read backwards. US Army Medical Department, Subcourse MD0802, Pharmaceutical Calculations, Example Problems
     * 109: 454 g of a 20 % ointment diluted to 14 % weigh 648.57142 g. Here the ointment is what is in the pot and the
     * base was left out.
     */
    @Test
    void a_dilution_of_the_handbook_is_a_restoration() {
        Formula ointment = Formula.inPercent("Ointment, 14 % active")
                .line("Active ointment, 20 %", "70 %")
                .quantitySufficient("Ointment base")
                .build();
        Correction restoration = restored(ointment, "454", "0");
        assertThat(restoration.newMass()).isEqualTo(Amount.grams(io.github.formulationmath.number.Ratio.of(4540, 7)));
        assertThat(restoration.newMass().rounded(io.github.formulationmath.number.Rounding.toDecimalPlaces(2)))
                .isEqualTo(g("648.57"));
    }

    /**
     * Alligation read backwards. MD0802, matrix of ratio strengths, page 122: 500 mL of a 1:200 solution are brought to
     * 1:4000 with 9500 mL of water; taken here by mass, the arithmetic being the same.
     */
    @Test
    void an_alligation_of_the_handbook_is_a_restoration() {
        Formula dilute = Formula.inParts("Solution 1:4000")
                .line("Solution 1:200", "1")
                .line("Aqua", "19")
                .build();
        Correction restoration = restored(dilute, "500", "0");
        assertThat(restoration.addition(dilute.line("Aqua"))).isEqualTo(g("9500"));
    }

    /** Alligation, 95 % and 50 % mixed to 70 % in 4 : 5 (lecture page on alligation, healthdocbox). */
    @Test
    void too_much_of_the_weaker_is_made_up_with_the_stronger() {
        Formula spirit = Formula.inParts("Spirit 70 %")
                .line("Spirit 95 %", "4")
                .line("Spirit 50 %", "5")
                .build();
        Correction restoration = restored(spirit, "40", "60");
        assertThat(restoration.addition(spirit.line("Spirit 95 %"))).isEqualTo(g("8"));
        assertThat(restoration.newMass()).isEqualTo(g("108"));
    }

    private static Correction restored(Formula formula, String first, String second) {
        WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("100 g")), Balance.of("1 g", "20 kg"));
        return Correction.restoring(
                MadeBatch.of(Lotion.readings(plan, WeighingMethod.TARE_EACH, first, second)), RULES);
    }

    /** The formula holds 3 % of glycerin: restoring it cannot keep a cap of 2.5 %, and says so. */
    @Test
    void a_cap_that_the_formula_exceeds_stands_in_the_way() {
        MadeBatch made = Lotion.made("316.0", "13.5", "48.0", "20.0", "4.0");
        CorrectionRules capped = RULES.withCap(Substance.of("Glycerin"), MassFraction.parse("2.5 %"));
        Correction restoration = Correction.restoring(made, capped);
        assertThat(restoration.outcome()).isEqualTo(Correction.Outcome.OBSTRUCTED);
        assertThat(restoration.obstacles())
                .containsExactly(new Obstacle(Obstacle.Kind.CAP, "Glycerin", Optional.empty()));
        assertThat(restoration.exceededCaps()).hasSize(1);
        assertThat(restoration.exceededCaps().get(0).least().fraction())
                .isEqualTo(line("Glycerin").fraction());
    }

    @Test
    void a_pot_that_is_right_needs_nothing() {
        Formula two = Formula.inParts("two").line("Oil", "4").line("Wax", "5").build();
        Correction restoration = restored(two, "40", "50");
        assertThat(restoration.outcome()).isEqualTo(Correction.Outcome.NOTHING_TO_DO);
        assertThat(restoration.additions()).isEmpty();
        assertThat(restoration.total().isZero()).isTrue();
    }

    /** Ten thousand lines of a gram each, the first of two: the batch doubles. No linear program is solved. */
    @Test
    void a_formula_of_ten_thousand_lines_is_restored() {
        FormulaBuilder parts = Formula.inParts("long");
        for (int i = 0; i < 10_000; i++) {
            parts.line("L" + i, "1");
        }
        Formula formula = parts.build();
        WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("10 kg")), Balance.of("1 g", "30 kg"));
        List<Reading> read = new ArrayList<>();
        formula.lines().forEach(line -> read.add(Reading.of(line, line.position() == 1 ? "2 g" : "1 g")));
        MadeBatch made = MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, read));
        Correction restoration = Correction.restoring(made, RULES);
        assertThat(restoration.newMass()).isEqualTo(g("20000"));
        assertThat(restoration.additions()).hasSize(9_999);
        assertThat(restoration.outcome()).isEqualTo(Correction.Outcome.MENDED);
        assertThatThrownBy(() -> Correction.smallest(made, RULES)).hasMessageContaining("restore the formula exactly");
    }

    @Test
    void rules_and_lines_of_another_formula_are_refused() {
        MadeBatch made = Lotion.made("316.0", "13.5", "48.0", "20.0", "4.0");
        Formula other = Formula.inPercent("Other").line("Talc", "100 %").build();
        assertThatThrownBy(() -> Correction.restoring(made, RULES.freezing(other.line("Talc"))))
                .hasMessageContaining("Talc");
        assertThatThrownBy(() -> Correction.restoring(made, RULES).addition(other.line("Talc")))
                .hasMessageContaining("Talc");
    }
}
