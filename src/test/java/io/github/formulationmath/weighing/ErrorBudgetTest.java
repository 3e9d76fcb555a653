package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.ValueContract;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A budget is the variances by source; those of a display of 0.1 g are 0.01/12 g² for tare and reading each. */
class ErrorBudgetTest implements ValueContract<ErrorBudget> {

    private static final Ratio TWELFTH = Ratio.of(1, 1200);

    private static ErrorBudget budget(String step, String linearity) {
        Balance balance =
                Balance.of(step, "2 kg").withErrors(ErrorModel.readabilityOnly().withLinearityOfNetReading(linearity));
        Amount<javax.measure.quantity.Mass> mass = Amount.mass("10 g");
        return AdditionError.of(Addition.of("x", mass, mass, balance)).budget();
    }

    @Override
    public List<ErrorBudget> different() {
        return List.of(budget("0.1 g", "0.1 g"), budget("0.1 g", "0 g"), budget("0.1 g", "0.3 g"));
    }

    @Override
    public List<ErrorBudget> same() {
        return List.of(
                new ErrorBudget(Map.of(
                        ErrorSource.TARE,
                        TWELFTH,
                        ErrorSource.READING,
                        TWELFTH,
                        ErrorSource.LINEARITY,
                        TWELFTH.times(4))),
                new ErrorBudget(Map.of(ErrorSource.READING, TWELFTH, ErrorSource.TARE, TWELFTH)),
                budget("100 mg", "0.30 g"));
    }

    @Test
    void its_text_gives_each_source_its_part() {
        assertThat(budget("0.1 g", "0.1 g"))
                .hasToString("variance from [TARE ≈ 16.6667 %, READING ≈ 16.6667 %, LINEARITY ≈ 66.6667 %]");
        assertThat(new ErrorBudget(Map.of())).hasToString("variance from []");
    }

    @Test
    void a_source_that_contributes_nothing_has_no_part() {
        ErrorBudget budget = budget("0.1 g", "0.1 g");
        assertThat(budget.variance(ErrorSource.LINEARITY)).isEqualTo(Ratio.of(1, 300));
        assertThat(budget.share(ErrorSource.LINEARITY)).isEqualTo(Ratio.of(2, 3));
        assertThat(budget.variance(ErrorSource.BUOYANCY).isZero()).isTrue();
        assertThat(new ErrorBudget(Map.of()).share(ErrorSource.BUOYANCY).isZero())
                .isTrue();
        assertThatThrownBy(() -> budget.variances().clear()).isInstanceOf(UnsupportedOperationException.class);
    }
}
