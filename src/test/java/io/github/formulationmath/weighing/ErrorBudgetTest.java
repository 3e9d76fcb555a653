package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.ValueContract;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** A budget is the variances by source; those of a display of 0.1 g are 0.01/12 g² for tare and reading each. */
class ErrorBudgetTest implements ValueContract<ErrorBudget> {

    private static final Ratio TWELFTH = Ratio.of(1, 1200);
    private static final Amount<Mass> GRAM = Amount.mass("1 g");
    private static final ErrorBudget NOTHING = new ErrorBudget(Map.of(), GRAM);

    private static ErrorBudget budget(String step, String linearity) {
        Balance balance =
                Balance.of(step, "2 kg").withErrors(ErrorModel.readabilityOnly().withLinearityOfNetReading(linearity));
        Amount<Mass> mass = Amount.mass("10 g");
        return AdditionError.of(Addition.of("x", mass, mass, balance)).budget();
    }

    @Override
    public List<ErrorBudget> different() {
        return List.of(budget("0.1 g", "0.1 g"), budget("0.1 g", "0 g"), budget("0.1 g", "0.3 g"));
    }

    @Override
    public List<ErrorBudget> same() {
        return List.of(
                new ErrorBudget(
                        Map.of(
                                ErrorSource.TARE,
                                TWELFTH,
                                ErrorSource.READING,
                                TWELFTH,
                                ErrorSource.LINEARITY,
                                TWELFTH.times(4)),
                        GRAM),
                new ErrorBudget(Map.of(ErrorSource.READING, TWELFTH, ErrorSource.TARE, TWELFTH), GRAM),
                budget("100 mg", "0.30 g"));
    }

    @Test
    void its_text_gives_each_source_its_part() {
        assertThat(budget("0.1 g", "0.1 g"))
                .hasToString("variance from [TARE ≈ 16.6667 %, READING ≈ 16.6667 %, LINEARITY ≈ 66.6667 %]");
        assertThat(NOTHING).hasToString("variance from []");
    }

    @Test
    void a_source_that_contributes_nothing_has_no_part() {
        ErrorBudget budget = budget("0.1 g", "0.1 g");
        assertThat(budget.variance(ErrorSource.LINEARITY)).hasToString("1/300 g²");
        assertThat(budget.share(ErrorSource.LINEARITY)).isEqualTo(Ratio.of(2, 3));
        assertThat(budget.variance(ErrorSource.BUOYANCY).isZero()).isTrue();
        assertThat(NOTHING.share(ErrorSource.BUOYANCY).isZero()).isTrue();
        assertThat(NOTHING.total()).hasToString("0 g²");
        assertThatThrownBy(() -> budget.variances().clear()).isInstanceOf(UnsupportedOperationException.class);
    }

    /** (0.1/2)²/3 twice and 0.1²/3, in the square of the unit that was read. */
    @Test
    void variances_say_their_unit() {
        ErrorBudget budget = budget("0.1 g", "0.1 g");
        assertThat(budget.variances().toString()).isEqualTo("{TARE=1/1200 g², READING=1/1200 g², LINEARITY=1/300 g²}");
        assertThat(budget.total()).hasToString("0.005 g²");
        Balance ounces = Balance.of("0.1 oz", "50 oz");
        Amount<Mass> mass = Amount.mass("10 oz");
        assertThat(AdditionError.of(Addition.of("x", mass, mass, ounces))
                        .budget()
                        .total())
                .hasToString("1/600 oz²");
        MadeMasses made =
                MadeMasses.of(List.of(Addition.of("x", mass, mass, ounces), Addition.of("y", mass, mass, ounces)));
        // y = 1/2: u² = 2 · (0.01/6)/4 / 20²
        assertThat(made.madeShare(0).budget().total()).hasToString("1/480000");
    }
}
