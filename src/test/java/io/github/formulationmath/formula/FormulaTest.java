package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.WorkingAssertions;
import org.junit.jupiter.api.Test;

class FormulaTest {

    private static final Formula LOTION = Formulas.lotion("Oat lotion");

    private static final Formula FORMULA = Formulas.glycerinTwice("cream");

    private static final Formula OTHER = Formulas.oilAndWax("other");

    @Test
    void the_quantity_sufficient_line_takes_what_is_left() {
        assertThat(LOTION.line("Aqua").share()).isEqualTo(MassFraction.ofPercent("80"));
        WorkingAssertions.assertSelfChecking(LOTION.line("Aqua"));
    }

    @Test
    void lines_keep_their_order_and_phase() {
        assertThat(LOTION.phases()).extracting(Phase::name).containsExactly("water", "oil");
        assertThat(LOTION.lines()).extracting(FormulaLine::position).containsExactly(1, 2, 3, 4);
        assertThat(LOTION.line("oil", "Glyceryl Stearate SE").phase()).isEqualTo("oil");
        assertThat(LOTION.quantitySufficientLine()).contains(LOTION.line("Aqua"));
    }

    @Test
    void percentages_that_do_not_add_up_are_refused_with_sum_and_difference() {
        FormulaBuilder short100 =
                Formula.inPercent("short").line("Aqua", "90 %").line("Glycerin", "9.5 %");
        assertThatThrownBy(short100::build)
                .isInstanceOf(FormulaTotalException.class)
                .hasMessageContaining("99.5 %")
                .hasMessageContaining("in percentage points 0.5 too few")
                .satisfies(e -> {
                    assertThat(((FormulaTotalException) e).total()).isEqualTo(Ratio.parse("0.995"));
                    assertThat(((FormulaTotalException) e).difference()).isEqualTo(Ratio.parse("-0.005"));
                });
        FormulaBuilder over100 = Formula.inPercent("over").line("Aqua", "90 %").line("Glycerin", "10.01 %");
        assertThatThrownBy(over100::build)
                .hasMessageContaining("100.01 %")
                .hasMessageContaining("in percentage points 0.01 too many");
    }

    @Test
    void normalising_is_a_call_of_its_own() {
        Formula formula = Formula.inPercent("short")
                .line("Aqua", "90 %")
                .line("Glycerin", "9 %")
                .buildNormalised();
        assertThat(formula.line("Glycerin").fraction()).isEqualTo(Ratio.of(1, 11));
        assertThat(formula.line("Glycerin").amount()).hasToString("9 %");
        WorkingAssertions.assertSelfChecking(formula.line("Glycerin"));
        assertThatThrownBy(() -> Formula.inPercent("q.s.")
                        .quantitySufficient("Aqua")
                        .line("Glycerin", "9 %")
                        .buildNormalised())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("call build()");
    }

    @Test
    void thirds_stay_thirds() {
        Formula formula = Formula.inParts("three oils")
                .line("Olea Europaea Fruit Oil", "1")
                .line("Cocos Nucifera Oil", "1")
                .line("Helianthus Annuus Seed Oil", "1")
                .build();
        assertThat(formula.lines())
                .allSatisfy(line -> assertThat(line.fraction()).isEqualTo(Ratio.of(1, 3)));
        WorkingAssertions.assertSelfChecking(formula.line("Cocos Nucifera Oil"));
    }

    @Test
    void parts_keep_their_proportion() {
        Formula formula = Formula.inParts("balm")
                .line("Butyrospermum Parkii Butter", "3")
                .line("Cera Alba", "1")
                .line("Tocopherol", "0.2")
                .build();
        assertThat(formula.line("Tocopherol").fraction()).isEqualTo(Ratio.of(1, 21));
    }

    @Test
    void masses_become_shares() {
        Formula formula = Formula.inMasses("as made")
                .line("Aqua", "75 g")
                .line("Glycerin", "1 oz")
                .build();
        Ratio ounce = Ratio.parse("28.349523125");
        assertThat(formula.line("Glycerin").fraction()).isEqualTo(ounce.dividedBy(ounce.plus(Ratio.of(75))));
        WorkingAssertions.assertSelfChecking(formula.line("Glycerin"));
    }

