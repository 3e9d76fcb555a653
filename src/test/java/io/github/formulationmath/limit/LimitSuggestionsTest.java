package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.NameBook;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Checkers;
import io.github.formulationmath.support.CpuTime;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A misspelt name is not checked, and the report must not be quiet about it. Misspellings are of our own making. */
class LimitSuggestionsTest {

    private static LimitReport report(Product product, String material) {
        Formula formula = Formula.inPercent("Cream")
                .quantitySufficient("Aqua")
                .line(material, "1.2 %")
                .build();
        return Checkers.of(product).check(formula);
    }

    private static LimitReport report(String material) {
        return report(Product.leaveOn().on("face"), material);
    }

    @ParameterizedTest
    @CsvSource({
        "Phenoxyethanoll, PHENOXYETHANOL",
        "Phenoxyehtanol, PHENOXYETHANOL",
        "Sodium Bensoate, SODIUM BENZOATE",
        "Potasium sorbate, POTASSIUM SORBATE",
        "Benzyl Alchohol, BENZYL ALCOHOL",
        "Salicilic Acid, SALICYLIC ACID"
    })
    void a_slip_of_the_pen_is_told_with_what_may_be_meant(String written, String meant) {
        LimitReport report = report(written);
        assertThat(report.verdicts()).as("nothing is guessed").isEmpty();
        assertThat(report.suggestions()).containsOnlyKeys(Substance.of(written));
        assertThat(report.suggestions().get(Substance.of(written))).first().isEqualTo(meant);
        assertThat(report).asString().contains(written + " is close to " + meant);
        assertThat(report.describe(Wording.english()))
                .anySatisfy(line -> assertThat(line).startsWith(written).contains("close", meant));
    }

    /** A printed synonym is the substance; another spelling is taken for it, and that is told. */
    @Test
    void another_name_of_the_same_is_found() {
        assertThat(report("2-Phenoxyethanol").verdicts()).hasSize(1);
        assertThat(report("2-Phenoxyethanol").readings()).isEmpty();
        assertThat(report("Phenoxy ethanol").verdicts()).hasSize(1);
        assertThat(report("Phenoxy ethanol").readings()).containsOnlyKeys(Substance.of("Phenoxy ethanol"));
    }

    /** Names that only Annex II has. */
    @ParameterizedTest
    @CsvSource({
        "Tretinion, Tretinoin",
        "Minoxidyl, Minoxidil",
        "Cloroform, Chloroform",
        "Dibutyl Phtalate, Dibutyl phthalate",
        "Butylphenyl Methylpropionol, BUTYLPHENYL METHYLPROPIONAL",
    })
    void a_slip_of_the_pen_for_what_is_prohibited_is_told(String written, String meant) {
        LimitReport report = report(written);
        assertThat(report.verdicts()).as("nothing is guessed").isEmpty();
        assertThat(report.suggestions().get(Substance.of(written)))
                .first()
                .asString()
                .isEqualToIgnoringCase(meant);
        assertThat(report.outcome()).isEqualTo(LimitOutcome.CONDITIONS_OPEN);
    }

    /** Only spelt in another way: it is the substance, and that is told. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Isobutyl paraben",
                "tret-inoin",
                "Hydro quinone",
                "Chloro form",
                "Formaldehyd",
                "hydroquinon",
                "Arsen",
                "Benzol",
                "Trichloressigsäure",
                "TCA",
                "Hydroquinon"
            })
    void another_spelling_of_what_is_prohibited_is_taken_for_it(String written) {
        LimitReport report = report(written);
        assertThat(report.outcome()).isEqualTo(LimitOutcome.PROHIBITED);
        assertThat(report.readings()).containsOnlyKeys(Substance.of(written));
        assertThat(report.withoutLimit()).extracting(Substance::name).containsExactly("Aqua");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Chloroform (and) Minoxidil", "Glycerin (and) Hydroquinone", "Tretinoin; Squalane"})
    void a_blend_of_which_only_annex_ii_knows_a_part_is_taken_apart(String written) {
        LimitReport report = report(written);
        assertThat(report.outcome()).isEqualTo(LimitOutcome.PROHIBITED);
        assertThat(report.readings().get(Substance.of(written)).how()).isEqualTo(NameBook.How.BLEND);
    }

    /** A table that does not ask the annexes does not suggest of them. */
    @Test
    void a_table_of_ones_own_suggests_its_own_names_alone() {
        LimitTable own = LimitTable.of("house", List.of(UsageLimit.atMost("Squalane", "9 %", Scope.any(), "S")));
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Tretinion")
                .line("Squalan", "1 %")
                .build();
        assertThat(LimitChecker.of(own, Product.leaveOn(), DecisionRule.worstCase())
                        .check(formula)
                        .suggestions())
                .containsOnlyKeys(Substance.of("Squalan"));
        assertThat(LimitChecker.of(own.withEuAnnexes(), Product.leaveOn(), DecisionRule.worstCase())
                        .check(formula)
                        .suggestions())
                .containsOnlyKeys(Substance.of("Tretinion"), Substance.of("Squalan"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Serine",
                "Milk",
                "Cyclopentasiloxane",
                "Citric Acid",
                "Triethanolamine",
                "Glycerin",
                "Cetearyl Alcohol",
                "Caprylic/Capric Triglyceride",
                "Xanthan Gum",
                "Tocopherol",
                "Urea",
                "A",
                "Sodium Lactate"
            })
    void usual_materials_are_not_questioned(String material) {
        assertThat(report(material).suggestions()).isEmpty();
        assertThat(report(material)).asString().doesNotContain("close to");
    }

    @Test
    void a_name_that_the_table_knows_is_not_questioned() {
        assertThat(report("phenoxyethanol").suggestions()).isEmpty();
        assertThat(report("phenoxyethanol").verdicts()).isNotEmpty();
    }

    @Test
    void suggestions_cannot_be_changed() {
        Map<Substance, List<String>> suggestions = report("Phenoxyethanoll").suggestions();
        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(suggestions::clear);
    }

    @Test
    void words_the_table_does_not_know_stand_in_the_text() {
        LimitReport report = report(Product.leaveOn().on("faec"), "Glycerin");
        assertThat(report).asString().contains("words unknown to this table: [faec]");
        assertThat(report("Glycerin")).asString().doesNotContain("unknown");
    }

    /** Twenty thousand names, each almost one of the table. */
    @Test
    void many_and_long_names_take_no_time() {
        FormulaBuilder builder = Formula.inParts("Hostile");
        for (int i = 0; i < 20_000; i++) {
            builder.line("Phenoxy" + Integer.toString(i, 36) + "ethanol", "1");
        }
        builder.line("y".repeat(500), "1");
        LimitReport report = Checkers.LEAVE_ON.check(builder.build());
        CpuTime.assertWithin(
                Duration.ofSeconds(20), () -> assertThat(report.toString()).contains("close to"));
    }
}
