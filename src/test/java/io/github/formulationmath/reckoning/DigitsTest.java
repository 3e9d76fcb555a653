package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Entry.Comparison;
import org.junit.jupiter.api.Test;

/** A working in decimals alone, in fractions alone, and the unit of a difference of shares. */
class DigitsTest {

    private static final Symbol LINE = Symbol.of("m", "line-mass", Kind.MASS);
    private static final Symbol SHARE = Symbol.of("w", "share-in-first", Kind.SHARE);

    private static Working thirds() {
        return Working.of(Phrase.of("question.line-mass", "Glycerin"), r -> {
            var share = r.given(SHARE, Subject.none(), Ratio.of(1, 3), Source.user());
            var batch = r.given(LINE, Subject.of("b", ""), Ratio.of(250), Source.user());
            return r.named(LINE, Subject.of("1", ""), r.product(share, batch));
        });
    }

    private static String text(Working working, Style style) {
        return working.document(style).print(Format.TEXT);
    }

    @Test
    void decimals_alone_say_that_they_are_near() {
        assertThat(text(thirds(), Style.steps().inDecimals()))
                .contains("w ≈ 33.3333 %", "≈ 33.3333 % · 250 g", "≈ 83.3333 g", "m_1 ≈ 83.3333 g")
                .doesNotContain("/3", "= 33.3333", "= 83.3333");
    }

    @Test
    void fractions_alone_have_no_decimal_beside_them() {
        assertThat(text(thirds(), Style.steps().inFractions()))
                .contains("= 250/3 g")
                .doesNotContain("≈");
    }

    @Test
    void both_are_told_unless_asked_otherwise() {
        assertThat(text(thirds(), Style.steps())).contains("= 250/3 g ≈ 83.3333 g");
        assertThat(Style.steps().inDecimals()).hasToString("STEPS, 6 digits, decimals");
        assertThat(Style.steps().inFractions().with(java.util.Locale.GERMAN))
                .asString()
                .contains("fractions");
    }

    /** 1/3 % and 0.33333333 % are told alike in six digits, which would not bear out that one is less. */
    @Test
    void a_comparison_that_few_digits_would_not_bear_out_stays_exact() {
        Working close = Working.of(Phrase.of("question.line-mass", "Glycerin"), r -> {
            var third = r.given(LINE, Subject.of("1", ""), Ratio.of(1, 3), Source.user());
            var less = r.given(LINE, Subject.of("2", ""), Ratio.parse("0.3333333333"), Source.user());
            r.holds(less, Comparison.AT_MOST, third);
            return r.named(LINE, Subject.of("3", ""), r.sum(less, third));
        });
        assertThat(text(close, Style.everything().inDecimals())).contains("0.3333333333 g ≤ 1/3 g");
    }

    @Test
    void a_difference_of_shares_is_in_percentage_points() {
        Symbol difference = Symbol.of("Δ_w", "share-difference", Kind.SHARE_DIFFERENCE);
        Working working = Working.of(Phrase.of("question.line-mass", "Glycerin"), r -> {
            var now = r.given(SHARE, Subject.of("1", ""), Ratio.parse("0.945"), Source.user());
            var then = r.given(SHARE, Subject.of("2", ""), Ratio.parse("0.965"), Source.user());
            return r.named(difference, Subject.none(), r.difference(now, then));
        });
        assertThat(text(working, Style.steps())).contains("94.5 % − 96.5 %", "= −2 pp");
    }
}
