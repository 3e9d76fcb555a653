package io.github.formulationmath.size;

import static io.github.formulationmath.support.WorkingParts.steps;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.WeighingMethod;
import org.junit.jupiter.api.Test;

/**
 * An acid that has to be neutralised, worked out by hand on a display of 0.1 g, where an addition is off by 0.15 g at worst:
 * {@code base − need · acid ≥ 0} in whatever is really weighed.
 */
class SumKeptTest {

    private static final Balance TENTH = Balance.of("0.1 g", "5 kg");

    /** One gram of the acid takes so many of the base; water takes no part. */
    private record Neutralised(Ratio need) implements Criterion.KeptSum {

        @Override
        public Phrase asked() {
            return Phrase.of("house.acid-neutralised");
        }

        @Override
        public Phrase obstacle() {
            return Phrase.of("house.too-little-base");
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, FormulaLine line) {
            return switch (line.name()) {
                case "Base" -> r.literal(1);
                case "Acid" -> r.literal(need.unaryMinus());
                default -> r.literal(0);
            };
        }
    }

    private static final Criterion.KeptSum TWO_FIFTHS = new Neutralised(Ratio.of(2, 5));

    private static Formula with(String acid, String base) {
        return Formula.inPercent("peel")
                .quantitySufficient("Aqua")
                .line("Acid", acid)
                .line("Base", base)
                .build();
    }

    private static final Formula PEEL = with("1 %", "0.5 %");

    private static MinimumBatch.Found found(Formula formula, Balance balance, Criterion criterion) {
        return (MinimumBatch.Found) MinimumBatch.of(formula, balance, criterion);
    }

    private static Ratio smallest(Balance balance, WeighingMethod method) {
        MinimumBatch.Found found = found(PEEL, balance, Criterion.sumKept(TWO_FIFTHS, method));
        found.working().check();
        return found.smallest().canonical();
    }

    /** Room 0.5 % − 0.4 · 1 % = 0.1 %, errors (1 + 0.4) · 0.15 g = 0.21 g: 210 g, bound by the base, which counts most. */
    @Test
    void every_error_counts_against_the_room_that_the_targets_leave() {
        MinimumBatch.Found found = found(PEEL, TENTH, Criterion.sumKept(TWO_FIFTHS, WeighingMethod.TARE_EACH));
        assertThat(found.smallest()).isEqualTo(Amount.mass("210 g"));
        assertThat(found.bindingLine()).contains(PEEL.line("Base"));
        assertThat(found.sizes().asked()).containsExactly(Phrase.of("house.acid-neutralised"));
        assertThat(found.sizes().contains("209.9 g")).isFalse();
        assertThat(found.sizes().contains("210.1 g")).isTrue();
        WorkingAssertions.assertSelfChecking(found);
        assertThat(steps(found)).containsEntry("H", Ratio.parse("0.21")).containsEntry("G", Ratio.parse("0.001"));
    }

    /** Where five grams of base are needed, the acid's error counts most: (1 + 5) · 0.15 g over 6 % − 5 · 1 %. */
    @Test
    void the_line_whose_error_weighs_most_binds() {
        Formula strong = with("1 %", "6 %");
        MinimumBatch.Found found =
                found(strong, TENTH, Criterion.sumKept(new Neutralised(Ratio.of(5)), WeighingMethod.TARE_EACH));
        assertThat(found.smallest()).isEqualTo(Amount.mass("90 g"));
        assertThat(found.bindingLine()).contains(strong.line("Acid"));
    }

    /** 0.02 to 0.3 g stay in a boat: base 0.15 + 0.3 g too little, acid 0.15 − 0.02 g too much: 0.45 + 0.4 · 0.13 = 0.502. */
    @Test
    void what_helps_is_taken_at_its_least_and_what_hurts_at_its_most() {
        Balance sticky =
                TENTH.withErrors(ErrorModel.readabilityOnly().withResidue(Amount.mass("0.02 g"), Amount.mass("0.3 g")));
        assertThat(smallest(sticky, WeighingMethod.FROM_BOAT)).isEqualTo(Ratio.of(502));
    }

