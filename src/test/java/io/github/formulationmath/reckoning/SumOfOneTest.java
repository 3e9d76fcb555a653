package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.support.Workings;
import java.util.List;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;

/** No step says the same value twice, one line below the other. */
class SumOfOneTest {

    private static String printed(BiFunction<Reckoning<Term>, Term, Term> operation, Ratio result) {
        return Working.of(Phrase.of("question.reading", "Wax"), result, r -> {
                    Term given = r.given(Workings.LINE, Ratio.of(7), Source.user());
                    return r.named(Workings.BATCH, operation.apply(r, given));
                })
                .document()
                .print(Format.TEXT);
    }

    private static void noValueTwice(BiFunction<Reckoning<Term>, Term, Term> operation) {
        List<String> lines =
                printed(operation, Ratio.of(7)).lines().map(String::strip).toList();
        assertThat(lines).anyMatch(line -> line.startsWith("="));
        for (int i = 1; i < lines.size(); i++) {
            if (!lines.get(i).isEmpty()) {
                assertThat(lines.get(i)).as("%s", lines).isNotEqualTo(lines.get(i - 1));
            }
        }
    }

    @Test
    void the_value_of_a_sum_of_one_term_is_printed_once() {
        noValueTwice((r, term) -> r.sum(List.of(term)));
        noValueTwice((r, term) -> r.sum(List.of(r.sum(List.of(term)))));
        noValueTwice((r, term) -> r.rounded(r.sum(List.of(term)), Rounding.none()));
    }

    @Test
    void a_sum_of_two_keeps_its_line_of_numbers() {
        assertThat(printed((r, term) -> r.sum(term, r.literal(3)), Ratio.of(10)))
                .contains("= 7 g + 3")
                .contains("= 10 g");
    }
}
