package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.WorkingAssertions;
import org.junit.jupiter.api.Test;

class CompositionTest {

    private static final Substance WATER = Substance.of("Aqua");
    private static final Substance BETAINE = Substance.of("Cocamidopropyl Betaine");

    private static final Ingredient SOLUTION_30 = Ingredient.blend("Betaine 30")
            .part(BETAINE, MassFraction.ofPercent("30"))
            .rest(WATER);
    private static final Ingredient SOLUTION_38 = Ingredient.blend("Betaine 38")
            .part(BETAINE, MassFraction.ofPercent("38"))
            .rest(WATER);

    private static final Formula CLEANSER = Formula.inPercent("Cleanser")
            .quantitySufficient("Aqua")
            .line(SOLUTION_30, "19 %")
            .line("Glycerin", "3 %")
            .build();

    @Test
    void a_blend_counts_by_its_parts() {
        Composition composition = CLEANSER.composition();
        assertThat(composition.shareOf(BETAINE).orElseThrow().share()).isEqualTo(MassFraction.ofPercent("5.7"));
        assertThat(composition.shareOf(WATER).orElseThrow().share()).isEqualTo(MassFraction.ofPercent("91.3"));
        assertThat(composition.shareOf(WATER).orElseThrow().lines()).hasSize(2);
        composition.shares().forEach(WorkingAssertions::assertSelfChecking);
    }

    @Test
    void the_shares_make_up_the_whole() {
        Ratio total = CLEANSER.composition().shares().stream()
                .map(one -> one.share().fraction())
                .reduce(Ratio.ZERO, Ratio::plus);
        assertThat(total).isEqualTo(Ratio.ONE);
        assertThat(CLEANSER.composition().shareOf(Substance.of("Parfum"))).isEmpty();
    }

    @Test
    void a_material_of_other_strength_keeps_the_substance() {
        Formula stronger = CLEANSER.replacing(CLEANSER.line("Betaine 30"), SOLUTION_38, BETAINE);
        assertThat(stronger.line("Betaine 38").share()).isEqualTo(MassFraction.ofPercent("15"));
        assertThat(stronger.line("Aqua").share()).isEqualTo(MassFraction.ofPercent("82"));
        assertThat(stronger.composition().shareOf(BETAINE).orElseThrow().share())
                .isEqualTo(MassFraction.ofPercent("5.7"));
    }

    @Test
    void a_named_line_may_take_the_difference() {
        Formula formula =
                CLEANSER.replacing(CLEANSER.line("Betaine 30"), SOLUTION_38, BETAINE, CLEANSER.line("Glycerin"));
        assertThat(formula.line("Glycerin").share()).isEqualTo(MassFraction.ofPercent("7"));
        assertThat(formula.line("Aqua").share()).isEqualTo(MassFraction.ofPercent("78"));
    }

    @Test
    void a_replacement_that_cannot_be_is_refused() {
        FormulaLine betaine = CLEANSER.line("Betaine 30");
        assertThatThrownBy(() -> CLEANSER.replacing(betaine, Ingredient.of("Glucose"), BETAINE))
                .hasMessageContaining("Glucose declares no Cocamidopropyl Betaine");
        Ingredient weak = Ingredient.blend("Betaine 3")
                .part(BETAINE, MassFraction.ofPercent("3"))
                .rest(WATER);
        assertThatThrownBy(() -> CLEANSER.replacing(betaine, weak, BETAINE))
                .hasMessageContaining("190 %")
                .hasMessageContaining("Aqua");
        assertThatThrownBy(() -> CLEANSER.replacing(betaine, weak, BETAINE, betaine))
                .hasMessageContaining("another line");
        Formula fixed = Formula.inPercent("fixed")
                .line("Aqua", "81 %")
                .line(SOLUTION_30, "19 %")
                .build();
        assertThatThrownBy(() -> fixed.replacing(fixed.line("Betaine 30"), SOLUTION_38, BETAINE))
                .hasMessageContaining("no line of \"fixed\" is q.s.");
    }

    @Test
    void the_declared_parts_must_make_up_the_material() {
        assertThatThrownBy(() -> Ingredient.blend("short").part("A", "30 %").build())
                .hasMessageContaining("30 %")
                .hasMessageContaining("70 % short");
        assertThatThrownBy(() -> Ingredient.blend("over").part("A", "60 %").part("B", "41 %"))
                .hasMessageContaining("101 %");
        assertThatThrownBy(() -> Ingredient.blend("twice").part("A", "1 %").part("A", "1 %"))
                .hasMessageContaining("declared twice");
        assertThatThrownBy(() -> Ingredient.blend("zero").part("A", "0 %")).hasMessageContaining("0 %");
        assertThatThrownBy(() -> Ingredient.blend("full").part("A", "100 %").rest("B"))
                .hasMessageContaining("call build()");
        assertThat(Ingredient.blend("full").part("A", "100 %").build().strengthOf(Substance.of("A")))
                .contains(MassFraction.ofPercent("100"));
    }

    @Test
    void cas_numbers_are_checked() {
        // Glycerin, CAS 56-81-5: 1·1 + 8·2 + 6·3 + 5·4 = 55, modulo 10 is 5.
        assertThat(Substance.of("Glycerin").withCas("56-81-5").cas()).contains("56-81-5");
        assertThatThrownBy(() -> Substance.of("Glycerin").withCas("56-81-4")).hasMessageContaining("should be 5");
        assertThatThrownBy(() -> Substance.of("Glycerin").withCas("56815")).hasMessageContaining("looks like");
        assertThatThrownBy(() -> Substance.of("  ")).hasMessageContaining("blank");
        assertThatThrownBy(() -> Substance.of("x".repeat(501))).hasMessageContaining("501");
    }
}
