package io.github.formulationmath.batch;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.StockedFormula;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The batch that uses up a stock needs just that. */
final class BatchOfAStockTest {

    @Provide
    Arbitrary<StockedFormula> stocked() {
        return StockedFormula.any();
    }

    @Property(tries = 300)
    void the_batch_that_uses_up_a_stock_needs_just_that(@ForAll("stocked") StockedFormula one) {
        Formula formula = one.formula();
        Batch batch = Batch.of(formula, BatchSize.ofStock(one.stocked(formula), Amount.grams(Ratio.of(one.stock()))));
        Ratio needed = Ratio.ZERO;
        for (BatchLine line : batch.lines()) {
            needed =
                    one.isStocked(line.line().index()) ? needed.plus(line.mass().canonical()) : needed;
        }
        assertThat(needed).isEqualTo(Ratio.of(one.stock()));
    }
}