    /** Room 1.0008 · 0.5 % − 0.4 · 1.0014 · 1 %; errors 0.15004 + 0.4 · 0.15007 g, as half of a division grows with the air. */
    @Test
    void buoyancy_takes_from_the_room_in_proportion() {
        Balance inAir = TENTH.withErrors(
                ErrorModel.readabilityOnly().withBuoyancy(Bounds.closed(Ratio.parse("0.0008"), Ratio.parse("0.0014"))));
        assertThat(smallest(inAir, WeighingMethod.TARE_EACH))
                .isEqualTo(Ratio.parse("0.210068").dividedBy(Ratio.parse("0.0009984")));
    }

    /** Four grams of base a gram: H = 0.15 + ℓ + 4 · (0.15 − ℓ) = 0.75 − 3ℓ is nothing at ℓ = 0.25 g, and less beyond. */
    @Test
    void where_errors_only_help_any_batch_will_do_that_the_display_can_show() {
        Formula sharp = with("1 %", "5 %");
        Criterion kept = Criterion.sumKept(new Neutralised(Ratio.of(4)), WeighingMethod.FROM_BOAT);
        for (String residue : new String[] {"0.25 g", "0.3 g"}) {
            Balance sticky = TENTH.withErrors(
                    ErrorModel.readabilityOnly().withResidue(Amount.mass(residue), Amount.mass(residue)));
            assertThat(found(sharp, sticky, kept).smallest()).isEqualTo(Amount.mass("0.1 g"));
        }
        Balance little = TENTH.withErrors(
                ErrorModel.readabilityOnly().withResidue(Amount.mass("0.24 g"), Amount.mass("0.24 g")));
        assertThat(found(sharp, little, kept).smallest()).as("0.03 g over 1 %").isEqualTo(Amount.mass("3 g"));
    }

    @Test
    void targets_that_leave_no_room_are_kept_by_no_batch_and_the_sum_says_why() {
        Criterion kept = Criterion.sumKept(TWO_FIFTHS, WeighingMethod.TARE_EACH);
        for (String base : new String[] {"0.4 %", "0.39 %"}) {
            MinimumBatch none = MinimumBatch.of(with("1 %", base), TENTH, kept);
            assertThat(((MinimumBatch.Impossible) none).reason()).isEqualTo(Phrase.of("house.too-little-base"));
        }
        assertThat(found(with("1 %", "0.41 %"), TENTH, kept).smallest())
                .as("0.21 g over 0.01 %")
                .isEqualTo(Amount.mass("2100 g"));
    }

    /** With s = 0.05 g taken in twice an addition is off by 0.25 g: 1.4 · 0.25 g over 0.1 %. */
    @Test
    void a_repeatability_has_no_bound_unless_it_is_said_how_often_it_counts() {
        Balance spread = TENTH.withErrors(ErrorModel.readabilityOnly().withRepeatability("0.05 g"));
        MinimumBatch none = MinimumBatch.of(PEEL, spread, Criterion.sumKept(TWO_FIFTHS, WeighingMethod.TARE_EACH));
        assertThat(((MinimumBatch.Impossible) none).reason())
                .hasToString(
                        "the repeatability of the balance has no bound, so that no size is sure: say with which coverage"
                                + " factor it is to be taken in");
        Criterion covered = Criterion.sumKept(TWO_FIFTHS, WeighingMethod.TARE_EACH, CoverageFactor.of(2));
        assertThat(found(PEEL, spread, covered).smallest()).isEqualTo(Amount.mass("350 g"));
        assertThat(found(PEEL, TENTH, covered).smallest())
                .as("a balance without one")
                .isEqualTo(Amount.mass("210 g"));
    }

    /** A q.s. line that takes a rest is off by three halves of a division instead of one: H gains nothing where it has no say. */
    @Test
    void a_line_of_no_weight_in_the_sum_adds_no_error() {
        Criterion kept = Criterion.sumKept(TWO_FIFTHS, WeighingMethod.TARE_EACH);
        Bench bench = Bench.of(TENTH).closing(Closure.QS_TAKES_REST);
        assertThat(kept.on(PEEL, bench).smallest()).contains(Amount.mass("210 g"));
    }
}
