package io.github.formulationmath.reckoning;

import static io.github.formulationmath.support.Golden.assertGolden;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Style.Depth;
import io.github.formulationmath.support.CpuTime;
import io.github.formulationmath.support.Workings;
import java.io.IOException;
import java.io.StringReader;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Workings told as documents, in every format. */
class WorkingDocumentTest {

    private static final Map<String, Function<Document, String>> FORMATS = Map.of(
            "txt", document -> document.print(Format.TEXT),
            "md", document -> document.print(Format.MARKDOWN),
            "tex", document -> document.print(Format.LATEX),
            "fragment.tex", document -> document.printPart(Format.LATEX, 1),
            "html", document -> document.print(Format.HTML),
            "fragment.html", document -> document.printPart(Format.HTML, 2));

    @ParameterizedTest
    @EnumSource(Depth.class)
    void pages_are_as_they_were(Depth depth) {
        FORMATS.forEach((ending, format) -> {
            String name = depth.name().toLowerCase(Locale.ROOT) + "." + ending;
            assertGolden(
                    "working/" + name,
                    format.apply(Workings.everything().document(Style.steps().with(depth))));
        });
    }

    @Test
    @Tag("locale")
    void names_cannot_leave_their_place() {
        FORMATS.forEach((ending, format) -> assertGolden(
                "working/hostile." + ending, format.apply(Workings.hostile().document(Style.everything()))));
    }

    @Test
    void a_long_sum_is_carried_over() {
        FORMATS.forEach((ending, format) -> assertGolden(
                "working/total." + ending, format.apply(Workings.total(40).document())));
    }

    @Property(tries = 60)
    void any_name_gives_a_well_formed_page(@ForAll String name) {
        Working working = Working.of(
                Phrase.of("question.line-mass", name),
                r -> r.given(Workings.LINE, Subject.of(name, name), Ratio.ONE, Source.published("x" + name, name)));
        String page = working.document(Style.everything()).print(Format.HTML);
        assertThat(io.github.formulationmath.support.HtmlChecks.parse(page)
                        .getElementsByTagName("math")
                        .getLength())
                .isPositive();
        String markdown = working.document(Style.everything()).print(Format.MARKDOWN);
        assertThat(markdown.lines().filter(line -> line.startsWith("#"))).hasSize(3);
    }

