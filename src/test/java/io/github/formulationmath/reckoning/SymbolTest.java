package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.support.Workings;
import java.util.List;
import org.junit.jupiter.api.Test;

class SymbolTest {

    private static List<Symbol> symbols() {
        return List.of(
                Symbol.of("m", "line-mass", Kind.MASS),
                Symbol.of("M", "line-mass", Kind.MASS),
                Symbol.of("m", "batch-mass", Kind.MASS),
                Symbol.of("m", "line-mass", Kind.NUMBER));
    }

    @Test
    void symbols_are_told_apart_by_letter_meaning_and_kind() {
        assertThat(symbols()).isEqualTo(symbols()).doesNotHaveDuplicates();
        assertThat(symbols().stream().map(Object::hashCode)).doesNotHaveDuplicates();
        assertThat(symbols().get(0))
                .isNotEqualTo("m")
                .hasToString("m")
                .hasSameHashCodeAs(symbols().get(0));
    }

    @Test
    void a_step_reads_as_its_label_and_value() {
        Step step = Step.given(Workings.LINE, Subject.of("3", "Wax"), Ratio.of(40), Source.user());
        assertThat(step.label()).isEqualTo("m_3");
        assertThat(step).hasToString("m_3 = 40");
    }
}
