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
import java.util.stream.LongStream;
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
        // In one step 21 tenths of a gram, 2.1 · 105 g.
        assertThatIllegalArgumentException()
                .isThrownBy(() -> coloured("41.5 g"))
                .withMessage(
                        "line is Colour, which 1 in 105 is a stock of 220.5 g, more than the balance carries, 41.5 g,"
                                + " and no two steps of at most 100 parts help: make a larger batch, or take a finer balance");
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

    private static StockMixture stock(
            String size, String oil, String wax, String colour, String capacity, String tolerance) {
        Formula formula = Formula.inMasses("crayon")
                .line("Oil", oil)
                .line("Wax", wax)
                .line("Colour", colour)
                .build();
        return DilutedBatch.of(Batch.of(formula, BatchSize.ofMass(size)))
                .diluting(
                        formula.line("Colour"),
                        formula.line("Oil"),
                        Balance.of("0.1 g", capacity),
                        Tolerances.of(tolerance))
                .stocks()
                .get(0);
    }

    private static void assertParts(StockMixture stock, long... parts) {
        assertThat(stock.factors())
                .containsExactly(LongStream.of(parts).mapToObj(Ratio::of).toArray(Ratio[]::new));
    }

    /** Three weighings of 80 tenths, each off by one, deliver (81/80)³ at the most: 3.7970703125 % too much. */
    @Test
    void two_steps_that_deliver_just_what_was_asked_are_taken() {
        assertParts(stock("10 g", "7 g", "1 g", "2 g", "2 kg", "3.7970703125 %"), 2, 2);
        // 2 · 3 parts take 10 g of oil: there is one step of 18 g left, which delivers (61/60)².
        assertParts(stock("10 g", "7 g", "1 g", "2 g", "2 kg", "3.797 %"), 3);
    }

    /** 2 g in four parts take 6 g of oil. */
    @Test
    void two_steps_leave_something_of_their_carrier() {
        assertParts(stock("10 g", "6.1 g", "1.9 g", "2 g", "2 kg", "3.8 %"), 2, 2);
        assertParts(stock("10 g", "6 g", "2 g", "2 g", "2 kg", "3.8 %"), 3);
    }

    /** Each of two like steps makes 2 · 8 g; the one step instead of them 3 · 6 g. */
    @Test
    void two_like_steps_are_made_on_a_balance_that_just_carries_one() {
        assertParts(stock("10 g", "7 g", "1 g", "2 g", "16 g", "3.8 %"), 2, 2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> stock("10 g", "7 g", "1 g", "2 g", "15.9 g", "3.8 %"))
                .withMessageStartingWith(
                        "line is Colour, which 1 in 3 is a stock of 18 g, more than the balance carries, 15.9 g,");
    }

    /** 50 tenths twice deliver (51/50)² at the most, 4.04 % too much: 5 g are 20 parts, and 100 g of stock. */
    @Test
    void one_step_makes_as_much_stock_as_batch_and_as_the_balance_carries_but_no_more() {
        assertParts(stock("100 g", "90 g", "9.75 g", "0.25 g", "2 kg", "4.04 %"), 20);
        assertParts(stock("99.9 g", "90 g", "9.65 g", "0.25 g", "2 kg", "4.04 %"), 6, 6);
        assertParts(stock("500 g", "490 g", "9.75 g", "0.25 g", "100 g", "4.04 %"), 20);
        assertParts(stock("500 g", "490 g", "9.75 g", "0.25 g", "99.9 g", "4.04 %"), 6, 6);
    }

    @Test
    void a_stock_that_takes_all_of_its_carrier_is_refused() {
        assertParts(stock("100 g", "4.76 g", "94.99 g", "0.25 g", "2 kg", "4.04 %"), 20);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> stock("100 g", "4.75 g", "95 g", "0.25 g", "2 kg", "4.04 %"))
                .withMessage(
                        "carrier is Oil, all of which, 4.75 g, a stock of Colour would take: something of it must be"
                                + " left to weigh; dilute in another line, or make a larger batch");
    }

    /** Of 1 mg: 101 tenths three times deliver (102/101)³ at the most, 2.9998 % too much. */
    @Test
    void a_step_has_a_hundred_parts_at_most_and_the_second_one_more() {
        assertParts(stock("100 g", "90 g", "9.999 g", "1 mg", "2 kg", "3 %"), 100, 101);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> stock("100 g", "90 g", "9.999 g", "1 mg", "2 kg", "2.9998 %"))
                .withMessageContaining("and no two steps of at most 100 parts help");
    }

    private static PredilutionPlan powder(Tolerances tolerances) {
        Batch batch = Batch.of(POWDER, BatchSize.ofMass("10 g"));
        return (PredilutionPlan) Predilution.of(
                batch, POWDER.line("Substance"), POWDER.line("Lactose"), Balance.of("1 mg", "120 g"), tolerances);
    }

    private static final Formula POWDER = Formula.inMasses("powder")
            .line("Substance", "12 mg")
            .line("Lactose", "9988 mg")
            .build();

    /** 100 mg are 8.33 times 12 mg: of 1 in 9 are taken 108 mg, and the stock begins with no more than has to be. */
    @Test
    void a_least_mass_is_what_a_stock_begins_with_and_the_dilution_follows_from_it() {
        PredilutionPlan plan = (PredilutionPlan) Predilution.of(
                Batch.of(POWDER, BatchSize.ofMass("10 g")),
                POWDER.line("Substance"),
                POWDER.line("Lactose"),
                Balance.of("1 mg", "120 g"),
                Amount.mass("100 mg"));
        assertThat(plan.factor()).isEqualTo(Ratio.of(9));
        assertThat(plan.substance()).hasToString("100 mg");
        assertThat(plan.diluent()).hasToString("800 mg");
        assertThat(plan.aliquot()).hasToString("108 mg");
        assertThat(plan.aliquot().working().toString()).contains("W = 100 mg");
        assertThat(plan.relativeError().working().toString()).doesNotContain("Smaller dilutions were tried");
    }

    /** 108 mg twice deliver (109/108)² at the most, 1.86 % too much; 1 in 8 would deliver (97/96)², 2.09 %. */
    @Test
    void asked_for_a_tolerance_a_dilution_is_tried_and_not_worked_out_from_a_least_mass() {
        PredilutionPlan plan = powder(Tolerances.of("2 %"));
        assertThat(plan.factor()).isEqualTo(Ratio.of(9));
        assertThat(plan.substance()).hasToString("108 mg");
        assertThat(plan.aliquot().working().toString()).contains("F = 9").doesNotContain("W =");
        assertThat(plan.relativeError().working().toString()).contains("Note: Smaller dilutions were tried one by one");
    }
}
