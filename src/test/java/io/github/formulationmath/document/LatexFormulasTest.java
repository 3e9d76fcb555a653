package io.github.formulationmath.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Formulas as amsmath sets them: built up where they are short, and carried over before a sign where they are long. */
class LatexFormulasTest {

    private static final String START = "\\section*{T}\n\n\\begin{align*}\n";
    private static final String END = "\n\\end{align*}\n\n";

    /** What begins a line that goes on. */
    private static final String CARRIED = "\\\\\n &\\qquad {}";

    private static final Expression A = Expression.symbol("a", "");
    private static final Expression B = Expression.symbol("b", "");
    private static final Expression C = Expression.symbol("c", "");

    private static String latex(Expression formula) {
        String part = Document.titled("T", "en").equations("", List.of(formula)).printPart(Format.LATEX, 1);
        assertThat(part).startsWith(START).endsWith(END);
        return part.substring(START.length(), part.length() - END.length());
    }

    /** A formula behind an equals sign, so that it can be carried over to a line of its own. */
    private static String right(Expression formula) {
        String line = latex(Expression.continued("=", formula));
        assertThat(line).startsWith(" &= ");
        return line.substring(4);
    }

    private static Expression digits(int count) {
        return Expression.number("7".repeat(count), "");
    }

    private static String sevens(int count) {
        return "7".repeat(count);
    }

    private static Expression word(int letters) {
        return Expression.symbol("w".repeat(letters), "");
    }

    private static String text(int letters) {
        return "\\text{" + "w".repeat(letters) + "}";
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '!',
            value = {
                "m; !!; m",
                "m; 3; m_{3}",
                "m; 12; m_{12}",
                "m; 09; m_{09}",
                "m; 1/2; m_{\\text{1/2}}",
                "m; 1:2; m_{\\text{1:2}}",
                "m; 12a; m_{\\text{12a}}",
                "m′; 1; m'_{1}",
                "′; !!; '",
                "mass; !!; \\text{mass}",
                "é; !!; \\text{é}",
                "+; !!; \\text{+}",
                "φ_hi; 3; {\\varphi}_{\\text{hi},3}",
            })
    void a_letter_or_a_number_is_set_as_it_is_and_a_word_upright(String letter, String index, String latex) {
        assertThat(latex(Expression.symbol(letter, index))).isEqualTo(latex);
    }

    @Test
    void numbers_have_a_thin_space_before_their_unit() {
        assertThat(latex(Expression.number("−1.5", "g/mL"))).isEqualTo("-1.5\\,\\text{g/mL}");
        assertThat(latex(Expression.number("0,5", ""))).isEqualTo("0{,}5");
        assertThat(latex(Expression.fraction("400", "3", "g"))).isEqualTo("\\tfrac{400}{3}\\,\\text{g}");
        assertThat(latex(Expression.fraction("-1", "3", "").bold())).isEqualTo("\\mathbf{-\\tfrac{1}{3}}");
        assertThat(latex(Expression.number("10", "g").bold())).isEqualTo("\\mathbf{10}\\,\\text{g}");
        assertThat(latex(Expression.blank("g"))).isEqualTo("\\underline{\\hspace{25mm}}\\,\\text{g}");
    }

    @Test
    void lines_are_lined_up_at_their_first_relation_only() {
        assertThat(latex(Expression.relation(A, "≈", Expression.relation(B, "≤", C))))
                .isEqualTo("a &\\approx b \\le c");
        assertThat(latex(Expression.continued("≥", Expression.relation(A, "=", B))))
                .isEqualTo(" &\\ge a = b");
        assertThat(latex(Expression.relation(A, "<", B).judged("holds 5 %")))
                .isEqualTo("a &< b \\quad \\text{holds 5 }\\%");
    }

    @Test
    void operators_and_marks_have_their_commands() {
        assertThat(latex(Expression.sum(
                        List.of(Expression.product(List.of(A, B)), Expression.minus(Expression.sum(List.of(B, C)))))))
                .isEqualTo("a \\cdot b - \\left(b + c\\right)");
        assertThat(latex(Expression.absolute(A))).isEqualTo("\\left\\lvert a\\right\\rvert ");
        assertThat(latex(Expression.root(Expression.product(List.of(A, B))))).isEqualTo("\\sqrt{a \\cdot b}");
        assertThat(latex(Expression.quotient(A, Expression.sum(List.of(B, C))))).isEqualTo("\\frac{a}{b + c}");
    }

