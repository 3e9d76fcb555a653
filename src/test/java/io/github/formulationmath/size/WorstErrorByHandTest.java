package io.github.formulationmath.size;

import static io.github.formulationmath.support.WorkingParts.steps;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.WeighingMethod;
import org.junit.jupiter.api.Test;

/**
 * Bounds of an addition worked out by hand, on a display of 0.1 g: half a division for rounding the target, for the tare and
 * for the reading, 0.05 g each; of what air buoyancy takes or adds only the rounded half grows in proportion.
 */
class WorstErrorByHandTest {

    private static final Balance TENTH = Balance.of("0.1 g", "5 kg");

    private static final Balance IN_AIR = TENTH.withErrors(
            ErrorModel.readabilityOnly().withBuoyancy(Bounds.closed(Ratio.parse("0.0008"), Ratio.parse("0.0014"))));

    private static final Formula LOTION = Formula.inPercent("lotion")
            .quantitySufficient("Aqua")
            .line("Preservative", "0.8 %")
            .build();

    private static MinimumBatch.Found found(Balance balance, Criterion criterion) {
        return (MinimumBatch.Found) MinimumBatch.of(LOTION, balance, criterion);
    }

    private static Criterion within(String tolerance, WeighingMethod method) {
        return Criterion.errorBound(Tolerances.of(tolerance), method);
    }

    /** Too much: 1.0014 · 0.05 + 0.1 = 0.15007 g against 1.05 − 1.0014; too little: 0.15004 g against 1.0008 − 0.95. */
    @Test
    void buoyancy_takes_from_the_tolerance_and_adds_to_the_error() {
        MinimumBatch.Found found = found(IN_AIR, within("5 %", WeighingMethod.TARE_EACH));
        assertThat(found.smallest().canonical())
                .isEqualTo(
                        Ratio.parse("0.15007").dividedBy(Ratio.parse("0.0486").times(Ratio.parse("0.008"))));
        assertThat(steps(found))
                .containsEntry("E_over", Ratio.parse("0.15007"))
                .containsEntry("E_short", Ratio.parse("0.15004"))
                .containsEntry("β_over", Ratio.parse("1.0014"))
                .containsEntry("β_short", Ratio.parse("1.0008"));
    }

    @Test
    void without_buoyancy_and_boat_there_is_one_bound() {
        MinimumBatch.Found found = found(TENTH, within("5 %", WeighingMethod.TARE_EACH));
        assertThat(found.smallest().canonical()).isEqualTo(Ratio.of(375));
        assertThat(steps(found)).containsEntry("E", Ratio.parse("0.15")).doesNotContainKeys("β_over", "E_over");
    }

    /** From a boat at least 0.02 g and at most 0.3 g stay behind: 0.13 g too much, 0.45 g too little. */
    @Test
    void what_stays_in_the_boat_counts_on_the_short_side() {
        Balance sticky =
                TENTH.withErrors(ErrorModel.readabilityOnly().withResidue(Amount.mass("0.02 g"), Amount.mass("0.3 g")));
        MinimumBatch.Found found = found(sticky, within("5 %", WeighingMethod.FROM_BOAT));
        assertThat(found.smallest().canonical()).isEqualTo(Ratio.of(1125));
        assertThat(steps(found))
                .containsEntry("E_over", Ratio.parse("0.13"))
                .containsEntry("E_short", Ratio.parse("0.45"));
        assertThat(found(sticky, within("5 %", WeighingMethod.TARE_EACH))
                        .smallest()
                        .canonical())
                .isEqualTo(Ratio.of(375));
    }

    @Test
    void a_correction_that_uses_up_the_tolerance_to_the_last_leaves_no_batch() {
        assertThat(MinimumBatch.of(LOTION, IN_AIR, within("0.14 %", WeighingMethod.TARE_EACH)))
                .isInstanceOf(MinimumBatch.Impossible.class);
        assertThat(MinimumBatch.of(LOTION, IN_AIR, within("0.141 %", WeighingMethod.TARE_EACH)))
                .isInstanceOf(MinimumBatch.Found.class);
        Balance light = TENTH.withErrors(
                ErrorModel.readabilityOnly().withBuoyancy(Bounds.closed(Ratio.parse("-0.0014"), Ratio.ZERO)));
        assertThat(MinimumBatch.of(LOTION, light, within("0.14 %", WeighingMethod.TARE_EACH)))
                .isInstanceOf(MinimumBatch.Impossible.class);
        assertThat(MinimumBatch.of(LOTION, light, within("0.141 %", WeighingMethod.TARE_EACH)))
                .isInstanceOf(MinimumBatch.Found.class);
    }

    private static Criterion cap(String cap) {
        return Criterion.capKept(Substance.of("Preservative"), MassFraction.parse(cap), WeighingMethod.TARE_EACH);
    }

    /**
     * Cap 1 %, the preservative too much, the water too little: room 0.01 · 1.0008 · 0.992 − 0.99 · 1.0014 · 0.008 =
     * 0.001996848, errors 0.99 · 0.15007 + 0.01 · 0.15004 = 0.1500697 g.
     */
    @Test
    void a_cap_is_kept_against_buoyancy_too() {
        assertThat(found(IN_AIR, cap("1 %")).smallest().canonical())
                .isEqualTo(Ratio.parse("0.1500697").dividedBy(Ratio.parse("0.001996848")));
        // Without it: (0.99 + 0.01) · 0.15 g over 1 % − 0.8 %.
        MinimumBatch.Found plain = found(TENTH, cap("1 %"));
        assertThat(plain.smallest().canonical()).isEqualTo(Ratio.of(75));
        assertThat(plain.bindingLine()).contains(LOTION.line("Preservative"));
    }

    /** 15 g: errors of 0.15 g in all, which is the whole cap of 1 %; a gram less is more than the cap. */
    @Test
    void the_largest_target_may_be_nothing_at_all() {
        assertThat(target("15 g").share()).contains(MassFraction.ZERO);
        assertThat(target("14 g").share()).isEmpty();
        assertThat(target("150 g").share()).contains(MassFraction.parse("0.9 %"));
        assertThat(target("150 g")).hasToString("Preservative at most 0.9 %");
    }

    private static CapTarget target(String size) {
        return CapTarget.of(
                Batch.of(LOTION, BatchSize.ofMass(size)),
                TENTH,
                Substance.of("Preservative"),
                MassFraction.parse("1 %"),
                WeighingMethod.TARE_EACH);
    }

    @Test
    void a_target_needs_the_substance_in_the_formula() {
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> CapTarget.of(
                        Batch.of(LOTION, BatchSize.ofMass("100 g")),
                        TENTH,
                        Substance.of("Aroma"),
                        MassFraction.parse("1 %"),
                        WeighingMethod.TARE_EACH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Aroma")
                .hasMessageContaining("does not contain");
    }
}
