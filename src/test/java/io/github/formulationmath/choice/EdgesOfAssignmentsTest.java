package io.github.formulationmath.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A figure that is just met counts as met; what an assignment or a dilution was made of can be read from it. */
class EdgesOfAssignmentsTest {

    private static final Formula BALM = Formulas.balmToMakeUp("balm");

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    private static Batch batch(String size) {
        return Batch.of(BALM, BatchSize.ofMass(size));
    }

    @Test
    void a_station_takes_what_just_fits_and_no_more() {
        Balance hundred = Balance.of("0.1 g", "100 g").withMinimumLoad(Amount.mass("0.5 g"));
        WeighingStation bare = WeighingStation.inVessel(hundred, Vessel.none());
        BalanceAssignment fits = BalanceAssignment.of(batch("100 g"), List.of(bare), Tolerances.of("50 %"));
        assertThat(fits.unassigned()).isEmpty();
        assertThat(fits.batch()).isEqualTo(batch("100 g"));
        assertThat(fits.lines().get(1).line()).isEqualTo(batch("100 g").line("Wax"));
        assertThat(fits.lines().get(1).toString()).startsWith("Wax: 20 g on d = 0.1 g");
        assertThat(fits.toString()).contains("Wax: 20 g on ").doesNotContain("nowhere: ");
        BalanceAssignment over = BalanceAssignment.of(batch("101 g"), List.of(bare), Tolerances.of("50 %"));
        // 80.295 g of oil and 20.2 g of wax are 100.495 g.
        assertThat(over.unassigned())
                .containsExactly(batch("101 g").line("Wax"), batch("101 g").line("Tocopherol"));
        assertThat(over.toString()).contains("nowhere: ");
        BalanceAssignment under = BalanceAssignment.of(batch("99 g"), List.of(bare), Tolerances.of("50 %"));
        assertThat(under.unassigned()).containsExactly(batch("99 g").line("Tocopherol"));
    }

    @Test
    void a_reading_on_a_station_is_explained() {
        BalanceAssignment.AssignedLine wax = BalanceAssignment.of(
                        batch("101 g"), List.of(WeighingStation.inVessel(TENTH, Vessel.none())), Tolerances.of("50 %"))
                .lines()
                .get(1);
        assertThat(wax.addition().reading().canonical()).isEqualTo(Ratio.parse("20.2"));
        assertThat(wax.addition().reading().origin().question().key()).isEqualTo("question.reading");
    }

    @Test
    void a_dilution_may_take_all_of_its_carrier_and_is_told_in_a_line() {
        Formula powder = Formula.inMasses("powder")
                .line("Substance", "10 mg")
                .line("Lactose", "90 mg")
                .line("Other", "900 mg")
                .build();
        Batch gram = Batch.of(powder, BatchSize.ofMass("1 g"));
        Balance fine = Balance.of("1 mg", "120 g");
        PredilutionPlan all = (PredilutionPlan)
                Predilution.of(gram, powder.line("Substance"), powder.line("Lactose"), fine, Amount.mass("100 mg"));
        assertThat(all.carrierLeft()).isEqualTo(Amount.mass("0 mg"));
        assertThat(all)
                .hasToString(
                        "100 mg Substance and 900 mg Lactose make a stock, Substance 1 in 10; weigh 100 mg of it instead of"
                                + " 0.01 g Substance, and 0 mg Lactose instead of 0.09 g");
        assertThat(Predilution.of(gram, powder.line("Substance"), powder.line("Lactose"), fine, Amount.mass("101 mg")))
                .isInstanceOf(Predilution.None.class);
        Formula two = Formula.inMasses("two").line("a", "1 g").line("b", "1 g").build();
        assertThatThrownBy(() -> Predilution.of(
                        Batch.of(two, BatchSize.ofMass("1 g")),
                        powder.line("Other"),
                        two.line("a"),
                        fine,
                        Amount.mass("1 g")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("is not a line of \"two\"");
    }
}
