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

/** Formulas along the line, with the brackets that a careful reader needs and no others. */
class NotationTest {

    private static Expression a() {
        return symbol("a", "");
    }

    private static Expression b() {
        return symbol("b", "");
    }

    private static Expression c() {
        return symbol("c", "");
    }

    private static String text(Expression formula) {
        return Linear.plain(formula);
    }

    private static String lines(Expression... lines) {
        return Linear.lines("", List.of(lines));
    }

    @Test
    void a_sum_has_brackets_behind_a_minus_and_as_a_factor() {
        assertThat(text(sum(List.of(a(), minus(b()), c())))).isEqualTo("a − b + c");
        assertThat(text(sum(List.of(a(), sum(List.of(b(), c())))))).isEqualTo("a + b + c");
        assertThat(text(sum(List.of(a(), minus(sum(List.of(b(), c()))))))).isEqualTo("a − (b + c)");
        assertThat(text(product(List.of(sum(List.of(a(), b())), c())))).isEqualTo("(a + b) · c");
        assertThat(text(product(List.of(c(), sum(List.of(a(), b())))))).isEqualTo("c · (a + b)");
        assertThat(text(quotient(c(), sum(List.of(a(), b()))))).isEqualTo("c / (a + b)");
        assertThat(text(sum(List.of(minus(a()), b()))).strip()).isEqualTo("− a + b");
    }

    @Test
    void a_product_needs_no_brackets_but_below_a_slash() {
        assertThat(text(sum(List.of(a(), minus(product(List.of(b(), c()))))))).isEqualTo("a − b · c");
        assertThat(text(product(List.of(a(), b(), c())))).isEqualTo("a · b · c");
        assertThat(text(product(List.of(a(), product(List.of(b(), c())))))).isEqualTo("a · b · c");
        assertThat(text(quotient(product(List.of(a(), b())), c()))).isEqualTo("a · b / c");
        assertThat(text(quotient(a(), product(List.of(b(), c()))))).isEqualTo("a / (b · c)");
    }

    /** a / b / c is (a / b) / c; a · (b / c) and a / (b / c) say which is meant. */
    @Test
    void a_quotient_has_brackets_behind_a_point_and_a_slash() {
        assertThat(text(quotient(quotient(a(), b()), c()))).isEqualTo("a / b / c");
        assertThat(text(quotient(a(), quotient(b(), c())))).isEqualTo("a / (b / c)");
        assertThat(text(product(List.of(quotient(a(), b()), c())))).isEqualTo("a / b · c");
        assertThat(text(product(List.of(a(), quotient(b(), c()))))).isEqualTo("a · (b / c)");
        assertThat(text(sum(List.of(a(), quotient(b(), c()))))).isEqualTo("a + b / c");
    }

    @Test
    void roots_sizes_and_functions_hold_together_by_themselves() {
        assertThat(text(root(sum(List.of(a(), b()))))).isEqualTo("√(a + b)");
        assertThat(text(absolute(sum(List.of(a(), minus(b())))))).isEqualTo("|a − b|");
        assertThat(text(quotient(a(), absolute(b())))).isEqualTo("a / |b|");
        assertThat(text(product(List.of(c(), root(a()))))).isEqualTo("c · √(a)");
        assertThat(text(call("min", List.of(a(), sum(List.of(b(), c())), c()), "")))
                .isEqualTo("min(a; b + c; c)");
        assertThat(text(call("round", List.of(a()), "to a multiple of 0.1\u00A0g, up")))
                .isEqualTo("round(a to a multiple of 0.1 g, up)");
    }

    @Test
    void a_number_below_0_has_brackets_where_a_sign_stands_before_it_or_a_factor() {
        Expression below = number("-2", "g");
        assertThat(text(below)).isEqualTo("−2 g");
        assertThat(text(sum(List.of(below, a())))).isEqualTo("−2 g + a");
        assertThat(text(sum(List.of(a(), below)))).isEqualTo("a + (−2 g)");
        assertThat(text(sum(List.of(a(), minus(below))))).isEqualTo("a − (−2 g)");
        assertThat(text(product(List.of(below, a())))).isEqualTo("(−2 g) · a");
        assertThat(text(sum(List.of(a(), sum(List.of(below, b())))))).isEqualTo("a + (−2 g) + b");
        assertThat(text(absolute(number("−2", "")))).isEqualTo("|−2|");
    }

