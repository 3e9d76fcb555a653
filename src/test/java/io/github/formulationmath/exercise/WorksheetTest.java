package io.github.formulationmath.exercise;

import static io.github.formulationmath.support.Golden.assertGolden;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Operation;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.reckoning.Term;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.support.HtmlChecks;
import io.github.formulationmath.support.RandomWorkings;
import io.github.formulationmath.support.WeighedLine;
import io.github.formulationmath.support.Workings;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class WorksheetTest {

    private static final Symbol PHASE = Symbol.of("P", "volume-to-fill", Kind.MASS);
    private static final Symbol RESULT = Symbol.of("z", "batch-mass", Kind.MASS);

    @Test
    void sheets_and_keys_are_as_they_were() {
        Worksheet worksheet = Worksheet.of(Workings.everything(), 2, 20261125);
        assertGolden("worksheet/sheet.txt", worksheet.sheet(Style.steps()).print(Format.TEXT));
        assertGolden("worksheet/key.txt", worksheet.key(Style.steps()).print(Format.TEXT));
        assertGolden("worksheet/sheet.md", worksheet.sheet(Style.steps()).print(Format.MARKDOWN));
        assertGolden("worksheet/key.md", worksheet.key(Style.steps()).print(Format.MARKDOWN));
        assertGolden("worksheet/sheet.tex", worksheet.sheet(Style.steps()).print(Format.LATEX));
        assertGolden("worksheet/sheet.html", worksheet.sheet(Style.steps()).print(Format.HTML));
        assertGolden("worksheet/key.html", worksheet.key(Style.steps()).print(Format.HTML));
    }

    @Tag("long")
    @Test
    void sheets_can_be_read_by_everybody() {
        Worksheet worksheet = Worksheet.of(Workings.everything(), 3, 1);
        HtmlChecks.assertAccessible(worksheet.sheet(Style.everything()).print(Format.HTML));
        HtmlChecks.assertAccessible(worksheet.key(Style.steps()).print(Format.HTML));
    }

    /** Worked by hand for 2.5 % of 400 g with an oil phase of 80 g beside it. */
    @Test
    void mistakes_are_made_in_the_same_relation() {
        Working working = Working.of(Phrase.of("question.line-mass", "Glycerin"), r -> {
            r.given(PHASE, Ratio.of(80), Source.user());
            Term w = r.given(Workings.SHARE, Ratio.parse("0.025"), Source.user());
            Term m = r.given(Workings.BATCH, Ratio.of(400), Source.user());
            return r.named(Workings.LINE, r.product(w, m));
        });
        assertThat(made(working, Mistake.WRONG_WHOLE)).contains(Ratio.of(2));
        assertThat(made(working, Mistake.PERCENT_AS_NUMBER)).contains(Ratio.of(1000));
        assertThat(made(working, Mistake.POINT_TO_THE_RIGHT)).contains(Ratio.of(100));
        assertThat(made(working, Mistake.POINT_TO_THE_LEFT)).contains(Ratio.of(1));
        assertThat(made(working, Mistake.INVERTED_QUOTIENT)).isEmpty();
        assertThat(made(working, Mistake.TRUNCATED)).isEmpty();
    }

    /** (12 − 2) / 4 + 1 by hand. */
    @Test
    void mistakes_reach_into_the_formula() {
        Working working = Working.of(
                Phrase.of("question.readings-total"),
                r -> r.named(
                        RESULT,
                        r.sum(r.quotient(r.difference(r.literal(12), r.literal(2)), r.literal(4)), r.literal(1))));
        assertThat(made(working, Mistake.INVERTED_QUOTIENT)).contains(Ratio.parse("1.4"));
        assertThat(made(working, Mistake.MULTIPLIED)).contains(Ratio.of(41));
        assertThat(made(working, Mistake.ADDED)).contains(Ratio.parse("4.5"));
        assertThat(made(working, Mistake.LEFT_OUT)).contains(Ratio.parse("2.5"));
    }

    /** 2.449 to 0.1 is 2.4; to 0.01 first it is 2.45, and then 2.5. */
    @Test
    void mistakes_of_rounding() {
        Working working = Working.of(
                Phrase.of("question.readings-total"),
                r -> r.named(
                        RESULT, r.rounded(r.literal(Ratio.parse("2.449")), Rounding.toMultipleOf(Ratio.parse("0.1")))));
        assertThat(made(working, Mistake.ROUNDED_TWICE)).contains(Ratio.parse("2.5"));
        assertThat(made(working, Mistake.TRUNCATED)).contains(Ratio.parse("2.4"));
        assertThat(made(working, Mistake.ALWAYS_UP)).contains(Ratio.parse("2.5"));
    }

    private static Optional<Ratio> made(Working working, Mistake mistake) {
        List<Step> steps = working.steps();
        return mistake.make(steps.get(steps.size() - 1), working).map(Distractor::value);
    }

    @Property(tries = 200)
    void the_right_answer_is_among_the_choices_once(@ForAll long seed) {
        Working working = RandomWorkings.of(seed);
        Worksheet worksheet = Worksheet.of(working, 1, seed);
        for (Worksheet.Blank blank : worksheet.blanks()) {
            if (blank.choices().isEmpty()) {
                continue;
            }
            assertThat(blank.choices())
                    .hasSizeBetween(3, 5)
                    .extracting(Worksheet.Choice::value)
                    .doesNotHaveDuplicates()
                    .contains(blank.step().value());
            assertThat(blank.choices())
                    .allMatch(choice -> choice.isRight() == choice.mistake().isEmpty())
                    .allMatch(choice -> choice.isRight()
                            == choice.value().equals(blank.step().value()));
        }
        assertThat(worksheet.sheet(Style.everything()))
                .isEqualTo(Worksheet.of(working, 1, seed).sheet(Style.everything()))
                .hasToString(
                        Worksheet.of(working, 1, seed).sheet(Style.everything()).toString());
    }

    /** A value left blank stands nowhere before the choices: neither as a result nor put in. */
    @Test
    void a_blank_does_not_give_itself_away() {
        Worksheet worksheet = Worksheet.of(Workings.everything(), Set.of("m_3", "w_3", "r_3"), 5);
        for (Format format : List.of(Format.TEXT, Format.MARKDOWN, Format.LATEX)) {
            String sheet = worksheet.sheet(Style.everything()).print(format);
            String before = sheet.substring(0, sheet.indexOf("Which value is right?"));
            assertThat(before).doesNotContain("263/75", "3.50667", "2.63", "3.5 ", "1/150");
            assertThat(before).containsAnyOf("____ g", "\\underline{\\hspace{25mm}}", "\\_\\_\\_\\_ g");
            assertThat(worksheet.key(Style.steps()).print(format)).containsAnyOf("263/75", "\\tfrac{263}{75}");
        }
        assertThat(worksheet.blanks().stream().map(blank -> blank.step().label()))
                .containsExactly("w_3", "m_3", "r_3", "v", "q_3");
        assertThat(worksheet.blanks().get(0).choices()).isEmpty();
    }

    @Test
    void what_cannot_be_blank_is_refused() {
        Working working = Workings.lineMass();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Worksheet.of(working, Set.of("m_4"), 1))
                .withMessage("labels is [m_4]: choose from [w_3, M, m_3]");
        assertThatIllegalArgumentException().isThrownBy(() -> Worksheet.of(working, Set.of(), 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Worksheet.of(working, 2, 1))
                .withMessageContaining("between 1 and 1");
        assertThatIllegalArgumentException().isThrownBy(() -> Worksheet.of(working, 0, 1));
    }

    /** 6.76 % of 125 g is 8.45 g, 84.5 divisions of 0.1 g: a tie, of which the even step is 84. */
    private static final Working TIE = WeighedLine.of("0.0676", "125", "0.1");

    private static final Working NO_TIE = WeighedLine.of("0.0676", "130", "0.1");

    private static List<String> linesFrom(String heading, String text) {
        List<String> lines = text.lines().toList();
        return lines.subList(lines.indexOf(heading), lines.size());
    }

    @Test
    void the_key_says_what_was_done() {
        String key = Worksheet.of(TIE, 4, 11).key(Style.steps()).print(Format.TEXT);
        assertThat(key).startsWith("Answer key, sheet 11: What must the display read for Cetearyl Alcohol?\n\nGiven\n");
        assertThat(linesFrom("Answers", key))
                .contains(
                        "    a) 0.00676 g: multiplied by d (readability of the balance) instead of M",
                        "      (batch mass)",
                        "    b) 6.76 g: the percentage was read as the number of units",
                        "    a) 8.45: decimal point one place too far to the left",
                        "    b) 85: half was rounded up; here a tie goes to the even step",
                        "    a) 68: carried on from m_5: the percentage was read as the number of units",
                        "    c) 8.5 g: half was rounded up; here a tie goes to the even step",
                        "    b) 8.4 g: right");
        assertThat(key).doesNotContain("whatever the digits");
    }

    @Test
    void a_tie_is_explained_where_one_occurs() {
        String sentence = "  Note: Ties to even: a number exactly half way between two steps goes to the\n"
                + "    even one, so two and a half becomes 2 and three and a half becomes 4.\n\nAnswer\n";
        assertThat(Worksheet.of(TIE, 1, 1).sheet(Style.steps()).print(Format.TEXT))
                .contains(sentence);
        assertThat(Worksheet.of(TIE, 1, 1).key(Style.steps()).print(Format.TEXT))
                .contains(sentence);
        assertThat(Worksheet.of(NO_TIE, 1, 1).sheet(Style.steps()).print(Format.TEXT))
                .doesNotContain("Note");
        assertThat(TIE.document().print(Format.TEXT)).doesNotContain("Note");
    }

    @Test
    void what_a_tie_is() {
        Operation.Rounded even = new Operation.Rounded(Rounding.toMultipleOf(Ratio.parse("0.2")));
        assertThat(WorksheetDocument.breaksTie(even, Ratio.parse("12.3"))).isTrue();
        assertThat(WorksheetDocument.breaksTie(even, Ratio.parse("12.4"))).isFalse();
        assertThat(WorksheetDocument.breaksTie(even, Ratio.parse("12.35"))).isFalse();
        assertThat(WorksheetDocument.breaksTie(
                        new Operation.Rounded(even.rounding().with(RoundingMode.FLOOR)), Ratio.parse("12.3")))
                .isFalse();
        assertThat(WorksheetDocument.breaksTie(new Operation.Rounded(Rounding.none()), Ratio.parse("12.3")))
                .isFalse();
    }

    /** 8.788 g: 87.88 divisions, 88 shown. */
    @Test
    void a_wrong_rounding_is_carried_on() {
        assertThat(made(NO_TIE, Mistake.TRUNCATED)).contains(Ratio.parse("8.7"));
        assertThat(made(TIE, Mistake.HALF_UP)).contains(Ratio.parse("8.5"));
        assertThat(made(NO_TIE, Mistake.NEAREST)).isEmpty();
    }

    /** 2.6 down to whole numbers is 2. */
    @Test
    void mistakes_where_one_direction_is_asked_for() {
        Working working = Working.of(
                Phrase.of("question.readings-total"),
                r -> r.named(
                        RESULT,
                        r.rounded(
                                r.literal(Ratio.parse("2.6")),
                                Rounding.toDecimalPlaces(0).with(RoundingMode.FLOOR))));
        assertThat(made(working, Mistake.NEAREST)).contains(Ratio.of(3));
        assertThat(made(working, Mistake.HALF_UP)).isEmpty();
        assertThat(made(working, Mistake.ROUNDED_TWICE)).isEmpty();
    }

    private static Worksheet.Blank blank(Working working, String label) {
        return Worksheet.of(working, Set.of(label), 1).blanks().get(0);
    }

    @Test
    void what_a_look_at_the_sheet_rules_out_is_not_offered() {
        // 676 % of 125 g is more than the batch; 18.5 g, the batch divided by 6.76, and 9.06 g, of the others, are no
        // decimals.
        assertThat(choices("m_5")).containsExactlyInAnyOrder("8.45 g", "6.76 g", "8.5 g", "0.00676 g");
        // 0.84 g lies between two steps of the display.
        assertThat(choices("r_5")).contains("8.4 g", "8.5 g", "8.0 g").doesNotContain("0.84 g");
        // 0.1 / 8.45 is no decimal, while the right answer is one.
        assertThat(choices("x_5")).contains("84.5", "85", "0.0676").noneMatch(text -> text.startsWith("≈"));
    }

    private static List<String> choices(String label) {
        return blank(TIE, label).choices().stream()
                .map(Worksheet.Choice::toString)
                .toList();
    }

    @Test
    void an_answer_that_is_no_decimal_is_offered_in_few_digits() {
        Working working = Working.of(
                Phrase.of("question.readings-total"),
                r -> r.named(RESULT, r.quotient(r.given(PHASE, Ratio.of(400), Source.user()), r.literal(3))));
        String sheet = Worksheet.of(working, 1, 1).sheet(Style.steps()).print(Format.TEXT);
        assertThat(linesFrom("Which value is right?", sheet).get(2))
                .contains(") ≈ 133.333 g")
                .doesNotContain("/");
    }

    /** 59.9 g of a batch of 60 g on a display of 0.1 g: 59.9 is exact, ten times as much is more than the batch. */
    @Test
    void without_two_wrong_answers_there_are_no_choices() {
        Working working = WeighedLine.of("599/600", "60", "0.1");
        Worksheet worksheet = Worksheet.of(working, Set.of("r_5"), 1);
        assertThat(worksheet.blanks().get(0).choices()).isEmpty();
        assertThat(worksheet.sheet(Style.steps()).print(Format.TEXT)).doesNotContain("Which value is right?");
        assertThat(linesFrom("Answers", worksheet.key(Style.steps()).print(Format.TEXT))
                        .subList(0, 4))
                .containsExactly("Answers", "  r_5, reading for Cetearyl Alcohol", "    59.9 g", "");
        assertThat(Worksheet.of(TIE, Set.of("M"), 1).blanks().get(0).choices()).isEmpty();
    }

    @Test
    void choices_can_be_left_out() {
        Worksheet worksheet = Worksheet.of(TIE, 4, 11).withoutChoices();
        assertThat(worksheet.blanks())
                .hasSize(4)
                .allMatch(blank -> blank.choices().isEmpty());
        assertThat(worksheet.seed()).isEqualTo(11);
        assertThat(worksheet.sheet(Style.steps()).print(Format.TEXT))
                .doesNotContain("a)")
                .contains("Sheet 11. Name: ______");
        assertThat(worksheet.key(Style.steps()).print(Format.TEXT))
                .contains("    8.4 g\n")
                .doesNotContain("a)");
    }

    @Test
    void choices_stand_in_a_row_if_they_fit() {
        Worksheet worksheet = Worksheet.of(TIE, 2, 7);
        assertThat(linesFrom(
                        "Which value is right?", worksheet.sheet(Style.steps()).print(Format.TEXT)))
                .contains("    a) 8.0 g    b) 8.4 g    c) 84.0 g    d) 8.5 g");
        assertThat(worksheet.sheet(Style.steps()).print(Format.MARKDOWN))
                .contains("a\\) 8\\.0 g &emsp; b\\) 8\\.4 g &emsp; c\\) 84\\.0 g &emsp; d\\) 8\\.5 g\n\n");
        assertThat(worksheet.sheet(Style.steps()).printPart(Format.LATEX, 1))
                .contains(
                        "$r_{5}$, reading for Cetearyl Alcohol\n\na) 8.0 g \\qquad\nb) 8.4 g \\qquad\nc) 84.0 g \\qquad\nd) 8.5 g\n\n");
        assertThat(worksheet.sheet(Style.steps()).printPart(Format.HTML, 2))
                .contains(
                        "<li><p><math><msub><mi>r</mi><mn>5</mn></msub></math>, reading for Cetearyl Alcohol</p>\n"
                                + "<ul class=\"row\">\n<li>a) 8.0 g</li>\n<li>b) 8.4 g</li>\n<li>c) 84.0 g</li>\n<li>d) 8.5 g</li>\n</ul></li>\n");
    }

    @Test
    void the_key_prints_what_is_right_in_bold() {
        Worksheet worksheet = Worksheet.of(TIE, 2, 7);
        assertThat(worksheet.key(Style.steps()).print(Format.MARKDOWN))
                .contains("ten times the step\n- **b\\) 8\\.4 g**\\: right\n");
        assertThat(worksheet.key(Style.steps()).printPart(Format.LATEX, 1))
                .contains("\\item[] \\textbf{b) 8.4 g}: right\n", "r_{5} &= \\mathbf{8.4}\\,\\text{g}");
        assertThat(worksheet.key(Style.steps()).printPart(Format.HTML, 2))
                .contains(
                        "<li><strong>b) 8.4 g</strong>: right</li>\n",
                        "<mrow class=\"filled\"><mn>8.4</mn><mtext>\u00A0g</mtext></mrow>",
                        "<mrow><mn>8.45</mn>");
    }

    @Test
    void a_page_says_which_sheet_it_is() {
        Worksheet worksheet = Worksheet.of(TIE, 2, -7);
        assertThat(worksheet.sheet(Style.steps()).print(Format.HTML))
                .contains(
                        "<title>What must the display read for Cetearyl Alcohol?</title>",
                        "</h1>\n<p>Sheet −7. Name: ______________________________ Date: ______________</p>\n",
                        "<p class=\"caution\">An exercise in arithmetic. Weigh nothing by it");
        assertThat(worksheet.key(Style.steps()).print(Format.HTML))
                .contains(
                        "<title>Answer key, sheet −7: What must the display read for Cetearyl Alcohol?</title>",
                        "<h1>Answer key, sheet −7: What must the display read for Cetearyl Alcohol?</h1>")
                .doesNotContain("Name:");
        assertThat(Worksheet.of(TIE, 2, 12)
                        .sheet(Style.steps().with(Locale.forLanguageTag("ar-EG-u-nu-arab")))
                        .print(Format.TEXT))
                .contains("Sheet ١٢.");
    }

    @Test
    void a_class_gets_its_sheets_in_one_text() {
        List<Worksheet> sheets = List.of(Worksheet.of(TIE, 2, 1), Worksheet.of(NO_TIE, 2, 2));
        String page = Worksheet.sheets(sheets, Style.steps(), Format.HTML);
        assertThat(page).contains("<title>Worksheets</title>", "article + article { break-before: page; }");
        assertThat(page).containsOnlyOnce("<html").containsOnlyOnce("</html>");
        assertThat(page)
                .contains(sheets.get(0).sheet(Style.steps()).printPart(Format.HTML, 1)
                        + sheets.get(1).sheet(Style.steps()).printPart(Format.HTML, 1));
        assertThat(Worksheet.keys(sheets, Style.steps(), Format.HTML))
                .contains("<title>Answer keys</title>", "Answer key, sheet 1:", "Answer key, sheet 2:");
        assertThat(Worksheet.keys(sheets, Style.steps(), Format.TEXT))
                .isEqualTo(
                        sheets.get(0).key(Style.steps()) + "\n" + sheets.get(1).key(Style.steps()));
        String latex = sheets.get(0).sheet(Style.steps()).printPart(Format.LATEX, 1) + "\\newpage\n"
                + sheets.get(1).sheet(Style.steps()).printPart(Format.LATEX, 1);
        assertThat(Worksheet.sheets(sheets, Style.steps(), Format.LATEX))
                .startsWith("\\documentclass")
                .endsWith(latex + "\\end{document}\n");
    }

    @Test
    void what_leaves_nothing_to_fill_in_is_refused() {
        Style answer = Style.answer();
        String message = "style tells the answer alone: a worksheet needs the steps; print it in Style.steps() or"
                + " Style.everything()";
        Worksheet worksheet = Worksheet.of(TIE, 2, 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> worksheet.sheet(answer))
                .withMessage(message);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> worksheet.key(answer))
                .withMessage(message);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Worksheet.sheets(List.of(), Style.steps(), Format.TEXT))
                .withMessage("documents is empty: give at least one");
    }

    @Test
    void every_mistake_has_a_name() {
        assertThat(Mistake.values()).allMatch(mistake -> Wording.english().has(mistake.key()));
    }

    @Test
    void a_choice_knows_the_mistake_behind_it() {
        Worksheet.Blank blank = blank(TIE, "m_5");
        Map<String, Optional<Mistake>> behind = new HashMap<>();
        blank.choices().forEach(choice -> behind.put(choice.text(Style.steps()), choice.mistake()));
        assertThat(behind)
                .containsEntry("6.76 g", Optional.of(Mistake.PERCENT_AS_UNITS))
                .containsEntry("8.45 g", Optional.empty());
        assertThat(blank.choices())
                .filteredOn(Worksheet.Choice::isRight)
                .extracting(choice -> choice.text(Style.steps().in(Kind.MASS, Amount.mass("1 kg"))))
                .containsExactly("0.00845 kg");
        assertThat(blank.toString()).startsWith("m_5: one of [").contains("8.45 g", "6.76 g");
    }

    @Test
    void a_sheet_says_what_it_is() {
        assertThat(Worksheet.of(TIE, Set.of("n_5"), 7))
                .hasToString("What must the display read for Cetearyl Alcohol? sheet 7, blanks [n_5, r_5]");
    }

    /** An answer without a name, worked out from a blank, is a blank itself. */
    @Test
    void an_unnamed_answer_gives_nothing_away() {
        Working working = Working.of(
                Phrase.of("question.readings-total"),
                r -> r.sum(r.named(RESULT, r.product(r.literal(6), r.literal(7))), r.literal(1)));
        Worksheet worksheet = Worksheet.of(working, 1, 1);
        assertThat(worksheet.sheet(Style.steps()).print(Format.TEXT))
                .contains("Answer\n    z + 1 = ____________ g + 1\n          = ____________ g\n");
        assertThat(worksheet.key(Style.steps()).print(Format.TEXT)).contains("          = 43 g\n");
    }
}
