package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Answers are equal if the same was asked and the same found, and say what that was. */
class AnswerValuesTest {

    private static final Formula BALM = Formulas.balm("balm");
    private static final Formula SALVE = Formulas.oilAndWax("salve");
    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");
    private static final Criterion ROUNDING = Criterion.roundingWithin(Tolerances.of("5 %"));

    @Nested
    class Windows implements ValueContract<BatchWindow> {
        @Override
        public List<BatchWindow> different() {
            return List.of(
                    BatchWindow.of(BALM, TENTH, Criterion.oneDivision()),
                    BatchWindow.of(SALVE, TENTH, Criterion.oneDivision()),
                    BatchWindow.of(BALM, Balance.of("0.1 g", "3 kg"), Criterion.oneDivision()),
                    BatchWindow.of(BALM, TENTH, ROUNDING),
                    BatchWindow.of(BALM, Balance.of("1 g", "50 g"), Criterion.oneDivision()));
        }

        @Override
        public List<BatchWindow> same() {
            return different();
        }
    }

    @Nested
    class SmallestBatches implements ValueContract<MinimumBatch> {
        @Override
        public List<MinimumBatch> different() {
            return List.of(
                    MinimumBatch.of(BALM, TENTH, Criterion.oneDivision()),
                    MinimumBatch.of(SALVE, TENTH, Criterion.oneDivision()),
                    MinimumBatch.of(BALM, Balance.of("1 g", "2 kg"), Criterion.oneDivision()),
                    MinimumBatch.of(BALM, TENTH, ROUNDING),
                    MinimumBatch.of(BALM, TENTH, ROUNDING, SearchEffort.ofChecks(1)));
        }

        @Override
        public List<MinimumBatch> same() {
            return different();
        }
    }

    @Test
    void the_same_smallest_batch_on_another_balance_or_criterion_is_another_answer() {
        MinimumBatch one = MinimumBatch.of(BALM, TENTH, Criterion.oneDivision());
        assertThat(one)
                .isNotEqualTo(MinimumBatch.of(BALM, Balance.of("0.1 g", "3 kg"), Criterion.oneDivision()))
                .isNotEqualTo(MinimumBatch.of(BALM, TENTH, Criterion.leastNetMass(Amount.mass("0.1 g"))));
        assertThat(one.hashCode())
                .isNotEqualTo(
                        MinimumBatch.of(SALVE, TENTH, Criterion.oneDivision()).hashCode());
    }

    private static BatchWindow.Feasible window(Balance balance, BatchConstraints constraints) {
        return (BatchWindow.Feasible) BatchWindow.of(BALM, Bench.of(balance), constraints);
    }

    @Test
    void windows_of_other_constraints_differ_even_with_the_same_ends() {
        BatchConstraints plain = BatchConstraints.of(Criterion.oneDivision());
        BatchWindow window = window(TENTH, plain);
        BatchWindow wished = window(TENTH, plain.withLeastSize("1 g"));
        assertThat(wished).isNotEqualTo(window).hasToString(window.toString());
        assertThat(wished.hashCode()).isNotEqualTo(window.hashCode());
    }

    /** 20 g is one division of 0.5 % on 0.1 g, as it is where it is wished for with nothing else asking for as much. */
    @Test
    void ends_are_equal_if_size_side_bench_and_bound_are() {
        BatchConstraints plain = BatchConstraints.of(Criterion.oneDivision());
        BatchWindow.End low = window(TENTH, plain).lowerEnd();
        BatchWindow.End again = window(TENTH, plain).lowerEnd();
        assertThat(low).isEqualTo(low).isEqualTo(again).hasSameHashCodeAs(again).isNotEqualTo("20 g");
        BatchConstraints wish = BatchConstraints.of(Criterion.leastNetMass(Amount.mass("0.05 g")))
                .withLeastSize("20 g");
        assertThat(low)
                .isNotEqualTo(window(TENTH, plain).upperEnd())
                .isNotEqualTo(window(TENTH, plain.withLeastSize("21 g")).lowerEnd())
                .isNotEqualTo(window(Balance.of("0.1 g", "3 kg"), plain).lowerEnd())
                .isNotEqualTo(window(TENTH, wish).lowerEnd())
                .isNotEqualTo(
                        ((BatchWindow.Feasible) BatchWindow.of(Formulas.balm("other"), TENTH, Criterion.oneDivision()))
                                .lowerEnd());
        assertThat(low.hashCode())
                .isNotEqualTo(window(TENTH, plain).upperEnd().hashCode())
                .isNotEqualTo(
                        window(TENTH, plain.withLeastSize("21 g")).lowerEnd().hashCode());
        assertThat(window(TENTH, wish).lowerEnd()).hasToString("20 g (at least 20 g, as wished)");
        assertThat(window(TENTH, wish).lowerEnd().working().answer().value()).isEqualTo(Ratio.of(20));
    }

    /**
     * A single line within 0.001 % of 3.3333 g: its first window reaches from 3.3333/1.00001 to 3.3333/0.99999 g, and of four
     * digits none lies in it.
     */
    @Test
    void an_end_is_told_in_as_many_digits_as_it_takes_to_pass() {
        BatchWindow.Feasible narrow = (BatchWindow.Feasible) BatchWindow.of(
                Formulas.only("all wax", "Wax"),
                Balance.of("3.3333 g", "3.4 g"),
                Criterion.roundingWithin(Tolerances.of("0.001 %")));
        assertThat(narrow.lowerEnd().grams()).isEqualTo(Ratio.parse("3.3333").dividedBy(Ratio.parse("1.00001")));
        assertThat(narrow.upperEnd().grams()).isEqualTo(Ratio.parse("3.3333").dividedBy(Ratio.parse("0.99999")));
        assertThat(narrow.lowerEnd()).hasToString("3.3333 g (rounding of each line within ± 0.001 %)");
        assertThat(narrow.upperEnd()).hasToString("3.3333 g (rounding of each line within ± 0.001 %)");
    }

    /** 400/21 g, one division of 0.5 % that shows 5 % too much, is as far as two looks at three lines come. */
    @Test
    void a_search_given_up_says_up_to_where_every_batch_fails() {
        MinimumBatch undecided = MinimumBatch.of(BALM, TENTH, ROUNDING, SearchEffort.ofChecks(1));
        assertThat(undecided)
                .hasToString("balm: not decided; every batch below 19.04 g fails (rounding of each line within ± 5 %)");
        assertThat(((MinimumBatch.Undecided) undecided).allFailBelow()).isEqualTo(Amount.grams(Ratio.of(400, 21)));
        assertThat(ROUNDING.on(BALM, Bench.of(TENTH)).with(SearchEffort.ofChecks(1)))
                .hasToString("balm on d = 0.1 g, rounding of each line within ± 5 %: from more than 19.04 g;"
                        + " all from 190.5 g on");
    }

    @Test
    void readings_are_told_only_where_they_are_to_add_up() {
        MinimumBatch.Found alone = (MinimumBatch.Found) MinimumBatch.of(BALM, TENTH, ROUNDING);
        assertThat(alone.readings()).isEmpty();
        MinimumBatch.Found together =
                (MinimumBatch.Found) MinimumBatch.of(SALVE, TENTH, Criterion.madeWithin(Tolerances.of("5 %")));
        assertThat(together.readings()).containsExactly(Amount.mass("0.4 g"), Amount.mass("0.1 g"));
    }
}
