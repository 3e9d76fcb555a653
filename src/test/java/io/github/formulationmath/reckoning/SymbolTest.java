package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Expression;
import io.github.formulationmath.document.Format;
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

    /** In LaTeX and MathML mark and index stand below; a word is upright, primes stay on the line. */
    @Test
    void the_mark_of_a_letter_stands_below_it() {
        Symbol highest = Symbol.of("φ_hi", "line-mass", Kind.MASS);
        Subject third = Subject.of("3", "Wax");
        assertThat(Step.given(highest, third, Ratio.ONE, Source.user()).label()).isEqualTo("φ_hi,3");
        Document document = Document.titled("symbols", "en")
                .equations("", List.of(Expression.symbol("φ_hi", "3"), Expression.symbol("z′", "12")));
        assertThat(document.print(Format.TEXT)).contains("φ_hi,3", "z′_12");
        assertThat(document.print(Format.LATEX)).contains("{\\varphi}_{\\text{hi},3}", "z'_{12}");
        assertThat(document.print(Format.HTML))
                .contains("<msub><mi>φ</mi><mrow><mtext>hi</mtext><mo>,</mo><mn>3</mn></mrow></msub>")
                .contains("<msub><mi>z′</mi><mn>12</mn></msub>");
    }

    @Test
    void an_underscore_stands_between() {
        for (String letter : List.of("_hi", "φ_", "_")) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Symbol.of(letter, "line-mass", Kind.MASS))
                    .withMessageContaining("letter is \"" + letter + "\": an underscore stands between");
        }
    }
}
