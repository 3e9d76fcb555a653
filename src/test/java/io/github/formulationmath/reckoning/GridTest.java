package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Operation.Arithmetic;
import io.github.formulationmath.support.WeighedLine;
import io.github.formulationmath.support.Workings;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** A value that is a multiple of a step keeps the decimals of the step. */
class GridTest {

    private static final Rounding WHOLE = Rounding.toDecimalPlaces(0);

    private static String answer(Function<Reckoning<Term>, Term> relation) {
        Working working = Working.of(Phrase.of("question.readings-total"), relation);
        return working.answer() instanceof Step step
                ? working.document(Style.answer())
                        .print(Format.TEXT)
                        .lines()
                        .toList()
                        .get(4)
                        .strip()
                : working.answer().toString();
    }

    private static Term step(Reckoning<Term> r, String readability) {
        return r.given(Workings.STEP, Ratio.parse(readability), Source.user());
    }

    private static Term whole(Reckoning<Term> r, String letter, long value) {
        return r.named(Symbol.of(letter, "shown-divisions", Kind.NUMBER), r.rounded(r.literal(value), WHOLE));
    }

    /** 0.8 % of 125 g is 1 g: 10 divisions of 0.1 g, 100 of 0.01 g, 5 of 0.2 g. */
    @Test
    void a_reading_keeps_the_decimals_of_the_balance() {
        assertThat(answer(r -> WeighedLine.reading(r, "0.008", "125", "0.1"))).isEqualTo("r_5 = 1.0 g");
        assertThat(answer(r -> WeighedLine.reading(r, "0.008", "125", "0.01"))).isEqualTo("r_5 = 1.00 g");
        assertThat(answer(r -> WeighedLine.reading(r, "0.008", "125", "0.2"))).isEqualTo("r_5 = 1.0 g");
        assertThat(answer(r -> WeighedLine.reading(r, "0.008", "125", "1"))).isEqualTo("r_5 = 1 g");
        assertThat(answer(r -> WeighedLine.reading(r, "0", "125", "0.1"))).isEqualTo("r_5 = 0.0 g");
    }

    @Test
    void in_every_format() {
        Working working = WeighedLine.of("0.008", "125", "0.1");
        assertThat(working.document().print(Format.MARKDOWN)).contains("r_5 = 1.0 g");
        assertThat(working.document().printPart(Format.LATEX, 1)).contains("r_{5} &= 1.0\\,\\text{g}");
        assertThat(working.document().printPart(Format.HTML, 2)).contains("<mn>1.0</mn><mtext>\u00A0g</mtext>");
    }

    @Test
    void the_order_of_the_factors_does_not_matter() {
        assertThat(answer(r -> r.named(Workings.READING, r.product(step(r, "0.1"), whole(r, "n", 20)))))
                .isEqualTo("r = 2.0 g");
    }

    @Test
    void sums_and_differences_of_readings_stay_on_the_display() {
        assertThat(answer(r -> {
                    Term d = step(r, "0.1");
                    Term a = r.named(Workings.READING, r.product(whole(r, "n", 20), d));
                    Term b = r.named(Workings.LINE, r.product(whole(r, "k", 30), d));
                    return r.named(Workings.BATCH, r.absolute(r.difference(r.sum(a, b), r.maximum(List.of(a, b)))));
                }))
                .isEqualTo("M = 2.0 g");
    }

    /** A division more, as where a total is closed. */
    @Test
    void a_whole_number_more_is_a_whole_number() {
        assertThat(answer(r -> {
                    Term more = r.named(WeighedLine.DIVISIONS, r.sum(whole(r, "n", 19), r.literal(1)));
                    return r.named(Workings.READING, r.product(more, step(r, "0.1")));
                }))
                .isEqualTo("r = 2.0 g");
    }

    @Test
    void what_is_on_no_grid_keeps_no_zeros() {
        // An exact mass plus a reading, a quotient, half a division, a number that is whole by chance.
        assertThat(answer(r -> {
                    Term d = step(r, "0.1");
                    Term a = r.named(Workings.READING, r.product(whole(r, "n", 20), d));
                    Term m = r.given(Workings.LINE, Ratio.of(3), Source.user());
                    return r.named(Workings.BATCH, r.sum(a, m));
                }))
                .isEqualTo("M = 5 g");
        assertThat(answer(r -> r.named(Workings.READING, r.quotient(step(r, "0.1"), r.literal(Ratio.parse("0.1"))))))
                .isEqualTo("r = 1 g");
        assertThat(answer(r -> r.named(Workings.READING, r.product(r.literal(10), step(r, "0.1")))))
                .isEqualTo("r = 1 g");
        assertThat(answer(r -> r.named(
                        Workings.READING,
                        r.product(r.given(WeighedLine.DIVISIONS, Ratio.of(10), Source.user()), step(r, "0.1")))))
                .isEqualTo("r = 1 g");
        assertThat(answer(r -> r.named(
                        Workings.READING,
                        r.product(
                                r.named(
                                        WeighedLine.DIVISIONS,
                                        r.rounded(r.literal(3), Rounding.toMultipleOf(Ratio.parse("1.5")))),
                                step(r, "0.5")))))
                .isEqualTo("r = 1.5 g");
    }

    /** A rounding that rounds nothing hides no grid. */
    @Test
    void no_rounding_lets_the_grid_through() {
        assertThat(answer(r -> r.named(
                        Workings.BATCH,
                        r.rounded(
                                r.named(Workings.READING, r.product(whole(r, "n", 20), step(r, "0.1"))),
                                Rounding.none()))))
                .isEqualTo("M = 2.0 g");
    }

    /** A long chain of unnamed operations is worked off, not descended into. */
    @Test
    void a_long_chain_is_no_matter() {
        Term chain = new Term.Literal(Ratio.ONE);
        for (int i = 0; i < 200_000; i++) {
            chain = new Term.Applied(Arithmetic.SUM, List.of(chain, new Term.Literal(Ratio.ONE)), Ratio.ONE);
        }
        assertThat(new Grid().of(chain)).isEqualTo(Ratio.ONE);
    }
}
