package io.github.formulationmath.sheet;

import static io.github.formulationmath.support.Bar.FLAKES;
import static io.github.formulationmath.support.Bar.fat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.soap.Soap;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The sheet of a soap: water and alkali first and by themselves, the judgement, the cautions once. */
class SoapSheetTest {

    private static final Formula FORMULA = Formula.inMasses("bar")
            .line("Olive", "700 g")
            .line("Coconut", "200 g")
            .line("Shea", "100 g")
            .line("Sodium Hydroxide", "139.6 g")
            .line("Aqua", "300 g")
            .line("Parfum", "10 g")
            .build();

    private static final Soap BEFORE_WATER = Soap.of(FORMULA)
            .fat("Olive", fat("Olive", "184", "196"))
            .fat("Coconut", fat("Coconut", "248", "265"))
            .lateFat("Shea", fat("Shea", "160", "195"))
            .alkali("Sodium Hydroxide", FLAKES)
            .neither("Parfum");

    private static final Soap SOAP = BEFORE_WATER.lyeWater("Aqua");

    private static ExpectedProduct expected(WeighingMethod method) {
        Batch batch = Batch.of(FORMULA, BatchSize.ofMass("1449.6 g"));
        return ExpectedProduct.of(WeighingPlan.of(batch, Balance.of("0.1 g", "20 kg")), method);
    }

    /** The sheet that is printed on paper too. */
    static Document sheet(Wording words) {
        return SoapSheet.of(SOAP, expected(WeighingMethod.TARE_EACH), words);
    }

    private static Document sheet() {
        return sheet(Wording.english());
    }

    private static String text() {
        return sheet().print(Format.TEXT);
    }

    @Test
    void water_is_weighed_before_the_alkali_and_both_before_the_fats() {
        assertThat(text())
                .containsSubsequence(
                        "Lye: the water",
                        "[ ]     5  Aqua",
                        "[ ]     4  Sodium Hydroxide",
                        "Fats",
                        "[ ]     1  Olive",
                        "[ ]     2  Coconut",
                        "Fats for when the rest has reacted",
                        "[ ]     3  Shea",
                        "Everything else",
                        "[ ]     6  Parfum",
                        "Largest reading of Sodium Hydroxide",
                        "139.8 g",
                        "in the cook alone",
                        "Hydroxide left",
                        "no hydroxide is left",
                        "The cook alone");
        assertThat(text().split("\\[ \\]", -1)).hasSize(7);
    }

    /** Readings on this sheet do not add up in one vessel, so that none says what a balance tared once would read. */
    @Test
    void no_reading_is_on_top_of_another() {
        assertThat(text()).doesNotContain("tared once");
        assertThatThrownBy(() -> SoapSheet.of(SOAP, expected(WeighingMethod.CUMULATIVE)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("alkali is weighed by itself")
                .hasMessageContaining("TARE_EACH");
        assertThat(SoapSheet.of(SOAP, expected(WeighingMethod.FROM_BOAT))).isNotNull();
    }

    @Test
    void the_cautions_stand_there_once() {
        String flat = text().replaceAll("\\s+", " ");
        assertThat(flat.split("gloves and goggles", -1)).hasSize(2);
        assertThat(flat.split("defers to local law and to qualified safety assessment", -1))
                .hasSize(2);
    }

    @Test
    void a_dry_alkali_without_water_is_refused() {
        Soap dry = BEFORE_WATER.neither("Aqua");
        assertThatThrownBy(() -> SoapSheet.of(dry, expected(WeighingMethod.TARE_EACH)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("lyeWater(…)");
    }

    @Test
    void what_is_not_declared_is_weighed_and_nothing_is_shown() {
        String text = SoapSheet.of(
                        BEFORE_WATER.lyeWater("Aqua").withFormula(FORMULA), expected(WeighingMethod.TARE_EACH))
                .print(Format.TEXT);
        assertThat(text).doesNotContain("Not declared");
        Soap undeclared = Soap.of(FORMULA).lyeWater("Aqua");
        String open =
                SoapSheet.of(undeclared, expected(WeighingMethod.TARE_EACH)).print(Format.TEXT);
        assertThat(open.replaceAll("\\s+", " "))
                .contains("Not declared")
                .contains("Not shown while nothing is said of Olive")
                .doesNotContain("Largest reading");
        assertThat(open.split("\\[ \\]", -1)).hasSize(7);
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void it_prints_in_every_format(Format format) {
        Document sheet = SoapSheet.of(SOAP, expected(WeighingMethod.TARE_EACH));
        String printed = sheet.print(format);
        for (String line : List.of("Olive", "Coconut", "Shea", "Sodium Hydroxide", "Aqua", "Parfum")) {
            assertThat(printed).contains(line);
        }
        // Markdown and LaTeX escape the point.
        assertThat(printed.replace("\\", "")).contains("139.6");
    }
}
