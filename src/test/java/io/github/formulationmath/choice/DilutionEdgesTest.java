package io.github.formulationmath.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A dilution just needed, just carried and just within what was asked, by hand. */
class DilutionEdgesTest {

    private static final Formula BALM = Formulas.balm("balm");
    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");
    private static final Formula COLOURED = Formula.inPercent("coloured")
            .line("Oil", "99.98 %")
            .line("Colour", "0.02 %")
            .build();

    private static Predilution predilution(String size, Tolerances tolerances) {
        Batch batch = Batch.of(BALM, BatchSize.ofMass(size));
        return Predilution.of(batch, BALM.line("Tocopherol"), BALM.line("Oil"), TENTH, tolerances);
    }

    private static DilutedBatch coloured(String capacity) {
        return DilutedBatch.of(Batch.of(COLOURED, BatchSize.ofMass("100 g")))
                .diluting(
                        COLOURED.line("Colour"),
                        COLOURED.line("Oil"),
                        Balance.of("0.1 g", capacity),
                        Tolerances.of("10 %"));
    }

    /** Taring and reading hide 0.05 g each: of 1 g that is a tenth. */
    @Test
    void what_is_just_within_the_tolerance_undiluted_is_not_diluted() {
        assertThat(predilution("200 g", Tolerances.of("10 %")))
                .hasToString("Tocopherol, 1 g, needs no dilution: weighed as it is, it is off by at most 10 %");
        DilutedBatch batch = DilutedBatch.of(Batch.of(BALM, BatchSize.ofMass("200 g")));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> batch.diluting(BALM.line("Tocopherol"), BALM.line("Oil"), TENTH, Tolerances.of("10 %")))
                .withMessageContaining(
                        "line is Tocopherol, which no dilution helps: Tocopherol, 1 g, needs no dilution");
        assertThat(predilution("200 g", Tolerances.of("9.999 %"))).isInstanceOf(PredilutionPlan.class);
    }

    @Test
    void asked_for_just_what_a_dilution_delivers_that_dilution_is_the_answer() {
        PredilutionPlan plan = (PredilutionPlan) predilution("200 g", Tolerances.of("5 %"));
        Ratio delivered = plan.relativeError().canonical();
        assertThat(delivered).isLessThan(Ratio.of(5, 100));
        PredilutionPlan again = (PredilutionPlan) predilution("200 g", Tolerances.of(MassFraction.of(delivered)));
        assertThat(again.factor()).isEqualTo(plan.factor());
        assertThat(again.relativeError().canonical()).isEqualTo(delivered);
        WorkingAssertions.assertSelfChecking(again.relativeError().working());
        PredilutionPlan finer = (PredilutionPlan)
                predilution("200 g", Tolerances.of(MassFraction.of(delivered.minus(Ratio.of(1, 1_000_000)))));
        assertThat(finer.factor()).isGreaterThan(plan.factor());
    }

    /** Of 20 mg: 1 in 156 by 12 and 13 parts; what the second step makes of 3.2 g is 41.6 g. */
    @Test
    void a_stock_is_made_on_a_balance_that_just_carries_it() {
        StockMixture stock = coloured("41.6 g").stocks().get(0);
        assertThat(stock)
                .hasToString("3.2 g Colour and 35.2 g Oil make Colour 1 in 12;"
                        + " 3.2 g Colour 1 in 12 and 38.4 g Oil make Colour 1 in 156");
        assertThat(coloured("2 kg").stocks().get(0).factors()).isEqualTo(stock.factors());
        assertThatIllegalArgumentException().isThrownBy(() -> coloured("41.5 g"));
    }

    @Test
    void a_batch_with_a_stock_tells_what_is_weighed_instead_of_what() {
        assertThat(coloured("2 kg").toString().lines().toList())
                .containsExactly(
                        "coloured, 100 g",
                        "3.2 g Colour and 35.2 g Oil make Colour 1 in 12;"
                                + " 3.2 g Colour 1 in 12 and 38.4 g Oil make Colour 1 in 156",
                        "then 3.12 g Colour 1 in 156 instead of 0.02 g Colour, and 96.88 g Oil instead of 99.98 g Oil");
    }

    @Test
    void the_steps_of_a_stock_are_its_own_all_of_them_and_in_order() {
        StockMixture stock = coloured("2 kg").stocks().get(0);
        Weighed first = ExpectedProduct.of(stock.steps().get(0), WeighingMethod.TARE_EACH);
        Weighed second = ExpectedProduct.of(stock.steps().get(1), WeighingMethod.TARE_EACH);
        assertThat(stock.strength(List.of(first, second))).isEqualTo(stock.strength());
        assertThat(stock.strength().least().fraction()).isLessThan(Ratio.of(1, 156));
        assertThat(stock.strength().greatest().fraction()).isGreaterThan(Ratio.of(1, 156));
        for (List<Weighed> wrong : List.of(List.<Weighed>of(), List.of(first), List.of(second, first))) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> stock.strength(wrong))
                    .withMessage("made has " + wrong.size() + " products, which are not those of the 2 steps of the"
                            + " stock: give one for each step, of its own plan and in order");
        }
    }

    @Test
    void a_product_of_another_formula_and_too_few_stocks_are_refused() {
        DilutedBatch diluted = coloured("2 kg");
        Weighed other = ExpectedProduct.of(diluted.stocks().get(0).steps().get(0), WeighingMethod.TARE_EACH);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> diluted.made(other, List.of()))
                .withMessage("product is of \"Colour 1 in 12\", not of this batch as it is weighed: plan batch() and"
                        + " weigh that");
        Weighed own = ExpectedProduct.of(WeighingPlan.of(diluted.batch(), TENTH), WeighingMethod.TARE_EACH);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> diluted.made(own, List.of()))
                .withMessage("steps has 0 stocks, and there are 1: give what was weighed for each");
    }

    @Test
    void all_of_the_carrier_may_be_given_but_no_more() {
        Formula powder = Formula.inMasses("powder")
                .line("Substance", "1 g")
                .line("Lactose", "9 g")
                .build();
        Batch batch = Batch.of(powder, BatchSize.ofMass("10 g"));
        Predilution all =
                Predilution.of(batch, powder.line("Substance"), powder.line("Lactose"), TENTH, Amount.mass("10 g"));
        assertThat(((PredilutionPlan) all).carrierLeft().signum()).isZero();
        assertThat(Predilution.of(
                        batch, powder.line("Substance"), powder.line("Lactose"), TENTH, Amount.mass("10.1 g")))
                .hasToString("Lactose, 9 g, cannot give the 10 g of diluent that is needed: make a larger batch, or"
                        + " dilute in another line");
    }

    /** The relative deviations of substance and diluent add up, on the safe side; what is read of the stock adds none here. */
    @Test
    void what_nothing_bounds_in_a_stock_is_carried_into_the_batch() {
        DilutedBatch steady = stocked(TENTH);
        assertThat(unbounded(steady, 0)).isEqualTo(Ratio.ZERO);
        assertThat(unbounded(steady, 1)).isEqualTo(Ratio.ZERO);
        DilutedBatch shaky =
                stocked(TENTH.withErrors(ErrorModel.readabilityOnly().withRepeatability("0.01 g")));
        Ratio relative = Ratio.ZERO;
        for (WeighingPlan step : shaky.stocks().get(0).steps()) {
            for (AdditionError error :
                    ExpectedProduct.of(step, WeighingMethod.TARE_EACH).masses().additions()) {
                relative = relative.plus(
                        error.unbounded().canonical().dividedBy(error.estimate().canonical()));
            }
        }
        Ratio substance = additions(shaky).get(1).estimate().canonical();
        assertThat(unbounded(shaky, 1)).isGreaterThan(Ratio.ZERO).isEqualTo(relative.times(substance));
        assertThat(unbounded(shaky, 0)).as("what is substance is not diluent").isEqualTo(unbounded(shaky, 1));
    }

    private static DilutedBatch stocked(Balance balance) {
        return DilutedBatch.of(Batch.of(COLOURED, BatchSize.ofMass("500 g")))
                .diluting(COLOURED.line("Colour"), COLOURED.line("Oil"), balance, Tolerances.of("10 %"));
    }

    private static List<AdditionError> additions(DilutedBatch diluted) {
        return diluted.expected(WeighingPlan.of(diluted.batch(), TENTH), WeighingMethod.TARE_EACH)
                .masses()
                .additions();
    }

    private static Ratio unbounded(DilutedBatch diluted, int line) {
        return additions(diluted).get(line).unbounded().canonical();
    }
}
