package io.github.formulationmath.document;

import static io.github.formulationmath.document.Expression.absolute;
import static io.github.formulationmath.document.Expression.blank;
import static io.github.formulationmath.document.Expression.call;
import static io.github.formulationmath.document.Expression.continued;
import static io.github.formulationmath.document.Expression.fraction;
import static io.github.formulationmath.document.Expression.number;
import static io.github.formulationmath.document.Expression.product;
import static io.github.formulationmath.document.Expression.quotient;
import static io.github.formulationmath.document.Expression.relation;
import static io.github.formulationmath.document.Expression.root;
import static io.github.formulationmath.document.Expression.sum;
import static io.github.formulationmath.document.Expression.symbol;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Formulas in MathML Core: a short one with drawn fractions, a long one parted where it may be carried over. */
class MathMlTest {

    private static final String A = "<mi>a</mi>";
    private static final String B = "<mi>b</mi>";
    private static final String CARRIED = "</math><wbr/><math>";

    private static Expression a() {
        return symbol("a", "");
    }

    private static Expression b() {
        return symbol("b", "");
    }

    private static String infix(String sign) {
        return "<mo form=\"infix\">" + sign + "</mo>";
    }

    /** What stands between {@code <math>} and its end. */
    private static String inside(String math) {
        assertThat(math).startsWith("<math>").endsWith("</math>");
        return math.substring("<math>".length(), math.length() - "</math>".length());
    }

    private static String drawn(Expression formula) {
        return inside(MathMl.of(formula));
    }

    private static String along(Expression formula) {
        return inside(MathMl.narrow(formula));
    }

    @ParameterizedTest
    @CsvSource({
        "3, <mn>3</mn>",
        "09, <mn>09</mn>",
        "hi, <mtext>hi</mtext>",
        "3a, <mtext>3a</mtext>",
        "3/4, <mtext>3/4</mtext>",
        "3:4, <mtext>3:4</mtext>",
        "<, <mtext>&lt;</mtext>"
    })
    void a_number_and_a_word_stand_below_a_letter(String index, String below) {
        assertThat(drawn(symbol("m", index))).isEqualTo("<msub><mi>m</mi>" + below + "</msub>");
    }

    @Test
    void a_mark_and_an_index_stand_below_a_letter_with_a_comma_between() {
        assertThat(drawn(symbol("φ_hi", "3")))
                .isEqualTo("<msub><mi>φ</mi><mrow><mtext>hi</mtext><mo>,</mo><mn>3</mn></mrow></msub>");
        assertThat(drawn(a())).isEqualTo(A);
        assertThat(drawn(symbol("_x", ""))).isEqualTo("<mi>_x</mi>");
    }

    @Test
    void numbers_have_their_sign_their_fraction_and_their_unit() {
        assertThat(drawn(number("10", "g"))).isEqualTo("<mrow><mn>10</mn><mtext>\u00A0g</mtext></mrow>");
        assertThat(drawn(number("10", ""))).isEqualTo("<mrow><mn>10</mn></mrow>");
        assertThat(drawn(number("-10", "").bold()))
                .isEqualTo("<mrow class=\"filled\"><mo form=\"prefix\">−</mo><mn>10</mn></mrow>");
        assertThat(drawn(fraction("1", "3", "g")))
                .isEqualTo("<mrow><mfrac><mn>1</mn><mn>3</mn></mfrac><mtext>\u00A0g</mtext></mrow>");
        assertThat(drawn(blank("g")))
                .isEqualTo("<mrow><mtext>" + "_".repeat(24) + "</mtext><mtext>\u00A0g</mtext></mrow>");
    }

    @Test
    void a_short_formula_has_drawn_fractions_and_brackets_that_grow() {
        assertThat(drawn(quotient(a(), b()))).isEqualTo("<mfrac><mrow>" + A + "</mrow><mrow>" + B + "</mrow></mfrac>");
        assertThat(drawn(product(List.of(sum(List.of(a(), b())), b()))))
                .isEqualTo("<mrow><mo form=\"prefix\">(</mo>" + A + infix("+") + B
                        + "<mo form=\"postfix\">)</mo></mrow>" + infix("·") + B);
        assertThat(drawn(absolute(a())))
                .isEqualTo("<mrow><mo form=\"prefix\">|</mo>" + A + "<mo form=\"postfix\">|</mo></mrow>");
        assertThat(drawn(root(a()))).isEqualTo("<msqrt>" + A + "</msqrt>");
    }

    /** Between drawn fractions nothing can be misread, so that they need no brackets. */
    @Test
    void a_drawn_fraction_is_a_factor_without_brackets() {
        String third = "<mrow><mfrac><mn>1</mn><mn>3</mn></mfrac></mrow>";
        assertThat(drawn(product(List.of(fraction("1", "3", ""), a())))).isEqualTo(third + infix("·") + A);
        assertThat(drawn(product(List.of(a(), quotient(a(), b())))))
                .isEqualTo(A + infix("·") + "<mfrac><mrow>" + A + "</mrow><mrow>" + B + "</mrow></mfrac>");
    }

    @Test
    void a_function_has_its_name_its_arguments_and_its_words() {
        String semicolon = "<mo lspace=\"0em\" rspace=\"0.35em\">;</mo>";
        Expression call = call("min", List.of(a(), b()), "to a grid");
        assertThat(drawn(call))
                .isEqualTo("<mi>min</mi><mrow><mo form=\"prefix\">(</mo>" + A + semicolon + B
                        + "<mtext>\u00A0to a grid</mtext><mo form=\"postfix\">)</mo></mrow>");
        assertThat(along(call))
                .isEqualTo("<mi>min</mi><mo form=\"prefix\" stretchy=\"false\">(</mo>" + A + semicolon + CARRIED + B
                        + CARRIED + "<mtext>\u00A0to</mtext>" + CARRIED + "<mtext>\u00A0a</mtext>" + CARRIED
                        + "<mtext>\u00A0grid</mtext><mo form=\"postfix\" stretchy=\"false\">)</mo>");
    }

    @Test
    void a_long_formula_may_be_carried_over_before_each_sign_but_the_first() {
        assertThat(along(relation(a(), "<", sum(List.of(b(), a())))))
                .isEqualTo(A + CARRIED + infix("&lt;") + B + CARRIED + infix("+") + A);
        assertThat(along(continued("=", relation(number("1", ""), "≈", b()))))
                .isEqualTo(infix("=") + "<mrow><mn>1</mn></mrow>" + CARRIED + infix("≈") + B);
        assertThat(along(relation(number("1", ""), "=", b())))
                .isEqualTo("<mrow><mn>1</mn></mrow>" + CARRIED + infix("=") + B);
        assertThat(along(quotient(a(), b()))).isEqualTo(A + CARRIED + infix("/") + B);
    }

    @Test
    void what_stands_below_a_root_stays_together_and_what_follows_it_does_not() {
        assertThat(along(sum(List.of(root(sum(List.of(a(), b()))), b()))))
                .isEqualTo("<msqrt>" + A + infix("+") + B + "</msqrt>" + CARRIED + infix("+") + B);
    }

    @Test
    void a_formula_of_more_than_40_columns_is_long() {
        Expression forty = quotient(symbol("x".repeat(36), ""), a());
        assertThat(Linear.width(forty)).isEqualTo(40);
        assertThat(drawn(forty)).startsWith("<mfrac>").doesNotContain("<wbr/>");
        assertThat(drawn(quotient(symbol("x".repeat(37), ""), a())))
                .contains("<wbr/>")
                .doesNotContain("<mfrac>");
    }
}