    @Test
    void masses_fill_up_to_a_stated_mass() {
        Formula formula = Formula.inMasses("filled up")
                .line("Glycerin", "12.5 g")
                .quantitySufficient("Aqua")
                .buildToMake(Amount.mass("250 g"));
        assertThat(formula.line("Aqua").share()).isEqualTo(MassFraction.ofPercent("95"));
        WorkingAssertions.assertSelfChecking(formula.line("Aqua"));
        assertThatThrownBy(() -> Formula.inMasses("too little")
                        .line("Glycerin", "250 g")
                        .quantitySufficient("Aqua")
                        .buildToMake(Amount.mass("250 g")))
                .isInstanceOf(FormulaTotalException.class)
                .hasMessageContaining("100 %")
                .hasMessageContaining("leaves 0 %");
    }

    @Test
    void a_quantity_sufficient_line_without_a_whole_is_refused() {
        assertThatThrownBy(() -> Formula.inMasses("no whole")
                        .line("Glycerin", "5 g")
                        .quantitySufficient("Aqua")
                        .build())
                .hasMessageContaining("buildToMake");
        assertThatThrownBy(() ->
                        Formula.inMasses("no q.s.").line("Glycerin", "5 g").buildToMake(Amount.mass("9 g")))
                .hasMessageContaining("no line is q.s.");
        assertThatThrownBy(() -> Formula.inParts("parts").quantitySufficient("Aqua"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Aqua");
    }

    @Test
    void nothing_left_for_the_quantity_sufficient_line_is_refused() {
        FormulaBuilder full =
                Formula.inPercent("full").line("Glycerin", "100 %").quantitySufficient("Aqua");
        assertThatThrownBy(full::build)
                .isInstanceOf(FormulaTotalException.class)
                .hasMessageContaining("100 %")
                .hasMessageContaining("Aqua");
        FormulaBuilder over = Formula.inPercent("over")
                .line("Glycerin", "70 %")
                .line("Propanediol", "31 %")
                .quantitySufficient("Aqua");
        assertThatThrownBy(over::build).hasMessageContaining("101 %").hasMessageContaining("-1 %");
    }

    @Test
    void one_quantity_sufficient_line_is_enough() {
        FormulaBuilder draft = Formula.inPercent("two").quantitySufficient("Aqua");
        assertThatThrownBy(() -> draft.quantitySufficient("Glycerin")).hasMessageContaining("second q.s.");
    }

    @Test
    void an_ingredient_stands_once_in_a_phase() {
        FormulaBuilder draft = Formula.inPercent("twice").phase("A").line("Glycerin", "3 %");
        assertThatThrownBy(() -> draft.line("Glycerin", "2 %"))
                .hasMessageContaining("Glycerin stands twice in phase A");
        Formula both = draft.phase("B")
                .line("Glycerin", "2 %")
                .quantitySufficient("Aqua")
                .build();
        assertThat(both.line("B", "Glycerin").share()).isEqualTo(MassFraction.ofPercent("2"));
        assertThatThrownBy(() -> both.line("Glycerin")).hasMessageContaining("several phases (A, B)");
        assertThatThrownBy(() -> both.line("A", "Aqua"))
                .hasMessage("phase \"A\" has no line for Aqua, which stands in phase B");
        assertThat(both.line("aqua")).isEqualTo(both.line("Aqua"));
        assertThatThrownBy(() -> both.line("aqa"))
                .hasMessage("\"twice\" has no line for aqa: it has Glycerin, Glycerin, Aqua");
    }

    @Test
    void a_message_does_not_list_many_names() {
        FormulaBuilder draft = Formula.inParts("many");
        for (int i = 1; i <= 60; i++) {
            draft.line("material " + i, "1");
        }
        Formula many = draft.build();
        assertThatThrownBy(() -> many.line("other"))
                .message()
                .contains("material 11, material 12,")
                .endsWith(" more")
                .hasSizeLessThan(400);
    }

    @Test
    void what_is_not_built_yet_shows_how_far_it_is() {
        assertThat(Formula.inPercent("Cream").quantitySufficient("Aqua").line("Glycerin", "3 %"))
                .hasToString("Cream, not built yet: [1. Aqua q.s., 2. Glycerin 3 %]");
        assertThat(Ingredient.blend("Mix").part("Benzyl Alcohol", "84 %"))
                .hasToString("Mix, not built yet: {Benzyl Alcohol=84 %}");
    }

    @Test
    void amounts_must_be_above_zero() {
        assertThatThrownBy(() -> Formula.inPercent("zero").line("Glycerin", "0 %"))
                .hasMessageContaining("Glycerin")
                .hasMessageContaining("above 0");
        assertThatThrownBy(() -> Formula.inPercent("negative").line("Glycerin", "-1 %"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Formula.inParts("negative").line("Glycerin", "-1"))
                .hasMessageContaining("-1 parts");
        assertThatThrownBy(() -> Formula.inMasses("zero").line("Glycerin", "0 g"))
                .hasMessageContaining("0 g");
    }

    @Test
    void empty_phases_and_formulas_are_refused() {
        assertThatThrownBy(() -> Formula.inPercent("empty").build()).hasMessageContaining("no lines");
        assertThatThrownBy(() -> Formula.inPercent("empty phase").phase("A").phase("B"))
                .hasMessageContaining("phase \"A\" has no lines");
        assertThatThrownBy(() -> Formula.inPercent("last empty")
                        .line("Aqua", "100 %")
                        .phase("B")
                        .build())
                .hasMessageContaining("phase \"B\" has no lines");
        assertThatThrownBy(() -> Formula.inPercent("same")
                        .phase("A")
                        .line("Aqua", "50 %")
                        .phase("A"))
                .hasMessageContaining("own name");
    }

    @Test
    void unknown_lines_are_named() {
        assertThatThrownBy(() -> LOTION.line("Parfum"))
                .hasMessageContaining("Parfum")
                .hasMessageContaining("Oat lotion");
        assertThatThrownBy(() -> LOTION.line("water", "Avena Sativa Kernel Oil"))
                .hasMessageContaining("phase \"water\"");
    }

    @Test
    void a_hundred_thousand_lines_are_no_trouble() {
        FormulaBuilder draft = Formula.inPercent("long");
        for (int i = 0; i < 100_000; i++) {
            draft.line("line " + i, "0.001 %");
        }
        assertThat(draft.build().lines()).hasSize(100_000);
    }

    @Test
    void amounts_of_another_kind_are_refused_with_the_door_for_them() {
        Ingredient oil = Ingredient.of("Oil");
        assertThatThrownBy(() -> Formula.inPercent("F").line(oil, Amount.mass("3 g")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "the amount of Oil is 3 g: this formula is written in percent, so write it like 2.5 %, or start "
                                + "the formula with Formula.inPercent, inParts or inMasses, whichever its amounts are");
        assertThatThrownBy(() -> Formula.inPercent("F").line(oil, Ratio.of(3)))
                .hasMessageContaining("is 3 parts: this formula is written in percent");
        assertThatThrownBy(() -> Formula.inParts("F").line(oil, MassFraction.parse("3 %")))
                .hasMessageContaining("written in parts, so write it like 3 parts");
        assertThatThrownBy(() -> Formula.inParts("F").line(oil, Amount.mass("3 g")))
                .hasMessageContaining("written in parts");
        assertThatThrownBy(() -> Formula.inMasses("F").line(oil, MassFraction.parse("3 %")))
                .hasMessageContaining("written in masses, so write it like 12.5 g");
        assertThatThrownBy(() -> Formula.inMasses("F").line(oil, Ratio.of(3)))
                .hasMessageContaining("written in masses");
    }

    @Test
    void ways_to_end_are_refused_where_they_mean_nothing() {
        assertThatThrownBy(() -> Formula.inParts("F").line("Oil", "3").buildNormalised())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("buildNormalised() is for a formula in percent, and \"F\" is one in parts: call build()");
        assertThatThrownBy(() -> Formula.inMasses("F").line("Oil", "3 g").buildNormalised())
                .hasMessageContaining("one in masses");
        assertThatThrownBy(
                        () -> Formula.inPercent("F").quantitySufficient("Oil").buildToMake(Amount.mass("3 g")))
                .hasMessage("buildToMake(3 g) is for a formula in masses, and \"F\" is one in percent: call build()");
    }

    @Test
    void an_amount_as_a_line_keeps_it_is_taken_again() {
        FormulaBuilder again = Formula.inPercent(LOTION.name());
        for (Phase phase : LOTION.phases()) {
            again.phase(phase.name());
            phase.lines().forEach(line -> again.line(line.ingredient(), line.amount()));
        }
        assertThat(again.build()).isEqualTo(LOTION);
    }

    @Test
    void a_formula_has_its_own_lines_only() {
        assertThat(FORMULA.has(FORMULA.line("Aqua"))).isTrue();
        assertThat(FORMULA.has(OTHER.line("Wax"))).isFalse();
        assertThat(OTHER.has(FORMULA.line("Panthenol"))).isFalse();
    }
}
