package io.github.formulationmath.plan;

import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.ErrorSource;
import io.github.formulationmath.weighing.WeighingMethod;
import javax.measure.quantity.Dimensionless;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class ExpectedProductTest {

    private static final Formula BALM = Formula.inPercent("Plain balm")
            .phase("oils")
            .quantitySufficient("Helianthus Annuus Seed Oil")
            .line("Cera Alba", "20 %")
            .line("Tocopherol", "0.5 %")
            .build();

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    private static ExpectedProduct expect(String size, Balance balance, WeighingMethod method, Closure closure) {
        return ExpectedProduct.of(
                WeighingPlan.of(
                        Batch.of(BALM, BatchSize.ofMass(size)),
                        Bench.of(balance).closing(closure)),
                method);
    }

    private static Interval<Amount<Dimensionless>> interval(Ratio least, Ratio greatest) {
        return Interval.of(Amount.percent(least.times(100)), Amount.percent(greatest.times(100)));
    }

    /** By hand: 79.5 g, 20 g, 0.5 g, each ± 0.1 g. */
    @Test
    void intervals_by_hand() {
        ExpectedProduct product = expect("100 g", TENTH, WeighingMethod.TARE_EACH, Closure.INDEPENDENT);
        ExpectedLine tocopherol = product.line("Tocopherol");
        // 0.4/(0.4 + 79.6 + 20.1) to 0.6/(0.6 + 79.4 + 19.9)
        assertThat(tocopherol.bounds()).isEqualTo(interval(Ratio.of(4, 1001), Ratio.of(6, 999)));
        assertThat(tocopherol.deviation().canonical())
                .isEqualTo(Ratio.of(6, 999).minus(Ratio.of(5, 1000)));
        assertThat(tocopherol.relativeDeviation().canonical())
                .isEqualTo(Ratio.of(6, 999).dividedBy(Ratio.of(5, 1000)).minus(Ratio.ONE));
        assertThat(tocopherol.made().budget().share(ErrorSource.READING)).isEqualTo(Ratio.of(1, 2));
        // 400/1001 = 0.39960… and 600/999 = 0.60060…, outwards
        assertThat(tocopherol).hasToString("Tocopherol 0.5 % in [0.3996, 0.600601] %");
        assertThat(tocopherol.made().budget()).hasToString("variance from [TARE 50 %, READING 50 %]");
    }

    /** Glycerin in both phases: by name alone it is not one line. */
    @Test
    void a_line_is_found_by_phase_and_name() {
        Formula twice = Formula.inPercent("Twice")
                .phase("hot")
                .quantitySufficient("Aqua")
                .line("Glycerin", "3 %")
                .phase("cool")
                .line("Glycerin", "2 %")
                .build();
        WeighingPlan plan = WeighingPlan.of(Batch.of(twice, BatchSize.ofMass("100 g")), TENTH);
        assertThat(plan.batch().line("cool", "Glycerin").mass()).isEqualTo(Amount.mass("2 g"));
        assertThat(plan.line("cool", "Glycerin").reading()).isEqualTo(Amount.mass("2 g"));
        ExpectedProduct product = ExpectedProduct.of(plan, WeighingMethod.TARE_EACH);
        assertThat(product.line("hot", "Glycerin").planned()).isEqualTo(plan.line("hot", "Glycerin"));
        assertThatThrownBy(() -> product.line("Glycerin")).hasMessageContaining("line(phase, ingredient)");
        assertThatThrownBy(() -> plan.line("cool", "Aqua")).hasMessageContaining("stands in phase hot");
    }

    @Test
    void verdicts() {
        ExpectedProduct product = expect("100 g", TENTH, WeighingMethod.TARE_EACH, Closure.CLOSED);
        Tolerances two = Tolerances.of("2 %");
        assertThat(product.line("Cera Alba").verdict(two)).isEqualTo(ToleranceVerdict.WITHIN);
        assertThat(product.line("Tocopherol").verdict(two)).isEqualTo(ToleranceVerdict.NOT_SHOWN_WITHIN);
        assertThat(product.notShownWithin(two)).containsExactly(product.line("Tocopherol"));
        assertThat(product.notShownWithin(two.withLine("Tocopherol", "25 %"))).isEmpty();
        // 10 g: 0.05 g of Tocopherol are shown as 0.0 g; made 0 to 0.1 g, while 5 % of it allows 0.0475 g to 0.0525 g.
        ExpectedProduct small = expect("10 g", TENTH, WeighingMethod.TARE_EACH, Closure.CLOSED);
        assertThat(small.line("Tocopherol").verdict(Tolerances.of("5 %"))).isEqualTo(ToleranceVerdict.NOT_SHOWN_WITHIN);
        assertThatThrownBy(() -> product.notShownWithin(two.withLine("Aqua", "1 %")))
                .hasMessageContaining("Aqua");
    }

    /**
     * 0.6, 0.6 and 98.8 divisions, closed to 100: the remainders go to the largest and the first of the two small lines, and
     * the second reads 0. With a perfect tare it is at most half a division, 0.5/99.5 at most, below 0.6 % less a tenth.
     */
    @Test
    void outside_when_the_reading_alone_is_too_far_off() {
        Formula formula = Formula.inPercent("Two traces")
                .quantitySufficient("Aqua")
                .line("First", "0.6 %")
                .line("Second", "0.6 %")
                .build();
        Balance tared = TENTH.withErrors(ErrorModel.readabilityOnly().withTareResolution(Amount.mass("0 g")));
        ExpectedProduct product = ExpectedProduct.of(
                WeighingPlan.of(
                        Batch.of(formula, BatchSize.ofMass("10 g")),
                        Bench.of(tared).closing(Closure.CLOSED)),
                WeighingMethod.TARE_EACH);
        Tolerances tenth = Tolerances.of("10 %");
        assertThat(product.line("First").verdict(tenth)).isEqualTo(ToleranceVerdict.NOT_SHOWN_WITHIN);
        assertThat(product.line("Second").verdict(tenth)).isEqualTo(ToleranceVerdict.OUTSIDE);
        // 0.05/(0.05 + 9.85 + 0.05)
        assertThat(product.line("Second").bounds()).isEqualTo(interval(Ratio.ZERO, Ratio.of(5, 995)));
        assertSelfChecking(product.line("Second").deviationAgainst(tenth).working());
    }

    @Test
    void covering_takes_the_repeatability_in() {
        Balance noisy = TENTH.withErrors(ErrorModel.readabilityOnly().withRepeatability("0.1 g"));
        ExpectedProduct bare = expect("100 g", noisy, WeighingMethod.TARE_EACH, Closure.CLOSED);
        ExpectedProduct covered = bare.covering(CoverageFactor.of(2));
        Interval<Amount<Dimensionless>> wide = covered.line("Cera Alba").bounds();
        Interval<Amount<Dimensionless>> narrow = bare.line("Cera Alba").bounds();
        assertThat(wide.contains(narrow.least())).isTrue();
        assertThat(wide.contains(narrow.greatest())).isTrue();
        // 20 ± (0.1 + 0.2) g, the others 80 ∓ 0.6 g
        assertThat(wide.greatest().canonical()).isEqualTo(Ratio.of(203, 997));
        assertThat(covered.line("Cera Alba").made().uncertainty())
                .isEqualTo(bare.line("Cera Alba").made().uncertainty());
    }

    @Tag("long")
    @Test
    void every_number_shows_its_working() {
        Balance known = TENTH.withErrors(ErrorModel.readabilityOnly()
                .withRepeatability("0.05 g")
                .withLinearityOfNetReading("0.1 g")
                .withCalibration(Ratio.of(1, 1000)));
        for (WeighingMethod method : WeighingMethod.values()) {
            for (Closure closure : Closure.values()) {
                ExpectedProduct product = expect("123.4 g", known, method, closure);
                for (ExpectedLine line : product.lines()) {
                    assertSelfChecking(line);
                    assertSelfChecking(line.relativeDeviation());
                    assertSelfChecking(
                            line.deviationAgainst(Tolerances.of("3 %").withLine("Tocopherol", "1 %"))
                                    .working());
                    assertSelfChecking(line.made().uncertainty());
                    assertSelfChecking(line.addition());
                }
            }
        }
    }

    @Test
    void verdicts_have_words() {
        for (ToleranceVerdict verdict : ToleranceVerdict.values()) {
            assertThat(Wording.english().text(verdict.phrase("Tocopherol"))).startsWith("Tocopherol ");
        }
    }
}
