package io.github.formulationmath.size;

import static io.github.formulationmath.support.Made.shareBounds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.MinimumWeight;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The criteria that stand on the errors of an addition: error bound, least net mass, cap kept. */
class WorstErrorCriteriaTest {

    private static final Balance TENTH = Balance.of("0.1 g", "5 kg");
    private static final Substance PRESERVATIVE = Substance.of("Phenoxyethanol");

    private static final Formula LOTION = Formula.inPercent("lotion")
            .quantitySufficient("Aqua")
            .line("Oil", "19 %")
            .line(
                    Ingredient.blend("Preservative blend")
                            .part("Phenoxyethanol", "90 %")
                            .part("Ethylhexylglycerin", "10 %")
                            .build(),
                    MassFraction.parse("0.8 %"))
            .line("Aroma", "0.5 %")
            .build();

    private static MinimumBatch.Found found(Balance balance, Criterion criterion) {
        return (MinimumBatch.Found) MinimumBatch.of(LOTION, balance, criterion);
    }

    @Test
    void a_display_alone_makes_an_error_of_one_and_a_half_divisions() {
        MinimumBatch.Found found = found(TENTH, Criterion.errorBound(Tolerances.of("5 %"), WeighingMethod.TARE_EACH));
        assertThat(found.smallest()).isEqualTo(Amount.mass("600 g"));
        assertThat(found.bindingLine()).contains(LOTION.line("Aroma"));
        WorkingAssertions.assertSelfChecking(found);
    }

    @Test
    void repeatability_counts_as_often_as_the_coverage_factor_says() {
        Balance balance = TENTH.withErrors(ErrorModel.readabilityOnly().withRepeatability("0.05 g"));
        assertThat(found(balance, Criterion.errorBound(Tolerances.of("5 %"), WeighingMethod.TARE_EACH))
                        .smallest())
                .isEqualTo(Amount.mass("600 g"));
        MinimumBatch.Found covered = found(
                balance, Criterion.errorBound(Tolerances.of("5 %"), WeighingMethod.TARE_EACH, CoverageFactor.of(2)));
        assertThat(covered.smallest()).isEqualTo(Amount.mass("1000 g"));
        WorkingAssertions.assertSelfChecking(covered);
    }

    private static final Balance MANY_ERRORS = TENTH.withErrors(ErrorModel.readabilityOnly()
            .withLinearityOfNetReading("0.1 g")
            .withTareResolution(Amount.mass("0.05 g"))
            .withResidue(Amount.mass("0.02 g"), Amount.mass("0.3 g"))
            .withBuoyancy(Bounds.closed(Ratio.parse("0.0008"), Ratio.parse("0.0014"))));

    private static final Balance COARSE_TARE = TENTH.withErrors(
            ErrorModel.readabilityOnly().withLinearityOfNetReading("0.05 g").withTareResolution(Amount.mass("1 g")));

    /** By hand: rounding 0.05 + tare 0.5 + reading 0.05 + linearity 0.05 = 0.65 g against 5 % of 0.5 %: 2600 g. */
    @ParameterizedTest
    @EnumSource(value = WeighingMethod.class, mode = EnumSource.Mode.EXCLUDE, names = "BY_DIFFERENCE")
    void a_coarse_tare_counts_even_if_only_the_first_addition_begins_there(WeighingMethod method) {
        Criterion criterion = Criterion.errorBound(Tolerances.of("5 %"), method);
        Formula dyeFirst = Formula.inPercent("dye first")
                .line("Dye", "0.5 %")
                .quantitySufficient("Aqua")
                .build();
        MinimumBatch.Found found = (MinimumBatch.Found) MinimumBatch.of(dyeFirst, COARSE_TARE, criterion);
        assertThat(found.smallest()).isEqualTo(Amount.mass("2600 g"));
        WorkingAssertions.assertSelfChecking(found);
        AdditionError dye = MadeMasses.of(additions(dyeFirst, found.smallest().canonical(), COARSE_TARE, method))
                .additions()
                .get(0);
        assertThat(dye.largest().canonical()).isEqualTo(Ratio.parse("0.6"));
    }

