package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.mend.Condition;
import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.mend.DisplayedAdditions;
import io.github.formulationmath.mend.Obstacle;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** A condition of mending that lives in another package than mending does: no acid is left over that no base meets. */
final class ForeignConditionTest {

    /** Each gram of acid takes 0.4 g of base. */
    record Neutral(Map<String, Ratio> worth) implements Condition {

        private static final Symbol WORTH = Symbol.of("e", "strength", Kind.NUMBER);

        static Neutral standard() {
            return new Neutral(Map.of("Arginine", Ratio.ONE, "Citric Acid", Ratio.parse("-0.4")));
        }

        @Override
        public String name() {
            return "acid met by base";
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, FormulaLine line) {
            Ratio own = worth.getOrDefault(line.name(), Ratio.ZERO);
            return own.isZero() ? r.literal(0) : r.given(WORTH, line, own, Source.user());
        }

        Ratio excess(MadeBatch made) {
            return made.lines().stream()
                    .map(line -> worth.getOrDefault(line.name(), Ratio.ZERO)
                            .times(line.mass().canonical()))
                    .reduce(Ratio.ZERO, Ratio::plus);
        }
    }

    private static final Neutral NEUTRAL = Neutral.standard();

    private static final Formula FORMULA = Formula.inPercent("toner")
            .quantitySufficient("Aqua")
            .line("Citric Acid", "10 %")
            .line("Arginine", "5 %")
            .build();

    private static MadeBatch pot(String aqua, String acid, String base) {
        WeighingPlan plan = WeighingPlan.of(Batch.of(FORMULA, BatchSize.ofMass("100 g")), Balance.of("0.1 g", "2 kg"));
        return MadeBatch.of(Readings.of(
                plan,
                WeighingMethod.TARE_EACH,
                List.of(
                        Reading.of(FORMULA.line("Aqua"), aqua),
                        Reading.of(FORMULA.line("Citric Acid"), acid),
                        Reading.of(FORMULA.line("Arginine"), base))));
    }

    private static CorrectionRules within(String tolerance) {
        return CorrectionRules.within(Tolerances.of(tolerance));
    }

    /** 3 g of base meet 7.5 g of acid; for 10 g another gram is wanting. */
    @Test
    void a_condition_of_another_package_decides_what_is_added() {
        MadeBatch made = pot("87 g", "10 g", "3 g");
        assertThat(Correction.smallest(made, within("60 %")).outcome()).isEqualTo(Correction.Outcome.NOTHING_TO_DO);
        Correction correction = Correction.smallest(made, within("60 %").keeping(NEUTRAL));
        assertThat(correction.outcome()).isEqualTo(Correction.Outcome.MENDED);
        assertThat(correction.addition(FORMULA.line("Arginine"))).isEqualTo(Amount.mass("1 g"));
        assertThat(correction.total()).isEqualTo(Amount.mass("1 g"));
        assertThat(NEUTRAL.excess(correction.after())).isEqualTo(Ratio.ZERO);
        assertThat(correction.brokenConditions()).isEmpty();
        correction.working().check();
    }

    @Test
    void what_stands_in_its_way_is_told_and_it_is_broken_as_little_as_can_be() {
        MadeBatch made = pot("87 g", "10 g", "3 g");
        CorrectionRules rules =
                within("60 %").keeping(NEUTRAL).withStock(FORMULA.line("Arginine"), Amount.mass("0.5 g"));
        Correction correction = Correction.smallest(made, rules);
        assertThat(correction.outcome()).isEqualTo(Correction.Outcome.BEST_POSSIBLE);
        assertThat(correction.obstacles()).extracting(Obstacle::kind).contains(Obstacle.Kind.CONDITION);
        assertThat(correction.obstacles())
                .contains(new Obstacle(Obstacle.Kind.CONDITION, "acid met by base", Optional.empty()));
        assertThat(correction.brokenConditions()).containsExactly(NEUTRAL);
        assertThat(correction.addition(FORMULA.line("Arginine"))).isEqualTo(Amount.mass("0.5 g"));
        correction.working().check();
    }

    /** The condition is kept at the price of the cap, not the cap at the price of the condition. */
    @Test
    void a_condition_goes_before_a_cap() {
        MadeBatch made = pot("87 g", "10 g", "3 g");
        CorrectionRules rules = within("60 %")
                .withCap(
                        FORMULA.line("Arginine")
                                .ingredient()
                                .parts()
                                .keySet()
                                .iterator()
                                .next(),
                        MassFraction.parse("2 %"))
                .withRoomFor(Amount.mass("102 g"))
                .keeping(NEUTRAL);
        Correction correction = Correction.smallest(made, rules);
        assertThat(correction.outcome()).isEqualTo(Correction.Outcome.BEST_POSSIBLE);
        assertThat(correction.brokenConditions()).isEmpty();
        assertThat(correction.exceededCaps()).hasSize(1);
        assertThat(NEUTRAL.excess(correction.after()).signum()).isNotNegative();
    }

    @Test
    void a_formula_that_breaks_it_cannot_be_restored() {
        MadeBatch made = pot("85 g", "10 g", "5 g");
        assertThat(Correction.restoring(made, within("1 %").keeping(NEUTRAL)).outcome())
                .isEqualTo(Correction.Outcome.NOTHING_TO_DO);
        Neutral strict = new Neutral(Map.of("Arginine", Ratio.ONE, "Citric Acid", Ratio.parse("-0.6")));
        Correction correction = Correction.restoring(made, within("1 %").keeping(strict));
        assertThat(correction.outcome()).isEqualTo(Correction.Outcome.OBSTRUCTED);
        assertThat(correction.brokenConditions()).containsExactly(strict);
        assertThat(correction.obstacles().get(0).phrase().key()).isEqualTo("obstacle.condition");
    }

    /** Whole steps are held against it in integers, and one step fewer of the base would break it or a tolerance. */
    @Property(tries = 60)
    void whole_steps_of_a_display_keep_it(
            @ForAll @IntRange(min = 700, max = 900) int aqua,
            @ForAll @IntRange(min = 60, max = 140) int acid,
            @ForAll @IntRange(min = 10, max = 60) int base) {
        MadeBatch made = pot(tenths(aqua), tenths(acid), tenths(base));
        Correction correction = Correction.smallest(made, within("60 %").keeping(NEUTRAL));
        if (correction.outcome() != Correction.Outcome.MENDED) {
            return;
        }
        DisplayedAdditions shown = correction.onDisplay();
        long bases = base;
        long acids = acid;
        for (var addition : shown.additions()) {
            long steps = addition.mass().ratioTo(Amount.mass("0.1 g")).toLongExact();
            bases += addition.line().name().equals("Arginine") ? steps : 0;
            acids += addition.line().name().equals("Citric Acid") ? steps : 0;
        }
        assertThat(shown.isWithin()).isTrue();
        assertThat(10 * bases).isGreaterThanOrEqualTo(4 * acids);
    }

    private static String tenths(int tenths) {
        return tenths / 10 + "." + tenths % 10 + " g";
    }

    @Test
    void rules_say_what_they_keep() {
        assertThat(within("5 %").keeping(NEUTRAL))
                .isEqualTo(within("5 %").keeping(Neutral.standard()))
                .isNotEqualTo(within("5 %"))
                .hasToString("± 5 %, keeping [" + NEUTRAL + "]");
        assertThat(within("5 %").keeping(NEUTRAL).conditions()).containsExactly(NEUTRAL);
        assertThatNullPointerException()
                .isThrownBy(() -> within("5 %").keeping(null))
                .withMessage("condition");
    }
}
