package io.github.formulationmath.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import org.junit.jupiter.api.Test;

/** What a pre-dilution delivers is worked out here from the corners of its three weighings. */
class PredilutionDeliveredTest {

    /** Both readings of a weighing, after taring and after pouring, hide up to half a division: ± 1 division in all. */
    private static Ratio worst(Ratio exact, Ratio parts, Ratio substance, Ratio d) {
        Ratio diluent = substance.times(parts.minus(Ratio.ONE));
        Ratio aliquot = exact.times(parts);
        Ratio shown = nearest(aliquot.dividedBy(d)).times(d);
        Ratio worst = Ratio.ZERO;
        for (int corner = 0; corner < 8; corner++) {
            Ratio a = substance.plus(d.times((corner & 1) * 2L - 1));
            Ratio b = diluent.plus(d.times((corner & 2) - 1L));
            Ratio q = shown.plus(d.times((corner & 4) / 2L - 1));
            if (a.signum() <= 0 && b.signum() <= 0) {
                return Ratio.ONE;
            }
            Ratio delivered = a.max(Ratio.ZERO)
                    .dividedBy(a.max(Ratio.ZERO).plus(b.max(Ratio.ZERO)))
                    .times(q.max(Ratio.ZERO));
            worst = worst.max(delivered.minus(exact).abs().dividedBy(exact));
        }
        return worst;
    }

    private static Ratio nearest(Ratio x) {
        Ratio floor = x.floor();
        int half = x.minus(floor).compareTo(Ratio.of(1, 2));
        boolean up = half > 0 || half == 0 && !floor.dividedBy(2).isInteger();
        return up ? floor.plus(Ratio.ONE) : floor;
    }

    @Test
    void what_is_delivered_is_within_the_tolerance_and_no_smaller_dilution_delivers_it() {
        RandomFormulas random = new RandomFormulas(1131);
        int plans = 0;
        for (int run = 0; run < 120; run++) {
            Formula formula = Formula.inParts("powder")
                    .line("Substance", (1 + random.below(40)) + "/1000")
                    .line("Carrier", Integer.toString(10 + random.below(40)))
                    .build();
            Batch batch = Batch.of(formula, BatchSize.ofMass((100 + random.below(300)) + " g"));
            Ratio d = Ratio.of(1, new int[] {100, 50, 20, 10}[random.below(4)]);
            Balance balance = Balance.of(Amount.grams(d), Amount.mass("2 kg"));
            int percent = 1 + random.below(10);
            Predilution answer = Predilution.of(
                    batch, formula.line("Substance"), formula.line("Carrier"), balance, Tolerances.of(percent + " %"));
            if (answer instanceof PredilutionPlan plan) {
                plans++;
                Ratio exact = batch.line("Substance").mass().canonical();
                Ratio tau = Ratio.of(percent, 100);
                Ratio own = worst(exact, plan.factor(), plan.substance().in(GRAM), d);
                assertThat(own)
                        .isLessThanOrEqualTo(tau)
                        .isEqualTo(plan.relativeError().canonical());
                assertThat(plan.diluent().in(GRAM))
                        .isEqualTo(plan.substance().in(GRAM).times(plan.factor().minus(Ratio.ONE)));
                assertThat(plan.substance().plus(plan.diluent()).compareTo(plan.aliquot()))
                        .isNotNegative();
                assertThat(plan.carrierLeft().signum()).isNotNegative();
                for (Ratio less = plan.factor().minus(Ratio.ONE);
                        less.compareTo(Ratio.ONE) > 0;
                        less = less.minus(Ratio.ONE)) {
                    Ratio stock = exact.times(less).dividedBy(d).ceil().times(d);
                    assertThat(worst(exact, less, stock, d)).isGreaterThan(tau);
                }
                WorkingAssertions.assertSelfChecking(plan.relativeError().working());
                WorkingAssertions.assertSelfChecking(plan);
            }
        }
        assertThat(plans).isGreaterThan(40);
    }

    private static final javax.measure.Unit<javax.measure.quantity.Mass> GRAM =
            io.github.formulationmath.quantity.FormulationUnits.GRAM;

    @Test
    void a_trace_that_no_dilution_in_one_step_delivers_is_said_to_be_one() {
        Formula trace = Formula.inParts("trace")
                .line("Substance", "1")
                .line("Carrier", "100000000")
                .build();
        Batch batch = Batch.of(trace, BatchSize.ofMass("1 kg"));
        Predilution.None none = (Predilution.None) Predilution.of(
                batch,
                trace.line("Substance"),
                trace.line("Carrier"),
                Balance.of("0.1 g", "2 kg"),
                Tolerances.of("1 %"));
        assertThat(none.reason().key()).isEqualTo("predilution.too-many-parts");
        assertThat(none.reason().toString())
                .endsWith(
                        " g, would have to be diluted more than 10000 times: weigh it on a finer balance, or make a larger"
                                + " batch");
        assertThatThrownBy(() -> Predilution.of(
                        batch,
                        trace.line("Substance"),
                        trace.line("Substance"),
                        Balance.of("0.1 g", "2 kg"),
                        Tolerances.of("1 %")))
                .hasMessageContaining("take another");
    }

    /**
     * 1 in 10 000 of 0.4902 mg is 49.02 tenths, read as 49, of a stock that begins with 50: at the most 51/50 · 50/49.02, which
     * is 4.0392 % too much. One part less makes that 51/49.0151, or 4.0495 %.
     */
    @Test
    void the_largest_dilution_that_is_tried_is_taken_if_it_just_delivers() {
        Formula trace = Formula.inMasses("trace")
                .line("Substance", "0.4902 mg")
                .line("Carrier", "49999.5098 mg")
                .build();
        PredilutionPlan plan = (PredilutionPlan) Predilution.of(
                Batch.of(trace, BatchSize.ofMass("50 g")),
                trace.line("Substance"),
                trace.line("Carrier"),
                Balance.of("0.1 g", "2 kg"),
                Tolerances.of("4.04 %"));
        assertThat(plan.factor()).isEqualTo(Ratio.of(10_000));
        assertThat(plan.substance()).hasToString("5 g");
    }
}
