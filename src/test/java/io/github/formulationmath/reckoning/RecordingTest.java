package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Operation.Arithmetic;
import io.github.formulationmath.support.Workings;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a working keeps of a relation, and what it does not let pass. */
class RecordingTest {

    private static final Phrase QUESTION = Phrase.of("question.line-mass", "Wax");
    private static final Symbol MASS = Workings.LINE;

    /** A result that says it is 4 g, reached by a relation that gives another number of grams. */
    private record Claimed(long grams) implements Explained {

        @Override
        public Origin origin() {
            return Origin.of(claimed -> QUESTION, Ratio.of(4), this, Claimed::in);
        }

        private <V> V in(Reckoning<V> r) {
            return r.given(MASS, Ratio.of(grams), Source.user());
        }
    }

    @Test
    void a_result_that_its_relation_does_not_lead_to_is_refused() {
        assertThatThrownBy(() -> Working.of(QUESTION, r -> r.known(new Claimed(5))))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("leads to 5, the result is 4");
        assertThatThrownBy(() -> new Claimed(5).working()).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> Working.of(QUESTION, Ratio.ONE, r -> r.literal(2)))
                .hasMessageContaining("leads to 2, the result is 1");
        assertThat(Working.of(QUESTION, Ratio.ONE, r -> r.literal(1)).answer().value())
                .isEqualTo(Ratio.ONE);
    }

    @Test
    void a_result_used_twice_is_derived_once() {
        Claimed four = new Claimed(4);
        Working working = Working.of(QUESTION, r -> r.sum(r.known(four), r.known(four)));
        assertThat(working.answer().value()).isEqualTo(Ratio.of(8));
        assertThat(working.steps()).hasSize(1);
    }

    @Test
    void a_label_stands_for_one_value() {
        Working same = Working.of(
                QUESTION,
                r -> r.sum(r.given(MASS, Ratio.of(4), Source.user()), r.given(MASS, Ratio.of(4), Source.user())));
        assertThat(same.steps()).hasSize(1);
        assertThatThrownBy(() -> Working.of(
                        QUESTION,
                        r -> r.sum(
                                r.given(MASS, Ratio.of(4), Source.user()), r.given(MASS, Ratio.of(5), Source.user()))))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("stands for two values");
    }

    @Test
    void a_comparison_is_kept_and_its_outcome_given_back() {
        List<Boolean> outcomes = new ArrayList<>();
        Working working = Working.of(QUESTION, r -> {
            outcomes.add(r.holds(r.literal(1), Comparison.LESS, r.literal(2)));
            outcomes.add(r.holds(r.literal(2), Comparison.LESS, r.literal(1)));
            r.note(() -> Phrase.of("note.volumes-add-up"));
            r.note(() -> Phrase.of("note.volumes-add-up"));
            return r.literal(0);
        });
        assertThat(outcomes).containsExactly(true, false);
        assertThat(working.entries().stream()
                        .filter(Entry.Decision.class::isInstance)
                        .map(Entry.Decision.class::cast))
                .extracting(Entry.Decision::holds)
                .containsExactly(true, false);
        assertThat(working.entries().stream().filter(Entry.Note.class::isInstance))
                .hasSize(1);
    }

    @Test
    void a_check_finds_what_was_not_computed() {
        Term wrong = new Term.Applied(
                Arithmetic.SUM, List.of(new Term.Literal(Ratio.ONE), new Term.Literal(Ratio.ONE)), Ratio.of(3));
        Working inAnswer = Working.of(QUESTION, r -> wrong);
        assertThatThrownBy(inAnswer::check)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("gives 2 when computed again, not 3");
        Working below = Working.of(QUESTION, r -> r.sum(wrong, r.literal(1)));
        assertThatThrownBy(below::check).hasMessageContaining("not 3");
        Working inStep = Working.of(QUESTION, r -> {
            r.named(MASS, wrong);
            return r.literal(1);
        });
        assertThatThrownBy(inStep::check).hasMessageContaining("not 3");
        for (boolean left : new boolean[] {true, false}) {
            Working inDecision = Working.of(QUESTION, r -> {
                r.holds(left ? wrong : r.literal(1), Comparison.LESS, left ? r.literal(9) : wrong);
                return r.literal(1);
            });
            assertThatThrownBy(inDecision::check).hasMessageContaining("not 3");
        }
        assertThatCode(() -> Workings.everything().check()).doesNotThrowAnyException();
    }
}
