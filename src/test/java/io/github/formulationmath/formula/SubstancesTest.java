package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.CpuTime;
import io.github.formulationmath.support.WorkingAssertions;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class SubstancesTest {

    private static final Substance WITH_NUMBER = Substance.of("Phenoxyethanol").withCas("122-99-6");
    private static final Ingredient BLEND = Ingredient.blend("Preservative PX")
            .part(WITH_NUMBER, MassFraction.parse("65 %"))
            .rest("Glycerin");
    private static final Formula LOTION = Formula.inPercent("Lotion")
            .quantitySufficient("Aqua")
            .line(BLEND, "0.9 %")
            .line("phenoxyethanol ", "0.6 %")
            .build();

    @Test
    void a_number_on_one_line_and_a_name_on_another_are_one_substance() {
        for (Substance asked : new Substance[] {
            WITH_NUMBER,
            Substance.of("PHENOXYETHANOL"),
            Substance.of("Rose ether").withCas("122-99-6"),
            Substance.of("122-99-6"),
            Substance.of("Rose ether").withSynonyms("Phenoxy\u200bethanol")
        }) {
            SubstanceShare share = LOTION.composition().shareOf(asked).orElseThrow();
            assertThat(share.share()).isEqualTo(MassFraction.ofPercent("1.185"));
            assertThat(share.lines()).hasSize(2);
            assertThat(share.substance()).isEqualTo(WITH_NUMBER);
            WorkingAssertions.assertSelfChecking(share);
        }
        assertThat(LOTION.composition().shares()).hasSize(3);
        assertThat(LOTION.composition().shareOf(Substance.of("Rose ether"))).isEmpty();
    }

    @Test
    void same_is_transitive() {
        Formula chain = Formula.inPercent("Chain")
                .line(Ingredient.of("one", Substance.of("A").withSynonyms("B")), "10 %")
                .line(Ingredient.of("two", Substance.of("C").withCas("56-81-5")), "20 %")
                .line(Ingredient.of("three", Substance.of("b").withCas("56-81-5")), "30 %")
                .line("D", "40 %")
                .build();
        assertThat(chain.composition().shareOf(Substance.of("C")).orElseThrow().share())
                .isEqualTo(MassFraction.ofPercent("60"));
        assertThat(chain.composition().shares()).hasSize(2);
    }

    @Test
    void two_parts_of_one_blend_may_become_one_through_another_line() {
        Ingredient blend =
                Ingredient.blend("mix").part("A", "30 %").part("B", "20 %").rest("Aqua");
        Formula joined = Formula.inPercent("Joined")
                .line(blend, "50 %")
                .line(Ingredient.of("pure", Substance.of("A").withSynonyms("B")), "50 %")
                .build();
        SubstanceShare share = joined.composition().shareOf(Substance.of("B")).orElseThrow();
        assertThat(share.share()).isEqualTo(MassFraction.ofPercent("75"));
        WorkingAssertions.assertSelfChecking(share);
        Ratio total = joined.composition().shares().stream()
                .map(one -> one.share().fraction())
                .reduce(Ratio.ZERO, Ratio::plus);
        assertThat(total).isEqualTo(Ratio.ONE);
    }

    @Test
    void a_question_may_join_what_nothing_else_joins() {
        Formula apart = Formula.inPercent("Apart")
                .line("Glycerin", "60 %")
                .line(Ingredient.of("E 422", Substance.of("E 422").withCas("56-81-5")), "40 %")
                .build();
        assertThat(apart.composition().shares()).hasSize(2);
        SubstanceShare both = apart.composition()
                .shareOf(Substance.of("Glycerin").withCas("56-81-5"))
                .orElseThrow();
        assertThat(both.share()).isEqualTo(MassFraction.WHOLE);
        assertThat(both.lines()).isEqualTo(apart.lines());
    }

    @Test
    void two_numbers_for_one_substance_are_an_error_that_names_both_lines() {
        FormulaBuilder chain = Formula.inPercent("Chain")
                .line(Ingredient.of("one", Substance.of("A").withCas("122-99-6")), "10 %")
                .line(Ingredient.of("two", Substance.of("B").withSynonyms("a")), "20 %")
                .line(Ingredient.of("three", Substance.of("b ").withCas("56-81-5")), "70 %");
        assertThatThrownBy(chain::build)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("\"Chain\": one substance (A, B) has two CAS numbers, 122-99-6 for A in line 1 \"one\" and "
                        + "56-81-5 for b  in line 3 \"three\": correct the number that is wrong, or, if they are two "
                        + "substances, the name or synonym that they share");
        // The remedy works.
        assertThatCode(() -> Formula.inPercent("Chain")
                        .line(Ingredient.of("one", Substance.of("A").withCas("122-99-6")), "30 %")
                        .line(Ingredient.of("three", Substance.of("b ").withCas("56-81-5")), "70 %")
                        .build())
                .doesNotThrowAnyException();
    }

    @Test
    void a_question_with_another_number_is_refused() {
        assertThatThrownBy(() -> LOTION.composition()
                        .shareOf(Substance.of("Phenoxyethanol").withCas("56-81-5")))
                .hasMessageContaining("two CAS numbers, 122-99-6")
                .hasMessageContaining("line 2 \"Preservative PX\"")
                .hasMessageContaining("56-81-5")
                .hasMessageContaining("the question");
    }

    @Test
    void lines_and_parts_in_other_spellings_are_the_same_twice() {
        for (String disguise : new String[] {"GLYCERIN", "Glycerin ", "Glycerin\u00a0", "gly\u200bcerin"}) {
            assertThatThrownBy(() ->
                            Formula.inPercent("twice").line("Glycerin", "1 %").line(disguise, "2 %"))
                    .hasMessageContaining("stands twice in phase A, the first time as \"Glycerin\"")
                    .hasMessageContaining("add the two lines up");
            assertThatThrownBy(() ->
                            Ingredient.blend("twice").part("Glycerin", "1 %").part(disguise, "2 %"))
                    .hasMessageContaining("declared twice, the first time as Glycerin");
        }
        assertThat(LOTION.line(" AQ\u00adUA").position()).isEqualTo(1);
        assertThatThrownBy(() ->
                        Formula.inPercent("t").line("\u00c9t\u00e9", "1 %").line("E\u0301te\u0301", "2 %"))
                .hasMessageContaining("stands twice");
        assertThatThrownBy(() -> Ingredient.blend("twice")
                        .part(WITH_NUMBER, MassFraction.parse("1 %"))
                        .part(Substance.of("Rose ether").withCas("122-99-6"), MassFraction.parse("1 %")))
                .hasMessageContaining("declared twice, the first time as Phenoxyethanol (CAS 122-99-6)");
        // The remedy: another phase.
        assertThatCode(() -> Formula.inPercent("two phases")
                        .phase("a")
                        .line("Glycerin", "1 %")
                        .phase("b")
                        .line("GLYCERIN", "99 %")
                        .build())
                .doesNotThrowAnyException();
    }

    @Test
    void a_replacement_knows_the_substance_by_its_number() {
        Ingredient other = Ingredient.blend("PE 50")
                .part(Substance.of("Rose ether").withCas("122-99-6"), MassFraction.parse("50 %"))
                .rest("Glycerin");
        Formula replaced = LOTION.replacing(LOTION.line("Preservative PX"), other, Substance.of("phenoxyethanol"));
        assertThat(replaced.line("PE 50").share()).isEqualTo(MassFraction.ofPercent("1.17"));
        assertThat(replaced.composition().shareOf(WITH_NUMBER).orElseThrow().share())
                .isEqualTo(MassFraction.ofPercent("1.185"));
    }

    /** Twenty thousand links of a chain: a walk from each to the first would not end. */
    @Test
    void long_chains_are_joined_in_time_that_grows_with_them() {
        int links = 20_000;
        FormulaBuilder chain = Formula.inParts("long");
        for (int i = 0; i < links; i++) {
            chain.line(Ingredient.of("line " + i, Substance.of("s" + i).withSynonyms("s" + (i + 1))), Ratio.ONE);
        }
        CpuTime.assertWithin(
                Duration.ofSeconds(60),
                () -> assertThat(chain.build().composition().shares()).hasSize(1));
    }
}
