package io.github.formulationmath.document;

import static io.github.formulationmath.document.Expression.absolute;
import static io.github.formulationmath.document.Expression.blank;
import static io.github.formulationmath.document.Expression.call;
import static io.github.formulationmath.document.Expression.continued;
import static io.github.formulationmath.document.Expression.fraction;
import static io.github.formulationmath.document.Expression.minus;
import static io.github.formulationmath.document.Expression.number;
import static io.github.formulationmath.document.Expression.product;
import static io.github.formulationmath.document.Expression.quotient;
import static io.github.formulationmath.document.Expression.relation;
import static io.github.formulationmath.document.Expression.root;
import static io.github.formulationmath.document.Expression.sum;
import static io.github.formulationmath.document.Expression.symbol;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Formulas with amsmath: built up where they are short, along the line and carried over where they are long. */
class LatexFormulasTest {

    private static Expression a() {
        return symbol("a", "");
    }

    private static Expression b() {
        return symbol("b", "");
    }

    private static Expression many(int terms, Expression term) {
        return sum(Collections.nCopies(terms, term));
    }

    private static String latex(Expression line) {
        String page = Document.titled("t", "en").equations("", List.of(line)).printPart(Format.LATEX, 1);
        String begin = "\\begin{align*}\n";
        return page.substring(page.indexOf(begin) + begin.length(), page.indexOf("\n\\end{align*}"));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "m, m",
                "m′, m'",
                "é, \\text{é}",
                "pH, \\text{pH}",
                "12, 12",
                "09, 09",
                "1a, \\text{1a}",
                "Δ, {\\Delta}",
                "′, '"
            })
    void one_latin_letter_and_a_number_are_slanted_and_a_word_is_upright(String letter, String written) {
        assertThat(latex(symbol(letter, ""))).isEqualTo(written);
    }

    @Test
    void marks_and_indices_stand_below() {
        assertThat(latex(symbol("m", "12"))).isEqualTo("m_{12}");
        assertThat(latex(symbol("φ_hi", "3"))).isEqualTo("{\\varphi}_{\\text{hi},3}");
    }

    @Test
    void numbers_have_their_sign_their_fraction_and_their_unit() {
        assertThat(latex(number("1,5", "g"))).isEqualTo("1{,}5\\,\\text{g}");
        assertThat(latex(number("-5", "").bold())).isEqualTo("\\mathbf{-5}");
        assertThat(latex(fraction("1", "3", "%"))).isEqualTo("\\tfrac{1}{3}\\,\\%");
        assertThat(latex(blank("g"))).isEqualTo("\\underline{\\hspace{25mm}}\\,\\text{g}");
    }

    @Test
    void signs_have_their_commands() {
        assertThat(latex(sum(List.of(a(), minus(b()), product(List.of(a(), b()))))))
                .isEqualTo("a - b + a \\cdot b");
        assertThat(latex(relation(a(), "≤", b()))).isEqualTo("a &\\le b");
        assertThat(latex(relation(a(), "≥", b()))).isEqualTo("a &\\ge b");
        assertThat(latex(relation(a(), "<", b()).judged("holds"))).isEqualTo("a &< b \\quad \\text{holds}");
        assertThat(latex(continued("=", relation(a(), "≈", b())))).isEqualTo(" &= a \\approx b");
        assertThat(latex(relation(a(), "=", relation(b(), "≈", a())))).isEqualTo("a &= b \\approx a");
    }

    @Test
    void brackets_and_fractions_grow_in_a_short_line() {
        assertThat(latex(quotient(a(), b()))).isEqualTo("\\frac{a}{b}");
        assertThat(latex(product(List.of(sum(List.of(a(), b())), a())))).isEqualTo("\\left(a + b\\right) \\cdot a");
        assertThat(latex(absolute(a()))).isEqualTo("\\left\\lvert a\\right\\rvert ");
        assertThat(latex(root(sum(List.of(a(), b()))))).isEqualTo("\\sqrt{a + b}");
    }

    @Test
    void functions_have_upright_names_their_arguments_and_their_words() {
        assertThat(latex(call("min", List.of(a(), b()), ""))).isEqualTo("\\operatorname{min}\\left(a;\\ b\\right)");
        assertThat(latex(call("Φ", List.of(a()), ""))).isEqualTo("\\operatorname{{\\Phi}}\\left(a\\right)");
        assertThat(latex(call("log2", List.of(a()), ""))).isEqualTo("\\operatorname{\\text{log2}}\\left(a\\right)");
        assertThat(latex(call("é", List.of(a()), ""))).isEqualTo("\\operatorname{\\text{é}}\\left(a\\right)");
        assertThat(latex(call("round", List.of(a()), "to 0.1\u00A0g, up")))
                .isEqualTo("\\operatorname{round}\\left(a\\text{ to 0.1}~\\text{g, }\\text{ up}\\right)");
    }

    @Test
    void a_line_of_more_than_60_columns_is_long() {
        assertThat(latex(quotient(symbol("a", "1".repeat(54)), b()))).startsWith("\\frac{");
        assertThat(latex(quotient(symbol("a", "1".repeat(55)), b()))).isEqualTo("a_{" + "1".repeat(55) + "}\\\\\n / b");
        assertThat(latex(product(List.of(sum(List.of(symbol("a", "1".repeat(60)), b())), a()))))
                .startsWith("(a_{")
                .contains("b) \\cdot a");
        assertThat(latex(absolute(symbol("a", "1".repeat(60)))))
                .startsWith("\\lvert a_{")
                .endsWith("\\rvert ");
    }

    /** An operand is given 12 columns: a line ends where it has more than 48. A letter and its sign take 4. */
    @Test
    void a_long_sum_is_carried_over_before_a_sign() {
        assertThat(latex(many(30, a())))
                .isEqualTo("a" + " + a".repeat(12) + "\\\\\n" + " + a".repeat(13) + "\\\\\n" + " + a".repeat(4));
        assertThat(latex(relation(symbol("M", ""), "=", many(20, a()))))
                .isEqualTo("M &= a" + " + a".repeat(12) + "\\\\\n &\\qquad {}" + " + a".repeat(7));
        assertThat(latex(continued("=", many(20, a()))))
                .isEqualTo(" &= a" + " + a".repeat(12) + "\\\\\n &\\qquad {}" + " + a".repeat(7));
    }

    /** 10 g and its sign take 7. */
    @Test
    void numbers_count_with_their_units() {
        String next = " + 10\\,\\text{g}";
        assertThat(latex(many(20, number("10", "g"))))
                .isEqualTo("10\\,\\text{g}" + next.repeat(7) + "\\\\\n" + next.repeat(7) + "\\\\\n" + next.repeat(5));
    }

    @Test
    void arguments_are_carried_over_behind_their_semicolon() {
        Expression ten = symbol("a", "12345678");
        String next = ";\\ a_{12345678}";
        assertThat(latex(call("median", Collections.nCopies(6, ten), "")))
                .isEqualTo("\\operatorname{median}(a_{12345678}" + next.repeat(4) + ";\\\\\n\\ a_{12345678})");
    }

    @Test
    void words_are_carried_over_behind_a_comma_and_before_a_bracket() {
        String grid = "x".repeat(38);
        String ties = "y".repeat(20);
        assertThat(latex(call("round", List.of(a()), grid + ", " + ties)))
                .isEqualTo("\\operatorname{round}(a\\text{ " + grid + ", }\\\\\n\\text{ " + ties + "})");
        assertThat(latex(call("round", List.of(a()), grid + " (" + ties + ")")))
                .isEqualTo("\\operatorname{round}(a\\text{ " + grid + "}\\\\\n\\text{  (" + ties + ")})");
    }

    @Test
    void what_stands_below_a_root_stays_together_and_what_follows_it_does_not() {
        assertThat(latex(sum(List.of(root(many(15, a())), b(), b()))))
                .isEqualTo("\\sqrt{a" + " + a".repeat(14) + "}\\\\\n + b + b");
    }
}
