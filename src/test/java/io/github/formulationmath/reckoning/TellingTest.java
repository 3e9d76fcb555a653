package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.support.WeighedLine;
import io.github.formulationmath.support.Workings;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What of a working is told, and in which form: answers without a name, blanks, bold type, remarks, sources. */
class TellingTest {

    private static final Phrase QUESTION = Phrase.of("question.line-mass", "Wax");
    private static final Symbol ACIDITY = Symbol.of("p", "relative-rounding-error", Kind.NUMBER);
    private static final String BLANK = "____________";

    private static List<String> lines(Document document) {
        return document.print(Format.TEXT)
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    private static Step step(Working working, String label) {
        return working.steps().stream()
                .filter(step -> step.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void an_answer_that_is_a_number_of_the_relation_is_printed_as_it_is() {
        Working working = Working.of(QUESTION, r -> r.literal(Ratio.of(1, 3)));
        assertThat(lines(working.document()))
                .containsExactly("How much of Wax goes into the batch?", "Answer", "= 1/3 ≈ 0.333333");
    }

    @Test
    void an_answer_without_a_name_is_printed_with_its_operation() {
        Working working = Working.of(QUESTION, r -> {
            Term a = r.given(Workings.LINE, Ratio.of(7), Source.user());
            return r.product(a, r.given(Workings.SHARE, Ratio.of(1, 3), Source.user()));
        });
        assertThat(lines(working.document(Style.answer())))
                .containsExactly(
                        "How much of Wax goes into the batch?",
                        "Answer",
                        "m · w = 7 g · (100/3 %)",
                        "= 7/3 g ≈ 2.33333 g");
        assertThat(lines(working.document(Style.answer().inDecimals())))
                .endsWith("m · w ≈ 7 g · 33.3333 %", "≈ 2.33333 g");
        assertThat(lines(working.document(Style.answer().leavingBlank(Set.of(step(working, "m"))))))
                .endsWith("m · w = " + BLANK + " g · (100/3 %)", "= " + BLANK + " g");
    }

    @Test
    void a_blank_shows_neither_value_nor_origin_nor_what_a_rounding_changed() {
        Working working = WeighedLine.of("0.0084", "125", "0.1");
        Style blank = Style.everything().leavingBlank(Set.of(step(working, "n_5"), step(working, "w_5")));
        assertThat(lines(working.document(Style.everything())))
                .contains("n_5 = round(x_5 to a multiple of 1, ties to even)", "= 10", "Rounding took away 0.5.");
        String text = working.document(blank).print(Format.TEXT);
        assertThat(text)
                .contains(
                        "w_5 = " + BLANK + " %",
                        "= " + BLANK + " % · 125 g",
                        "= " + BLANK + "\n",
                        "= " + BLANK + " · 0.1 g")
                .contains("r_5 = 1.0 g")
                .doesNotContain("Rounding took away", "0.84 %");
        Style input = Style.everything().leavingBlank(Set.of(step(working, "x_5")));
        assertThat(working.document(input).print(Format.TEXT)).doesNotContain("Rounding took away", "10.5");
    }

    @Test
    void a_blank_given_value_keeps_its_source_to_itself() {
        Working working = Workings.lineMass();
        assertThat(working.document(Style.everything()).print(Format.TEXT)).contains("as written: 2.50 %");
        assertThat(working.document(Style.everything().leavingBlank(Set.of(step(working, "w_3"))))
                        .print(Format.TEXT))
                .contains("w_3 = " + BLANK + " %")
                .doesNotContain("2.50 %", "2.5 %");
    }

    @Test
    void a_comparison_with_a_blank_does_not_say_how_it_ends() {
        Working working = Working.of(QUESTION, r -> {
            Term a = r.given(Workings.LINE, Ratio.of(7), Source.user());
            Term b = r.given(Workings.BATCH, Ratio.of(9), Source.user());
            r.holds(a, Comparison.LESS, b);
            return a;
        });
        assertThat(lines(working.document(Style.everything()))).contains("m < M", "7 g < 9 g: holds");
        for (String label : List.of("m", "M")) {
            assertThat(lines(working.document(Style.everything().leavingBlank(Set.of(step(working, label))))))
                    .contains("m < M")
                    .noneMatch(line -> line.contains("holds"));
        }
    }

    @Test
    void values_that_stand_out_are_bold_and_no_others() {
        Working working = Workings.lineMass();
        Style key = Style.steps().emphasizing(Set.of(step(working, "m_3")));
        assertThat(working.document(key).printPart(Format.LATEX, 1))
                .contains("m_{3} &= \\mathbf{10}\\,\\text{g}")
                .contains("2.5\\,\\% \\cdot 400\\,\\text{g}")
                .doesNotContain("\\mathbf{400}", "\\mathbf{2.5}");
        assertThat(working.document(key).print(Format.TEXT))
                .isEqualTo(working.document().print(Format.TEXT));
    }

    @Test
    void a_derivation_has_the_given_values_and_the_steps_and_no_headings() {
        Working working = Workings.lineMass();
        assertThat(lines(working.derivation(Style.steps())))
                .containsExactly(
                        "w_3 = 2.5 %  share of Glycerin",
                        "M = 400 g    batch mass", "mass of Glycerin", "m_3 = w_3 · M", "= 2.5 % · 400 g", "= 10 g");
        assertThat(lines(working.derivation(Style.answer()))).isEmpty();
    }

    @Test
    void a_remark_stands_behind_the_last_step() {
        Working working = Workings.lineMass();
        Working longer = working.with(new Entry.Note(Phrase.of("note.volumes-add-up")));
        assertThat(longer.entries()).hasSize(4).startsWith(working.entries().toArray(new Entry[0]));
        assertThat(longer.entries().get(3)).isEqualTo(new Entry.Note(Phrase.of("note.volumes-add-up")));
        assertThat(longer.answer()).isEqualTo(working.answer());
        assertThat(longer.question()).isEqualTo(working.question());
        assertThat(longer.document().print(Format.TEXT))
                .contains("= 10 g\n  Note: Assumed: volumes of ingredients add up");
        assertThat(working.entries()).hasSize(3);
    }

    /** A program hands over thirds as long fractions; a person's text is short. */
    @Test
    void a_long_fraction_is_not_repeated_as_it_was_written() {
        assertThat(origin("1234567890/123456789")).contains("as written: 1234567890/123456789");
        assertThat(origin("1234567890/1234567890")).doesNotContain("as written");
        assertThat(origin("1234567890/123456789 g")).doesNotContain("as written");
        assertThat(origin("0.12345678901234567890")).contains("as written: 0.12345678901234567890");
        assertThat(origin("1/3")).contains("as written: 1/3");
    }

    private static String origin(String written) {
        return Working.of(QUESTION, r -> r.given(Workings.LINE, Ratio.ONE, Source.written(written)))
                .document(Style.everything())
                .print(Format.TEXT);
    }

    @Test
    void a_sum_of_nothing_is_0() {
        Working working = Working.of(QUESTION, r -> r.named(Workings.BATCH, r.sum(List.of())));
        assertThat(lines(working.document())).containsSubsequence("Working", "batch mass", "M = 0 g", "Answer");
    }

    /** 10² = 100 exactly; √10 = 3.16227766016837933199… to 17 digits. */
    @Test
    void a_power_of_ten_is_written_as_an_antilogarithm() {
        Working working = Working.of(QUESTION, r -> {
            Term p = r.given(ACIDITY, Ratio.of(1, 2), Source.user());
            return r.named(Workings.FACTOR, r.tenTo(p));
        });
        assertThat(working.answer().value()).isEqualTo(Ratio.parse("3.1622776601683793"));
        assertThat(lines(working.document()))
                .contains("q = antilog(p)", "= antilog(0.5)", "≈ 3.1622776601683793 ≈ 3.16228");
        Reckoning<Ratio> plain = Reckoning.plain();
        assertThat(plain.tenTo(Ratio.of(2))).isEqualTo(Ratio.of(100));
        assertThat(plain.tenTo(Ratio.of(-3))).isEqualTo(Ratio.of(1, 1000));
    }

    @Test
    void the_answer_alone_is_told_or_not() {
        assertThat(Style.answer().isAnswerOnly()).isTrue();
        assertThat(Style.steps().isAnswerOnly()).isFalse();
        assertThat(Style.everything().isAnswerOnly()).isFalse();
    }

    @Test
    void significant_digits_lie_between_1_and_100() {
        Working third = Working.of(QUESTION, r -> r.given(Workings.LINE, Ratio.of(1, 3), Source.user()));
        assertThat(lines(third.document(Style.answer().withSignificantDigits(1))))
                .endsWith("m = 1/3 g ≈ 0.3 g");
        assertThat(Style.answer().withSignificantDigits(100).text(Ratio.of(1, 3), step(third, "m")))
                .isEqualTo("≈ 0." + "3".repeat(100) + " g");
        for (int many : new int[] {0, 101}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Style.steps().withSignificantDigits(many))
                    .withMessage("digits is " + many + ": it must lie between 1 and 100");
        }
    }

    @Test
    void a_value_is_told_in_the_unit_of_a_step() {
        Step mass = Step.given(Workings.LINE, Subject.none(), Ratio.ONE, Source.user());
        Style kilograms = Style.steps().in(Kind.MASS, "kg", Ratio.of(1000));
        assertThat(kilograms.text(Ratio.of(2500), mass)).isEqualTo("2.5 kg");
        assertThat(kilograms.text(Ratio.of(1, 3), mass)).isEqualTo("≈ 0.000333333 kg");
        assertThat(kilograms.inDecimals().text(Ratio.of(1, 3), mass)).isEqualTo("≈ 0.000333333 kg");
        assertThat(kilograms.inFractions().text(Ratio.of(1, 3), mass)).isEqualTo("1/3000 kg");
        assertThat(kilograms.with(Locale.GERMANY).text(Ratio.of(-2500), mass)).isEqualTo("−2,5 kg");
    }

    @Test
    void the_grid_of_a_term_is_the_step_that_it_was_rounded_to() {
        Working working = WeighedLine.of("0.0084", "125", "0.1");
        assertThat(Working.gridOf(step(working, "n_5"))).isEqualTo(Ratio.ONE);
        assertThat(Working.gridOf(working.answer())).isEqualTo(Ratio.of(1, 10));
        assertThat(Working.gridOf(step(working, "m_5"))).isEqualTo(Ratio.ZERO);
    }

    @Test
    void a_rounding_says_what_it_added_took_away_or_left() {
        assertThat(rounded("10.26")).contains("Rounding added 0.04 g.");
        assertThat(rounded("10.24")).contains("Rounding took away 0.04 g.");
        assertThat(rounded("10.2")).contains("Rounding changed nothing.");
    }

    private static String rounded(String grams) {
        return Working.of(QUESTION, r -> {
                    Term mass = r.given(Workings.LINE, Ratio.parse(grams), Source.user());
                    return r.named(Workings.READING, r.rounded(mass, Rounding.toMultipleOf(Ratio.parse("0.1"))));
                })
                .document(Style.everything())
                .print(Format.TEXT);
    }
}
