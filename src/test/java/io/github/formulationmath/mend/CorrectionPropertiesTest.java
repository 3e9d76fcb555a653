package io.github.formulationmath.mend;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws of corrections on random formulas poured wrongly. */
final class CorrectionPropertiesTest {

    /** What was asked for in parts, what was poured as permille of it, a tolerance in permille. */
    record Mishap(List<Integer> parts, List<Integer> poured, int tolerance, int frozen) {

        Formula formula() {
            return RandomFormulas.formula(parts);
        }

        MadeBatch made() {
            WeighingPlan plan =
                    WeighingPlan.of(Batch.of(formula(), BatchSize.ofMass("100 g")), Balance.of("0.01 g", "20 kg"));
            List<Reading> readings = new ArrayList<>();
            for (FormulaLine line : plan.batch().formula().lines()) {
                Ratio wanted =
                        line.fraction().times(100 * poured.get(line.index())).dividedBy(1000);
                Ratio shown = wanted.times(100)
                        .toWhole(java.math.RoundingMode.HALF_EVEN)
                        .dividedBy(100);
                readings.add(Reading.of(line, Amount.grams(shown.max(Ratio.of(1, 100)))));
            }
            return MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings));
        }

        CorrectionRules rules() {
            CorrectionRules rules = CorrectionRules.within(Tolerances.of(MassFraction.of(Ratio.of(tolerance, 1000))));
            return frozen < parts.size() ? rules.freezing(formula().lines().get(frozen)) : rules;
        }
    }

    @Provide
    Arbitrary<Mishap> mishaps() {
        return Arbitraries.integers()
                .between(2, 7)
                .flatMap(n -> Combinators.combine(
                                Arbitraries.integers().between(1, 500).list().ofSize(n),
                                Arbitraries.integers().between(700, 1400).list().ofSize(n),
                                Arbitraries.integers().between(1, 60),
                                Arbitraries.integers().between(0, 20))
                        .as(Mishap::new));
    }

    @Property(tries = 300)
    void the_restored_shares_are_those_of_the_formula(@ForAll("mishaps") Mishap mishap) {
        MadeBatch made = mishap.made();
        Correction restoration = Correction.restoring(made, mishap.rules());
        MadeBatch after = restoration.after();
        after.lines()
                .forEach(line -> assertThat(line.share()).isEqualTo(line.line().share()));
        assertThat(restoration.additions()).allMatch(addition -> addition.mass().signum() > 0);
        assertThat(restoration.addition(restoration.bindingLine().orElseThrow()).isZero())
                .isTrue();
        assertThat(after.mass()).isEqualTo(restoration.newMass());
        assertConserved(made, restoration.additions(), after);
    }

    /** A smaller batch would leave the binding line with more than its share, so none can be restored. */
    @Property(tries = 100)
    void no_smaller_batch_can_be_restored(@ForAll("mishaps") Mishap mishap) {
        MadeBatch made = mishap.made();
        Correction restoration = Correction.restoring(made, mishap.rules());
        FormulaLine binding = restoration.bindingLine().orElseThrow();
        Ratio there = made.lines().get(binding.index()).mass().canonical();
        assertThat(there)
                .isEqualTo(binding.fraction().times(restoration.after().mass().canonical()));
    }

    /** Where nothing stands in the way, the smallest additions that leave no line off at all are those that restore. */
    @Property(tries = 60)
    void restoring_is_the_smallest_correction_with_no_tolerance(@ForAll("mishaps") Mishap mishap) {
        MadeBatch made = mishap.made();
        CorrectionRules exact = CorrectionRules.within(Tolerances.of("0 %"));
        Correction restoration = Correction.restoring(made, exact);
        Correction smallest = Correction.smallest(made, exact);
        assertThat(restoration.outcome() == Correction.Outcome.OBSTRUCTED)
                .isEqualTo(smallest.outcome() == Correction.Outcome.BEST_POSSIBLE);
        if (restoration.obstacles().isEmpty()) {
            assertThat(restoration.additions()).isEqualTo(smallest.additions());
            assertThat(restoration.outcome()).isEqualTo(smallest.outcome());
            restoration.working().check();
        }
    }

    @Property(tries = 150)
    void corrections_keep_what_they_promise(@ForAll("mishaps") Mishap mishap) {
        MadeBatch made = mishap.made();
        Correction correction = Correction.smallest(made, mishap.rules());
        MadeBatch after = correction.after();
        assertConserved(made, correction.additions(), after);
        Ratio worst = after.check(mishap.rules().tolerances()).stream()
                .map(check -> check.deviation().canonical().abs())
                .reduce(Ratio.ZERO, Ratio::max);
        if (correction.outcome() == Correction.Outcome.BEST_POSSIBLE) {
            assertThat(worst)
                    .isEqualTo(correction.worstDeviation().orElseThrow().canonical());
            assertThat(correction.obstacles()).isNotEmpty();
            assertThat(worst).isGreaterThan(Ratio.of(mishap.tolerance(), 1000));
        } else {
            assertThat(worst).isLessThanOrEqualTo(Ratio.of(mishap.tolerance(), 1000));
            assertThat(correction
                            .total()
                            .compareTo(
                                    Correction.restoring(made, mishap.rules()).total()))
                    .isLessThanOrEqualTo(0);
        }
        assertThat(correction.additions())
                .noneMatch(addition -> mishap.rules().frozen().contains(addition.line()));
    }

    @Property(tries = 15)
    void corrections_show_their_working(@ForAll("mishaps") Mishap mishap) {
        Correction correction = Correction.smallest(mishap.made(), mishap.rules());
        WorkingAssertions.assertSelfChecking(correction);
        correction.worstDeviation().ifPresent(WorkingAssertions::assertSelfChecking);
    }

    @Property(tries = 40)
    void displayed_additions_are_within_and_no_smaller_than_the_exact_ones(@ForAll("mishaps") Mishap mishap) {
        Correction correction = Correction.smallest(mishap.made(), mishap.rules());
        DisplayedAdditions displayed = correction.onDisplay();
        boolean within = displayed.after().check(mishap.rules().tolerances()).stream()
                .allMatch(check -> check.allowed().contains(check.line().share()));
        if (displayed.isWithin()) {
            assertThat(within).isTrue();
            assertThat(displayed.total().compareTo(correction.total())).isGreaterThanOrEqualTo(0);
        } else {
            assertThat(within).isFalse();
        }
        displayed
                .additions()
                .forEach(addition -> assertThat(
                                addition.mass().ratioTo(Amount.mass("0.01 g")).isInteger())
                        .isTrue());
    }

    @Property(tries = 100)
    void what_the_displays_hide_holds_what_they_show(@ForAll("mishaps") Mishap mishap) {
        MadeBatch made = mishap.made();
        for (MadeBatch pot :
                List.of(made, Correction.restoring(made, mishap.rules()).after())) {
            for (MadeLine line : pot.lines()) {
                assertThat(line.massBounds().contains(line.mass())).isTrue();
                assertThat(line.shareBounds().contains(line.share())).isTrue();
            }
        }
        assertThat(Substance.of("L0").name()).isEqualTo("L0");
    }

    private static void assertConserved(MadeBatch before, List<LineAddition> additions, MadeBatch after) {
        Ratio added =
                additions.stream().map(addition -> addition.mass().exactValue()).reduce(Ratio.ZERO, Ratio::plus);
        assertThat(after.mass().canonical()).isEqualTo(before.mass().canonical().plus(added));
    }
}