    @ParameterizedTest
    @CsvSource({"round, round", "Min, Min", "log2, \\text{log2}", "größe, \\text{größe}"})
    void a_function_is_named_upright(String name, String latex) {
        assertThat(latex(Expression.call(name, List.of(A, B), "")))
                .isEqualTo("\\operatorname{" + latex + "}\\left(a;\\ b\\right)");
    }

    @Test
    void words_behind_an_argument_have_one_space_between_them() {
        assertThat(latex(Expression.call("round", List.of(A), "to 0.1\u00A0g, ties to even (so)")))
                .isEqualTo("\\operatorname{round}\\left(a\\text{ to 0.1}~\\text{g,}\\text{ ties to even}"
                        + "\\text{ (so)}\\right)");
    }

    @Test
    void a_line_of_up_to_sixty_characters_has_drawn_fractions_and_growing_brackets() {
        assertThat(latex(Expression.quotient(digits(28), digits(29))))
                .isEqualTo("\\frac{" + sevens(28) + "}{" + sevens(29) + "}");
        assertThat(latex(Expression.quotient(digits(28), digits(30)))).isEqualTo(sevens(28) + " / " + sevens(30));
        assertThat(latex(Expression.absolute(digits(58)))).isEqualTo("\\left\\lvert " + sevens(58) + "\\right\\rvert ");
        assertThat(latex(Expression.absolute(digits(59)))).isEqualTo("\\lvert " + sevens(59) + "\\rvert ");
        assertThat(latex(Expression.call("f", List.of(digits(58)), "")))
                .isEqualTo("\\operatorname{f}(" + sevens(58) + ")");
    }

    /** A sign with its operand is given twelve places. */
    @Test
    void a_long_line_is_carried_over_before_the_sign_whose_operand_would_pass_the_sixtieth_place() {
        assertThat(right(Expression.sum(List.of(digits(48), word(12), B))))
                .isEqualTo(sevens(48) + " + " + text(12) + CARRIED + " + b");
        assertThat(right(Expression.sum(List.of(digits(49), word(12), B))))
                .isEqualTo(sevens(49) + CARRIED + " + " + text(12) + " + b");
        assertThat(right(Expression.sum(List.of(digits(30), word(15), digits(20)))))
                .isEqualTo(sevens(30) + " + " + text(15) + " + " + sevens(20));
        assertThat(right(Expression.sum(List.of(digits(30), word(16), digits(20)))))
                .isEqualTo(sevens(30) + " + " + text(16) + CARRIED + " + " + sevens(20));
    }

    @Test
    void what_has_no_relation_to_be_lined_up_at_goes_on_at_the_margin() {
        assertThat(latex(Expression.sum(List.of(digits(49), word(12))))).isEqualTo(sevens(49) + "\\\\\n + " + text(12));
        assertThat(latex(Expression.relation(Expression.sum(List.of(digits(49), A)), "=", word(12))))
                .isEqualTo(sevens(49) + "\\\\\n + a &= " + text(12));
    }

    @Test
    void nothing_is_carried_over_below_the_sign_of_a_root() {
        Expression root = Expression.root(Expression.sum(List.of(digits(20), digits(20), C)));
        assertThat(right(Expression.sum(List.of(digits(40), root, B))))
                .isEqualTo(sevens(40) + " + \\sqrt{" + sevens(20) + " + " + sevens(20) + " + c}" + CARRIED + " + b");
    }

    @Test
    void arguments_are_carried_over_behind_their_semicolon() {
        String name = "f".repeat(10);
        assertThat(right(Expression.call(name, List.of(digits(38), digits(20)), "")))
                .isEqualTo("\\operatorname{" + name + "}(" + sevens(38) + ";\\ " + sevens(20) + ")");
        assertThat(right(Expression.call(name, List.of(digits(39), digits(20)), "")))
                .isEqualTo("\\operatorname{" + name + "}(" + sevens(39) + ";" + CARRIED + "\\ " + sevens(20) + ")");
    }

    @Test
    void words_are_carried_over_part_by_part() {
        String words = "to the nearest (as shown)";
        assertThat(right(Expression.call("round", List.of(digits(40)), words)))
                .isEqualTo("\\operatorname{round}(" + sevens(40) + "\\text{ to the nearest}" + CARRIED
                        + "\\text{ (as shown)})");
        assertThat(right(Expression.call("round", List.of(digits(41)), words)))
                .isEqualTo("\\operatorname{round}(" + sevens(41) + CARRIED
                        + "\\text{ to the nearest}\\text{ (as shown)})");
    }
}