    @Test
    void a_fraction_and_a_unit_with_a_slash_have_brackets_where_they_could_be_misread() {
        Expression third = fraction("1", "3", "g");
        assertThat(text(third)).isEqualTo("1/3 g");
        assertThat(text(sum(List.of(third, a(), third, minus(third))))).isEqualTo("1/3 g + a + 1/3 g − 1/3 g");
        assertThat(text(product(List.of(third, third)))).isEqualTo("(1/3 g) · (1/3 g)");
        assertThat(text(quotient(a(), third))).isEqualTo("a / (1/3 g)");
        assertThat(text(quotient(a(), number("2", "g/mL")))).isEqualTo("a / (2 g/mL)");
        assertThat(text(quotient(a(), number("2", "/g")))).isEqualTo("a / (2 /g)");
        assertThat(text(quotient(number("3", "g/mL"), number("2", "g")))).isEqualTo("3 g/mL / 2 g");
        assertThat(text(product(List.of(a(), number("2", "g/mL"))))).isEqualTo("a · 2 g/mL");
        assertThat(text(sum(List.of(a(), number("2", "g/mL"))))).isEqualTo("a + 2 g/mL");
    }

    @Test
    void numbers_symbols_and_blanks_have_their_units_and_indices() {
        assertThat(text(number("5", ""))).isEqualTo("5");
        assertThat(text(blank("g"))).isEqualTo("____________ g");
        assertThat(text(symbol("m", "3"))).isEqualTo("m_3");
        assertThat(text(symbol("φ_hi", "3"))).isEqualTo("φ_hi,3");
        assertThat(text(symbol("φ_hi", ""))).isEqualTo("φ_hi");
        assertThat(text(symbol("_x", ""))).isEqualTo("_x");
        assertThat(number("5", "g").bold()).isNotEqualTo(number("5", "g"));
        assertThat(text(number("5", "g").bold())).isEqualTo("5 g");
        assertThat(a().bold()).isEqualTo(a());
    }

    @Test
    void a_relation_may_go_on_from_the_line_above_and_be_judged() {
        assertThat(text(relation(a(), "=", relation(fraction("1", "3", "g"), "≈", number("0.3", "g")))))
                .isEqualTo("a = 1/3 g ≈ 0.3 g");
        assertThat(text(continued("≥", number("0.3", "g")))).isEqualTo("≥ 0.3 g");
        Expression less = relation(a(), "<", b());
        assertThat(lines(less)).isEqualTo("a < b\n");
        assertThat(lines(less.judged("does not hold"))).isEqualTo("a < b: does not hold\n");
        assertThat(a().judged("holds")).isEqualTo(a());
        assertThat(less.judged("holds"))
                .isNotEqualTo(less)
                .isEqualTo(relation(a(), "<", b()).judged("holds"));
    }

    /** A left side of more than 30 columns would push the signs below it out of sight. */
    @Test
    void signs_stand_below_one_another_unless_the_left_side_is_wide() {
        assertThat(lines(relation(symbol("m", "3"), "=", a()), continued("≈", b())))
                .isEqualTo("m_3 = a\n    ≈ b\n");
        String thirty = "x".repeat(30);
        assertThat(lines(relation(symbol(thirty, ""), "=", a()), continued("=", b())))
                .isEqualTo(thirty + " = a\n" + " ".repeat(31) + "= b\n");
        assertThat(lines(relation(symbol(thirty + "x", ""), "=", a()), continued("=", b())))
                .isEqualTo(thirty + "x = a\n = b\n");
        assertThat(lines(a(), continued("=", b()))).isEqualTo("a\n = b\n");
    }

    @Test
    void a_long_line_is_filled_up_to_column_80_and_carried_over_before_a_sign() {
        Expression total = sum(Collections.nCopies(30, number("10", "g")));
        assertThat(lines(relation(symbol("M", ""), "=", total)))
                .isEqualTo("M = 10 g" + " + 10 g".repeat(10) + "\n    + 10 g" + " + 10 g".repeat(10) + "\n    + 10 g"
                        + " + 10 g".repeat(7) + "\n");
    }
}
