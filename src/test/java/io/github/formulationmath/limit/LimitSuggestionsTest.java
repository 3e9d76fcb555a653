package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.reckoning.Wording;
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
        return LimitChecker.of(LimitTable.eu2024February(), product, DecisionRule.worstCase())
                .check(formula);
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

    @ParameterizedTest
    @ValueSource(
            strings = {
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
        LimitReport report = LimitChecker.of(LimitTable.eu2024February(), Product.leaveOn(), DecisionRule.worstCase())
                .check(builder.build());
        CpuTime.assertWithin(
                Duration.ofSeconds(20), () -> assertThat(report.toString()).contains("close to"));
    }
}