    /** At every size from the bound on, the error of each planned addition, by the weighing package, is within tolerance. */
    @ParameterizedTest
    @EnumSource(WeighingMethod.class)
    void no_planned_addition_is_off_by_more_than_the_tolerance(WeighingMethod method) {
        Criterion criterion = Criterion.errorBound(Tolerances.of("5 %"), method);
        MinimumBatch.Found found = found(MANY_ERRORS, criterion);
        WorkingAssertions.assertSelfChecking(found);
        RandomFormulas random = new RandomFormulas(51);
        Ratio closest = Ratio.ONE;
        for (int run = 0; run < 300; run++) {
            Ratio size = found.smallest().canonical().plus(Ratio.of(random.below(20_000), 997));
            List<Addition> additions = additions(LOTION, size, MANY_ERRORS, method);
            for (AdditionError error : MadeMasses.of(additions).additions()) {
                Ratio allowed = error.addition().target().canonical().dividedBy(20);
                Ratio left = Ratio.ONE.minus(error.largest().canonical().dividedBy(allowed));
                assertThat(left.signum()).isNotNegative();
                closest = closest.min(left);
            }
        }
        assertThat(closest).as("the bound is not far too large").isLessThan(Ratio.of(35, 100));
    }

    private static List<Addition> additions(Formula formula, Ratio grams, Balance balance, WeighingMethod method) {
        Batch batch = Batch.of(formula, BatchSize.ofMass(Amount.grams(grams)));
        List<Addition> additions = new ArrayList<>();
        WeighingPlan.of(batch, Balance.of(balance.readability(), Amount.mass("100 kg")))
                .lines()
                .forEach(line ->
                        additions.add(Addition.of(line.name(), line.target().mass(), line.reading(), balance)
                                .by(method)));
        return additions;
    }

    @Test
    void a_tolerance_that_buoyancy_uses_up_is_impossible() {
        MinimumBatch none = MinimumBatch.of(
                LOTION, MANY_ERRORS, Criterion.errorBound(Tolerances.of("0.1 %"), WeighingMethod.TARE_EACH));
        assertThat(((MinimumBatch.Impossible) none).reason().key()).isEqualTo("obstacle.no-room-for-error");
        assertThat(MinimumBatch.of(LOTION, TENTH, Criterion.errorBound(Tolerances.of("0 %"), WeighingMethod.TARE_EACH)))
                .isInstanceOf(MinimumBatch.Impossible.class);
    }

    /**
     * USP general chapter 41 (1 August 2019): 300.00 mg for s = 0.00015 g; and 820 d where s is below 0.41 d, 8.2 g on 0.01
     * g. Minimum weighable quantity: sensitivity 6 mg at 5 % is 120 mg (University of North Carolina, weighing laboratory).
     */
    @ParameterizedTest
    @CsvSource({"0.3 g, 60 g", "8.2 g, 1640 g", "0.12 g, 24 g"})
    void no_line_is_below_the_least_net_mass(String least, String batch) {
        MinimumBatch.Found found = found(TENTH, Criterion.leastNetMass(Amount.mass(least)));
        assertThat(found.smallest()).isEqualTo(Amount.mass(batch));
        WorkingAssertions.assertSelfChecking(found);
    }

    /** USP general chapter 41: s = 0.00015 g gives 0.3 g; below 0.41 d it is 820 d, on 0.01 g 8.2 g. */
    @Test
    void the_pharmacopoeial_rule_follows_the_balance() {
        Balance fine = Balance.of("0.0001 g", "200 g")
                .withErrors(ErrorModel.readabilityOnly().withRepeatability("0.00015 g"));
        MinimumBatch.Found found = found(fine, Criterion.minimumWeight());
        assertThat(found.smallest()).isEqualTo(Amount.mass("60 g"));
        WorkingAssertions.assertSelfChecking(found);
        assertThat(found(Balance.of("0.01 g", "200 g"), Criterion.minimumWeight())
                        .smallest())
                .isEqualTo(Amount.mass("1640 g"));
        Amount<Mass> weighable = MinimumWeight.bySensitivity(Amount.mass("6 mg"), Ratio.of(5, 100));
        assertThat(found(fine, Criterion.leastNetMass(weighable)).smallest()).isEqualTo(Amount.mass("24 g"));
        assertThatThrownBy(() -> Criterion.minimumWeight(MassFraction.ZERO, CoverageFactor.of(2)))
                .hasMessageContaining("above 0");
    }

    @Test
    void a_cap_that_errors_only_help_to_keep_needs_no_negative_batch() {
        Balance lossy =
                TENTH.withErrors(ErrorModel.readabilityOnly().withResidue(Amount.mass("3 g"), Amount.mass("3 g")));
        MinimumBatch.Found found =
                found(lossy, Criterion.capKept(PRESERVATIVE, MassFraction.parse("1 %"), WeighingMethod.FROM_BOAT));
        assertThat(found.smallest()).isEqualTo(Amount.mass("0.1 g"));
        WorkingAssertions.assertSelfChecking(found);
    }

