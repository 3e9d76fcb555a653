package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** Criteria asked about one line, weighed in a way of its own, and the benches on which they can be seen. */
class LineByItselfTest {

    private static final Formula BALM = Formulas.balm("balm");
    private static final FormulaLine WAX = BALM.line("Wax");
    private static final Bench TENTH = Bench.of(Balance.of("0.1 g", "2 kg"));
    private static final Tolerances FIVE = Tolerances.of("5 %");

    private static Optional<Amount<Mass>> smallest(Criterion criterion, Bench bench, WeighingMethod method) {
        return criterion.forLine(WAX, BALM, bench, method).flatMap(Sizes::smallest);
    }

    /** A fifth of the batch, by itself: 0.1 g of it are 0.5 g, 1 g is 5 g, one division 5 % too much 0.1/(1.05 · 0.2) g. */
    @Test
    void a_line_is_judged_whatever_the_smaller_ones_need() {
        assertThat(smallest(Criterion.oneDivision(), TENTH, WeighingMethod.TARE_EACH))
                .contains(Amount.mass("0.5 g"));
        assertThat(smallest(Criterion.leastNetMass(Amount.mass("1 g")), TENTH, WeighingMethod.TARE_EACH))
                .contains(Amount.mass("5 g"));
        assertThat(smallest(Criterion.roundingWithin(FIVE), TENTH, WeighingMethod.TARE_EACH))
                .contains(Amount.mass("10 g").times(Ratio.of(1, 21)));
    }

    /** Linearity 0.1 g: once for the tared line, 0.25 g in all; at both readings of a difference, 0.35 g; over 5 % of 20 %. */
    @Test
    void the_way_the_line_is_weighed_replaces_what_the_criterion_says_of_all() {
        Bench crooked =
                TENTH.on(TENTH.balance().withErrors(ErrorModel.readabilityOnly().withLinearityOfNetReading("0.1 g")));
        Criterion bound = Criterion.errorBound(FIVE, WeighingMethod.TARE_EACH);
        assertThat(smallest(bound, crooked, WeighingMethod.TARE_EACH)).contains(Amount.mass("25 g"));
        assertThat(smallest(bound, crooked, WeighingMethod.BY_DIFFERENCE)).contains(Amount.mass("35 g"));
    }

    @Test
    void what_looks_at_lines_together_has_nothing_to_say_of_one() {
        assertThat(smallest(Criterion.madeWithin(FIVE), TENTH, WeighingMethod.TARE_EACH))
                .isEmpty();
        Criterion cap = Criterion.capKept(Substance.of("Wax"), MassFraction.parse("25 %"), WeighingMethod.TARE_EACH);
        assertThat(cap.forLine(WAX, BALM, TENTH, WeighingMethod.TARE_EACH)).isEmpty();
    }

    @Test
    void readings_that_add_up_are_shown_before_readings_of_each_line_alone() {
        Bench closed = TENTH.closing(Closure.CLOSED);
        Criterion rounding = Criterion.roundingWithin(FIVE);
        Criterion made = Criterion.madeWithin(FIVE);
        assertThat(rounding.showing(closed)).contains(TENTH.closing(Closure.INDEPENDENT));
        assertThat(BatchConstraints.of(rounding).showing(closed).closure()).isEqualTo(Closure.INDEPENDENT);
        assertThat(BatchConstraints.of(rounding, made).showing(closed).closure())
                .isEqualTo(Closure.WITHIN_TOLERANCE);
        assertThat(BatchConstraints.of(Criterion.oneDivision()).showing(closed)).isEqualTo(closed);
    }

    @Test
    void a_stock_given_again_in_another_spelling_replaces_the_first() {
        BatchConstraints stock = BatchConstraints.of(Criterion.oneDivision())
                .withStock("Shea Butter", "10 g")
                .withStock("Wax", "20 g")
                .withStock("shea  butter", "30 g");
        assertThat(stock.stock().keySet()).containsExactly("Wax", "shea  butter");
        assertThat(stock.stock()).containsEntry("shea  butter", Amount.mass("30 g"));
    }
}