    @Test
    void units_are_chosen_for_all_numbers_of_a_kind() {
        Style ounces = Style.everything()
                .in(Kind.MASS, "oz", Ratio.parse("28.349523125"))
                .in(Kind.MONEY, "EUR", Ratio.ONE);
        Working working = Working.of(Phrase.of("question.readings-total"), r -> {
            Term two = r.given(Workings.BATCH, Ratio.parse("56.69904625"), Source.user());
            Term price = r.given(Symbol.of("p", "batch-mass", Kind.MONEY_PER_MASS), Ratio.of(2), Source.user());
            Term square = r.named(Symbol.of("s", "batch-mass", Kind.MASS_SQUARED), r.product(two, two));
            r.holds(r.product(two, square), Comparison.GREATER, r.literal(0));
            return r.named(Symbol.of("c", "batch-mass", Kind.MONEY), r.product(price, two));
        });
        String text = working.document(ounces).print(Format.TEXT);
        assertThat(text)
                .contains("M = 2 oz")
                .contains("p = 56.69904625 EUR/oz")
                .contains("= 4 oz²")
                .contains("oz³ > 0: holds")
                .contains("c = 113.3980925 EUR");
        assertThat(ounces).hasToString("EVERYTHING, 6 digits");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", " oz", "oz ", "5g", "g\n", "\u202E", "aaaaaaaaaaaaaaaaaaaaaaaaa"})
    void a_unit_is_made_of_words(String unit) {
        assertThatIllegalArgumentException().isThrownBy(() -> Style.steps().in(Kind.MASS, unit, Ratio.ONE));
    }

    @Test
    void a_unit_has_a_size() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Style.steps().in(Kind.MASS, "oz", Ratio.ZERO))
                .withMessageContaining("above 0");
    }

    @Test
    @Tag("locale")
    void numbers_follow_a_locale_only_if_asked_for() {
        Working working = Workings.everything();
        assertThat(working.document().print(Format.TEXT)).contains("2.63 % · (400/3 g)");
        assertThat(working.document(Style.steps().with(Locale.GERMANY)).print(Format.TEXT))
                .contains("2,63 % · (400/3 g)")
                .contains("≈ 3,50667 g");
        assertThat(working.document(Style.steps().with(Locale.forLanguageTag("ar-EG-u-nu-arab")))
                        .print(Format.TEXT))
                .contains("٢٫٦٣ %");
        assertThat(working.document(Style.steps().with(Locale.GERMANY)).printPart(Format.LATEX, 1))
                .contains("2{,}63");
    }

    @Test
    void digits_are_significant() {
        assertThat(Workings.everything()
                        .document(Style.steps().withSignificantDigits(3))
                        .print(Format.TEXT))
                .contains("≈ 3.51 g");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Style.steps().withSignificantDigits(0))
                .withMessage("digits is 0: it must lie between 1 and 100");
        assertThatIllegalArgumentException().isThrownBy(() -> Style.steps().withSignificantDigits(101));
    }

    @Test
    void headings_go_below_those_of_the_caller() {
        assertThat(Workings.lineMass().document().printPart(Format.MARKDOWN, 3))
                .startsWith("### How much")
                .contains("\n#### Given\n");
        assertThat(Workings.lineMass().document().printPart(Format.HTML, 5))
                .contains("<h5>How much")
                .contains("<h6>Given</h6>")
                .startsWith("<article lang=\"en\">");
        assertThat(Workings.lineMass().document().printPart(Format.LATEX, 5)).contains("\\subparagraph*{How");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Workings.lineMass().document().printPart(Format.MARKDOWN, 6))
                .withMessage("level is 6: it must lie between 1 and 5");
    }

    @Test
    void another_language_is_one_file() throws IOException {
        StringBuilder german = new StringBuilder();
        Wording english = Wording.english();
        for (String key : english.keys()) {
            german.append(key).append('=').append(english.text(Phrase.of(key))).append('\n');
        }
        german.append("working.given=Gegeben\nlanguage=de\nsymbol.batch-mass=Chargenmasse\n");
        Wording wording = Wording.read(new StringReader(german.toString()));
        assertThat(Workings.lineMass().document(Style.steps().with(wording)).print(Format.HTML))
                .contains("<html lang=\"de\">")
                .contains("<h2>Gegeben</h2>")
                .contains("Chargenmasse");
    }

    @Test
    void a_working_prints_itself() {
        assertThat(Workings.lineMass())
                .hasToString(Workings.lineMass().document().print(Format.TEXT));
    }

    @Test
    void nothing_is_null() {
        assertThatNullPointerException()
                .isThrownBy(() -> Workings.lineMass().document(null))
                .withMessage("style");
        assertThatNullPointerException()
                .isThrownBy(() -> Style.steps().with((Wording) null))
                .withMessage("newWording");
    }

    /** Ten thousand lines take a moment, and twice as many about twice as long. */
    @Tag("long")
    @Test
    void rendering_is_linear() {
        Working small = Workings.total(5_000);
        Working large = Workings.total(10_000);
        FORMATS.forEach((ending, format) -> {
            int once = format.apply(small.document()).length();
            int twice = format.apply(large.document()).length();
            assertThat(twice).as(ending).isBetween(once * 2 - once / 5, once * 2 + once / 5);
        });
        // The number of characters is exact; the time is kept in bounds wide enough for a busy machine.
        CpuTime.assertWithin(
                java.time.Duration.ofSeconds(20),
                () -> FORMATS.values()
                        .forEach(format ->
                                assertThat(format.apply(large.document())).isNotEmpty()));
    }

    /** A chain of ten thousand additions one by one is written as one sum, and needs no deep stack. */
    @Test
    void a_long_chain_of_single_additions_is_one_sum() {
        Working working = Working.of(Phrase.of("question.readings-total"), r -> {
            Term total = r.given(Workings.LINE, Subject.of("0", "x"), Ratio.ONE, Source.user());
            for (int i = 1; i <= 10_000; i++) {
                total = r.sum(total, r.literal(i));
            }
            return r.named(Workings.BATCH, total);
        });
        working.check();
        assertThat(working.document().print(Format.TEXT))
                .contains("M = m_0 + 1 + 2 + 3 + 4")
                .contains("= 50005001 g");
    }
}
