package io.github.formulationmath.working;

import static io.github.formulationmath.support.Golden.assertGolden;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.support.HtmlChecks;
import java.util.List;
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
    void sheetsAndKeysAreAsTheyWere() {
        Worksheet worksheet = Worksheet.of(Workings.everything(), 2, 20261125);
        assertGolden("worksheet/sheet.txt", worksheet.sheet(WorkingFormat.text()));
        assertGolden("worksheet/key.txt", worksheet.key(WorkingFormat.text()));
        assertGolden("worksheet/sheet.md", worksheet.sheet(WorkingFormat.markdown()));
        assertGolden("worksheet/key.md", worksheet.key(WorkingFormat.markdown()));
        assertGolden("worksheet/sheet.tex", worksheet.sheet(WorkingFormat.latexDocument()));
        assertGolden("worksheet/sheet.html", worksheet.sheet(WorkingFormat.htmlPage()));
        assertGolden("worksheet/key.html", worksheet.key(WorkingFormat.htmlPage()));
    }

    @Tag("long")
    @Test
    void sheetsCanBeReadByEverybody() {
        Worksheet worksheet = Worksheet.of(Workings.everything(), 3, 1);
        HtmlChecks.assertAccessible(worksheet.sheet(WorkingFormat.htmlPage().with(Depth.EVERYTHING)));
        HtmlChecks.assertAccessible(worksheet.key(WorkingFormat.htmlPage()));
    }

    /** Worked by hand for 2.5 % of 400 g with an oil phase of 80 g beside it. */
    @Test
    void mistakesAreMadeInTheSameRelation() {
        Working working = Working.of(Phrase.of("question.line-mass", "Glycerin"), r -> {
            r.given(PHASE, Ratio.of(80), Source.user());
            Term w = r.given(Workings.SHARE, Ratio.parse("0.025"), Source.user());
            Term m = r.given(Workings.BATCH, Ratio.of(400), Source.user());
            return r.named(Workings.LINE, r.product(w, m));
        });
        assertThat(made(working, Mistake.WRONG_WHOLE)).contains(Ratio.of(2));
        assertThat(made(working, Mistake.PERCENT_AS_NUMBER)).contains(Ratio.of(1000));
        assertThat(made(working, Mistake.MOVED_POINT)).contains(Ratio.of(100));
        assertThat(made(working, Mistake.INVERTED_QUOTIENT)).isEmpty();
        assertThat(made(working, Mistake.TRUNCATED)).isEmpty();
    }

    /** (12 − 2) / 4 + 1 by hand. */
    @Test
    void mistakesReachIntoTheFormula() {
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
    void mistakesOfRounding() {
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
        return mistake.make(steps.get(steps.size() - 1), working);
    }

    @Property(tries = 200)
    void theRightAnswerIsAmongTheChoicesOnce(@ForAll long seed) {
        Working working = RandomWorkings.of(seed);
        Worksheet worksheet = Worksheet.of(working, 1, seed);
        for (Blank blank : worksheet.blanks()) {
            assertThat(blank.choices())
                    .doesNotHaveDuplicates()
                    .contains(blank.step().value());
            assertThat(blank.choices()).hasSize(blank.distractors().size() + 1);
            assertThat(blank.distractors())
                    .allMatch(distractor ->
                            !distractor.value().equals(blank.step().value()));
        }
        WorkingFormat everything = WorkingFormat.text().with(Depth.EVERYTHING);
        assertThat(worksheet.sheet(everything))
                .isEqualTo(Worksheet.of(working, 1, seed).sheet(everything));
    }

    /** A value left blank stands nowhere before the choices: neither as a result nor put in. */
    @Test
    void aBlankDoesNotGiveItselfAway() {
        Worksheet worksheet = Worksheet.of(Workings.everything(), Set.of("m_3", "w_3", "r_3"), 5);
        for (WorkingFormat format :
                List.of(WorkingFormat.text(), WorkingFormat.markdown(), WorkingFormat.latexFragment())) {
            String sheet = worksheet.sheet(format.with(Depth.EVERYTHING));
            String before = sheet.substring(0, sheet.indexOf("Which value is right?"));
            assertThat(before).doesNotContain("263/75", "3.50667", "2.63", "3.5 ", "1/150");
            assertThat(before).containsAnyOf("____ g", "\\underline{\\hspace{4em}}", "\\_\\_\\_\\_ g");
            assertThat(worksheet.key(format)).contains("263/75");
        }
        assertThat(worksheet.blanks()).hasSize(3);
        assertThat(worksheet.blanks().get(0).distractors()).isEmpty();
    }

    @Test
    void whatCannotBeBlankIsRefused() {
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
}
