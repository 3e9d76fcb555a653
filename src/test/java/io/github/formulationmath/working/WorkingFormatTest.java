package io.github.formulationmath.working;

import static io.github.formulationmath.support.Golden.assertGolden;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import io.github.formulationmath.number.Ratio;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigInteger;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class WorkingFormatTest {

    private static final Map<String, WorkingFormat> FORMATS = Map.of(
            "txt", WorkingFormat.text(),
            "md", WorkingFormat.markdown(),
            "tex", WorkingFormat.latexDocument(),
            "fragment.tex", WorkingFormat.latexFragment(),
            "html", WorkingFormat.htmlPage(),
            "fragment.html", WorkingFormat.htmlFragment());

    @ParameterizedTest
    @EnumSource(Depth.class)
    void pagesAreAsTheyWere(Depth depth) {
        FORMATS.forEach((ending, format) -> {
            String name = depth.name().toLowerCase(Locale.ROOT) + "." + ending;
            assertGolden("working/" + name, format.with(depth).format(Workings.everything()));
        });
    }

    @Test
    @Tag("locale")
    void namesCannotLeaveTheirPlace() {
        FORMATS.forEach((ending, format) -> assertGolden(
                "working/hostile." + ending, format.with(Depth.EVERYTHING).format(Workings.hostile())));
    }

    @Test
    void aLongSumIsCarriedOver() {
        FORMATS.forEach((ending, format) -> assertGolden("working/total." + ending, format.format(Workings.total(40))));
    }

    @Property(tries = 60)
    void noLineOfTextIsWiderThan80Columns(@ForAll long seed, @ForAll String name) {
        Working named = Working.of(
                Phrase.of("question.line-mass", name),
                r -> r.given(Workings.LINE, Subject.of("1", name), Ratio.ONE, Source.written(name)));
        for (Working working : List.of(RandomWorkings.of(seed), named)) {
            assertThat(WorkingFormat.text()
                            .with(Depth.EVERYTHING)
                            .format(working)
                            .split("\n"))
                    .allMatch(line -> Columns.width(line) <= 80);
        }
    }

    @Property(tries = 60)
    void anyNameGivesAWellFormedPage(@ForAll String name) {
        Working working = Working.of(
                Phrase.of("question.line-mass", name),
                r -> r.given(Workings.LINE, Subject.of(name, name), Ratio.ONE, Source.published("x" + name, name)));
        String page = WorkingFormat.htmlPage().with(Depth.EVERYTHING).format(working);
        assertThat(io.github.formulationmath.support.HtmlChecks.parse(page)
                        .getElementsByTagName("math")
                        .getLength())
                .isPositive();
        String markdown = WorkingFormat.markdown().with(Depth.EVERYTHING).format(working);
        assertThat(markdown.lines().filter(line -> line.startsWith("#"))).hasSize(3);
    }

    @Test
    void unitsAreChosenForAllNumbersOfAKind() {
        UnitChoice ounces = UnitChoice.canonical().with(Kind.MASS, "oz", Ratio.parse("28.349523125"));
        Working working = Working.of(Phrase.of("question.readings-total"), r -> {
            Term two = r.given(Workings.BATCH, Ratio.parse("56.69904625"), Source.user());
            Term price = r.given(Symbol.of("p", "batch-mass", Kind.MONEY_PER_MASS), Ratio.of(2), Source.user());
            Term square = r.named(Symbol.of("s", "batch-mass", Kind.MASS_SQUARED), r.product(two, two));
            r.holds(r.product(two, square), Comparison.GREATER, r.literal(0));
            return r.named(Symbol.of("c", "batch-mass", Kind.MONEY), r.product(price, two));
        });
        String text = WorkingFormat.text()
                .with(ounces.with(Kind.MONEY, "EUR", Ratio.ONE))
                .with(Depth.EVERYTHING)
                .format(working);
        assertThat(text)
                .contains("M = 2 oz")
                .contains("p = 56.69904625 EUR/oz")
                .contains("= 4 oz²")
                .contains("g³ > 0: holds")
                .contains("c = 113.3980925 EUR");
        assertThat(ounces.toString()).isEqualTo("{MASS=oz}");
        assertThat(ounces)
                .isEqualTo(UnitChoice.canonical().with(Kind.MASS, "oz", Ratio.parse("28.349523125")))
                .hasSameHashCodeAs(UnitChoice.canonical().with(Kind.MASS, "oz", Ratio.parse("28.349523125")))
                .isNotEqualTo(UnitChoice.canonical());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "a b", "5g", "g\n", "\u202E", "aaaaaaaaaaaaaaaaaaaaaaaaa"})
    void aUnitIsAWord(String unit) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> UnitChoice.canonical().with(Kind.MASS, unit, Ratio.ONE));
    }

    @Test
    void aUnitHasASize() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> UnitChoice.canonical().with(Kind.MASS, "oz", Ratio.ZERO))
                .withMessageContaining("above 0");
    }

    @Test
    @Tag("locale")
    void numbersFollowALocaleOnlyIfAskedFor() {
        Working working = Workings.everything();
        assertThat(WorkingFormat.text().format(working)).contains("2.63 % · (400/3 g)");
        assertThat(WorkingFormat.text().with(Locale.GERMANY).format(working))
                .contains("2,63 % · (400/3 g)")
                .contains("≈ 3,50667 g");
        assertThat(WorkingFormat.text()
                        .with(Locale.forLanguageTag("ar-EG-u-nu-arab"))
                        .format(working))
                .contains("٢٫٦٣ %");
        assertThat(WorkingFormat.latexFragment().with(Locale.GERMANY).format(working))
                .contains("2{,}63");
    }

    @Test
    void digitsAreSignificant() {
        assertThat(WorkingFormat.text().withSignificantDigits(3).format(Workings.everything()))
                .contains("≈ 3.51 g");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WorkingFormat.text().withSignificantDigits(0))
                .withMessage("digits is 0: it must lie between 1 and 100");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WorkingFormat.text().withSignificantDigits(101));
    }

    @Test
    void headingsGoBelowThoseOfTheCaller() {
        assertThat(WorkingFormat.markdown().withHeadingLevel(3).format(Workings.lineMass()))
                .startsWith("### How much")
                .contains("\n#### Given\n");
        assertThat(WorkingFormat.htmlFragment().withHeadingLevel(5).format(Workings.lineMass()))
                .contains("<h5>How much")
                .contains("<h6>Given</h6>")
                .startsWith("<article lang=\"en\">");
        assertThat(WorkingFormat.latexFragment().withHeadingLevel(5).format(Workings.lineMass()))
                .contains("\\subparagraph*{How");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WorkingFormat.markdown().withHeadingLevel(6));
    }

    @Test
    void anotherLanguageIsOneFile() throws IOException {
        StringBuilder german = new StringBuilder();
        Wording english = Wording.english();
        for (String key : english.keys()) {
            german.append(key).append('=').append(english.text(Phrase.of(key))).append('\n');
        }
        german.append("working.given=Gegeben\nlanguage=de\nsymbol.batch-mass=Chargenmasse\n");
        Wording wording = Wording.read(new StringReader(german.toString()));
        assertThat(WorkingFormat.htmlPage().with(wording).format(Workings.lineMass()))
                .contains("<html lang=\"de\">")
                .contains("<h2>Gegeben</h2>")
                .contains("Chargenmasse");
    }

    @Test
    void aWorkingPrintsItself() {
        assertThat(Workings.lineMass()).hasToString(WorkingFormat.text().format(Workings.lineMass()));
    }

    @Test
    void nothingIsNull() {
        assertThatNullPointerException()
                .isThrownBy(() -> WorkingFormat.text().format(null))
                .withMessage("working");
        assertThatNullPointerException()
                .isThrownBy(() -> WorkingFormat.text().with((Depth) null))
                .withMessage("depth");
    }

    /** Ten thousand lines take a moment, and twice as many about twice as long. */
    @Tag("long")
    @Test
    void renderingIsLinear() {
        Working small = Workings.total(5_000);
        Working large = Workings.total(10_000);
        FORMATS.forEach((ending, format) -> {
            int once = format.format(small).length();
            int twice = format.format(large).length();
            assertThat(twice).as(ending).isBetween(once * 2 - once / 5, once * 2 + once / 5);
        });
        // The number of characters is exact; the time is kept in bounds wide enough for a busy machine.
        org.junit.jupiter.api.Assertions.assertTimeout(
                java.time.Duration.ofSeconds(20), () -> FORMATS.values().forEach(format -> format.format(large)));
    }

    /** A chain of ten thousand additions one by one is written as one sum, and needs no deep stack. */
    @Test
    void aLongChainOfSingleAdditionsIsOneSum() {
        Working working = Working.of(Phrase.of("question.readings-total"), r -> {
            Term total = r.given(Workings.LINE, Subject.of("0", "x"), Ratio.ONE, Source.user());
            for (int i = 1; i <= 10_000; i++) {
                total = r.sum(total, r.literal(i));
            }
            return r.named(Workings.BATCH, total);
        });
        working.check();
        assertThat(WorkingFormat.text().format(working))
                .contains("M = m_0 + 1 + 2 + 3 + 4")
                .contains("= 50005001 g");
    }

    @Test
    void hugeNumbersFitThePage() {
        Ratio huge = Ratio.of(
                BigInteger.TEN.pow(400).add(BigInteger.ONE),
                BigInteger.valueOf(7).pow(200));
        Working working = Working.of(
                Phrase.of("question.readings-total"),
                r -> r.named(
                        Workings.BATCH,
                        r.product(r.given(Workings.LINE, Subject.of("1", "x"), huge, Source.user()), r.literal(huge))));
        io.github.formulationmath.support.WorkingAssertions.assertSelfChecking(working);
        assertThat(WorkingFormat.text().format(working).split("\n")).allMatch(line -> Columns.width(line) <= 80);
    }
}
