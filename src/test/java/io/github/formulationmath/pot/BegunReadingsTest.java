package io.github.formulationmath.pot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import org.junit.jupiter.api.Test;

/** A batch that is begun: what was read so far, and what is still to come. */
class BegunReadingsTest {

    private static final Formula CREAM = Formulas.cream("Cream");

    private static final WeighingPlan PLAN =
            WeighingPlan.of(Batch.of(CREAM, BatchSize.ofMass("50 g")), Balance.of("0.1 g", "2 kg"));

    @Test
    void what_a_batch_that_is_begun_still_lacks_is_known() {
        Readings begun = Readings.upTo(PLAN, "Glycerin", "3.2 g");
        assertThat(begun.isOpen()).isTrue();
        assertThat(begun.toCome())
                .extracting(FormulaLine::name)
                .containsExactly("Oil", "Emulsifier", "Wax", "Preservative");
        Readings next = begun.plus(Reading.of(CREAM.line("Oil"), "6.0 g"));
        assertThat(next.toCome()).hasSize(3);
        assertThat(next.missing()).isEmpty();
        Readings finished = next.finished();
        assertThat(finished.isOpen()).isFalse();
        assertThat(finished.toCome()).isEmpty();
        assertThat(finished.missing()).hasSize(3);
        assertThatThrownBy(() -> begun.plus(Reading.of(CREAM.line("Glycerin"), "0.1 g")))
                .hasMessageContaining("two readings");
        assertThatThrownBy(() -> Readings.upTo(PLAN, "Glycerin", "3.25 g")).hasMessageContaining("3.2 g or 3.3 g");
        assertThatThrownBy(() -> Readings.upTo(PLAN, "Glyzerin", "3.2 g")).hasMessageContaining("has no line for");
    }
}