    @Test
    void a_least_net_mass_is_above_nothing() {
        assertThatThrownBy(() -> Criterion.leastNetMass(Amount.mass("0 g")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** The guaranteed upper share by all corners of the errors is the cap itself at the smallest batch, and above it below. */
    @Test
    void the_smallest_batch_that_keeps_a_cap_just_keeps_it() {
        Criterion criterion = Criterion.capKept(PRESERVATIVE, MassFraction.parse("1 %"), WeighingMethod.TARE_EACH);
        MinimumBatch.Found found = found(TENTH, criterion);
        WorkingAssertions.assertSelfChecking(found);
        Ratio error = Ratio.parse("0.15");
        assertThat(highestShare(found.smallest().canonical(), error)).isEqualTo(Ratio.of(1, 100));
        assertThat(highestShare(found.smallest().canonical().minus(Ratio.of(1, 1000)), error))
                .isGreaterThan(Ratio.of(1, 100));
        for (int run = 0; run < 100; run++) {
            Ratio size = found.smallest().canonical().plus(Ratio.of(run * 7L, 3));
            MadeMasses made = MadeMasses.of(additions(LOTION, size, TENTH, WeighingMethod.TARE_EACH));
            List<Ratio> strengths = List.of(Ratio.ZERO, Ratio.ZERO, Ratio.of(9, 10), Ratio.ZERO);
            assertThat(shareBounds(made, strengths).upper().orElseThrow()).isLessThanOrEqualTo(Ratio.of(1, 100));
        }
    }

    private static Ratio highestShare(Ratio size, Ratio error) {
        Ratio highest = Ratio.ZERO;
        for (int corner = 0; corner < 16; corner++) {
            Ratio sum = Ratio.ZERO;
            Ratio part = Ratio.ZERO;
            for (int i = 0; i < 4; i++) {
                Ratio off = (corner >> i & 1) == 1 ? error : error.unaryMinus();
                Ratio mass = LOTION.lines().get(i).fraction().times(size).plus(off);
                sum = sum.plus(mass);
                part = part.plus(mass.times(i == 2 ? Ratio.of(9, 10) : Ratio.ZERO));
            }
            highest = highest.max(part.dividedBy(sum));
        }
        return highest;
    }

    @Test
    void a_target_at_its_cap_has_no_batch_but_a_largest_target() {
        MassFraction cap = MassFraction.parse("0.72 %");
        MinimumBatch none =
                MinimumBatch.of(LOTION, TENTH, Criterion.capKept(PRESERVATIVE, cap, WeighingMethod.TARE_EACH));
        assertThat(((MinimumBatch.Impossible) none).reason().key()).isEqualTo("obstacle.target-at-cap");
        Formula simple = Formula.inPercent("simple")
                .line("Aqua", "80 %")
                .line("Oil", "19 %")
                .line("Preservative", "1 %")
                .build();
        Batch batch = Batch.of(simple, BatchSize.ofMass("200 g"));
        Substance preservative = Substance.of("Preservative");
        CapTarget target =
                CapTarget.of(batch, TENTH, preservative, MassFraction.parse("1 %"), WeighingMethod.TARE_EACH);
        assertThat(target.share()).contains(MassFraction.parse("0.92425 %"));
        WorkingAssertions.assertSelfChecking(target);
        CapTarget tooMuch = CapTarget.of(
                Batch.of(simple, BatchSize.ofMass("10 g")),
                TENTH,
                preservative,
                MassFraction.parse("1 %"),
                WeighingMethod.TARE_EACH);
        assertThat(tooMuch.share()).isEmpty();
        assertThatThrownBy(() -> CapTarget.of(
                        batch, MANY_ERRORS, preservative, MassFraction.parse("1 %"), WeighingMethod.TARE_EACH))
                .hasMessageContaining("buoyancy");
    }

    @Test
    void a_cap_kept_with_many_errors_is_kept_by_every_plan() {
        MinimumBatch.Found found = found(
                MANY_ERRORS, Criterion.capKept(PRESERVATIVE, MassFraction.parse("0.9 %"), WeighingMethod.FROM_BOAT));
        WorkingAssertions.assertSelfChecking(found);
        for (int run = 0; run < 100; run++) {
            Ratio size = found.smallest().canonical().plus(Ratio.of(run * 7L, 3));
            MadeMasses made = MadeMasses.of(additions(LOTION, size, MANY_ERRORS, WeighingMethod.FROM_BOAT));
            List<Ratio> strengths = List.of(Ratio.ZERO, Ratio.ZERO, Ratio.of(9, 10), Ratio.ZERO);
            assertThat(shareBounds(made, strengths).upper().orElseThrow()).isLessThanOrEqualTo(Ratio.of(9, 1000));
        }
    }
}
